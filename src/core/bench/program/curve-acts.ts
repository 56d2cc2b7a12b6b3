import { samePoint } from '../../net/point';
import type { NetEdge, PieceNet, Point } from '../../net/types';
import { type Lie, toBench } from '../equal/card-lie';
import type { BenchOp } from '../types';
import { riseOf } from './curve-rise';

/** The curved scores that are wanted, each a run of chords laid out by template. */
export function curveActs(
  piece: PieceNet,
  lie: Lie,
  wanted: (score: NetEdge) => boolean,
): readonly Extract<BenchOp, { op: 'scoreCurve' }>[] {
  return piece.curves.flatMap((_, curve) => {
    const chords = piece.edges.filter(
      (edge) => edge.kind === 'score' && edge.curve === curve && wanted(edge),
    );
    const points = joinChords(chords).map((p) => toBench(piece.blank, lie, p));
    return points.length > 0 ? [{ op: 'scoreCurve' as const, points, rise: riseOf(points) }] : [];
  });
}

/** Chords in any order and direction as one run of points, from one free end to the other. */
function joinChords(chords: readonly { readonly a: Point; readonly b: Point }[]): readonly Point[] {
  const meets = (p: Point): number => chords.filter(({ a, b }) => samePoint(a, p) || samePoint(b, p)).length;
  const first = chords.flatMap(({ a, b }) => [a, b]).find((p) => meets(p) === 1);
  if (!first) return [];
  const points = [first];
  const left = [...chords];
  for (let end = first; left.length > 0; ) {
    const next = left.findIndex(({ a, b }) => samePoint(a, end) || samePoint(b, end));
    const [chord] = next < 0 ? [] : left.splice(next, 1);
    if (!chord) break;
    end = samePoint(chord.a, end) ? chord.b : chord.a;
    points.push(end);
  }
  return points;
}
