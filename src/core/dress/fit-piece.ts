import { caliperTicks } from '../net/name-values';
import type { BoxNet } from '../net/types';
import type { DressingPiece, PieceFit } from '../rows/dressing';
import { ticksOfMm } from '../rows/lengths';
import { markAbove, markBelow, type Ticks, ticks } from '../units';
import { dividerSize, floorSize } from './inserts';
import { outsideSize } from './outside-size';
import { type FlatSize, panelSize, windowSize } from './panel-size';

/** A card layer that leaves the same reveal on all four sides: base − 2 × reveal. A "1/4 in mat" is 1/8 in of reveal. */
export const layerOn = ({ across, up }: FlatSize, reveal: Ticks): FlatSize => ({
  across: ticks(across - 2 * reveal),
  up: ticks(up - 2 * reveal),
});

/** A band round a box: girth score to score, four calipers for the corners, and the lap. source: derived; lap common practice. */
export const bandLength = (girth: Ticks, caliper: Ticks, lap: Ticks): Ticks =>
  ticks(girth + 4 * caliper + lap);

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
  switch (fit.rule) {
    case 'on-panel': {
      const panel = panelSize(net, fit.panel, fit.part);
      const { left, right, up, down } = revealsOf(fit);
      return (
        panel &&
        downToMark({ across: ticks(panel.across - left - right), up: ticks(panel.up - up - down) }, mark)
      );
    }
    case 'around': {
      const caliper = caliperTicks(net.caliperUm);
      const length = bandLength(girthOf(net, fit.way), caliper, ticksOfMm(fit.lapMm));
      return { across: markAbove(length, mark), up: ticksOfMm(fit.heightMm) };
    }
    case 'behind':
      return downToMark(
        {
          across: ticks(net.inside.width - ticksOfMm(fit.easeMm)),
          up: ticks(net.inside.height + ticksOfMm(fit.aboveRimMm)),
        },
        mark,
      );
    case 'over-window': {
      const opening = windowSize(net, fit.panel, fit.part);
      const laps = 2 * ticksOfMm(fit.lapMm);
      return (
        opening && {
          across: markAbove(ticks(opening.across + laps), mark),
          up: markAbove(ticks(opening.up + laps), mark),
        }
      );
    }
    case 'divides':
      return dividerSize(net, fit, mark);
    case 'on-floor':
      return floorSize(net, fit, mark);
  }
}

/** The way once round the closed box, score to score: the corners take four calipers more. */
export const girthOf = (net: BoxNet, way: Extract<PieceFit, { rule: 'around' }>['way'] = 'walls'): Ticks =>
  ticks(outsideSize(net).round[way] - 4 * caliperTicks(net.caliperUm));

/** How much of the panel shows on every side of a layer; one for all unless each has its own. */
export function revealsOf(fit: Extract<PieceFit, { rule: 'on-panel' }>): {
  readonly left: Ticks;
  readonly right: Ticks;
  readonly up: Ticks;
  readonly down: Ticks;
} {
  const all = fit.revealMm;
  const { left, right, up, down } = fit.sidesMm ?? { left: all, right: all, up: all, down: all };
  return { left: ticksOfMm(left), right: ticksOfMm(right), up: ticksOfMm(up), down: ticksOfMm(down) };
}

const downToMark = ({ across, up }: FlatSize, mark: Ticks): FlatSize => ({
  across: markBelow(across, mark),
  up: markBelow(up, mark),
});
