import { toDegrees, toRadians } from '../../units/angles';
import { inPanels } from '../add-ons/places';
import { defineStyle } from '../language/define';
import type { PanelSpec, PieceSpec } from '../language/types';
import { BETWEEN_CUTS_DEG } from '../shapes/between-cuts';
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

/** Card that a gable’s tab is cut clear of the roof beside it in the flat. source: our choice */
const BESIDE_ROOF_MM = 1.5875;

/** A side that runs up into a gable, with a tab under the back roof. */
const gable = (
  name: 'left' | 'right',
  on: `${'front' | 'back'}.right`,
): Readonly<Record<string, PanelSpec>> => ({
  [name]: {
    role: 'wall',
    outline: [
      ['0', 'depth'],
      ['height', 'depth'],
      ['height + apex', 'nearHalf'],
    ],
    on,
    fold: 90,
  },
  // the strip goes round: the back roof is beyond the left gable, before the right one
  [`${name}RoofTab`]: {
    role: 'glueTab',
    outline:
      name === 'left'
        ? [
            ['eaveDraw', 'roofTab'],
            ['slant - ridgeDraw', 'roofTab'],
          ]
        : [
            ['ridgeDraw', 'roofTab'],
            ['slant - eaveDraw', 'roofTab'],
          ],
    on: name === 'left' ? 'left.e3' : 'right.e4',
    fold: 90,
  },
});

const ROOF_JOINTS = [
  { panel: 'leftRoofTab', onto: 'backRoof' },
  { panel: 'rightRoofTab', onto: 'backRoof' },
] as const;

const PIECE: PieceSpec = {
  label: 'House',
  panels: {
    front: { role: 'wall', size: ['width', 'height'] },
    ...gable('left', 'front.right'),
    back: { role: 'wall', size: ['width', 'height'], on: 'left.e2', fold: 90 },
    ...gable('right', 'back.right'),
    tab: {
      role: 'glueTab',
      size: ['tab', 'height - 2 tabClear'],
      on: 'right.e2',
      at: 'tabClear',
      taper: 'tabBevel',
      fold: 90,
    },
    frontFlap: { role: 'bottomFlap', size: ['width', 'flap'], on: 'front.down', fold: 90 },
    leftFlap: { role: 'bottomFlap', size: ['depth', 'flap'], on: 'left.e1', fold: 90 },
    backFlap: { role: 'bottomFlap', size: ['width', 'flap'], on: 'back.down', fold: 90 },
    rightFlap: { role: 'bottomFlap', size: ['depth', 'flap'], on: 'right.e1', fold: 90 },
    backRoof: { role: 'roof', size: ['width', 'slant'], on: 'back.up', fold: 'eave' },
    frontRoof: { role: 'roof', size: ['width', 'slant'], on: 'front.up', fold: 'eave' },
    // between the gable tabs, under the other roof
    ridgeFlap: {
      role: 'tuck',
      size: ['width - 2 roofTab - 2 ridgeClear', 'ridge'],
      on: 'frontRoof.up',
      at: 'roofTab + ridgeClear',
      taper: 'ridgeBevel',
      fold: 'ridgeFold',
    },
  },
  joints: [
    { panel: 'tab', onto: 'front', lap: 'inside' },
    ...BOTTOM_JOINTS,
    ...ROOF_JOINTS.map((joint) => ({ ...joint, lap: 'inside' }) as const),
  ],
  seams: [
    ['right.e2', 'front.left'],
    ['frontRoof.up', 'backRoof.up'],
    ['left.e3', 'backRoof.left'],
    ['left.e4', 'frontRoof.right'],
    ['right.e3', 'frontRoof.left'],
    ['right.e4', 'backRoof.right'],
  ],
  overlaps: [BOTTOM_OVERLAP, ['ridgeFlap', 'backRoof']],
  closing: [
    { do: 'fold', panels: ['left'], to: 180 },
    { do: 'fold', panels: ['right'], to: 180 },
    { do: 'glue', panel: 'tab', onto: 'front' },
    { do: 'fold', panels: ['left', 'back', 'right', 'tab'] },
    ...BOTTOM_CLOSING,
    { do: 'fold', panels: ['leftRoofTab', 'rightRoofTab'] },
    { do: 'fold', panels: ['backRoof'] },
    ...ROOF_JOINTS.map((joint) => ({ do: 'glue', ...joint }) as const),
    { do: 'tuck', panels: ['frontRoof', 'ridgeFlap'], bends: true },
  ],
  shell: ['front', 'left', 'back', 'right', 'frontRoof', 'backRoof'],
  roomMm3: ({ width = 0, depth = 0, height = 0, apex = 0 }) => width * depth * (height + apex / 2),
  roomFormula: 'width * depth * (height + apex / 2)',
};

/** A box whose sides run up into gables under a roof of two slopes. Geometry: right triangles; construction: common practice, no source. */
export const house = defineStyle({
  id: 'house',
  version: 1,
  name: 'Little house',
  source: 'plane geometry of the gable; construction common practice, no source',
  goodFor: 'Cookies, candy, an ornament: a row of them makes a village. The front roof opens.',
  watchOut: 'Cut doors and windows while it lies flat. Keep candles out: use a battery tealight.',
  symbols: {
    ...TUBE_SYMBOLS,
    width: sizeOf('Width', 'Front panel, score to score, along the ridge.', '3 in', '1 1/2 in', '10 in'),
    depth: sizeOf('Depth', 'Side panel across its bottom score.', '2 in', '1 1/4 in', '8 in'),
    height: sizeOf('Height', 'Wall, from the bottom score to the eave.', '2 in', '1 in', '10 in'),
    rise: sizeOf(
      'Roof rise',
      'From the level of the eaves up to the ridge, or a little more: the slant is on a mark.',
      '1 in',
      '1/2 in',
      '6 in',
    ),
    tab: { ...TUBE_SYMBOLS.tab, default: '5/8 in' },
    flap: { ...BOTTOM_SYMBOLS.flap, default: '1 1/4 in' },
    roofTab: allowanceOf('Gable tab', 'The tabs under the back roof.', '5/16 in', '1/4 in', '3/4 in'),
    ridge: allowanceOf(
      'Ridge flap',
      'The edge of the front roof that goes under the back one.',
      '1/2 in',
      '3/8 in',
      '1 1/2 in',
    ),
  },
  inside: ['width - t', 'depth - t', 'height - 7/2 t'],
  lets: {
    ...BOTTOM_LETS,
    nearHalf: 'depth/2',
    seamRelief: '0',
    ridgeClear: '1/16 in',
  },
  quantities: {
    ...TAB_QUANTITIES,
    slant: {
      means: 'from the eave up the roof to the ridge',
      of: ({ depth = 0, rise = 0 }) => Math.hypot(depth / 2, rise),
      formula: 'hypot(depth / 2, rise)',
      onMark: true,
    },
    apex: {
      means: 'height of the ridge above the eaves, for a slant on a mark',
      of: ({ depth = 0, slant = 0 }) => Math.sqrt(Math.max(0, slant ** 2 - (depth / 2) ** 2)),
      formula: 'sqrt(max(0, slant ** 2 - (depth / 2) ** 2))',
    },
    eaveDraw: {
      means:
        'how far a gable tab ends before the eave, so that a knife gets in between it and the roof beside it in the flat',
      of: ({ depth = 0, apex = 0, roofTab = 0 }) =>
        roofTab / Math.tan(Math.atan2(depth / 2, apex) - toRadians(BETWEEN_CUTS_DEG)) + BESIDE_ROOF_MM,
      formula: `roofTab / tan(atan2(depth / 2, apex) - ${BETWEEN_CUTS_DEG}) + ${BESIDE_ROOF_MM} * mm`,
    },
    ridgeDraw: {
      means: 'how far a gable tab slopes in below the ridge',
      of: ({ roofTab = 0 }) => roofTab / 2,
      formula: 'roofTab / 2',
    },
    ridgeBevel: {
      means: 'how far each end of the ridge flap slopes in',
      of: ({ ridge = 0 }) => ridge / 3,
      formula: 'ridge / 3',
      onMark: true,
    },
  },
  angles: {
    eave: {
      means: 'fold of a roof at the eave',
      of: ({ depth = 0, apex = 0 }) => toDegrees(Math.atan2(depth / 2, apex)),
      formula: 'atan2(depth / 2, apex)',
    },
    ridgeFold: {
      means: 'fold of the ridge flap under the other roof',
      of: ({ depth = 0, apex = 0 }) => 180 - 2 * toDegrees(Math.atan2(depth / 2, apex)),
      formula: '180 - 2 * atan2(depth / 2, apex)',
    },
  },
  addOns: { window: inPanels('house', 'front', 'back') },
  sidesRenamed: ['house'],
  pieces: { house: PIECE },
  constraints: [
    ...BOTTOM_LIMITS,
    ...TUBE_LIMITS.slice(0, 2).map(({ given: _, ...limit }) => limit),
    {
      code: 'roof-too-flat',
      symbol: 'rise',
      atLeast: '1/4 depth',
      severity: 'stop',
      says: 'A roof that rises {rise} over a house {depth} deep is so flat that its flap does not hold.',
      remedy: 'Make it rise at least {limit}.',
    },
    {
      code: 'roof-too-steep',
      symbol: 'rise',
      atMost: 'depth',
      severity: 'stop',
      says: 'A roof that rises {rise} over a house {depth} deep leaves no card for the gable tabs.',
      remedy: 'Make it rise at most {limit}.',
    },
    {
      code: 'gable-tabs-too-wide',
      symbol: 'roofTab',
      atMost: '1/6 depth',
      severity: 'stop',
      says: 'Gable tabs {roofTab} wide leave no straight edge on a gable {depth} across.',
      remedy: 'Make them at most {limit}.',
    },
    {
      code: 'ridge-flap-long',
      symbol: 'ridge',
      atMost: '3/8 depth',
      severity: 'stop',
      says: 'A ridge flap {ridge} long catches under the back roof of a house {depth} deep.',
      remedy: 'Make it at most {limit}.',
    },
    {
      code: 'gable-tabs-fill-ridge',
      symbol: 'width',
      atLeast: '2 roofTab + 2/3 ridge + 3/4 in',
      severity: 'stop',
      says: 'The gable tabs leave no room for a ridge flap in a house {width} wide.',
      remedy: 'Make it at least {limit} wide.',
    },
  ],
  promises: [
    { claim: 'covers', piece: 'house', panels: ['frontFlap', 'backFlap'], area: ['width', 'depth'] },
  ],
  fits: [
    ...BOTTOM_FITS,
    {
      what: 'ridge flap between the gable tabs',
      room: 'width - 2 roofTab',
      body: 'width - 2 roofTab - 2 ridgeClear',
      card: '0 in',
      ease: '1/32 in',
      marks: 4,
      truest: 'the ends of the ridge flap and the width of the gable tabs',
      saves: 'Pare a little off both ends of the ridge flap.',
    },
  ],
  traits: ['lid', 'tall'],
});
