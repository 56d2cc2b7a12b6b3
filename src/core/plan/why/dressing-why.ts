import {
  bowLength,
  crossWrap,
  type FlatSize,
  girthOf,
  outsideSize,
  panelSize,
  revealsOf,
  ringWrap,
  windowSize,
} from '../../dress';
import { caliperTicks } from '../../net/name-values';
import type { BoxNet } from '../../net/types';
import type { DressingPiece, Tie } from '../../rows';
import { ticksOfMm } from '../../rows/lengths';
import { type Ticks, ticks } from '../../units';
import { type Reason, reason } from '../../units/reason';

const length = (of: Ticks) => ({ length: of });

/** Where the cut size of a dressing piece comes from, as arithmetic; rounding to the maker's marks is the last step. */
export function whyPiece(net: BoxNet, { fit }: DressingPiece, size: FlatSize): readonly Reason[] {
  const made = { across: length(size.across), up: length(size.up) };
  switch (fit?.rule) {
    case undefined:
      return [reason('Your size: {across} × {up}.', made)];
    case 'on-panel': {
      const panel = panelSize(net, fit.panel, fit.part);
      if (!panel) return [];
      const { left, right, up, down } = revealsOf(fit);
      return [
        reason('Across: {panel} − {left} − {right} = {exact}, cut {across}.', {
          ...made,
          panel: length(panel.across),
          left: length(left),
          right: length(right),
          exact: length(ticks(panel.across - left - right)),
        }),
        reason('Up: {panel} − {above} − {below} = {exact}, cut {up}.', {
          ...made,
          panel: length(panel.up),
          above: length(up),
          below: length(down),
          exact: length(ticks(panel.up - up - down)),
        }),
      ];
    }
    case 'around': {
      const [one, other] = girthOf(net, fit.way);
      const caliper = caliperTicks(net.caliperUm);
      const lap = ticksOfMm(fit.lapMm);
      return [
        reason(
          'Around it: 2 × ({one} + {other}) + 4 × {caliper} thickness + {lap} overlap = {exact}, cut {across}.',
          {
            ...made,
            one: length(one),
            other: length(other),
            caliper: { text: `${net.caliperUm / 1000} mm` },
            lap: length(lap),
            exact: length(ticks(2 * (one + other) + 4 * caliper + lap)),
          },
        ),
        reason('{up} high, your size.', made),
      ];
    }
    case 'behind': {
      const { width, height } = net.inside;
      return [
        reason('Across: {room} inside − {ease} to slide in, cut {across}.', {
          ...made,
          room: length(width),
          ease: length(ticksOfMm(fit.easeMm)),
        }),
        reason('Up: {room} inside + {above} above the rim, cut {up}.', {
          ...made,
          room: length(height),
          above: length(ticksOfMm(fit.aboveRimMm)),
        }),
      ];
    }
    case 'over-window': {
      const opening = windowSize(net, fit.panel, fit.part);
      if (!opening) return [];
      const lap = length(ticksOfMm(fit.lapMm));
      return [
        reason('Across: {opening} of opening + 2 × {lap}, cut {across}.', {
          ...made,
          lap,
          opening: length(opening.across),
        }),
        reason('Up: {opening} of opening + 2 × {lap}, cut {up}.', {
          ...made,
          lap,
          opening: length(opening.up),
        }),
      ];
    }
  }
}

/** Where the length of a ribbon or twine comes from; `cut` is what is cut off the roll. */
export function whyTie(net: BoxNet, { wrap, bow }: Pick<Tie, 'wrap' | 'bow'>, cut: Ticks): readonly Reason[] {
  const outside = outsideSize(net);
  const sides = {
    width: length(outside.width),
    depth: length(outside.depth),
    height: length(outside.height),
  };
  return [
    ...(wrap === 'cross'
      ? [
          reason('Both ways around: 2 × {width} + 2 × {depth} + 4 × {height} = {round}.', {
            ...sides,
            round: length(crossWrap(outside)),
          }),
        ]
      : []),
    ...(wrap === 'ring'
      ? [
          reason('Around the walls: 2 × ({width} + {depth}) = {round}.', {
            ...sides,
            round: length(ringWrap(outside)),
          }),
        ]
      : []),
    ...(bow
      ? [
          reason('Bow: {loops} loops × 2 × {loop} + 2 tails × {tail} + {knot} for the knot = {bow}.', {
            loops: bow.loops,
            loop: length(ticksOfMm(bow.loopMm)),
            tail: length(ticksOfMm(bow.tailMm)),
            knot: length(ticksOfMm(bow.knotMm)),
            bow: length(bowLength(bow)),
          }),
        ]
      : []),
    reason('Cut {cut}, in one piece.', { cut: length(cut) }),
  ];
}
