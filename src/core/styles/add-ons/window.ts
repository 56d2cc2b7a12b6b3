import type {
  AddOnPlace,
  Chosen,
  ConstraintSpec,
  HoleSpec,
  OptionSpec,
  WindowShape,
} from '../language/types';
import { allowanceOf } from '../shapes/size-symbols';
import {
  chosenPlace,
  cutHole,
  type Extension,
  given,
  gluedBehind,
  inMm,
  leastAt,
  type PlainPieces,
  placesOption,
  rectanglesAt,
  tabsBehind,
} from './extension';

/** Smallest opening worth a film. source: our choice */
const LEAST_OPENING_MM = 12.7;

const SHAPED: Readonly<Record<WindowShape, string>> = {
  rounded: 'Rounded corners',
  arch: 'Arch',
  round: 'Circle',
  oval: 'Oval',
  heart: 'Heart',
};
const isShaped = (id: string | undefined): id is WindowShape => id !== undefined && id in SHAPED;

/** Whatever is not straight is cut along the template. */
const SHAPES: OptionSpec = {
  label: 'Window shape',
  help: 'Straight sides are cut with a ruler. Any other shape is cut along the template.',
  choices: [
    { id: 'straight', label: 'Rectangle' },
    ...Object.entries(SHAPED).map(([id, label]) => ({ id, label })),
  ],
  addOn: true,
};

/** An opening as far from every edge of its panel as the margin says, and film behind it. Margin 3/8 in and film lap 1/4 in: common practice, no source. */
export function windowIn(
  places: readonly AddOnPlace[],
  plain: PlainPieces,
  /** Every way the style is built. */
  ways: readonly Chosen[],
): Extension {
  const glued = places.some((place) =>
    ways.some((way) => {
      const pieces = plain(way);
      return rectanglesAt(pieces, place).some(([name]) => tabsBehind(pieces[place.piece], name).length > 0);
    }),
  );
  const when = { given: given('window', places) };
  return {
    options: {
      window: placesOption('Window', 'An opening with clear film glued behind it.', 'No window', places),
      windowShape: { ...SHAPES, ...when },
    },
    symbols: lengthsOf(when),
    quantities: quantitiesOf(places, plain),
    constraints: [
      {
        code: 'window-too-small',
        symbol: 'windowMargin',
        atMost: 'windowMost',
        severity: 'stop',
        ...when,
        says: 'A margin of {windowMargin} leaves less than half an inch of window in this panel.',
        remedy: 'Make it at most {limit}, or put the window in a larger panel.',
      },
      ...(glued ? [overGlue(when)] : []),
      {
        code: 'film-meets-score',
        symbol: 'filmLap',
        atMost: 'windowMargin - 1/16 in',
        severity: 'stop',
        ...when,
        says: 'Film that overlaps {filmLap} reaches the scores around a window with a margin of {windowMargin}.',
        remedy: 'Make the overlap at most {limit}.',
      },
    ],
    extend: (pieces, chosen) => {
      const shape = chosen['windowShape'];
      const headDown = chosenPlace('window', places, chosen)?.headDown;
      const hole: HoleSpec = {
        hole: 'window',
        margin: 'windowMargin',
        ...(isShaped(shape) && { shape, ...(headDown && { headDown }) }),
      };
      return cutHole('window', places, hole)(pieces, chosen);
    },
  };
}

const lengthsOf = (when: Pick<ConstraintSpec, 'given'>): Extension['symbols'] => ({
  windowMargin: {
    ...allowanceOf(
      'Window margin',
      'From the opening to every edge of its panel.',
      '1/2 in',
      '3/8 in',
      '4 in',
    ),
    ...when,
  },
  filmLap: {
    ...allowanceOf(
      'Film lap',
      'How far the film reaches past the opening on every side.',
      '1/4 in',
      '1/8 in',
      '1 in',
    ),
    ...when,
  },
});

const quantitiesOf = (places: readonly AddOnPlace[], plain: PlainPieces): Extension['quantities'] => ({
  windowMost: {
    means: 'widest margin that leaves an opening of 1/2 in',
    of: leastAt(
      'window',
      places,
      plain,
      ({ size }, values) => (Math.min(...size.map((length) => inMm(length, values))) - LEAST_OPENING_MM) / 2,
    ),
  },
  windowGlue: {
    means: 'width of the widest tab glued behind the window’s panel',
    of: (values, chosen) => {
      const place = chosenPlace('window', places, chosen);
      const pieces = place === undefined ? {} : plain(chosen);
      const piece = place === undefined ? undefined : pieces[place.piece];
      if (place === undefined || piece === undefined) return 0;
      return Math.max(0, ...rectanglesAt(pieces, place).map(([name]) => gluedBehind(piece, name, values)));
    },
  },
});

const overGlue = (when: Pick<ConstraintSpec, 'given'>): ConstraintSpec => ({
  code: 'window-over-glue',
  symbol: 'windowMargin',
  atLeast: 'windowGlue',
  severity: 'stop',
  ...when,
  says: 'A tab {windowGlue} wide is glued behind this panel and would show in a window with a margin of {windowMargin}.',
  remedy: 'Make the margin at least {limit}, choose another panel, or put the seam elsewhere.',
});
