import type { AddOnPlace } from '../language/types';
import { allowanceOf } from '../shapes/size-symbols';
import {
  cutHole,
  type Extension,
  given,
  inMm,
  LEFT_ROUND_MM,
  leastAt,
  type PlainPieces,
  placesOption,
} from './extension';

/** A slot with round ends in the middle of a panel, or of two that come to lie on each other. 2 1/2 × 3/4 in for a hand: common practice, no source. */
export function handleSlotIn(places: readonly AddOnPlace[], plain: PlainPieces): Extension {
  const when = { given: given('slot', places) };
  return {
    options: {
      slot: placesOption('Handle slot', 'A slot with round ends, for carrying.', 'No slot', places),
    },
    symbols: {
      slotLength: {
        ...allowanceOf('Slot length', 'End to end. 2 1/2 in fits a hand.', '2 in', '3/4 in', '4 in'),
        ...when,
      },
      slotHeight: {
        ...allowanceOf('Slot height', 'Between its straight sides.', '5/8 in', '3/8 in', '1 1/4 in'),
        ...when,
      },
    },
    quantities: {
      slotLongest: {
        means: 'longest slot that leaves a quarter inch of card at each end, clear of tabs glued behind',
        of: leastAt(
          'slot',
          places,
          plain,
          ({ size }, values, { glued }) => inMm(size[0], values) - 2 * Math.max(LEFT_ROUND_MM, glued),
        ),
      },
      slotHighest: {
        means: 'highest slot that leaves a quarter inch of card above and below',
        of: leastAt('slot', places, plain, ({ size }, values) => inMm(size[1], values) - 2 * LEFT_ROUND_MM),
      },
    },
    constraints: [
      {
        code: 'slot-too-long',
        symbol: 'slotLength',
        atMost: 'slotLongest',
        severity: 'stop',
        ...when,
        says: 'A slot {slotLength} long leaves less than a quarter inch at its ends, or shows a tab glued behind.',
        remedy: 'Make it at most {limit}.',
      },
      {
        code: 'slot-too-high',
        symbol: 'slotHeight',
        atMost: 'slotHighest',
        severity: 'stop',
        ...when,
        says: 'A slot {slotHeight} high leaves less than a quarter inch of card above and below it.',
        remedy: 'Make it at most {limit}.',
      },
      {
        code: 'slot-not-long',
        symbol: 'slotLength',
        atLeast: 'slotHeight + 1/8 in',
        severity: 'stop',
        ...when,
        says: 'A slot {slotLength} long and {slotHeight} high is no longer than it is high.',
        remedy: 'Make it at least {limit} long.',
      },
    ],
    extend: cutHole('slot', places, { hole: 'slot', size: ['slotLength', 'slotHeight'] }),
  };
}
