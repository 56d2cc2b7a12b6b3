import { type ClosedPiece, collisions, liftsInward, platesOf } from '../fold';
import { asTicks, type Finding, wordsOf } from './finding';

/**
 * Panels that run into each other when the box is closed. Thin card, with the layers of each overlap lifted off one another by the caliper:
 * without that a flap that is too long slides in the plane of the floor under the far wall and only touches it.
 */
export function checkCollisions({ piece, faces, toleranceMm }: ClosedPiece, caliperMm: number): Finding[] {
  const layers = liftsInward(piece);
  const plates = platesOf(piece, faces, (face) => (layers[face] ?? 0) * caliperMm);
  return collisions(piece, plates, toleranceMm, true).map(({ one, other, depth, level }) => ({
    code: level ? 'panels-overlap-closed' : 'panels-collide',
    severity: 'stop',
    where: piece.faces[other]?.panel ?? '',
    facts: { one: wordsOf(piece, one), other: wordsOf(piece, other), deep: asTicks(depth) },
    says: level
      ? 'The {one} and the {other} overlap by {deep} when the box is closed.'
      : 'The {one} and the {other} hit each other by {deep} when the box is closed.',
    remedy: 'Make one of them shorter.',
  }));
}
