import { anglesDuring, closingStates, foldPiece } from '../fold';
import type { BoxNet, PieceNet } from '../net/types';
import { toMm } from '../units/ticks';
import { collisions, platesOf } from './check-collisions';
import { asTicks, closingTolerance, panelWords, wordsOf } from './closed-piece';
import type { Finding } from './finding';
import { layersOf } from './layers';

/** Frames looked at in each act of closing. source: our choice, 15 degrees of a quarter turn apart */
const FRAMES_AN_ACT = 6;

/**
 * Panels that run into each other on the way, act by act in the declared order. Slower than the other checks, so called by itself. Acts in
 * which the card bends freely are not followed: rigid panels cannot say where they pass.
 */
export const checkClosingPath = (box: BoxNet): Finding[] =>
  box.pieces.flatMap((piece) => followPiece(piece, box.caliperUm / 1000));

function followPiece(piece: PieceNet, caliperMm: number): Finding[] {
  const slack = Math.max(closingTolerance(piece), toMm(32));
  const layers = layersOf(piece);
  const states = closingStates(piece);
  const hingeOf = new Map(piece.hinges.map(({ child }, hinge) => [child, hinge]));
  const findings: Finding[] = [];
  let bent = false;
  piece.closing.forEach((act, at) => {
    if (act.do === 'glue') return;
    bent ||= act.bends;
    if (bent) return;
    const seen = new Set<string>();
    for (let frame = 1; frame <= FRAMES_AN_ACT; frame++) {
      const angles = anglesDuring(states, at, frame / FRAMES_AN_ACT);
      const liftOf = (face: number) => {
        const hinge = hingeOf.get(face) ?? -1;
        const rest = piece.hinges[hinge]?.restDeg ?? 0;
        const part = rest === 0 ? 1 : Math.max(0, Math.min(1, (angles[hinge] ?? 0) / rest));
        return (layers[face] ?? 0) * caliperMm * part;
      };
      for (const hit of collisions(piece, platesOf(piece, foldPiece(piece, angles), liftOf), slack, false)) {
        const names = `${wordsOf(piece, hit.one)} and the ${wordsOf(piece, hit.other)}`;
        if (seen.has(names)) continue;
        seen.add(names);
        findings.push({
          code: 'panels-collide-closing',
          severity: 'stop',
          where: piece.faces[hit.other]?.panel ?? '',
          facts: { deep: asTicks(hit.depth) },
          says: `While the ${act.panels.map(panelWords).join(', ')} fold, the ${names} run into each other by {deep}.`,
          remedy: 'Make one of them shorter, or close the box in another order.',
        });
      }
    }
  });
  return findings;
}
