import type { FoldedFace } from '../fold';
import { placeOf } from '../fold';
import type { PieceNet } from '../net/types';
import { asTicks, type ClosedPiece, flatRing, wordsOf } from './closed-piece';
import { crossingDepth, near, type Plate, plateOf } from './crossing';
import type { Finding } from './finding';
import { hingedPairs, lappedPairs, layersOf, pairKey } from './layers';
import { convexParts, counterClockwise } from './planar';

/**
 * Panels that run into each other when the box is closed. Thin card, with the layers of each overlap lifted off one another by the caliper:
 * without that a flap that is too long slides in the plane of the floor under the far wall and only touches it.
 */
export function checkCollisions({ piece, faces, toleranceMm }: ClosedPiece, caliperMm: number): Finding[] {
  const layers = layersOf(piece);
  const plates = platesOf(piece, faces, (face) => (layers[face] ?? 0) * caliperMm);
  return collisions(piece, plates, toleranceMm, true).map(({ one, other, depth, level }) => ({
    code: level ? 'panels-overlap-closed' : 'panels-collide',
    severity: 'stop',
    where: piece.faces[other]?.panel ?? '',
    facts: { one: wordsOf(piece, one), other: wordsOf(piece, other), deep: asTicks(depth) },
    says: level
      ? 'The {one} and the {other} take the same place, {deep} deep, when the box is closed.'
      : 'The {one} and the {other} run into each other by {deep} when the box is closed.',
    remedy: 'Make one of them shorter.',
  }));
}

/** Each face as plates in space (one if convex), lifted towards its inside by `liftOf(face)` mm. */
export function platesOf(
  piece: PieceNet,
  faces: readonly FoldedFace[],
  liftOf: (face: number) => number,
): Plate[][] {
  return faces.map(({ pose, ring }, face) => {
    const flat = counterClockwise(flatRing(piece, face));
    const parts = convexParts(flat);
    const [only] = parts;
    if (parts.length === 1 && only === flat) return [plateOf(ring, pose, liftOf(face))];
    return parts.map((part) =>
      plateOf(
        part.map(([x, y]) => placeOf(pose, x, y)),
        pose,
        liftOf(face),
      ),
    );
  });
}

export interface Collision {
  readonly one: number;
  readonly other: number;
  readonly depth: number;
  readonly level: boolean;
}

/** All pairs of faces that run into each other by more than `slack` mm; overlaps within one plane only if `withLevel`; with `among`, only pairs with one of these. */
export function collisions(
  piece: PieceNet,
  plates: readonly (readonly Plate[])[],
  slack: number,
  withLevel: boolean,
  among?: ReadonlySet<number>,
): Collision[] {
  const [hinged, lapped] = [hingedPairs(piece), lappedPairs(piece)];
  const found: Collision[] = [];
  for (let one = 0; one < plates.length; one++)
    for (let other = one + 1; other < plates.length; other++) {
      if (among !== undefined && among.has(one) === among.has(other) && !among.has(one)) continue;
      for (const p of plates[one] ?? [])
        for (const q of plates[other] ?? []) {
          if (!near(p, q, slack)) continue;
          const pair = pairKey(piece, one, other);
          if (hinged.has(pair)) continue;
          const { depth, level } = crossingDepth(p, q, slack);
          if (depth > slack && (!level || (withLevel && !lapped.has(pair))))
            found.push({ one, other, depth, level });
        }
    }
  return found;
}
