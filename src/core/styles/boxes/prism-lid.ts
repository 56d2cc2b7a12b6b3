import { toRadians } from '../../units/angles';
import { defineStyle } from '../language/define';
import type { Chosen, ClosingStep, JointSpec, PanelSpec, PieceSpec, SeamSpec } from '../language/types';
import { BETWEEN_CUTS_DEG } from '../shapes/between-cuts';
import { LID_DEPTH_NOTES } from '../shapes/lid-depth';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';

/** Wide enough to glue. source: common practice, no source */
const WIDEST_TAB_MM = 12;

/** Clear of every wall, so that the floor drops in untrimmed. source: 1/32 in, common practice, no source */
const FLOOR_EASE_MM = 0.79375;

const sidesOf = (chosen: Chosen): number => Number(chosen['sides'] ?? 6);
const half = (chosen: Chosen): number => Math.PI / sidesOf(chosen);
const areaOf = (side: number, sides: number): number =>
  (sides * side * side) / (4 * Math.tan(Math.PI / sides));
/** The same as text, for a style file. */
const areaText = (side: string, sides: number): string =>
  `${sides} * ${side} ** 2 / (4 * tan(180 / ${sides}))`;
const count = (sides: number): readonly number[] => Array.from({ length: sides }, (_, at) => at);

/** Walls in a strip, a tab, and a tapered flap under each wall: flaps that just miss one another, with a floor glued over them. */
function bodyOf(sides: number): PieceSpec {
  const panels: Record<string, PanelSpec> = {};
  for (const at of count(sides)) {
    const wall = { role: 'wall', size: ['side', 'height'] } as const;
    panels[`wall${at + 1}`] = at === 0 ? wall : { ...wall, on: `wall${at}.right`, fold: 360 / sides };
  }
  panels['tab'] = { role: 'glueTab', size: ['tab', 'height'], on: `wall${sides}.right`, fold: 360 / sides };
  for (const at of count(sides))
    panels[`flap${at + 1}`] = {
      role: 'bottomFlap',
      size: ['side', 'flap'],
      on: `wall${at + 1}.down`,
      taper: 'flapTaper',
      fold: 90,
    };
  const walls = count(sides).map((at) => `wall${at + 1}`);
  return {
    label: 'Box',
    panels,
    joints: [{ panel: 'tab', onto: 'wall1', lap: 'inside' }],
    seams: [[`wall${sides}.right`, 'wall1.left']],
    closing: [
      { do: 'fold', panels: [...walls.slice(1), 'tab'] },
      {
        do: 'glue',
        panel: 'tab',
        onto: 'wall1',
        tip: 'Crease every score well first, so the last wall meets the first.',
      },
      {
        do: 'fold',
        panels: count(sides).map((at) => `flap${at + 1}`),
        tip: 'Cut the floor, spread glue on the flaps, and lower it onto them from above.',
      },
    ],
    shell: walls,
    roomFormula: `${areaText('side', sides)} * height`,
    roomMm3: ({ side = 0, height = 0 }) => areaOf(side, sides) * height,
  };
}

/** The floor that is glued inside onto the flaps. */
const floorOf = (sides: number): PieceSpec => ({
  label: 'Floor',
  panels: { floor: { role: 'base', regular: sides, side: 'floorSide' } },
  joints: [],
  closing: [],
  shell: [],
  roomFormula: '0',
  roomMm3: () => 0,
});

/** A lid like a star: a wall on every edge of the top, a tab on one end of each, glued inside the next. */
function lidOf(sides: number): PieceSpec {
  const panels: Record<string, PanelSpec> = { top: { role: 'cover', regular: sides, side: 'lidSide' } };
  const [joints, seams]: [JointSpec[], SeamSpec[]] = [[], []];
  for (const at of count(sides)) {
    const next = ((at + 1) % sides) + 1;
    panels[`rim${at + 1}`] = {
      role: 'wall',
      outline: [
        ['0', 'lip'],
        ['lidSide', 'lip'],
      ],
      on: `top.e${at}`,
      fold: 90,
    };
    joints.push({ panel: `rimTab${at + 1}`, onto: `rim${next}`, lap: 'inside' });
    seams.push([`rim${at + 1}.e3`, `rim${next}.e1`]);
  }
  for (const at of count(sides))
    panels[`rimTab${at + 1}`] = {
      role: 'glueTab',
      outline: [
        ['rimDraw', 'lidTab'],
        ['lip - tabDraw', 'lidTab'],
      ],
      on: `rim${at + 1}.e3`,
      fold: 360 / sides,
    };
  const named = (name: string) => count(sides).map((at) => `${name}${at + 1}`);
  return {
    label: 'Lid',
    lid: true,
    panels,
    joints,
    seams,
    closing: [
      { do: 'fold', panels: named('rimTab') },
      { do: 'fold', panels: named('rim') },
      ...joints.map(({ panel, onto }): ClosingStep => ({ do: 'glue', panel, onto })),
    ],
    shell: ['top', ...named('rim')],
    roomFormula: `${areaText('lidSide', sides)} * lip`,
    roomMm3: ({ lidSide = 0, lip = 0 }) => areaOf(lidSide, sides) * lip,
  };
}

/** How far along a regular polygon's side grows when its walls move out by `out`. */
const sideFor = (out: number, chosen: Chosen): number => 2 * out * Math.tan(half(chosen));

/** A regular prism of three to eight sides with a cap lid. Geometry: regular polygons; construction: common practice, no source. ECMA family C (from memory). */
export const prismLid = defineStyle({
  id: 'prism-lid',
  version: 1,
  name: 'Many-sided box with lid',
  source: 'plane geometry of the regular polygon; construction common practice, no source',
  goodFor: 'Tea, truffles, bath salts in a bag: a round-looking box made of straight scores only.',
  watchOut: 'Small errors add up over many scores, so measure every one from the same edge.',
  symbols: {
    side: sizeOf('Side', 'One wall, score to score.', '2 in', '3/4 in', '4 in'),
    height: sizeOf('Height', 'Wall, from the bottom score to the rim.', '3 in', '3/4 in', '10 in'),
    lip: {
      ...sizeOf('Lid depth', 'Lid wall, from its score to its rim.', '1 in', '3/8 in', '4 in'),
      forNew: '3/8 height',
    },
    flap: allowanceOf(
      'Bottom flap',
      'From the bottom score to the flap’s free edge.',
      '5/8 in',
      '3/8 in',
      '4 in',
    ),
    tab: allowanceOf(
      'Glue tab',
      'The strip that joins the last wall to the first.',
      '1/2 in',
      '3/8 in',
      '1 in',
    ),
    ease: allowanceOf(
      'Ease',
      'How much larger the lid is than the box, both sides together.',
      '3/64 in',
      '0 in',
      '1/8 in',
    ),
  },
  inside: ['itemSquare - t', 'itemSquare - t', 'height - 5/2 t'],
  addOns: { window: [{ id: 'wall', label: 'In the second wall', piece: 'box', at: ['wall2'] }] },
  options: {
    sides: {
      label: 'Sides',
      help: 'How many walls the box has.',
      choices: [6, 8, 5, 7, 4, 3].map((sides) => ({ id: String(sides), label: String(sides) })),
    },
  },
  workings: {
    turn: '180 / number(sides)',
  },
  quantities: {
    apothem: {
      means: 'from the middle of the floor to a wall',
      formula: 'side / (2 * tan(turn))',
      of: ({ side = 0 }, chosen) => side / (2 * Math.tan(half(chosen))),
    },
    floorReach: {
      means: 'from the middle of the floor to its edge',
      formula: `side / (2 * tan(turn)) - t - ${FLOOR_EASE_MM} * mm`,
      of: ({ side = 0, t = 0 }, chosen) => side / (2 * Math.tan(half(chosen))) - t - FLOOR_EASE_MM,
    },
    itemSquare: {
      means:
        'side of a square that stands on the floor: all of it, or what the circle holds that the walls touch',
      formula: 'sides == "4" ? side : side / (2 * tan(turn)) * sqrt(2)',
      of: ({ side = 0 }, chosen) =>
        sidesOf(chosen) === 4 ? side : (side / (2 * Math.tan(half(chosen)))) * Math.SQRT2,
    },
    flapTaper: {
      means: 'how far each end of a flap draws in, so that neighbours do not lap',
      formula: 'flap * tan(turn)',
      of: ({ flap = 0 }, chosen) => flap * Math.tan(half(chosen)),
    },
    floorSide: {
      means:
        'side of the floor, a caliper and 1/32 in in from every wall, so that it drops in beside the glue tab',
      formula: `side - 2 * (t + ${FLOOR_EASE_MM} * mm) * tan(turn)`,
      of: ({ side = 0, t = 0 }, chosen) => side - sideFor(t + FLOOR_EASE_MM, chosen),
    },
    lidSide: {
      means: 'side of the lid, wide enough for the box, its walls, the corner tabs inside them and the ease',
      formula: 'side + 2 * (2 * t + ease / 2) * tan(turn)',
      of: ({ side = 0, t = 0, ease = 0 }, chosen) => side + sideFor(2 * t + ease / 2, chosen),
      onMark: true,
    },
    lidReach: {
      means: 'from the middle of the lid to its wall',
      formula: 'lidSide / (2 * tan(turn))',
      of: ({ lidSide = 0 }, chosen) => lidSide / (2 * Math.tan(half(chosen))),
    },
    lidTab: {
      means: 'corner tab of the lid',
      formula: `min(0.4 * lip, side / 2, ${WIDEST_TAB_MM} * mm)`,
      of: ({ lip = 0, side = 0 }) => Math.min(0.4 * lip, side / 2, WIDEST_TAB_MM),
    },
    rimDraw: {
      means: 'how far a corner tab draws in at the rim',
      // with five or seven sides a sloped end would run along the edge of the blank and leave a sliver there
      formula: 'sides == "5" ? 0 : sides == "7" ? 0 : lidTab / 4',
      of: ({ lidTab = 0 }, chosen) => ([5, 7].includes(sidesOf(chosen)) ? 0 : lidTab / 4),
    },
    tabDraw: {
      means:
        'how far a corner tab draws in beside the top, so that a knife gets in between it and the next rim',
      formula: `max(lidTab / 4, lidTab / tan(2 * turn - ${BETWEEN_CUTS_DEG}))`,
      of: ({ lidTab = 0 }, chosen) =>
        Math.max(lidTab / 4, lidTab / Math.tan(2 * half(chosen) - toRadians(BETWEEN_CUTS_DEG))),
    },
  },
  pieces: (chosen) => ({
    box: bodyOf(sidesOf(chosen)),
    floor: floorOf(sidesOf(chosen)),
    lid: lidOf(sidesOf(chosen)),
  }),
  constraints: [
    {
      code: 'flaps-pass-middle',
      symbol: 'flap',
      atMost: 'apothem',
      severity: 'stop',
      says: 'Bottom flaps {flap} reach past the middle of the floor, {apothem} from the walls.',
      remedy: 'Make them at most {limit}.',
    },
    {
      code: 'tab-wider-than-wall',
      symbol: 'tab',
      atMost: 'side',
      severity: 'stop',
      says: 'The glue tab {tab} is wider than a wall, {side}.',
      remedy: 'Make it at most {limit}.',
    },
    {
      code: 'tab-catches-in-closing',
      symbol: 'tab',
      atMost: 'side/2',
      severity: 'stop',
      given: [{ sides: '4' }, { sides: '3' }],
      says: 'With so few walls, a glue tab {tab} wide catches on the first wall, {side}, while the strip closes.',
      remedy: 'Make it at most {limit}.',
    },
    {
      code: 'lid-deeper-than-box',
      symbol: 'lip',
      atMost: 'height',
      severity: 'warn',
      says: 'The lid {lip} is deeper than the box {height}, so the box would stand on the lid.',
      remedy: 'Make it at most {limit}.',
    },
    ...LID_DEPTH_NOTES,
  ],
  promises: [],
  fits: [
    {
      // half of two walls, and the glue tab inside one of them
      what: 'floor between the walls',
      room: '2 apothem',
      body: '2 floorReach',
      card: '2t',
      ease: '1/16 in',
      marks: 4,
      truest: 'the width of the walls and of the floor',
      saves: 'Cut the floor last and try it before you glue it.',
    },
    {
      // half of the lid's and the box's walls, and the lid's corner tabs
      what: 'lid over the box',
      room: '2 lidReach',
      body: '2 apothem',
      card: '4t',
      ease: 'ease',
      marks: 4,
      truest: 'the width of the walls and the sides of the lid',
      saves: 'Close the box first, then try the lid on it before you cut the rest.',
    },
  ],
  traits: ['lid', 'tall'],
});
