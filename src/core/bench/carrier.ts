import type { Point } from '../net/types';
import {
  type Place,
  pairPlaces,
  placeOf,
  type Stretch,
  type Stretches,
  shareStretches,
  stretch,
  wholePlace,
} from './exact-intervals';

export interface Segment {
  readonly a: Point;
  readonly b: Point;
}

/**
 * The whole line that a segment lies on, as dx·y − dy·x = side with dx, dy without a common factor and dx > 0, or dx = 0 and dy > 0.
 * Exact in doubles: on cards up to 2 m `side` and places along the line stay below 2^41.
 */
export interface Carrier {
  readonly dx: number;
  readonly dy: number;
  readonly side: number;
  /** The same line has the same key. */
  readonly key: string;
}

const gcd = (a: number, b: number): number => (b === 0 ? Math.abs(a) : gcd(b, a % b));

/** The line through two different points. */
export function carrierOf({ a, b }: Segment): Carrier {
  const across = b.x - a.x;
  const up = b.y - a.y;
  const shared = gcd(across, up) * (across < 0 || (across === 0 && up < 0) ? -1 : 1);
  // `+ 0` turns -0 into 0, so that keys agree.
  const dx = across / shared + 0;
  const dy = up / shared + 0;
  const side = dx * a.y - dy * a.x + 0;
  return { dx, dy, side, key: `${dx},${dy},${side}` };
}

/** Where a point of the line lies along it; rises by dx² + dy² from one lattice point to the next. */
export const placeAlong = ({ dx, dy }: Carrier, { x, y }: Point): number => dx * x + dy * y;

export const stretchOf = (carrier: Carrier, { a, b }: Segment): Stretch =>
  stretch(placeAlong(carrier, a), placeAlong(carrier, b));

/** Signed: positive on the left of the line's direction, 0 on it. */
const sideOf = ({ dx, dy, side }: Carrier, { x, y }: Point): number => dx * y - dy * x - side;

/**
 * The stretches of a line that run through the inside of a figure; its boundary is given as segments in any order.
 * A stretch counts only with card on both of its sides, so what runs along the boundary is left out.
 */
export function insideAlong(carrier: Carrier, boundary: readonly Segment[]): Stretches {
  const justLeft: Place[] = [];
  const justRight: Place[] = [];
  for (const { a, b } of boundary) {
    const sideA = sideOf(carrier, a);
    const sideB = sideOf(carrier, b);
    const crossesLeft = sideA > 0 !== sideB > 0;
    const crossesRight = sideA < 0 !== sideB < 0;
    if (!crossesLeft && !crossesRight) continue;
    const place = crossing(placeAlong(carrier, a), placeAlong(carrier, b), sideA, sideB);
    if (crossesLeft) justLeft.push(place);
    if (crossesRight) justRight.push(place);
  }
  return shareStretches(pairPlaces(justLeft), pairPlaces(justRight));
}

function crossing(placeA: number, placeB: number, sideA: number, sideB: number): Place {
  if (sideA === 0 || placeA === placeB) return wholePlace(placeA);
  if (sideB === 0) return wholePlace(placeB);
  const under = BigInt(sideA - sideB);
  return placeOf(BigInt(placeA) * under + BigInt(placeB - placeA) * BigInt(sideA), under);
}
