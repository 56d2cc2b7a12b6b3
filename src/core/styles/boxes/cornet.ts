import { toDegrees } from '../../units/angles';
import { defineStyle } from '../language/define';
import type { Chosen, PanelSpec, Pieces, Values } from '../language/types';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';

/** How far a tab stays off a panel that meets the one it lies on: three of the thickest cards. source: 1/16 in, common practice, no source */
const CLEAR_MM = 1.5875;

const sidesOf = (chosen: Chosen): number => Number(chosen['sides'] ?? 6);
const count = (sides: number): readonly number[] => Array.from({ length: sides }, (_, at) => at + 1);

/** Angle of one side at the tip, on the blank. */
const tipAngle = ({ side = 0, slant = 0 }: Values): number => 2 * Math.atan(side / 2 / slant);

/** The mouth's apothem over the slant: how much a side leans. */
const lean = ({ side = 0, slant = 0 }: Values, chosen: Chosen): number =>
  side / (2 * Math.tan(Math.PI / sidesOf(chosen))) / slant;

/** Fold between two neighbors: the angle between the ways their outsides look. */
const ridge = (values: Values, chosen: Chosen): number => {
  const leaning = lean(values, chosen) ** 2;
  return toDegrees(Math.acos((1 - leaning) * Math.cos((2 * Math.PI) / sidesOf(chosen)) + leaning));
};

/** Degrees beyond its own fold that lets the tab pass the side it goes behind. source: our choice, tried by the closing-path check */
const TUCK = 10;

/** A fan of triangles about the tip, the first with its free edge upright on the blank, a tab on the last, and a flap on every mouth edge unless the mouth stays open. */
function piecesOf(chosen: Chosen): Pieces {
  const sides = sidesOf(chosen);
  const panels: Record<string, PanelSpec> = {
    side1: {
      role: 'wall',
      outline: [
        ['0', '0'],
        ['nextOut', 'nextAlong'],
        ['0', 'edge'],
      ],
    },
  };
  for (const at of count(sides).slice(1))
    panels[`side${at}`] = {
      role: 'wall',
      outline: [['nextAlong', 'nextOut']],
      on: at === 2 ? 'side1.e0' : `side${at - 1}.e1`,
      fold: 'ridgeFold',
    };
  panels['tab'] = {
    role: 'glueTab',
    at: 'tipGap',
    hinge: 'edge - tipGap - mouthGap',
    outline: [
      ['tipDraw - tipGap', 'tab'],
      ['edge - tipGap - mouthGap - tab', 'tab'],
    ],
    on: `side${sides}.e1`,
    fold: 'ridgeFold',
  };
  const flaps = chosen['mouth'] === 'open' ? [] : count(sides).map((at) => `flap${at}`);
  for (const [at, flap] of flaps.entries())
    panels[flap] = {
      role: 'lid',
      outline: [
        ['flapDraw', 'flap'],
        ['side - flapDraw', 'flap'],
      ],
      on: at === 0 ? 'side1.e1' : `side${at + 1}.e2`,
      fold: 'mouthFold',
    };
  const walls = count(sides).map((at) => `side${at}`);
  return {
    cornet: {
      label: 'Cone',
      panels,
      joints: [{ panel: 'tab', onto: 'side1', lap: 'inside' }],
      seams: [[`side${sides}.e1`, 'side1.e2']],
      closing: [
        {
          do: 'fold',
          panels: ['tab'],
          to: 'tabTuck',
          tip: 'Fold the tab in a little too far, so it slips inside the first side.',
        },
        {
          do: 'fold',
          panels: walls.slice(1),
          tip: 'Crease every score well first, so the last side meets the first.',
        },
        { do: 'fold', panels: ['tab'] },
        { do: 'glue', panel: 'tab', onto: 'side1', tip: 'Press the tab from inside with a bone folder.' },
        ...(flaps.length === 0
          ? []
          : [
              {
                do: 'fold',
                panels: flaps,
                tip: 'Fill it, fold the flaps in one after another, and hold them with a seal.',
              } as const,
            ]),
      ],
      shell: walls,
      roomFormula: `${sides} * side * apothem * height / 6`,
      roomMm3: ({ side = 0, height = 0, apothem = 0 }) => (sides * side * apothem * height) / 6,
    },
  };
}

/** A regular pyramid on its tip. Geometry: solid geometry of the regular pyramid; construction: common practice, no source. No code of practice has a family for it (from memory). */
export const cornet = defineStyle({
  id: 'cornet',
  version: 1,
  name: 'Cone',
  source: 'solid geometry of the regular pyramid; construction common practice, no source',
  goodFor: 'Popcorn, candied almonds, petals to toss: a handful with a point below.',
  watchOut:
    'It won’t stand on its own, so plan a rack or lay it flat. All scores meet at the tip, where cardstock can tear.',
  symbols: {
    side: sizeOf('Mouth edge', 'One edge of the mouth, corner to corner.', '1 1/2 in', '3/4 in', '4 in'),
    slant: sizeOf(
      'Slant',
      'From the middle of a mouth edge down a side to the tip.',
      '6 in',
      '1 1/2 in',
      '14 in',
    ),
    tab: allowanceOf('Glue tab', 'Width of the tab along the last side.', '1/2 in', '1/4 in', '1 in'),
    flap: {
      ...allowanceOf('Mouth flap', 'From a mouth edge to the flap’s free edge.', '7/8 in', '1/4 in', '4 in'),
      given: [{ mouth: 'flaps' }],
    },
  },
  inside: ['2/3 itemSquare - t', '2/3 itemSquare - t', '1/3 height - t'],
  options: {
    sides: {
      label: 'Sides',
      help: 'How many flat sides it has. More sides look rounder.',
      choices: [6, 5, 7, 8].map((sides) => ({ id: String(sides), label: String(sides) })),
    },
    mouth: {
      label: 'Mouth',
      help: 'Flaps that fold in over what is inside, or an open mouth.',
      choices: [
        { id: 'flaps', label: 'Flaps fold in' },
        { id: 'open', label: 'Stays open' },
      ],
    },
  },
  // clear of the flap at the mouth
  lets: { mouthGap: '1/16 in' },
  workings: {
    turn: '180 / number(sides)',
    lean: 'side / (2 * tan(turn)) / slant',
    tip: '2 * atan(side / 2 / slant)',
    ridge: 'acos((1 - lean ** 2) * cos(2 * turn) + lean ** 2)',
  },
  quantities: {
    apothem: {
      means: 'from the middle of the mouth to an edge of it',
      formula: 'side / (2 * tan(turn))',
      of: ({ side = 0 }, chosen) => side / (2 * Math.tan(Math.PI / sidesOf(chosen))),
    },
    itemSquare: {
      means: 'side of a square within the circle the mouth’s edges touch',
      formula: 'side / (2 * tan(turn)) * sqrt(2)',
      of: ({ side = 0 }, chosen) => (side / (2 * Math.tan(Math.PI / sidesOf(chosen)))) * Math.SQRT2,
    },
    height: {
      means: 'from the tip straight up to the mouth',
      formula: 'slant * sqrt(1 - lean ** 2)',
      of: (values, chosen) => (values['slant'] ?? 0) * Math.sqrt(1 - lean(values, chosen) ** 2),
    },
    edge: {
      means: 'length of a slanted score',
      formula: 'hypot(side / 2, slant)',
      of: ({ side = 0, slant = 0 }) => Math.hypot(side / 2, slant),
    },
    nextAlong: {
      means: 'along a slanted score from the tip to the foot of the next corner',
      formula: 'edge * cos(tip)',
      of: (values) => (values['edge'] ?? 0) * Math.cos(tipAngle(values)),
    },
    nextOut: {
      means: 'square off a slanted score to the next corner',
      formula: 'edge * sin(tip)',
      of: (values) => (values['edge'] ?? 0) * Math.sin(tipAngle(values)),
    },
    tipDraw: {
      means: 'how far the tab ends before the tip, inside the first side and clear of the next',
      formula: `max(2 * tab, tab / tan(tip) + ${CLEAR_MM} * mm / sin(tip), ${CLEAR_MM} * mm / lean)`,
      of: (values, chosen) => {
        const { tab = 0 } = values;
        const past = tab / Math.tan(tipAngle(values)) + CLEAR_MM / Math.sin(tipAngle(values));
        return Math.max(2 * tab, past, CLEAR_MM / lean(values, chosen));
      },
    },
    tipGap: {
      means: 'how far the tab’s score begins from the tip, where the cone is wide enough for its layers',
      formula: `${CLEAR_MM} * mm / lean`,
      of: (values, chosen) => CLEAR_MM / lean(values, chosen),
    },
    flapDraw: {
      means: 'how far each end of a flap draws in, so that neighbours do not lap',
      formula: 'flap * tan(turn)',
      of: ({ flap = 0 }, chosen) => flap * Math.tan(Math.PI / sidesOf(chosen)),
    },
    hole: {
      means: 'how wide a hole the flaps leave in the middle',
      formula: '2 * (apothem - flap)',
      of: ({ apothem = 0, flap = 0 }) => 2 * (apothem - flap),
    },
  },
  angles: {
    ridgeFold: { means: 'fold between two sides', formula: 'ridge', of: ridge },
    tabTuck: {
      means: 'how far the tab is folded in before the sides go round',
      formula: `ridge + ${TUCK}`,
      of: (values, chosen) => ridge(values, chosen) + TUCK,
    },
    mouthFold: {
      means: 'fold of a flap at the mouth',
      formula: '180 - acos(lean)',
      of: (values, chosen) => 180 - toDegrees(Math.acos(lean(values, chosen))),
    },
  },
  pieces: piecesOf,
  constraints: [
    {
      code: 'cornet-too-flat',
      symbol: 'slant',
      atLeast: '7/4 side',
      severity: 'stop',
      says: 'With a slant of {slant} and mouth edges {side} long the sides nearly fill the circle, and the tab runs into the first side.',
      remedy: 'Make the slant at least {limit}.',
    },
    {
      code: 'tab-too-wide',
      symbol: 'tab',
      atMost: '1/3 side',
      severity: 'stop',
      says: 'A glue tab {tab} wide leaves little straight length to glue on sides {side} wide at the mouth.',
      remedy: 'Make it at most {limit}.',
    },
    {
      code: 'flaps-pass-middle',
      symbol: 'flap',
      atMost: 'apothem',
      severity: 'stop',
      given: [{ mouth: 'flaps' }],
      says: 'Mouth flaps {flap} reach past the middle of the mouth, {apothem} from its edges.',
      remedy: 'Make them at most {limit}.',
    },
    {
      code: 'flaps-leave-hole',
      symbol: 'flap',
      atLeast: '1/2 apothem',
      severity: 'warn',
      given: [{ mouth: 'flaps' }],
      says: 'Mouth flaps {flap} leave a hole {hole} wide, too large for a small seal.',
      remedy: 'Make them at least {limit}.',
    },
  ],
  promises: [],
  traits: ['lid'],
});
