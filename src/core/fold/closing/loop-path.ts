import type { ClosingAct, NetEdge, PieceNet } from '../../net/types';
import { toMm } from '../../units/ticks';
import { closingTolerance } from '../closed-piece';
import type { Collision, LookAt } from '../collisions';
import { posesOf } from '../fold-piece';
import { placeOf } from '../pose';
import type { Vector } from '../vector';
import { leastSquares } from './least-squares';
import { movedBy } from './tuck-path';

/** Steps in which a loop is followed. source: our choice */
const FRAMES = 6;
/** A loop that stays this nearly closed on the way is rigid: hands feel no bend. source: our choice, two sheets of light card, mm */
export const STAYS_CLOSED = 0.4;

/**
 * Panels joined in closed loops (gussets between roofs): each cannot turn by itself. The first hinge of the act is turned back from the
 * closed state step by step, the others follow so that every crease and glued seam of the loop stays together (least squares, from the
 * step before). Null where no rigid way is found: there the card bends.
 */
export function loopPath(
  piece: PieceNet,
  { hinges }: Exclude<ClosingAct, { readonly do: 'glue' }>,
  from: readonly number[],
  to: readonly number[],
  look: LookAt,
): readonly Collision[] | null {
  const moved = movedBy(piece, hinges);
  const pairs = loopPairs(piece, from, to, moved);
  const [lead, ...led] = hinges.filter((hinge) => from[hinge] !== to[hinge]);
  if (lead === undefined || pairs.length === 0) return null;
  const hits: Collision[] = [];
  let angles: readonly number[] = to;
  for (let frame = FRAMES - 1; frame > 0; frame--) {
    const turned = [...angles];
    const part = frame / FRAMES;
    turned[lead] = (from[lead] ?? 0) + ((to[lead] ?? 0) - (from[lead] ?? 0)) * part;
    const settled = leastSquares(
      led.map((hinge) => turned[hinge] ?? 0),
      (values) => gapsOf(piece, pairs, withAngles(turned, led, values)),
    );
    angles = withAngles(turned, led, settled);
    if (Math.max(...gapsOf(piece, pairs, angles).map(Math.abs)) > STAYS_CLOSED) return null;
    hits.push(...look(angles, moved));
  }
  return hits;
}

const withAngles = (
  all: readonly number[],
  hinges: readonly number[],
  values: readonly number[],
): number[] => {
  const angles = [...all];
  hinges.forEach((hinge, at) => {
    angles[hinge] = values[at] ?? 0;
  });
  return angles;
};

/** Two edges of two faces that have to stay together. */
export type Pair = readonly [NetEdge, number, NetEdge, number, crossed: boolean];

/** Creases and bends off the tree, and seams that are together before and after the act, where something of them moves. */
export function loopPairs(
  piece: PieceNet,
  from: readonly number[],
  to: readonly number[],
  moved: ReadonlySet<number>,
): readonly Pair[] {
  const creases = piece.edges.flatMap((edge): Pair[] =>
    edge.right === null || edge.hinge !== null || edge.kind === 'slit'
      ? []
      : [[edge, edge.left, edge, edge.right, false]],
  );
  const seams = piece.seams.flatMap(({ a, b, faces: [p, q], gap }): Pair[] => {
    const [one, other] = [piece.edges[a], piece.edges[b]];
    return one === undefined || other === undefined || gap > 0
      ? []
      : [false, true].map((crossed) => [one, p, other, q, crossed]);
  });
  const slack = 2 * closingTolerance(piece);
  const moving = [...creases, ...seams].filter((pair) => moved.has(pair[1]) || moved.has(pair[3]));
  const [before, after] = [pairsApart(piece, moving, from), pairsApart(piece, moving, to)];
  return moving.filter((_, at) => Math.max(before[at] ?? 0, after[at] ?? 0) <= slack);
}

/** How far the ends of each pair are apart, mm: the most along any axis. */
export function pairsApart(piece: PieceNet, pairs: readonly Pair[], angles: readonly number[]): number[] {
  const gaps = gapsOf(piece, pairs, angles).map(Math.abs);
  return pairs.map((_, at) => Math.max(...gaps.slice(GAPS_A_PAIR * at, GAPS_A_PAIR * (at + 1))));
}

/** How far apart the ends of each pair are, mm, axis by axis: two ends of three numbers a pair. */
const GAPS_A_PAIR = 6;
function gapsOf(piece: PieceNet, pairs: readonly Pair[], angles: readonly number[]): number[] {
  const poses = posesOf(piece, angles);
  const at = (face: number, { x, y }: NetEdge['a']): Vector => {
    const pose = poses[face];
    return pose === undefined ? [0, 0, 0] : placeOf(pose, toMm(x), toMm(y));
  };
  return pairs.flatMap(([one, p, other, q, crossed]) => {
    const ends = crossed ? [other.b, other.a] : [other.a, other.b];
    return [one.a, one.b].flatMap((end, k) => {
      const [u, v] = [at(p, end), at(q, ends[k] ?? end)];
      return [u[0] - v[0], u[1] - v[1], u[2] - v[2]];
    });
  });
}
