import type { Bench, Side } from './laid-panel';
import { pointAt } from './point';
import type { Point } from './types';

/** Corners nearer than this are one: two slanted edges of one length round differently. source: our choice, the closing tolerance of design */
const SAME_CORNER = 4; // ticks

const isSlanted = ({ a, b }: Side): boolean => a.x !== b.x && a.y !== b.y;
const isExactlyOn = ({ a, b }: Side, p: Point): boolean =>
  (b.x - a.x) * (p.y - a.y) === (b.y - a.y) * (p.x - a.x);
const apart = (p: Point, q: Point): number => Math.hypot(p.x - q.x, p.y - q.y);

/**
 * A hinge on part of a slanted edge ends between the parent's corners, at points that are rounded to ticks and so lie beside the edge by a
 * part of one. The face gets them as corners of its own, so that both sides share one line exactly.
 */
export function addCorners(bench: Bench, side: Side, points: readonly Point[]): void {
  const face = bench.faces[side.face];
  const at = face?.ring.findIndex((corner) => apart(corner, side.a) === 0) ?? -1;
  if (face === undefined || at < 0 || !isSlanted(side)) return;
  const known = [side.a, side.b, ...cornersOn(bench, side)];
  // once one stands off the line, those exactly on it are corners as well
  const exact = known.length === 2 && points.every((point) => isExactlyOn(side, point));
  const added = exact
    ? []
    : points.filter((point) => known.every((corner) => apart(corner, point) > SAME_CORNER));
  if (added.length === 0) return;
  const between = [...cornersOn(bench, side), ...added].sort((p, q) => apart(p, side.a) - apart(q, side.a));
  const rest = cornersOn(bench, side).length;
  const [ring, curves] = [[...face.ring], [...face.curves]];
  ring.splice(at + 1, rest, ...between);
  curves.splice(at + 1, rest, ...between.map(() => null));
  bench.faces[side.face] = { ...face, ring, curves };
}

/** Two slanted edges that meet when closed: each gets the corners that the other has between its ends. */
export function matchCorners(bench: Bench, one: Side, other: Side): void {
  for (const [from, to] of [
    [one, other],
    [other, one],
  ] as const) {
    if (!isSlanted(from) || !isSlanted(to)) continue;
    const long = apart(to.a, to.b);
    const mirrored = cornersOn(bench, from).map((corner): Point => {
      const share = apart(corner, from.a) / long;
      return pointAt(to.b.x + (to.a.x - to.b.x) * share, to.b.y + (to.a.y - to.b.y) * share);
    });
    addCorners(bench, to, mirrored);
  }
}

/** Corners that a face has along a side, between its ends. */
function cornersOn({ faces }: Bench, { face, a, b }: Side): readonly Point[] {
  const ring = faces[face]?.ring ?? [];
  const start = ring.findIndex((corner) => apart(corner, a) === 0);
  const found: Point[] = [];
  for (let step = 1; start >= 0 && step < ring.length; step++) {
    const corner = ring[(start + step) % ring.length];
    if (corner === undefined || apart(corner, b) === 0) break;
    found.push(corner);
  }
  return found;
}
