import type { BenchOp } from '../types';

const numberOf = (panel: string): number => Number(/\d+$/.exec(panel)?.[0] ?? Number.NaN);

/** Whether joints run round a ring of numbered panels: 1 onto 2, 2 onto 3, … and the last onto 1. */
export function isRing(glued: readonly Pick<Extract<BenchOp, { op: 'glue' }>, 'panel' | 'onto'>[]): boolean {
  const count = glued.length;
  return (
    count > 2 &&
    glued.every(({ panel, onto }, i) => numberOf(panel) === i + 1 && numberOf(onto) === ((i + 1) % count) + 1)
  );
}
