import type { DressingPiece, PieceFit } from '../../../shared/dressing';
import { ticksOfMm } from '../../../shared/lengths';
import { caliperTicks } from '../net/name-values';
import type { BoxNet } from '../net/types';
import { markAbove, markBelow, type Ticks, ticks } from '../units';
import { type FlatSize, panelSize } from './panel-size';

/** A card layer that leaves the same reveal on all four sides: base − 2 × reveal. A "1/4 in mat" is 1/8 in of reveal. */
export const layerOn = ({ across, up }: FlatSize, reveal: Ticks): FlatSize => ({
  across: ticks(across - 2 * reveal),
  up: ticks(up - 2 * reveal),
});

/** A band round four walls: girth score to score, four calipers for the corners, and the lap. source: derived; lap common practice. */
export const bandLength = (width: Ticks, depth: Ticks, caliper: Ticks, lap: Ticks): Ticks =>
  ticks(2 * (width + depth) + 4 * caliper + lap);

/**
 * Cut size of a dressing piece at these box sizes. A layer or liner is rounded down to the maker's marks so that it still goes in, a band
 * up so that it still closes. Null: the panel is gone, or nothing is left of the piece.
 */
export function fitPiece(net: BoxNet, piece: DressingPiece, mark: Ticks): FlatSize | null {
  if (!piece.fit) return { across: ticksOfMm(piece.widthMm), up: ticksOfMm(piece.heightMm) };
  const size = sizeByRule(net, piece.fit, mark);
  return size && size.across > 0 && size.up > 0 ? size : null;
}

function sizeByRule(net: BoxNet, fit: PieceFit, mark: Ticks): FlatSize | null {
  const caliper = caliperTicks(net.caliperUm);
  const { width, depth, height } = net.inside;
  switch (fit.rule) {
    case 'on-panel': {
      const panel = panelSize(net, fit.panel);
      return panel && downToMark(layerOn(panel, ticksOfMm(fit.revealMm)), mark);
    }
    case 'around': {
      const [across, through] = [ticks(width + caliper), ticks(depth + caliper)];
      const length = bandLength(across, through, caliper, ticksOfMm(fit.lapMm));
      return { across: markAbove(length, mark), up: ticksOfMm(fit.heightMm) };
    }
    case 'behind':
      return downToMark(
        { across: ticks(width - ticksOfMm(fit.easeMm)), up: ticks(height + ticksOfMm(fit.aboveRimMm)) },
        mark,
      );
  }
}

const downToMark = ({ across, up }: FlatSize, mark: Ticks): FlatSize => ({
  across: markBelow(across, mark),
  up: markBelow(up, mark),
});
