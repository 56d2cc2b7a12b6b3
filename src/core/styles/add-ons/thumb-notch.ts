import type { AddOnPlace, NotchSpec } from '../language/types';
import { allowanceOf } from '../shapes/size-symbols';
import {
  changeAt,
  type Extension,
  given,
  inMm,
  LEFT_ROUND_MM,
  leastAt,
  type PlainPieces,
  placesOption,
} from './extension';

/** A half-round in the middle of a free edge. Radius 1/2 in on a drawer's sleeve: common practice, no source. */
export function thumbNotchIn(places: readonly AddOnPlace[], plain: PlainPieces): Extension {
  const when = { given: given('notch', places) };
  return {
    options: {
      notch: placesOption(
        'Thumb notch',
        'A half circle cut out of an edge, for your thumb.',
        'No notch',
        places,
      ),
    },
    symbols: {
      notchRadius: {
        ...allowanceOf(
          'Notch radius',
          'Depth of the half-round, and half its width.',
          '3/8 in',
          '3/16 in',
          '1 in',
        ),
        // shallow, as a lid is that has one from the start
        ...(places.some(({ forNew }) => forNew) ? { forNew: '1/4 in' } : {}),
        ...when,
      },
    },
    quantities: {
      notchMost: {
        means:
          'largest notch that leaves a quarter inch of card beside and below it, clear of tabs glued behind',
        of: leastAt('notch', places, plain, ({ size }, values, { edge, glued }) => {
          const [across, up] = size.map((length) => inMm(length, values)) as [number, number];
          const [along, deep] = edge === 'up' || edge === 'down' ? [across, up] : [up, across];
          return Math.min(along / 2 - glued, deep) - LEFT_ROUND_MM;
        }),
      },
    },
    constraints: [
      {
        code: 'notch-too-large',
        symbol: 'notchRadius',
        atMost: 'notchMost',
        severity: 'stop',
        ...when,
        says: 'A notch of radius {notchRadius} leaves less than a quarter inch of this panel beside or below it, or shows a tab glued behind.',
        remedy: 'Make it at most {limit}, or leave the notch out.',
      },
    ],
    extend: changeAt('notch', places, (panel, edge) => ({
      ...panel,
      notches: [...(panel.notches ?? []), { edge: edge as NotchSpec['edge'], radius: 'notchRadius' }],
    })),
  };
}
