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

/** A round hole in the middle of a panel, for a ribbon that is knotted inside: a pull, a handle, or a bow that stays. 1/4 in: common practice, no source. */
export function ribbonHoleIn(places: readonly AddOnPlace[], plain: PlainPieces): Extension {
  const when = { given: given('ribbon', places) };
  return {
    options: {
      ribbon: placesOption(
        'Ribbon hole',
        'A round hole in the middle, for ribbon with a knot inside.',
        'No ribbon hole',
        places,
      ),
    },
    symbols: {
      ribbonHole: {
        ...allowanceOf(
          'Ribbon hole',
          'Across the hole: the hole your punch makes.',
          '1/4 in',
          '1/8 in',
          '1/2 in',
        ),
        ...when,
      },
    },
    quantities: {
      ribbonMost: {
        means: 'widest ribbon hole that leaves a quarter inch of card all round, clear of tabs glued behind',
        of: leastAt('ribbon', places, plain, ({ size }, values, { glued }) => {
          const sides = size.map((length) => inMm(length, values));
          return Math.min(...sides, Math.max(...sides) - 2 * glued) - 2 * LEFT_ROUND_MM;
        }),
      },
    },
    constraints: [
      {
        code: 'ribbon-hole-too-wide',
        symbol: 'ribbonHole',
        atMost: 'ribbonMost',
        severity: 'stop',
        ...when,
        says: 'A ribbon hole {ribbonHole} wide leaves less than a quarter inch of this panel around it, or shows a tab glued behind.',
        remedy: 'Make it at most {limit}, or leave it out.',
      },
    ],
    extend: cutHole('ribbon', places, { hole: 'round', across: 'ribbonHole' }),
  };
}
