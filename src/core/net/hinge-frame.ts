import { pointAt } from './point';
import type { Point } from './types';

export type Direction = 'left' | 'right' | 'up' | 'down';

/** A hinge frame: `along` the parent's edge as its ring runs, `out` away from it. A full-length hinge keeps the parent's own corners. */
export interface Frame {
  readonly length: number;
  readonly outward: Direction;
  readonly place: (along: number, out: number) => Point;
}

export function frameOn(a: Point, b: Point): Frame {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const length = dx === 0 || dy === 0 ? Math.abs(dx + dy) : Math.hypot(dx, dy);
  const [ux, uy] = length === 0 ? [1, 0] : [dx / length, dy / length];
  const place = (along: number, out: number): Point =>
    pointAt(a.x + along * ux + out * uy, a.y + along * uy - out * ux);
  const outward = Math.abs(dx) >= Math.abs(dy) ? (dx >= 0 ? 'down' : 'up') : dy > 0 ? 'right' : 'left';
  return { length, outward, place };
}

/** The root's frame: as if it hung upwards from the bottom of the net. */
export const rootFrame = (length: number): Frame => frameOn(pointAt(length, 0), pointAt(0, 0));

/** For a panel hung outwards: its sides where the hinge starts and ends (as the parent runs), and the side at the hinge. */
export const AROUND: Readonly<
  Record<Direction, { readonly start: Direction; readonly end: Direction; readonly hinge: Direction }>
> = {
  down: { start: 'left', end: 'right', hinge: 'up' },
  right: { start: 'down', end: 'up', hinge: 'left' },
  up: { start: 'right', end: 'left', hinge: 'down' },
  left: { start: 'up', end: 'down', hinge: 'right' },
};
