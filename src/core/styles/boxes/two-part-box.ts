import { defineStyle } from '../language/define';
import type { ClosingStep, JointSpec, PanelSpec, PieceSpec } from '../language/types';
import {
  BOTTOM_CLOSING,
  BOTTOM_FITS,
  BOTTOM_JOINTS,
  BOTTOM_LETS,
  BOTTOM_LIMITS,
  BOTTOM_OVERLAP,
  bottomFlaps,
} from '../shapes/glued-bottom';
import { gluedTube, TAB_LIMIT, TAB_QUANTITIES, TUBE_SYMBOLS } from '../shapes/glued-tube';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';

const tube = gluedTube({ order: 'front', tab: 'right' }, 'tabClear', '0');
const flaps = bottomFlaps(tube);
const wall = (
  name: 'front' | 'left' | 'back' | 'right',
  on?: 'front.right' | 'left.right' | 'back.right',
): PanelSpec => ({
  role: 'wall',
  size: [tube.across[name], 'height'],
  ...(on === undefined ? {} : { on, fold: 90 }),
});
const tab = (on: 'left.right' | 'right.right'): PanelSpec => ({
  role: 'glueTab',
  size: ['tab', 'height - tabClear'],
  on,
  at: 'tabClear',
  taper: 'tabBevel',
  fold: 90,
});

const pick = (...names: readonly string[]): Readonly<Record<string, PanelSpec>> =>
  Object.fromEntries(Object.entries(flaps).filter(([name]) => names.includes(name)));

/** A wide wall, a side wall and a tab, with the bottom flaps of both walls. */
const half = (
  label: string,
  panels: Readonly<Record<string, PanelSpec>>,
  lap: readonly [string, string],
  closing: readonly ClosingStep[],
): PieceSpec => ({
  label,
  panels,
  joints: [],
  overlaps: [lap],
  closing,
  shell: [],
  roomMm3: () => 0,
  roomFormula: '0',
});

const TABS: readonly JointSpec[] = [
  { panel: 'frontTab', onto: 'back', lap: 'inside' },
  { panel: 'backTab', onto: 'front', lap: 'inside' },
];

/** Both halves glued to one another: the open-top box again, with a second seam where it has a score. */
const whole: PieceSpec = {
  label: 'Whole box',
  panels: {
    front: wall('front'),
    left: wall('left', 'front.right'),
    back: wall('back', 'left.right'),
    right: wall('right', 'back.right'),
    backTab: tab('right.right'),
    frontTab: tab('left.right'),
    ...flaps,
  },
  joints: [...TABS, ...BOTTOM_JOINTS],
  seams: [tube.seam, ['left.right', 'back.left']],
  overlaps: [BOTTOM_OVERLAP],
  closing: [
    { do: 'glue', panel: 'frontTab', onto: 'back' },
    { do: 'fold', panels: ['right'], to: 180 },
    { do: 'fold', panels: ['left'], to: 180 },
    { do: 'glue', panel: 'backTab', onto: 'front' },
    { do: 'fold', panels: ['left', 'back', 'right', 'backTab', 'frontTab'] },
    ...BOTTOM_CLOSING,
  ],
  shell: ['front', 'left', 'back', 'right'],
  roomMm3: ({ width = 0, depth = 0, height = 0 }) => width * depth * height,
  roomFormula: 'width * depth * height',
};

/** The open-top box when its strip is longer than the sheet: two pieces with a tab each. FEFCO family 02 is its corrugated cousin (from memory); construction: common practice, no source. */
export const twoPartBox = defineStyle({
  id: 'two-part-box',
  version: 1,
  name: 'Open-top box in two halves',
  source: 'common practice, no source; FEFCO family 02 is its corrugated cousin (from memory)',
  goodFor: 'For a box too long to cut from one sheet: it’s made in two halves and joined.',
  watchOut: 'It has two seams to glue. Score both halves exactly alike, one right after the other.',
  symbols: {
    ...TUBE_SYMBOLS,
    width: sizeOf('Width', 'Front panel, score to score.', '6 in', '1/2 in', '16 in'),
    depth: sizeOf('Depth', 'Side panel, score to score.', '3 in', '1/2 in', '16 in'),
    flap: allowanceOf(
      'Bottom flap',
      'From the bottom score to the flap’s free edge.',
      'depth/2 + 1/4 in',
      '1/4 in',
      '12 in',
    ),
  },
  inside: ['width - t', 'depth - t', 'height - 7/2 t'],
  lets: { ...BOTTOM_LETS, seamRelief: '0' },
  quantities: TAB_QUANTITIES,
  sidesRenamed: ['frontHalf', 'backHalf'],
  pieces: {
    frontHalf: half(
      'Front half',
      {
        front: wall('front'),
        left: wall('left', 'front.right'),
        frontTab: tab('left.right'),
        ...pick('frontFlap', 'leftFlap'),
      },
      ['leftFlap', 'frontFlap'],
      [
        {
          do: 'fold',
          panels: ['left', 'frontTab'],
          tip: 'Lay it flat again.',
        },
      ],
    ),
    backHalf: half(
      'Back half',
      {
        back: wall('back'),
        right: wall('right', 'back.right'),
        backTab: tab('right.right'),
        ...pick('backFlap', 'rightFlap'),
      },
      ['rightFlap', 'backFlap'],
      [
        {
          do: 'fold',
          panels: ['right', 'backTab'],
          tip: 'Lay it flat again.',
        },
      ],
    ),
  },
  whole,
  constraints: [
    {
      code: 'tab-wider-than-front',
      symbol: 'tab',
      atMost: 'width',
      severity: 'stop',
      says: 'The glue tabs {tab} are wider than the panels they are glued to, {width}.',
      remedy: 'Make them at most {limit}.',
    },
    TAB_LIMIT,
    ...BOTTOM_LIMITS,
  ],
  promises: [
    { claim: 'covers', piece: 'whole', panels: ['frontFlap', 'backFlap'], area: ['width', 'depth'] },
  ],
  fits: BOTTOM_FITS,
  traits: ['tall'],
});
