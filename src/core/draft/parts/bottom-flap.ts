import { BOTTOM_SYMBOLS } from '../../styles/shapes/glued-bottom';
import type { PieceDraft } from '../draft';
import { shareOf } from '../forms';
import { withLimit, withRoomSaid, withSymbol } from '../lengths';
import { axisOf, rowOf } from '../sides';
import { type Build, besideOf, extent, on, pieceAt, sized, usualReach } from './spot';

/** Flaps of one length all round; those on the first and third wall have to meet. source: the glued bottom of our own styles */
export const bottomFlap: Build = (draft, spot) => {
  const piece = pieceAt(draft, spot);
  const far = besideOf(piece, spot) ?? usualReach(draft, spot);
  const [made, flap] = withSymbol(draft, 'flap', BOTTOM_SYMBOLS.flap);
  const short = withLimit(made, {
    code: 'flap-meets-wall',
    symbol: flap,
    atMost: far,
    says: 'Bottom flaps {size} long meet the far wall.',
  });
  const high = extent(piece.panels[spot.parent], axisOf(spot.side)) ?? spot.hinge;
  // three layers of flaps lie on one another, and half the card of each score. source: the open-top box of our own styles
  const floored = withRoomSaid(short, `${high} - t`, `${high} - 7/2 t`);
  return [
    isOuter(piece, spot.parent)
      ? withLimit(floored, {
          code: 'bottom-leaves-hole',
          symbol: flap,
          atLeast: `${shareOf(far, [1, 2])} + 1/8 in`,
          says: 'Bottom flaps {size} long do not lap enough to glue.',
        })
      : floored,
    { role: 'bottomFlap', on: on(spot), size: sized(spot.side, spot.hinge, flap), fold: 90 },
  ];
};

/** The first and third wall of a row, counted from the first panel: their flaps close the floor over those of the others. */
export function isOuter(piece: PieceDraft, wall: string): boolean {
  const row = rowOf(piece, wall);
  const first = row.findIndex((name) => piece.panels[name]?.on === undefined);
  return (row.indexOf(wall) - Math.max(0, first)) % 2 === 0;
}
