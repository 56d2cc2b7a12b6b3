import { type ClosedPiece, flatRing, roomInside } from '../fold';
import { CHORD_TOLERANCE_MM } from '../net/arc';
import { areaOf } from '../plane';
import { toMm } from '../units/ticks';
import { asTicks, type Finding, panelWords } from './finding';

/** The room inside the closed shell, by the divergence theorem, against the style's own formula. Both thin card, score to score. A loose floor or liner bounds no room. */
export function checkRoom({ piece, faces, toleranceMm }: ClosedPiece): Finding[] {
  if (piece.shell.length === 0) return [];
  const gap = Math.max(
    0,
    ...piece.seams.map((seam) => toMm(seam.gap)),
    ...piece.joints.map((joint) => toMm(joint.gap)),
  );
  const room = roomInside(faces, piece.shell, toleranceMm + gap);
  const walls = piece.shell.reduce((sum, face) => sum + areaOf(flatRing(piece, face)), 0);
  const bent = new Set(piece.shell.map((face) => piece.faces[face]?.panel)).size < piece.shell.length;
  const chords = bent ? CHORD_TOLERANCE_MM : 0;
  const off = Math.abs(room - piece.roomMm3) / walls;
  if (off <= toleranceMm + gap + chords) return [];
  return [
    {
      code: 'room-differs',
      severity: 'stop',
      where: piece.id,
      facts: { piece: panelWords(piece.label.toLowerCase()), off: asTicks(off) },
      says: 'The closed {piece} is not the size you asked for: its walls are off by {off} on average.',
      remedy: 'The panels don’t close as drawn. Check their sizes.',
    },
  ];
}
