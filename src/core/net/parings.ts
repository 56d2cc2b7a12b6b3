import type { Role } from '../styles/language/types';
import { inches, roundToTick } from '../units/ticks';
import type { Face, PieceNet, Point } from './types';

/** How much is pared off each side of a flap that folds in first, so that it lies between the walls. source: 1/32 in, common practice, no source */
const PARING = inches(0, 1, 32);

/** A strip to pare off the side of a flap: from the score to the free edge, the flap on its left or right. */
export interface Paring {
  readonly face: number;
  readonly a: Point;
  readonly b: Point;
}

/** Panels that lie between others, and are slit free of them. */
const PARED: ReadonlySet<Role> = new Set(['bottomFlap', 'dustFlap', 'lid', 'glueTab', 'lockFlap'] as const);

/**
 * Flaps and tabs that end up inside are slit free as wide as the panel they hang on, and lie between panels that are a card nearer. Their
 * square sides are pared by `PARING` once they are cut; the net keeps the slit. In ticks, where the card is cut.
 */
export function paringsOf({ faces, hinges, overlaps, joints }: PieceNet): readonly Paring[] {
  const inner = new Set([
    ...overlaps.flatMap((layers) => layers.slice(0, -1)),
    ...joints.flatMap(({ tab, lap }) => (lap === 'inside' ? [tab] : [])),
  ]);
  /** A glue tab is pared where a third panel begins at its corner, and not along a rim. */
  const meetsOthers = (flap: Face, corner: Point, parent: number): boolean =>
    flap.role !== 'glueTab' ||
    faces.some(
      (other, at) => at !== parent && other !== flap && other.ring.some((point) => isSame(point, corner)),
    );
  return [...inner].flatMap((face): Paring[] => {
    const flap = faces[face];
    const hinge = hinges.find(({ child, kind }) => child === face && kind === 'score');
    if (flap === undefined || !PARED.has(flap.role) || hinge === undefined) return [];
    const { ring } = flap;
    return ring.flatMap((p, at): Paring[] => {
      const q = ring[(at + 1) % ring.length] ?? p;
      const ends = [
        { near: p, far: q, from: isSame(p, hinge.a) || isSame(p, hinge.b) },
        { near: q, far: p, from: isSame(q, hinge.a) || isSame(q, hinge.b) },
      ].filter(({ from }) => from);
      const [end] = ends;
      if (ends.length !== 1 || end === undefined || !meetsOthers(flap, end.near, hinge.parent)) return [];
      const other = isSame(end.near, hinge.a) ? hinge.b : hinge.a;
      const [along, side] = [minus(other, end.near), minus(end.far, end.near)];
      if (along.x * side.x + along.y * side.y !== 0) return [];
      const share = PARING / Math.hypot(along.x, along.y);
      const move = (point: Point): Point => ({
        x: roundToTick(point.x + along.x * share),
        y: roundToTick(point.y + along.y * share),
      });
      return [{ face, a: move(end.near), b: move(end.far) }];
    });
  });
}

const isSame = (p: Point, q: Point): boolean => p.x === q.x && p.y === q.y;
const minus = (p: Point, q: Point): { readonly x: number; readonly y: number } => ({
  x: p.x - q.x,
  y: p.y - q.y,
});
