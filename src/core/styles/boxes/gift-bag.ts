import { inPanels } from '../add-ons/places';
import { defineStyle } from '../language/define';
import type { CreaseSpec, Len, PanelSpec } from '../language/types';
import {
  BOTTOM_CLOSING,
  BOTTOM_FITS,
  BOTTOM_JOINTS,
  BOTTOM_LETS,
  BOTTOM_LIMITS,
  BOTTOM_OVERLAP,
  BOTTOM_SYMBOLS,
} from '../shapes/glued-bottom';
import { TAB_QUANTITIES, TUBE_LIMITS, TUBE_SYMBOLS } from '../shapes/glued-tube';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';

const hole = (along: Len, out: Len) => ({ hole: 'round', across: 'punch', at: [along, out] }) as const;

/** A side in three: a triangle that stands on the bottom score, and two halves that fold in between front and back. */
const side = (name: 'left' | 'right', on: `${'front' | 'back'}.right`): Record<string, PanelSpec> => ({
  [`${name}Near`]: {
    role: 'wall',
    outline: [
      ['nearHalf', 'nearHalf'],
      ['height', 'nearHalf'],
    ],
    on,
    fold: 90,
  },
  [`${name}Foot`]: {
    role: 'wall',
    outline: [['depth', '0']],
    asLies: true,
    on: `${name}Near.e1`,
    fold: 0,
  },
  [`${name}Far`]: {
    role: 'wall',
    outline: [
      ['0 - nearHalf', 'farHalf'],
      ['height - nearHalf', 'farHalf'],
    ],
    on: `${name}Near.e2`,
    fold: 0,
  },
  [`${name}Flap`]: { role: 'bottomFlap', size: ['depth', 'flap'], on: `${name}Foot.e1`, fold: 90 },
});

const CREASES: readonly CreaseSpec[] = [
  { between: ['leftFoot.e2', 'leftFar.e1'], fold: 0 },
  { between: ['rightFoot.e2', 'rightFar.e1'], fold: 0 },
];

/** A bag that stands, its sides creased to fold in. Construction: common practice, no source. */
export const giftBag = defineStyle({
  id: 'gift-bag',
  version: 1,
  name: 'Gift bag',
  source: 'common practice, no source',
  goodFor: 'Tissue and a small gift, a jar, party favors: a bag with ribbon handles.',
  watchOut:
    'Ribbon holes tear under weight. Glue a strip of cardstock inside the rim, and lift it from below.',
  symbols: {
    ...TUBE_SYMBOLS,
    depth: sizeOf('Depth', 'Side panel, score to score.', '1 1/2 in', '3/4 in', '8 in'),
    height: sizeOf('Height', 'Wall, from the bottom score to the rim.', '5 in', '2 in', '14 in'),
    tab: { ...TUBE_SYMBOLS.tab, default: '5/8 in' },
    flap: { ...BOTTOM_SYMBOLS.flap, default: '1 1/8 in' },
    holeBelow: allowanceOf(
      'Holes below rim',
      'From the rim to the middle of each ribbon hole.',
      '1/2 in',
      '3/8 in',
      '2 in',
    ),
    holesApart: allowanceOf(
      'Holes apart',
      'Between the middles of the two holes of a handle.',
      '1 1/4 in',
      '1/2 in',
      '6 in',
    ),
    punch: allowanceOf('Hole', 'Width of the hole your punch makes.', '1/4 in', '1/16 in', '1/2 in'),
  },
  inside: ['width - t', 'depth - t', 'height - 7/2 t'],
  lets: {
    ...BOTTOM_LETS,
    nearHalf: 'depth/2',
    farHalf: 'depth - nearHalf',
    seamRelief: '0',
    firstHole: 'width/2 - holesApart/2',
    lastHole: 'firstHole + holesApart',
  },
  quantities: TAB_QUANTITIES,
  addOns: { window: inPanels('bag', 'front', 'back') },
  sidesRenamed: ['bag'],
  pieces: {
    bag: {
      label: 'Bag',
      panels: {
        front: {
          role: 'wall',
          size: ['width', 'height'],
          holes: [hole('firstHole', 'height - holeBelow'), hole('lastHole', 'height - holeBelow')],
        },
        ...side('left', 'front.right'),
        back: {
          role: 'wall',
          size: ['width', 'height'],
          on: 'leftFar.e2',
          fold: 90,
          holes: [hole('height - holeBelow', 'firstHole'), hole('height - holeBelow', 'lastHole')],
        },
        ...side('right', 'back.right'),
        tab: {
          role: 'glueTab',
          size: ['tab', 'height - tabClear'],
          on: 'rightFar.e2',
          at: 'tabClear',
          taper: ['tabBevel', '0'],
          fold: 90,
        },
        frontFlap: { role: 'bottomFlap', size: ['width', 'flap'], on: 'front.down', fold: 90 },
        backFlap: { role: 'bottomFlap', size: ['width', 'flap'], on: 'back.down', fold: 90 },
      },
      creases: CREASES,
      joints: [{ panel: 'tab', onto: 'front', lap: 'inside' }, ...BOTTOM_JOINTS],
      seams: [['rightFar.e2', 'front.left']],
      overlaps: [BOTTOM_OVERLAP],
      closing: [
        { do: 'fold', panels: ['leftNear'], to: 180 },
        { do: 'fold', panels: ['rightNear'], to: 180 },
        { do: 'glue', panel: 'tab', onto: 'front' },
        {
          do: 'fold',
          panels: ['leftNear', 'back', 'rightNear', 'tab'],
          tip: 'First crease both sides inward along their middles, then open the bag again.',
        },
        ...BOTTOM_CLOSING,
      ],
      shell: ['front', 'leftNear', 'leftFoot', 'leftFar', 'back', 'rightNear', 'rightFoot', 'rightFar'],
      roomMm3: ({ width = 0, depth = 0, height = 0 }) => width * depth * height,
      roomFormula: 'width * depth * height',
    },
  },
  constraints: [
    ...BOTTOM_LIMITS,
    ...TUBE_LIMITS.slice(0, 2).map(({ given: _, ...limit }) => limit),
    {
      code: 'holes-behind-tab',
      symbol: 'tab',
      atMost: 'firstHole - 1/2 punch - 1/8 in',
      severity: 'stop',
      says: 'A glue tab {tab} wide lies behind a ribbon hole.',
      remedy: 'Make it at most {limit}, or the holes nearer to each other.',
    },
    {
      code: 'window-meets-holes',
      symbol: 'windowMargin',
      atLeast: 'holeBelow + 1/2 punch + 3/8 in',
      severity: 'stop',
      given: [{ window: 'front' }, { window: 'back' }],
      says: 'A window with a margin of {windowMargin} leaves less than 3/8 in below the ribbon holes.',
      remedy: 'Make the margin at least {limit}.',
    },
    {
      code: 'gusset-as-high-as-bag',
      symbol: 'height',
      atLeast: 'depth/2 + 1 in',
      severity: 'stop',
      says: 'The side creases of a bag {depth} deep take up all its height, {height}.',
      remedy: 'Make it at least {limit} high.',
    },
    {
      code: 'holes-near-side',
      symbol: 'holesApart',
      atMost: 'width - punch - 3/4 in',
      severity: 'stop',
      says: 'Holes {holesApart} apart lie less than 3/8 in from the sides of a bag {width} wide.',
      remedy: 'Make them at most {limit} apart.',
    },
    {
      code: 'holes-near-each-other',
      symbol: 'holesApart',
      atLeast: 'punch + 3/8 in',
      severity: 'stop',
      says: 'Holes {holesApart} apart leave less than 3/8 in of card between them.',
      remedy: 'Make them at least {limit} apart.',
    },
    {
      code: 'holes-near-rim',
      symbol: 'holeBelow',
      atLeast: '1/2 punch + 3/8 in',
      severity: 'stop',
      says: 'Holes {punch} wide, {holeBelow} below the rim, leave less than 3/8 in of card above them.',
      remedy: 'Make it at least {limit}.',
    },
    {
      code: 'holes-low',
      symbol: 'holeBelow',
      atMost: '1/2 height - punch',
      severity: 'stop',
      says: 'Holes {holeBelow} below the rim of a bag {height} high let it tip over.',
      remedy: 'Make it at most {limit}.',
    },
  ],
  promises: [{ claim: 'covers', piece: 'bag', panels: ['frontFlap', 'backFlap'], area: ['width', 'depth'] }],
  fits: BOTTOM_FITS,
  traits: ['tall'],
});
