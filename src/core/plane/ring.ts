/** A point of a plane, in one unit throughout. */
export type At = readonly [x: number, y: number];

/** The corners of a figure in order; the last one joins the first. Counter-clockwise unless it is a hole. */
export type Ring = readonly At[];

/** A point whose numbers have names, as the net has them in ticks. */
export const atOf = ({ x, y }: { readonly x: number; readonly y: number }): At => [x, y];

/** Twice the area of the triangle a, b, c: positive where c lies left of a→b, 0 where it lies on the line. Exact for whole numbers below 2^25. */
export const sideOf = (a: At, b: At, c: At): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/** A corner counted round the ring: -1 is the last one. */
export const cornerAt = (ring: Ring, at: number): At => ring[(at + ring.length) % ring.length] ?? [0, 0];

/** Area inside a ring; positive when counter-clockwise. Exact for whole numbers, halves included. */
export function areaOf(ring: Ring): number {
  let sum = 0;
  ring.forEach(([x, y], at) => {
    const [u, v] = cornerAt(ring, at + 1);
    sum += x * v - u * y;
  });
  return sum / 2;
}

export const counterClockwise = (ring: Ring): Ring => (areaOf(ring) < 0 ? [...ring].reverse() : ring);

/** Does a counter-clockwise ring turn left at every corner? `slack`: twice the area that a right turn may take off and count as straight. */
export const isConvex = (ring: Ring, slack = 0): boolean =>
  ring.every((here, at) => sideOf(cornerAt(ring, at - 1), here, cornerAt(ring, at + 1)) >= -slack);

/** Is a point inside, by the even-odd rule? On the border, either. */
export function contains(ring: Ring, [x, y]: At): boolean {
  let inside = false;
  ring.forEach(([ax, ay], at) => {
    const [bx, by] = cornerAt(ring, at + 1);
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
  });
  return inside;
}

/** How far a point is from the nearest place of a ring's border. */
export function distanceToBorder([x, y]: At, ring: Ring): number {
  let nearest = Number.POSITIVE_INFINITY;
  for (const [at, [ax, ay]] of ring.entries()) {
    const [bx, by] = cornerAt(ring, at + 1);
    const square = (bx - ax) ** 2 + (by - ay) ** 2;
    const part =
      square === 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / square));
    nearest = Math.min(nearest, Math.hypot(ax + part * (bx - ax) - x, ay + part * (by - ay) - y));
  }
  return nearest;
}

/** How far a point lies outside a ring; 0 inside it. */
export const distanceOutside = (point: At, ring: Ring): number =>
  contains(ring, point) ? 0 : distanceToBorder(point, ring);

/** A rectangle along the axes. */
export interface Box {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

/** The least box round some points. */
export function boxOf(points: readonly At[]): Box {
  let [left, bottom, right, top] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of points) {
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < bottom) bottom = y;
    if (y > top) top = y;
  }
  return { left, bottom, right, top };
}

export const boxRing = ({ left, bottom, right, top }: Box): Ring => [
  [left, bottom],
  [right, bottom],
  [right, top],
  [left, top],
];

/** True where two boxes share more than `slack` both ways. */
export const boxesOverlap = (a: Box, b: Box, slack = 0): boolean =>
  Math.min(a.right, b.right) - Math.max(a.left, b.left) > slack &&
  Math.min(a.top, b.top) - Math.max(a.bottom, b.bottom) > slack;

/** The largest whole number that divides both; 0 where both are 0. */
export const gcd = (a: number, b: number): number => {
  while (b !== 0) [a, b] = [b, a % b];
  return Math.abs(a);
};
