import type { BenchPoint } from '../types';

const isSame = (p: BenchPoint | undefined, q: BenchPoint | undefined): boolean =>
  p !== undefined && q !== undefined && p.x === q.x && p.y === q.y;

/** Straight lines joined end to end where they meet, as one hand draws them on along a ruler. Every line is in one chain, once. */
export function chainLines(
  lines: readonly { readonly a: BenchPoint; readonly b: BenchPoint }[],
): readonly (readonly BenchPoint[])[] {
  const left = lines.map(({ a, b }) => [a, b] as const);
  const chains: (readonly BenchPoint[])[] = [];
  for (let line = left.shift(); line; line = left.shift()) {
    let chain: readonly BenchPoint[] = line;
    for (;;) {
      const next = left.findIndex((other) =>
        other.some((end) => isSame(end, chain[0]) || isSame(end, chain.at(-1))),
      );
      const [joined] = next < 0 ? [] : left.splice(next, 1);
      if (!joined) break;
      chain = lengthened(chain, joined);
    }
    chains.push(chain);
  }
  return chains;
}

function lengthened(
  chain: readonly BenchPoint[],
  [a, b]: readonly [BenchPoint, BenchPoint],
): readonly BenchPoint[] {
  if (isSame(chain.at(-1), a)) return [...chain, b];
  if (isSame(chain.at(-1), b)) return [...chain, a];
  return isSame(chain[0], a) ? [b, ...chain] : [a, ...chain];
}
