/** A point of a plane, in one unit throughout. */
export type At = readonly [x: number, y: number];

/** Area inside a ring; positive when counter-clockwise. */
export function areaOf(ring: readonly At[]): number {
  let sum = 0;
  ring.forEach(([x, y], at) => {
    const [u, v] = ring[(at + 1) % ring.length] ?? [x, y];
    sum += x * v - u * y;
  });
  return sum / 2;
}

export const counterClockwise = (ring: readonly At[]): readonly At[] =>
  areaOf(ring) < 0 ? [...ring].reverse() : ring;

/** How deep two convex counter-clockwise rings lie in one another; 0 or less when a line parts them. */
export const overlapDepth = (p: readonly At[], q: readonly At[]): number =>
  Math.min(deepestSide(p, q), deepestSide(q, p));

function deepestSide(p: readonly At[], q: readonly At[]): number {
  let depth = Number.POSITIVE_INFINITY;
  for (let at = 0; at < p.length; at++) {
    const [[ax, ay], [bx, by]] = [p[at] ?? [0, 0], p[(at + 1) % p.length] ?? [0, 0]];
    const long = Math.hypot(bx - ax, by - ay);
    if (long === 0) continue;
    let inside = Number.NEGATIVE_INFINITY;
    for (const [x, y] of q) inside = Math.max(inside, ((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / long);
    depth = Math.min(depth, inside);
    if (depth <= 0) return depth;
  }
  return depth;
}

/** How far a point lies outside a ring; 0 inside it. */
export function distanceOutside([x, y]: At, ring: readonly At[]): number {
  let inside = false;
  let nearest = Number.POSITIVE_INFINITY;
  for (const [at, [ax, ay]] of ring.entries()) {
    const [bx, by] = ring[(at + 1) % ring.length] ?? [ax, ay];
    if (ay > y !== by > y && x < ax + ((bx - ax) * (y - ay)) / (by - ay)) inside = !inside;
    const square = (bx - ax) ** 2 + (by - ay) ** 2;
    const part =
      square === 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / square));
    nearest = Math.min(nearest, Math.hypot(ax + part * (bx - ax) - x, ay + part * (by - ay) - y));
  }
  return inside ? 0 : nearest;
}

/** What is left of convex `ring` outside convex counter-clockwise `cover`, in convex parts. */
export function outsideParts(ring: readonly At[], cover: readonly At[]): At[][] {
  const parts: At[][] = [];
  let rest: readonly At[] = ring;
  for (let at = 0; at < cover.length; at++) {
    const a: At = cover[at] ?? [0, 0];
    const b: At = cover[(at + 1) % cover.length] ?? a;
    const outside = keepLeft(rest, b, a);
    if (Math.abs(areaOf(outside)) > 1e-9) parts.push(outside);
    rest = keepLeft(rest, a, b);
    if (rest.length === 0) break;
  }
  return parts;
}

/** The part of a convex ring on the left of a→b. */
export function keepLeft(ring: readonly At[], [ax, ay]: At, [bx, by]: At): At[] {
  const side = ([x, y]: At) => (bx - ax) * (y - ay) - (by - ay) * (x - ax);
  const kept: At[] = [];
  for (const [at, p] of ring.entries()) {
    const q = ring[at + 1] ?? ring[0] ?? p;
    const [here, next] = [side(p), side(q)];
    if (here >= 0) kept.push(p);
    if ((here > 0 && next < 0) || (here < 0 && next > 0)) {
      const part = here / (here - next);
      kept.push([p[0] + part * (q[0] - p[0]), p[1] + part * (q[1] - p[1])]);
    }
  }
  return kept;
}

/** A simple counter-clockwise ring in convex parts: itself, or triangles by clipping ears. */
export function convexParts(ring: readonly At[]): readonly (readonly At[])[] {
  const turn = (p: At, q: At, r: At) => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
  const corner = (points: readonly At[], at: number): At =>
    points[(at + points.length) % points.length] ?? [0, 0];
  if (ring.every((p, at) => turn(corner(ring, at - 1), p, corner(ring, at + 1)) >= -1e-9)) return [ring];
  const left = [...ring];
  const parts: At[][] = [];
  while (left.length > 3) {
    const ear = left.findIndex((p, at) => {
      const [before, after] = [corner(left, at - 1), corner(left, at + 1)];
      if (turn(before, p, after) <= 0) return false;
      return left.every(
        (r) =>
          r === before ||
          r === p ||
          r === after ||
          turn(before, p, r) < 0 ||
          turn(p, after, r) < 0 ||
          turn(after, before, r) < 0,
      );
    });
    if (ear < 0) break;
    parts.push([corner(left, ear - 1), corner(left, ear), corner(left, ear + 1)]);
    left.splice(ear, 1);
  }
  return [...parts, left];
}
