import { netArea } from '../net/point';
import type { PieceNet, Point } from '../net/types';
import { roundToTick } from '../units/ticks';
import { type Finding, wordsOf } from './finding';

/** Panels whose slanted ends or cut corners draw in so far that they pass one another: such a panel cannot be cut. */
export function checkPanelShape(piece: PieceNet): Finding[] {
  return piece.faces.flatMap(({ ring, panel }, face): Finding[] => {
    if (ring.length >= 3 && netArea(ring) > 0 && !crossesItself(ring)) return [];
    const wide = Math.min(...ring.map((p, at) => span(p, ring[(at + 1) % ring.length] ?? p)));
    return [
      {
        code: 'panel-crosses-itself',
        severity: 'stop',
        where: panel,
        facts: { panel: wordsOf(piece, face), wide: roundToTick(ring.length === 0 ? 0 : wide) },
        says: 'The slanted or cut ends of the {panel} cross; its shortest edge is {wide}.',
        remedy: 'Make the panel longer along its score, or its taper, corners or curve smaller.',
      },
    ];
  });
}

const span = (p: Point, q: Point): number => Math.hypot(q.x - p.x, q.y - p.y);

/** Do two edges that are not neighbors cross or touch? Exact, in whole ticks. */
function crossesItself(ring: readonly Point[]): boolean {
  const end = (at: number): Point => ring[at % ring.length] as Point;
  for (let p = 0; p < ring.length; p++)
    for (let q = p + 2; q < ring.length; q++) {
      if (p === 0 && q === ring.length - 1) continue;
      if (meet(end(p), end(p + 1), end(q), end(q + 1))) return true;
    }
  return false;
}

const side = (a: Point, b: Point, p: Point): number =>
  Math.sign((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x));

const meet = (a: Point, b: Point, c: Point, d: Point): boolean =>
  side(a, b, c) * side(a, b, d) <= 0 &&
  side(c, d, a) * side(c, d, b) <= 0 &&
  !(side(a, b, c) === 0 && side(a, b, d) === 0 && apart(a, b, c, d));

const apart = (a: Point, b: Point, c: Point, d: Point): boolean =>
  Math.max(a.x, b.x) < Math.min(c.x, d.x) ||
  Math.max(c.x, d.x) < Math.min(a.x, b.x) ||
  Math.max(a.y, b.y) < Math.min(c.y, d.y) ||
  Math.max(c.y, d.y) < Math.min(a.y, b.y);
