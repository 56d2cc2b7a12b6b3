import { flatRing } from '../fold';
import type { PieceNet } from '../net/types';
import { boxesOverlap, boxOf, convexParts, counterClockwise, deepestOverlap } from '../plane';
import { asTicks, type Finding, wordsOf } from './finding';

/** Rounded points of slanted lines may stand a tick or two over one another. source: our choice, a hundredth of a millimeter */
const ROUNDING_MM = 0.01;

/** Panels that would have to be cut from the same card: in the flat they may touch, never overlap. */
export function checkFlatOverlap(piece: PieceNet): Finding[] {
  const rings = piece.faces.map((_, face) => convexParts(counterClockwise(flatRing(piece, face))));
  const boxes = piece.faces.map((_, face) => boxOf(flatRing(piece, face)));
  const findings: Finding[] = [];
  for (let p = 0; p < rings.length; p++)
    for (let q = p + 1; q < rings.length; q++) {
      const [one, other] = [boxes[p], boxes[q]];
      if (one === undefined || other === undefined || !boxesOverlap(one, other)) continue;
      const deep = deepestOverlap(rings[p] ?? [], rings[q] ?? []);
      if (deep <= ROUNDING_MM) continue;
      findings.push({
        code: 'panels-overlap-flat',
        severity: 'stop',
        where: piece.faces[q]?.panel ?? '',
        facts: { one: wordsOf(piece, p), other: wordsOf(piece, q), deep: asTicks(deep) },
        says: 'The {one} and the {other} overlap by {deep} on the flat net.',
        remedy: 'Make one of them smaller. One piece can’t have both.',
      });
    }
  return findings;
}
