import { gcd } from '../plane';
import type { Point } from './types';

/** The straight line through two points, as whole numbers in lowest terms: direction (dx, dy) with dx > 0, or dx = 0 and dy > 0. */
export interface Carrier {
  readonly dx: number;
  readonly dy: number;
  /** dx · y − dy · x for every point on it. */
  readonly offset: number;
}

/** The carrier of a→b, and whether a→b runs its way (+1) or against it (−1). Exact: no rounding, no tolerance. */
export function carrierOf(a: Point, b: Point): { readonly carrier: Carrier; readonly way: 1 | -1 } {
  const [x, y] = [b.x - a.x, b.y - a.y];
  const shared = gcd(x, y) || 1;
  const way = x > 0 || (x === 0 && y > 0) ? 1 : -1;
  const [dx, dy] = [(way * x) / shared, (way * y) / shared];
  return { carrier: { dx, dy, offset: dx * a.y - dy * a.x }, way };
}

export const carrierKey = ({ dx, dy, offset }: Carrier): string => `${dx},${dy},${offset}`;

/** How far along its carrier a point lies; grows the carrier's way, whole numbers. */
export const alongOf = ({ dx, dy }: Carrier, point: Point): number =>
  Math.abs(dx) >= Math.abs(dy) ? point.x : dy > 0 ? point.y : 0 - point.y;
