import type { BoxNet, Face } from '../net/types';
import { roundToTick } from '../units/ticks';
import { type Finding, panelWords } from './finding';

/** Pieces that are glued to one another: each of their panels is cut in the shape it has in the whole they make. Exact, in whole ticks. */
export function checkParts({ pieces, whole }: BoxNet): Finding[] {
  if (whole === undefined) return [];
  const known = new Map(whole.faces.map((face) => [face.name, face]));
  return pieces.flatMap((piece) =>
    piece.faces.flatMap((face): Finding[] => {
      const other = known.get(face.name);
      const off = other === undefined ? Number.POSITIVE_INFINITY : farthestCorner(face, other);
      if (off === 0) return [];
      return [
        {
          code: 'part-differs',
          severity: 'stop',
          where: face.panel,
          facts: { panel: panelWords(face.panel), off: roundToTick(Number.isFinite(off) ? off : 0) },
          says: 'The {panel} is off by {off}.',
          remedy: 'The pieces don’t make the box as drawn. Check their sizes.',
        },
      ];
    }),
  );
}

/** How far apart the corners of two rings lie once their lowest left corners are laid on one another, ticks; endless if they have not as many. */
function farthestCorner({ ring: one }: Face, { ring: other }: Face): number {
  if (one.length !== other.length) return Number.POSITIVE_INFINITY;
  const [p, q] = [one, other].map((ring) => {
    const [left, low] = [Math.min(...ring.map(({ x }) => x)), Math.min(...ring.map(({ y }) => y))];
    return ring.map(({ x, y }) => ({ x: x - left, y: y - low })).sort((a, b) => a.x - b.x || a.y - b.y);
  });
  return Math.max(
    ...(p ?? []).map(({ x, y }, at) => Math.hypot(x - (q?.[at]?.x ?? 0), y - (q?.[at]?.y ?? 0))),
    0,
  );
}
