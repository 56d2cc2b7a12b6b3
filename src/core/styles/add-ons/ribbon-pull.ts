import type { AddOnPlace, Chosen, HoleSpec, OptionSpec, ThreadSpec } from '../language/types';
import { allowanceOf } from '../shapes/size-symbols';
import {
  changeAt,
  chosenPlace,
  type Extension,
  given,
  inMm,
  LEFT_ROUND_MM,
  leastAt,
  type PlainPieces,
  placesOption,
  type RectangleSpec,
  withMore,
  withPiece,
} from './extension';
import { sumOf, withinEdge } from './free-edge';

/** Ribbon behind the panel for the two knots, or the two ends that are taped flat. source: from memory, 1 1/2 in an end */
const ENDS_MM = 76.2;

const WAY: OptionSpec = {
  label: 'Ribbon pull goes through',
  help: 'Two holes take a ribbon that is knotted inside. A slit takes one folded double, its ends taped flat.',
  choices: [
    { id: 'holes', label: 'Two holes' },
    { id: 'slit', label: 'A slit' },
  ],
  addOn: true,
};

/** Ways to choose that have a pull at all, one through two holes, and one through a slit. */
type Ways = Readonly<Record<'when' | 'holes' | 'slit', readonly Chosen[]>>;

/** A loop of ribbon in the middle of a panel, to pull it by. Holes 3/4 in apart, a loop of 1 in: common practice, no source. */
export function ribbonPullIn(places: readonly AddOnPlace[], plain: PlainPieces): Extension {
  const when = given('pull', places);
  const [holes = [], slit = []] = ['holes', 'slit'].map((pullWay) =>
    when.map((way): Chosen => ({ ...way, pullWay })),
  );
  const ways: Ways = { when, holes, slit };
  return {
    options: {
      pull: placesOption('Ribbon pull', 'A loop of ribbon to pull it open by.', 'No ribbon pull', places),
      pullWay: { ...WAY, given: when },
    },
    symbols: lengthsOf(ways),
    quantities: quantitiesOf(places, plain),
    constraints: limitsOf(ways),
    extend: (pieces, chosen) => {
      const place = chosenPlace('pull', places, chosen);
      if (place === undefined) return pieces;
      const isSlit = chosen['pullWay'] === 'slit';
      const open = changeAt('pull', places, (panel) => {
        if (!('size' in panel)) throw new RangeError('a ribbon pull goes through a rectangle');
        if (isSlit) {
          const cut: HoleSpec = { hole: 'slit', long: 'pullSlit', runs: 'across' };
          return withMore(panel, 'holes', cut);
        }
        const round = (at: readonly [string, string]): HoleSpec => ({
          hole: 'round',
          across: 'pullHole',
          at,
        });
        return withMore(panel, 'holes', ...besideMiddle(panel).map(round));
      });
      const threads = place.at.map(
        (panel): ThreadSpec => ({
          panel,
          long: 'pullRibbon',
          tip: isSlit
            ? 'Fold it double, push the fold out through the slit, and tape both ends flat inside.'
            : 'Out through one hole and back through the other; knot each end inside.',
        }),
      );
      return withPiece(open(pieces, chosen), place.piece, () => ({ threads }));
    },
  };
}

const lengthsOf = ({ when, holes, slit }: Ways): Extension['symbols'] => ({
  pullLoop: {
    ...allowanceOf('Pull loop', 'How far the loop of ribbon stands out.', '1 in', '1/2 in', '4 in'),
    given: when,
  },
  pullHole: {
    ...allowanceOf(
      'Pull holes',
      'Across each hole: the hole your punch makes.',
      '1/8 in',
      '1/16 in',
      '1/4 in',
    ),
    given: holes,
  },
  pullApart: {
    ...allowanceOf('Pull holes apart', 'Between the middles of the two holes.', '3/4 in', '3/8 in', '3 in'),
    given: holes,
  },
  pullSlit: {
    ...allowanceOf(
      'Pull slit',
      'As long as your ribbon is wide, and a little more.',
      '1/2 in',
      '1/4 in',
      '2 in',
    ),
    given: slit,
  },
});

function quantitiesOf(places: readonly AddOnPlace[], plain: PlainPieces): Extension['quantities'] {
  const deepEnough = ({ size }: RectangleSpec, values: Readonly<Record<string, number>>) =>
    inMm(size[1], values) - 2 * LEFT_ROUND_MM;
  const across = leastAt(
    'pull',
    places,
    plain,
    ({ size }, values, { glued }) => inMm(size[0], values) - 2 * Math.max(LEFT_ROUND_MM, glued),
  );
  return {
    pullRibbon: {
      means: 'ribbon of one pull: there and back, and both ends',
      of: ({ pullLoop = 0, pullApart = 0 }, chosen) =>
        2 * pullLoop + (chosen['pullWay'] === 'slit' ? 0 : pullApart) + ENDS_MM,
      onMark: true,
    },
    pullHolesMost: {
      means: 'how far apart two holes may be, with a quarter inch of card beside them',
      of: (values, chosen) => across(values, chosen) - (values['pullHole'] ?? 0),
    },
    pullHoleMost: {
      means: 'widest hole with a quarter inch of card above and below it',
      of: leastAt('pull', places, plain, deepEnough),
    },
    pullSlitMost: {
      means: 'longest slit with a quarter inch of card at its ends; nothing in a panel too low for one',
      of: (values, chosen) =>
        leastAt('pull', places, plain, deepEnough)(values, chosen) < 0 ? 0 : across(values, chosen),
    },
  };
}

const limitsOf = ({ holes, slit }: Ways): Extension['constraints'] => [
  {
    code: 'pull-holes-near-side',
    symbol: 'pullApart',
    atMost: 'pullHolesMost',
    severity: 'stop',
    given: holes,
    says: 'Holes {pullApart} apart leave less than a quarter inch beside them, or show a tab glued behind.',
    remedy: 'Make them at most {limit} apart.',
  },
  {
    code: 'pull-holes-near-each-other',
    symbol: 'pullApart',
    atLeast: 'pullHole + 1/4 in',
    severity: 'stop',
    given: holes,
    says: 'Holes {pullApart} apart leave less than a quarter inch of card between them.',
    remedy: 'Make them at least {limit} apart.',
  },
  {
    code: 'pull-hole-near-edge',
    symbol: 'pullHole',
    atMost: 'pullHoleMost',
    severity: 'stop',
    given: holes,
    says: 'Holes {pullHole} wide leave less than a quarter inch of card above and below them.',
    remedy: 'Make them at most {limit}, or the panel higher.',
  },
  {
    code: 'pull-slit-too-long',
    symbol: 'pullSlit',
    atMost: 'pullSlitMost',
    severity: 'stop',
    given: slit,
    says: 'A slit {pullSlit} long leaves less than a quarter inch of card around it, or shows a tab glued behind.',
    remedy: 'Make it at most {limit}, or the panel larger.',
  },
];

/** Two spots half of `pullApart` to either side of the middle of a rectangle, as its net lies. */
function besideMiddle(panel: RectangleSpec): readonly (readonly [string, string])[] {
  const beside = sumOf([panel.size[0], 1], ['pullApart', -1]);
  return ['left', 'right'].map((edge) => withinEdge(panel, edge, beside));
}
