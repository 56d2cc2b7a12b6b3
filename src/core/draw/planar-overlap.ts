import type { At } from './strokes/types';

/** Where two flat figures cover one another: the largest piece of it, as its middle and its area. */
export interface Overlap {
  readonly middle: At;
  readonly area: number;
}

export type Triangle = readonly [At, At, At];

/** The largest region that a triangle of one figure shares with a triangle of the other; null where they share none. */
export function largestOverlap(a: readonly Triangle[], b: readonly Triangle[]): Overlap | null {
  let best: Overlap | null = null;
  for (const p of a)
    for (const q of b) {
      const shared = measure(clipConvex(p, q));
      if (shared.area > (best?.area ?? 0)) best = shared;
    }
  return best;
}

/** A ring as triangles that together fill it, by cutting off ears (Meisters 1975; from memory). Corners either way round. */
export function triangulate(ring: readonly At[]): Triangle[] {
  const left = areaOf(ring) >= 0 ? [...ring] : [...ring].reverse();
  const triangles: Triangle[] = [];
  while (left.length > 3) {
    const ear = left.findIndex((_, i) => isEar(left, i));
    // A ring seen edge-on has no ear; cutting any corner then loses nothing.
    const at = Math.max(ear, 0);
    triangles.push(cornerAt(left, at));
    left.splice(at, 1);
  }
  if (left.length === 3) triangles.push([left[0]!, left[1]!, left[2]!]);
  return triangles;
}

const cornerAt = (ring: readonly At[], i: number): Triangle => [
  ring[(i + ring.length - 1) % ring.length]!,
  ring[i]!,
  ring[(i + 1) % ring.length]!,
];

function isEar(ring: readonly At[], i: number): boolean {
  const corner = cornerAt(ring, i);
  if (turnOf(...corner) <= 0) return false;
  return ring.every((point) => corner.includes(point) || !isInside(point, corner));
}

const turnOf = (a: At, b: At, c: At) => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

const isInside = (p: At, [a, b, c]: Triangle) =>
  turnOf(a, b, p) >= 0 && turnOf(b, c, p) >= 0 && turnOf(c, a, p) >= 0;

export const areaOf = (ring: readonly At[]): number =>
  ring.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = ring[(i + 1) % ring.length]!;
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);

/** Sutherland and Hodgman's clipping of one convex figure by another (Communications of the ACM 17, 1974; from memory). */
function clipConvex(figure: Triangle, [a, b, c]: Triangle): At[] {
  const sides = turnOf(a, b, c) >= 0 ? ([[a, b], [b, c], [c, a]] as const) : ([[b, a], [c, b], [a, c]] as const); // biome-ignore format: two triples
  return sides.reduce<At[]>(
    (ring, [from, to]) =>
      ring.flatMap((here, i): At[] => {
        const before = ring.at(i - 1)!;
        const [roomBefore, room] = [turnOf(from, to, before), turnOf(from, to, here)];
        const share = roomBefore / (roomBefore - room);
        const crossing: At = [
          before[0] + share * (here[0] - before[0]),
          before[1] + share * (here[1] - before[1]),
        ];
        return [...(roomBefore >= 0 !== room >= 0 ? [crossing] : []), ...(room >= 0 ? [here] : [])];
      }),
    [...figure],
  );
}

function measure(ring: readonly At[]): Overlap {
  const area = Math.abs(areaOf(ring));
  const middle = (axis: 0 | 1) => ring.reduce((sum, point) => sum + point[axis], 0) / (ring.length || 1);
  return { area, middle: [middle(0), middle(1)] };
}
