import { toDegrees, toRadians } from '../../units/angles';
import { defineStyle } from '../language/define';
import type { PanelSpec, Values } from '../language/types';
import { BETWEEN_CUTS_DEG } from '../shapes/between-cuts';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';

/** How far a wall leans out over its slant, as a share of it. */
const lean = ({ width = 0, rim = 0, slant = 0 }: Values): number => (rim - width) / 2 / slant;

const wall = (on: `base.${'left' | 'right' | 'up' | 'down'}`): PanelSpec => ({
  role: 'wall',
  outline: [
    ['-flare', 'slant'],
    ['width + flare', 'slant'],
  ],
  on,
  fold: 'baseFold',
});

const tab = (on: `${string}.e1`): PanelSpec => ({
  role: 'glueTab',
  outline: [
    ['footDraw', 'tab'],
    ['edge - rimDraw', 'tab'],
  ],
  on,
  fold: 'tabFold',
});

/** A square bowl with walls that flare. Geometry: frustum of a square pyramid; construction: common practice, no source. */
export const flaredBowl = defineStyle({
  id: 'flared-bowl',
  version: 1,
  name: 'Flared bowl',
  source: 'solid geometry of the frustum; construction common practice, no source',
  goodFor: 'Popcorn, nuts in a cup, confetti: something to reach into on the table.',
  watchOut: 'Its scores stop at the corners, so mark their ends. It stays open at the top.',
  symbols: {
    width: sizeOf('Base', 'Side of the square base, score to score.', '2 in', '3/4 in', '8 in'),
    rim: sizeOf('Rim', 'Side of the square opening.', '3 in', '3/4 in', '12 in'),
    slant: sizeOf(
      'Slant',
      'From the base score up the middle of a wall to the rim.',
      '1 1/2 in',
      '1/2 in',
      '8 in',
    ),
    tab: allowanceOf('Glue tab', 'Width of the tab along each corner.', '3/8 in', '1/4 in', '1 in'),
  },
  inside: ['width - t', 'width - t', 'height - t'],
  lets: { flare: 'rim/2 - width/2' },
  workings: {
    lean: '(rim - width) / 2 / slant',
  },
  quantities: {
    height: {
      means: 'height of the rim above the base',
      formula: 'slant * sqrt(1 - lean ** 2)',
      of: (values) => (values['slant'] ?? 0) * Math.sqrt(1 - lean(values) ** 2),
    },
    edge: {
      means: 'length of a slanted corner',
      formula: 'hypot(slant, flare)',
      of: ({ slant = 0, flare = 0 }) => Math.hypot(slant, flare),
    },
    footDraw: {
      means: 'how far a tab draws in at the base, so that a knife gets in between it and the next wall',
      formula: `max(0.25, 1 / tan(${90 - BETWEEN_CUTS_DEG} - 2 * asin(lean))) * tab`,
      of: (values) =>
        Math.max(0.25, 1 / Math.tan(toRadians(90 - BETWEEN_CUTS_DEG) - 2 * Math.asin(lean(values)))) *
        (values['tab'] ?? 0),
    },
    rimDraw: {
      means: 'how far a tab draws in at the rim, to stay within the leaning wall it is glued to',
      formula: 'max(0.25, 1.05 * tan(asin(lean))) * tab',
      of: (values) => Math.max(0.25, 1.05 * Math.tan(Math.asin(lean(values)))) * (values['tab'] ?? 0),
    },
  },
  angles: {
    baseFold: {
      means: 'fold of a wall at the base',
      formula: 'acos(lean)',
      of: (values) => toDegrees(Math.acos(lean(values))),
    },
    tabFold: {
      means: 'fold of a tab at a corner',
      formula: 'acos(lean ** 2)',
      of: ({ width = 0, rim = 0, slant = 0 }) => toDegrees(Math.acos(((rim - width) / 2 / slant) ** 2)),
    },
  },
  addOns: {
    ribbon: [{ id: 'sides', label: 'A handle below the rim', piece: 'bowl', at: ['left.e2', 'right.e2'] }],
  },
  pieces: {
    bowl: {
      label: 'Bowl',
      panels: {
        base: { role: 'base', size: ['width', 'width'] },
        front: wall('base.down'),
        right: wall('base.right'),
        back: wall('base.up'),
        left: wall('base.left'),
        frontTab: tab('front.e1'),
        rightTab: tab('right.e1'),
        backTab: tab('back.e1'),
        leftTab: tab('left.e1'),
      },
      joints: [
        { panel: 'frontTab', onto: 'left', lap: 'inside' },
        { panel: 'rightTab', onto: 'front', lap: 'inside' },
        { panel: 'backTab', onto: 'right', lap: 'inside' },
        { panel: 'leftTab', onto: 'back', lap: 'inside' },
      ],
      seams: [
        ['front.e1', 'left.e3'],
        ['right.e1', 'front.e3'],
        ['back.e1', 'right.e3'],
        ['left.e1', 'back.e3'],
      ],
      closing: [
        { do: 'fold', panels: ['frontTab', 'rightTab', 'backTab', 'leftTab'] },
        { do: 'fold', panels: ['front', 'right', 'back', 'left'] },
        { do: 'glue', panel: 'frontTab', onto: 'left' },
        { do: 'glue', panel: 'rightTab', onto: 'front' },
        { do: 'glue', panel: 'backTab', onto: 'right' },
        { do: 'glue', panel: 'leftTab', onto: 'back' },
      ],
      shell: ['base', 'front', 'right', 'back', 'left'],
      roomFormula: 'height * (width ** 2 + width * rim + rim ** 2) / 3',
      roomMm3: ({ width = 0, rim = 0, height = 0 }) =>
        (height * (width * width + width * rim + rim * rim)) / 3,
    },
  },
  constraints: [
    {
      code: 'rim-not-wider',
      symbol: 'rim',
      atLeast: 'width + 1/8 in',
      severity: 'stop',
      says: 'A rim {rim} over a base {width} does not flare.',
      remedy: 'Make the rim at least {limit}.',
    },
    {
      code: 'flares-too-much',
      symbol: 'rim',
      atMost: 'width + slant',
      severity: 'stop',
      says: 'A rim {rim} leans the walls out so far that their tabs do not fit on the blank.',
      remedy: 'Make the rim at most {limit}.',
    },
    {
      code: 'tab-too-wide',
      symbol: 'tab',
      atMost: '1/4 slant',
      severity: 'stop',
      says: 'Glue tabs {tab} wide leave little straight length on corners of a slant {slant}.',
      remedy: 'Make them at most {limit}.',
    },
  ],
  promises: [{ claim: 'covers', piece: 'bowl', panels: ['base'], area: ['width', 'width'] }],
  traits: [],
});
