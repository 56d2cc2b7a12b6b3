import type { AddOnPlace, ClosingStep } from '../language/types';
import { allowanceOf } from '../shapes/size-symbols';
import {
  chosenPlace,
  type Extension,
  given,
  inMm,
  leastAt,
  type PlainPieces,
  placesOption,
  rectanglesAt,
  withPiece,
} from './extension';

/** A header that carries a wall on past its free edge and folds double, with a round hole through both. 1 1/4 in with a hole of 1/4 in: common practice, no source. */
export function hangTabOn(places: readonly AddOnPlace[], plain: PlainPieces): Extension {
  const when = { given: given('hangTab', places) };
  return {
    options: {
      hangTab: placesOption(
        'Hang tab',
        'A header folded double, with a hole to hang the box by.',
        'No hang tab',
        places,
      ),
    },
    symbols: {
      header: {
        ...allowanceOf(
          'Header',
          'From the rim of the box to the top of the hang tab.',
          '1 1/4 in',
          '3/4 in',
          '3 in',
        ),
        ...when,
      },
      hangHole: {
        ...allowanceOf('Hang hole', 'Across the round hole in the header.', '1/4 in', '1/8 in', '1/2 in'),
        ...when,
      },
    },
    quantities: {
      headerAcross: {
        means: 'width of the header',
        of: leastAt('hangTab', places, plain, ({ size }, values) => inMm(size[0], values)),
      },
    },
    constraints: [
      {
        code: 'hang-hole-near-edge',
        symbol: 'hangHole',
        atMost: 'header - 1/2 in',
        severity: 'stop',
        ...when,
        says: 'A hole {hangHole} across leaves less than a quarter inch of a header {header} high above it.',
        remedy: 'Make it at most {limit}.',
      },
      {
        code: 'hang-hole-wider-than-header',
        symbol: 'hangHole',
        atMost: 'headerAcross - 1/2 in',
        severity: 'stop',
        ...when,
        says: 'A hole {hangHole} across leaves less than a quarter inch of a header {headerAcross} wide beside it.',
        remedy: 'Make it at most {limit}.',
      },
    ],
    extend: (pieces, chosen) => {
      const place = chosenPlace('hangTab', places, chosen);
      if (place === undefined) return pieces;
      const on = place.at[0] as `${string}.up`;
      const across = rectanglesAt(pieces, place)[0]?.[1].size[0] ?? '0';
      const hole = { hole: 'round', across: 'hangHole' } as const;
      const first: readonly ClosingStep[] = [
        { do: 'fold', panels: ['headerLap'] },
        {
          do: 'glue',
          panel: 'headerLap',
          onto: 'header',
          tip: 'Punch the hole again through both once the glue is dry, if it has shifted.',
        },
      ];
      return withPiece(pieces, place.piece, (piece) => ({
        panels: {
          ...piece.panels,
          header: { role: 'hangTab', size: [across, 'header'], on, flush: true, holes: [hole] },
          headerLap: { role: 'hangTab', size: [across, 'header'], on: 'header.up', fold: 180, holes: [hole] },
        },
        joints: [...piece.joints, { panel: 'headerLap', onto: 'header', lap: 'inside' }],
        closing: [...first, ...piece.closing],
      }));
    },
  };
}
