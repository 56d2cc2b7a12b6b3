import { type Corner, crossOf, type Ring, tidyRing } from './outline';

/** A simple ring cut into convex pieces along its own diagonals, exactly: triangles, then every diagonal left out that is not needed. */
export function convexPieces(ring: Ring): readonly Ring[] {
  const pieces: Ring[] = trianglesOf(tidyRing(ring));
  for (let merged = true; merged; ) {
    merged = false;
    for (let a = 0; a < pieces.length && !merged; a++)
      for (let b = a + 1; b < pieces.length && !merged; b++) {
        const together = joinConvex(pieces[a]!, pieces[b]!);
        if (together === null) continue;
        pieces[a] = together;
        pieces.splice(b, 1);
        merged = true;
      }
  }
  return pieces;
}

/** Ears cut off one by one. Source: the two-ears theorem, Meisters 1975 (from memory). */
function trianglesOf(ring: Ring): Ring[] {
  const left = [...ring];
  const triangles: Ring[] = [];
  while (left.length > 3) {
    const ear = left.findIndex((here, at) => {
      const before = left[(at + left.length - 1) % left.length]!;
      const after = left[(at + 1) % left.length]!;
      return crossOf(before, here, after) > 0 && !left.some((corner) => isIn(corner, before, here, after));
    });
    if (ear < 0) throw new RangeError('an outline that crosses or touches itself has no inside to cut up');
    const before = left[(ear + left.length - 1) % left.length]!;
    triangles.push([before, left[ear]!, left[(ear + 1) % left.length]!]);
    left.splice(ear, 1);
    dropStraight(left);
  }
  return left.length === 3 ? [...triangles, left] : triangles;
}

/** Corners that have come to lie on a straight edge are no corners any more. */
function dropStraight(ring: Corner[]): void {
  for (let at = ring.length - 1; at >= 0 && ring.length > 3; at--) {
    const before = ring[(at + ring.length - 1) % ring.length]!;
    const after = ring[(at + 1) % ring.length]!;
    if (crossOf(before, ring[at]!, after) === 0) ring.splice(at, 1);
  }
}

const same = (a: Corner, b: Corner): boolean => a.x === b.x && a.y === b.y;

/** In the triangle or on its edge, its own corners apart. */
function isIn(corner: Corner, a: Corner, b: Corner, c: Corner): boolean {
  if (same(corner, a) || same(corner, b) || same(corner, c)) return false;
  return crossOf(a, b, corner) >= 0 && crossOf(b, c, corner) >= 0 && crossOf(c, a, corner) >= 0;
}

/** Two convex rings with an edge in common as one, or null where that would not be convex. */
function joinConvex(first: Ring, second: Ring): Ring | null {
  for (const [i, a] of first.entries()) {
    const b = first[(i + 1) % first.length]!;
    const j = second.findIndex((corner, at) => same(corner, b) && same(second[(at + 1) % second.length]!, a));
    if (j < 0) continue;
    const round = [
      ...first.map((_, at) => first[(i + 1 + at) % first.length]!),
      ...second.slice(1, -1).map((_, at) => second[(j + 2 + at) % second.length]!),
    ];
    return isConvex(round) ? round : null;
  }
  return null;
}

const isConvex = (ring: Ring): boolean =>
  ring.every((corner, at) => crossOf(corner, ring[(at + 1) % ring.length]!, ring[(at + 2) % ring.length]!) >= 0); // biome-ignore format: one line
