import { toDegrees } from '../../units/angles';
import { defineStyle } from '../language/define';
import type { Len, PanelSpec, PieceSpec } from '../language/types';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';

/** Clear of the score at a tab’s ends. source: common practice, no source */
const CLEAR_MM = 1.5875;

const triangle = (on: `${string}.${'e1' | 'e2'}`, corner: readonly [Len, Len]): PanelSpec => ({
  role: 'wall',
  outline: [corner],
  asLies: true,
  on,
  fold: 'sideFold',
});

const crimp = (on: `${string}.${'e0' | 'e2'}`, lastDraw: Len): PanelSpec => ({
  role: 'glueTab',
  outline: [
    ['crimpDraw', 'crimp'],
    [`width - ${lastDraw}`, 'crimp'],
  ],
  on,
  fold: 'crimpFold',
});

const PIECE: PieceSpec = {
  label: 'Pouch',
  panels: {
    first: {
      role: 'wall',
      outline: [
        ['0', '0'],
        ['width', '0'],
        ['width/2', 'height'],
      ],
    },
    second: triangle('first.e1', ['width/2', 'height']),
    third: triangle('second.e1', ['width', '0']),
    fourth: triangle('third.e2', ['width/2', 'height']),
    tab: {
      role: 'glueTab',
      outline: [
        ['cornerDraw', 'tab'],
        ['edge - tipDraw', 'tab'],
      ],
      on: 'first.e2',
      fold: 'sideFold',
    },
    bottomTab: crimp('first.e0', 'crimpDraw'),
    topTab: crimp('second.e2', 'cornerDraw'),
  },
  joints: [
    { panel: 'tab', onto: 'fourth', lap: 'inside' },
    { panel: 'bottomTab', onto: 'third', lap: 'inside' },
    { panel: 'topTab', onto: 'fourth', lap: 'inside' },
  ],
  seams: [
    ['fourth.e1', 'first.e2'],
    ['first.e0', 'third.e1'],
    ['second.e2', 'fourth.e2'],
  ],
  closing: [
    { do: 'fold', panels: ['tab', 'bottomTab', 'topTab'] },
    { do: 'fold', panels: ['second', 'third'] },
    { do: 'glue', panel: 'bottomTab', onto: 'third', tip: 'Fill it now: the last wall is its lid.' },
    { do: 'fold', panels: ['fourth'] },
    { do: 'glue', panel: 'tab', onto: 'fourth' },
    { do: 'glue', panel: 'topTab', onto: 'fourth' },
  ],
  shell: ['first', 'second', 'third', 'fourth'],
  roomFormula: 'width ** 2 * reach / 6',
  roomMm3: ({ width = 0, reach = 0 }) => (width * width * reach) / 6,
};

/** A tube closed crosswise at both ends: four equal triangles. Geometry: the disphenoid of solid geometry; construction: common practice, no source. */
export const twistPouch = defineStyle({
  id: 'twist-pouch',
  version: 1,
  name: 'Twist pouch',
  source: 'solid geometry of the disphenoid; construction common practice, no source',
  goodFor: 'A handful of wrapped candy, confetti, a surprise: four triangles and three tabs.',
  watchOut: 'It is torn or cut open. Much of it is corner, so it holds less than it looks.',
  symbols: {
    width: sizeOf('Width', 'Closed end, from corner to corner.', '2 1/2 in', '1 1/2 in', '6 in'),
    height: sizeOf('Height', 'Strip, from the bottom score to the top one.', '3 1/2 in', '1 1/2 in', '9 in'),
    tab: allowanceOf('Glue tab', 'The strip along the slanted seam.', '3/8 in', '1/4 in', '3/4 in'),
    crimp: allowanceOf('End tabs', 'The strips inside both closed ends.', '3/8 in', '1/4 in', '3/4 in'),
  },
  inside: ['1/4 width - t', '1/4 width - t', '1/4 reach - t'],
  quantities: {
    reach: {
      means: 'from one closed end to the other',
      formula: 'sqrt(max(0, height ** 2 - width ** 2 / 4))',
      of: ({ width = 0, height = 0 }) => Math.sqrt(Math.max(0, height ** 2 - width ** 2 / 4)),
    },
    edge: {
      means: 'length of a slanted score',
      formula: 'hypot(width / 2, height)',
      of: ({ width = 0, height = 0 }) => Math.hypot(width / 2, height),
    },
    cornerDraw: {
      means:
        'how far the seam tab and the top tab draw in where they meet, each to its own side of the corner',
      formula: `max(tab, crimp) * height / (edge - width / 2) + ${CLEAR_MM} * mm`,
      of: ({ width = 0, height = 0, tab = 0, crimp = 0, edge = 0 }) =>
        (Math.max(tab, crimp) * height) / (edge - width / 2) + CLEAR_MM,
    },
    tipDraw: {
      means: 'how far the seam tab draws in at a tip, to lie on the last triangle',
      formula: `tab / tan(2 * atan(width / 2 / height)) + ${CLEAR_MM} * mm`,
      of: ({ width = 0, height = 0, tab = 0 }) =>
        tab / Math.tan(2 * Math.atan(width / 2 / height)) + CLEAR_MM,
    },
    crimpDraw: {
      means: 'how far an end tab draws in at both ends',
      formula: `max(crimp / 2, crimp * width / 2 / height) + ${CLEAR_MM} * mm`,
      of: ({ width = 0, height = 0, crimp = 0 }) =>
        Math.max(crimp / 2, (crimp * width) / 2 / height) + CLEAR_MM,
      onMark: true,
    },
  },
  angles: {
    sideFold: {
      means: 'fold at a slanted score: between two faces of the disphenoid',
      formula: 'acos(-(width ** 2) / (4 * height ** 2))',
      of: ({ width = 0, height = 0 }) => toDegrees(Math.acos(-(width ** 2) / (4 * height ** 2))),
    },
    crimpFold: {
      means: 'fold at a closed end',
      formula: '180 - 2 * asin(width / 2 / height)',
      of: ({ width = 0, height = 0 }) => 180 - 2 * toDegrees(Math.asin(width / 2 / height)),
    },
  },
  pieces: { pouch: PIECE },
  constraints: [
    {
      code: 'pouch-too-low',
      symbol: 'height',
      atLeast: 'width',
      severity: 'stop',
      says: 'A strip {height} high is too low to close crosswise over ends {width} wide.',
      remedy: 'Make it at least {limit}.',
    },
    {
      code: 'pouch-too-slim',
      symbol: 'height',
      atMost: '2 width',
      severity: 'stop',
      says: 'A strip {height} high over ends {width} wide leaves tips too slim to glue.',
      remedy: 'Make it at most {limit}.',
    },
    {
      code: 'seam-tab-too-wide',
      symbol: 'tab',
      atMost: '1/6 width',
      severity: 'stop',
      says: 'A seam tab {tab} wide is cut to a point on triangles {width} wide.',
      remedy: 'Make it at most {limit}.',
    },
    {
      code: 'end-tabs-too-wide',
      symbol: 'crimp',
      atMost: '1/6 width',
      severity: 'stop',
      says: 'End tabs {crimp} wide are cut to a point on ends {width} wide.',
      remedy: 'Make them at most {limit}.',
    },
  ],
  promises: [],
  traits: [],
});
