import { toDegrees } from '../units/angles';
import { defineStyle } from './define';
import type { PanelSpec } from './types';

const side = (on: `base.${'left' | 'right' | 'up' | 'down'}`): PanelSpec => ({
  role: 'wall',
  outline: [['width/2', 'slant']],
  on,
  fold: 'baseFold',
});

const tab = (on: `${string}.e1`): PanelSpec => ({
  role: 'glueTab',
  outline: [
    ['tab', 'tab'],
    ['edge - tipDraw', 'tab'],
  ],
  on,
  fold: 'tabFold',
});

/** Degrees beyond its own fold that lets a tab pass the side it goes behind. source: our choice, tried by the closing-path check */
const TUCK = 5;

/** A star of four triangles round a square. Geometry: solid geometry of the square pyramid; construction: common practice, no source. */
export const squarePyramid = defineStyle({
  id: 'square-pyramid',
  version: 1,
  name: 'Square pyramid',
  source: 'solid geometry; construction common practice, no source',
  goodFor: 'A truffle, a ring, a few sweets: small things that deserve a little theatre.',
  watchOut: 'Much of the height is tip, so the room is a third of the box around it.',
  symbols: {
    width: {
      role: 'size',
      label: 'Base',
      help: 'Side of the square base, score to score.',
      default: '3 in',
      min: '1 in',
      max: '8 in',
    },
    slant: {
      role: 'size',
      label: 'Slant',
      help: 'From the base score up the middle of a side to the tip.',
      default: '3 1/4 in',
      min: '3/4 in',
      max: '10 in',
    },
    tab: {
      role: 'allowance',
      label: 'Glue tab',
      help: 'Width of the tab along each slanted edge.',
      default: '3/8 in',
      min: '1/4 in',
      max: '1 in',
    },
  },
  inside: ['2/3 width - t', '2/3 width - t', '1/3 height - t'],
  quantities: {
    height: {
      means: 'height of the tip above the base',
      of: ({ width = 0, slant = 0 }) => Math.sqrt(slant * slant - (width * width) / 4),
    },
    edge: {
      means: 'length of a slanted edge',
      of: ({ width = 0, slant = 0 }) => Math.hypot(width / 2, slant),
    },
    tipDraw: {
      means: 'how far the tab ends before the tip, so that it stays inside the next side',
      of: ({ width = 0, slant = 0, tab = 0 }) =>
        Math.max(2 * tab, tab / Math.tan(Math.min(Math.PI / 2, 2 * Math.atan(width / 2 / slant)))),
    },
  },
  angles: {
    baseFold: {
      means: 'fold of a side at the base',
      of: ({ width = 0, slant = 0 }) => 180 - toDegrees(Math.acos(width / (2 * slant))),
    },
    tabFold: {
      means: 'fold of a tab at a slanted edge',
      of: ({ width = 0, slant = 0 }) => toDegrees(Math.acos((width * width) / (4 * slant * slant))),
    },
    tabTuck: {
      means: 'how far a tab is folded in before the sides come up',
      of: ({ width = 0, slant = 0 }) => toDegrees(Math.acos((width * width) / (4 * slant * slant))) + TUCK,
    },
  },
  pieces: {
    pyramid: {
      label: 'Pyramid',
      panels: {
        base: { role: 'base', size: ['width', 'width'] },
        front: side('base.down'),
        right: side('base.right'),
        back: side('base.up'),
        left: side('base.left'),
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
        ['front.e1', 'left.e2'],
        ['right.e1', 'front.e2'],
        ['back.e1', 'right.e2'],
        ['left.e1', 'back.e2'],
      ],
      closing: [
        {
          do: 'fold',
          panels: ['frontTab', 'rightTab', 'backTab', 'leftTab'],
          to: 'tabTuck',
          tip: 'Fold the tabs in a little farther than they will lie, so that each slips inside the next side.',
        },
        { do: 'fold', panels: ['front', 'right', 'back', 'left'] },
        { do: 'fold', panels: ['frontTab', 'rightTab', 'backTab', 'leftTab'] },
        { do: 'glue', panel: 'frontTab', onto: 'left' },
        { do: 'glue', panel: 'rightTab', onto: 'front' },
        { do: 'glue', panel: 'backTab', onto: 'right', tip: 'Fill it before the last side is glued.' },
        { do: 'glue', panel: 'leftTab', onto: 'back' },
      ],
      shell: ['base', 'front', 'right', 'back', 'left'],
      roomMm3: ({ width = 0, height = 0 }) => (width * width * height) / 3,
    },
  },
  constraints: [
    {
      code: 'pyramid-too-low',
      symbol: 'slant',
      atLeast: '3/4 width',
      severity: 'stop',
      says: 'With a slant of {slant} over a base {width} wide the tabs catch on the sides they go behind.',
      remedy: 'Make the slant at least {limit}.',
    },
    {
      code: 'tab-too-wide',
      symbol: 'tab',
      atMost: '1/8 width + 1/16 slant',
      severity: 'stop',
      says: 'Glue tabs {tab} wide leave little straight length to glue on sides {width} wide.',
      remedy: 'Make them at most {limit}.',
    },
  ],
  promises: [],
  traits: ['lid'],
});
