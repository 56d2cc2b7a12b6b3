import { samePoint } from '../../net/point';
import type { NetEdge, PieceNet, Point } from '../../net/types';

/** A run of cut edges, card on its left. */
export interface CutChain {
  readonly points: readonly Point[];
  readonly shape: 'straight' | 'curved' | 'mixed';
  /** True where the run closes on itself: a hole. */
  readonly closed: boolean;
  /** How many arcs it has, and how many straight legs. */
  readonly arcs: number;
  readonly legs: number;
}

/** The outline's cuts, each from one place on the blank's edge to the next; and the holes. */
export function cutChains(piece: PieceNet): readonly CutChain[] {
  const leaving = new Map<string, NetEdge[]>();
  for (const edge of piece.edges)
    if (edge.kind === 'cut') leaving.set(keyOf(edge.a), [...(leaving.get(keyOf(edge.a)) ?? []), edge]);
  const onBlank = ({ x, y }: Point): boolean =>
    x === 0 || y === 0 || x === piece.blank.across || y === piece.blank.up;
  const take = (from: Point): NetEdge | undefined => leaving.get(keyOf(from))?.shift();
  const follow = (first: NetEdge): CutChain => {
    const run = [first];
    for (let end = first.b; !onBlank(end) && !samePoint(end, first.a); ) {
      const next = take(end);
      if (!next) break;
      run.push(next);
      end = next.b;
    }
    const closed = samePoint(run.at(-1)?.b ?? first.a, first.a);
    return {
      points: [first.a, ...run.map((edge) => edge.b)],
      shape: shapeOf(run),
      closed,
      arcs: new Set(run.flatMap(({ curve }) => curve ?? [])).size,
      legs: run.filter(({ curve }) => curve === null).length,
    };
  };
  const chains: CutChain[] = [];
  const starts = [...leaving.values()].flat();
  for (const edge of [...starts.filter((edge) => onBlank(edge.a)), ...starts]) {
    const waiting = leaving.get(keyOf(edge.a));
    if (!waiting?.includes(edge)) continue;
    waiting.splice(waiting.indexOf(edge), 1);
    chains.push(follow(edge));
  }
  return chains.map(straighten);
}

const shapeOf = (run: readonly NetEdge[]): CutChain['shape'] =>
  run.every((edge) => edge.curve === null)
    ? 'straight'
    : run.every((edge) => edge.curve !== null)
      ? 'curved'
      : 'mixed';

const keyOf = ({ x, y }: Point): string => `${x},${y}`;

/** Leaves out points in the middle of a straight leg: they are corners of the net, not of the cut. */
function straighten(chain: CutChain): CutChain {
  const { points } = chain;
  const kept = points.filter((p, i) => {
    const before = points[i - 1];
    const after = points[i + 1];
    if (!before || !after) return true;
    return (p.x - before.x) * (after.y - p.y) !== (p.y - before.y) * (after.x - p.x);
  });
  return { ...chain, points: kept };
}
