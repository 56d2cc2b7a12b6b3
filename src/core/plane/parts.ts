import { type At, areaOf, cornerAt, counterClockwise, isConvex, type Ring, sideOf } from './ring';

export type Triangle = readonly [At, At, At];

/**
 * A simple ring as triangles that together fill it, by cutting off ears (two-ears theorem, Meisters 1975; from memory). Corners either way
 * round. A ring that is seen edge-on or crosses itself may have no ear: then any corner is cut, and the triangles' areas do not add up.
 */
export function trianglesOf(ring: Ring): Triangle[] {
  const left = [...counterClockwise(ring)];
  const triangles: Triangle[] = [];
  while (left.length > 3) {
    const ear = Math.max(
      0,
      left.findIndex((_, at) => isEar(left, at)),
    );
    triangles.push([cornerAt(left, ear - 1), cornerAt(left, ear), cornerAt(left, ear + 1)]);
    left.splice(ear, 1);
  }
  if (left.length === 3) triangles.push([cornerAt(left, 0), cornerAt(left, 1), cornerAt(left, 2)]);
  return triangles;
}

function isEar(ring: Ring, at: number): boolean {
  const [a, b, c] = [cornerAt(ring, at - 1), cornerAt(ring, at), cornerAt(ring, at + 1)];
  if (sideOf(a, b, c) <= 0) return false;
  const own = (p: At) => isSame(p, a) || isSame(p, b) || isSame(p, c);
  const within = (p: At) => sideOf(a, b, p) >= 0 && sideOf(b, c, p) >= 0 && sideOf(c, a, p) >= 0;
  return ring.every((p) => own(p) || !within(p));
}

const isSame = (a: At, b: At): boolean => a[0] === b[0] && a[1] === b[1];

/** Twice an area below which a corner counts as straight. source: our choice, far below a tick in square millimeters */
const STRAIGHT = 1e-9;

/** A simple counter-clockwise ring in convex parts: itself, or triangles. */
export const convexParts = (ring: Ring): readonly Ring[] =>
  isConvex(ring, STRAIGHT) ? [ring] : trianglesOf(ring);

/** The same in few parts, for whole numbers: every diagonal left out that is not needed. Throws RangeError where the ring crosses itself. */
export function fewConvexParts(ring: Ring): readonly Ring[] {
  const parts: Ring[] = trianglesOf(ring);
  const areas = parts.map(areaOf);
  if (areas.some((area) => area <= 0) || areas.reduce((a, b) => a + b, 0) !== Math.abs(areaOf(ring)))
    throw new RangeError('an outline that crosses or touches itself has no inside to cut up');
  for (let merged = true; merged; ) {
    merged = false;
    for (let a = 0; a < parts.length && !merged; a++)
      for (let b = a + 1; b < parts.length && !merged; b++) {
        const together = joinConvex(parts[a] ?? [], parts[b] ?? []);
        if (together === null) continue;
        parts[a] = together;
        parts.splice(b, 1);
        merged = true;
      }
  }
  return parts;
}

/** Two convex rings with an edge in common as one, or null where that would not be convex. */
function joinConvex(first: Ring, second: Ring): Ring | null {
  for (const [i, a] of first.entries()) {
    const b = cornerAt(first, i + 1);
    const j = second.findIndex((corner, at) => isSame(corner, b) && isSame(cornerAt(second, at + 1), a));
    if (j < 0) continue;
    const round = [
      ...first.map((_, at) => cornerAt(first, i + 1 + at)),
      ...second.slice(1, -1).map((_, at) => cornerAt(second, j + 2 + at)),
    ];
    return isConvex(round) ? round : null;
  }
  return null;
}

/** The convex ring round points, counter-clockwise, without corners on its edges. Source: Andrew's monotone chain, 1979 (from memory). */
export function hullOf(points: readonly At[]): Ring {
  const sorted = [...points].sort((p, q) => p[0] - q[0] || p[1] - q[1]);
  const half = (run: readonly At[]): At[] => {
    const chain: At[] = [];
    for (const point of run) {
      while (chain.length > 1 && sideOf(cornerAt(chain, -2), cornerAt(chain, -1), point) <= 0) chain.pop();
      chain.push(point);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
}
