import { type At, areaOf, cornerAt, type Ring, sideOf } from './ring';

/** The part of a ring on the left of a→b. Source: Sutherland and Hodgman, Communications of the ACM 17, 1974 (from memory). */
function keepLeft(ring: Ring, a: At, b: At): At[] {
  const kept: At[] = [];
  for (const [at, p] of ring.entries()) {
    const q = cornerAt(ring, at + 1);
    const [here, next] = [sideOf(a, b, p), sideOf(a, b, q)];
    if (here >= 0) kept.push(p);
    if ((here > 0 && next < 0) || (here < 0 && next > 0)) {
      const part = here / (here - next);
      kept.push([p[0] + part * (q[0] - p[0]), p[1] + part * (q[1] - p[1])]);
    }
  }
  return kept;
}

/** What a ring shares with a convex counter-clockwise one; where it comes apart, the parts hang together along the window's border. */
export const clipTo = (ring: Ring, window: Ring): Ring =>
  window.reduce<Ring>((kept, a, at) => keepLeft(kept, a, cornerAt(window, at + 1)), ring);

/** What is left of convex `ring` outside convex counter-clockwise `cover`, in convex parts. */
export function outsideParts(ring: Ring, cover: Ring): Ring[] {
  const parts: Ring[] = [];
  let rest = ring;
  for (const [at, a] of cover.entries()) {
    const b = cornerAt(cover, at + 1);
    const outside = keepLeft(rest, b, a);
    if (Math.abs(areaOf(outside)) > 1e-9) parts.push(outside);
    rest = keepLeft(rest, a, b);
    if (rest.length === 0) break;
  }
  return parts;
}

/** How deep two convex counter-clockwise rings lie in one another; 0 or less when a line parts them. */
export const overlapDepth = (p: Ring, q: Ring): number => Math.min(deepestSide(p, q), deepestSide(q, p));

function deepestSide(p: Ring, q: Ring): number {
  let depth = Number.POSITIVE_INFINITY;
  for (const [at, a] of p.entries()) {
    const b = cornerAt(p, at + 1);
    const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (long === 0) continue;
    let inside = Number.NEGATIVE_INFINITY;
    for (const point of q) inside = Math.max(inside, sideOf(a, b, point) / long);
    depth = Math.min(depth, inside);
    if (depth <= 0) return depth;
  }
  return depth;
}

/** How deep the convex parts of two figures lie in one another at most; 0 or less where they share nothing. */
export function deepestOverlap(parts: readonly Ring[], others: readonly Ring[]): number {
  let deepest = Number.NEGATIVE_INFINITY;
  // One by one: a curve of thousands of chords has more pairs than a call takes arguments.
  for (const part of parts)
    for (const other of others) deepest = Math.max(deepest, overlapDepth(part, other));
  return deepest;
}
