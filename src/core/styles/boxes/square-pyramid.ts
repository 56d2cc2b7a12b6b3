import { toDegrees } from '../../units/angles';
import { defineStyle } from '../language/define';
import type { PanelSpec, PieceSpec, Values } from '../language/types';

/** Card left beside a hole near the tip, where a bow gathers all four. source: 1/16 in, common practice, no source */
const BESIDE_HOLE_MM = 1.5875;

/** How far a tab stays off a panel that meets the one it lies on: three of the thickest cards. source: 1/16 in, common practice, no source */
const CLEAR_MM = 1.5875;

/** Angle of one side at the tip, on the blank. */
const tipAngle = ({ width = 0, slant = 0 }: Values): number =>
  Math.min(Math.PI / 2, 2 * Math.atan(width / 2 / slant));

/** From the tip to where a tab as wide as asked stays clear of the next slanted edge. */
const pastTip = (values: Values): number =>
  (values['tab'] ?? 0) / Math.tan(tipAngle(values)) + CLEAR_MM / Math.sin(tipAngle(values));

const side = (on: `base.${'left' | 'right' | 'up' | 'down'}`, ribbon: boolean): PanelSpec => ({
  role: 'wall',
  outline: [['width/2', 'slant']],
  on,
  fold: 'baseFold',
  ...(ribbon
    ? { holes: [{ hole: 'round', across: 'punch', at: ['width/2', 'slant - holeBelow'] }] as const }
    : {}),
});

const tab = (on: `${string}.e1`): PanelSpec => ({
  role: 'glueTab',
  at: 'footGap',
  hinge: 'edge - footGap - tipGap',
  outline: [
    ['tab', 'tab'],
    ['edge - footGap - tipDraw', 'tab'],
  ],
  on,
  fold: 'tabFold',
});

/** Degrees beyond its own fold that lets a tab pass the side it goes behind. source: our choice, tried by the closing-path check */
const TUCK = 5;

const star = (ribbon: boolean): Readonly<Record<string, PanelSpec>> => ({
  base: { role: 'base', size: ['width', 'width'] },
  front: side('base.down', ribbon),
  right: side('base.right', ribbon),
  back: side('base.up', ribbon),
  left: side('base.left', ribbon),
});

const WHOLE: Pick<PieceSpec, 'label' | 'seams' | 'shell' | 'roomMm3' | 'roomFormula'> = {
  label: 'Pyramid',
  seams: [
    ['front.e1', 'left.e2'],
    ['right.e1', 'front.e2'],
    ['back.e1', 'right.e2'],
    ['left.e1', 'back.e2'],
  ],
  shell: ['base', 'front', 'right', 'back', 'left'],
  roomFormula: 'width ** 2 * height / 3',
  roomMm3: ({ width = 0, height = 0 }) => (width * width * height) / 3,
};

const gluedPyramid: PieceSpec = {
  ...WHOLE,
  panels: {
    ...star(false),
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
  closing: [
    {
      do: 'fold',
      panels: ['frontTab', 'rightTab', 'backTab', 'leftTab'],
      to: 'tabTuck',
      tip: 'Fold the tabs a little too far, so each slips inside the next side.',
    },
    { do: 'fold', panels: ['front', 'right', 'back', 'left'] },
    { do: 'fold', panels: ['frontTab', 'rightTab', 'backTab', 'leftTab'] },
    { do: 'glue', panel: 'frontTab', onto: 'left' },
    { do: 'glue', panel: 'rightTab', onto: 'front' },
    { do: 'glue', panel: 'backTab', onto: 'right', tip: 'Fill it before you glue the last side.' },
    { do: 'glue', panel: 'leftTab', onto: 'back' },
  ],
};

const tiedPyramid: PieceSpec = {
  ...WHOLE,
  panels: star(true),
  joints: [],
  closing: [
    {
      do: 'fold',
      panels: ['front', 'right', 'back', 'left'],
      tip: 'Fill it first, bring the four sides up together, thread a ribbon through the four holes and tie it.',
    },
  ],
};

/** A star of four triangles round a square. Geometry: solid geometry of the square pyramid; construction: common practice, no source. */
export const squarePyramid = defineStyle({
  id: 'square-pyramid',
  version: 1,
  name: 'Square pyramid',
  source: 'solid geometry; construction common practice, no source',
  goodFor: 'A truffle, a ring, a few candies: small gifts that deserve a little drama.',
  watchOut: 'Much of the height is tip, so the inside is only a third of the box around it.',
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
      given: [{ edges: 'glued' }],
    },
    holeBelow: {
      role: 'allowance',
      label: 'Hole below tip',
      help: 'From the tip down the middle of a side to the middle of its hole.',
      default: '7/8 in',
      // a bow gathers the tips where the hole is 1/4 to 3/8 in below them. source: common practice, no source
      forNew: '3/8 in',
      min: '1/4 in',
      max: '4 in',
      given: [{ edges: 'ribbon' }],
    },
    punch: {
      role: 'allowance',
      label: 'Hole',
      help: 'Width of the hole your punch makes.',
      default: '1/8 in',
      min: '1/16 in',
      max: '1/4 in',
      given: [{ edges: 'ribbon' }],
    },
  },
  inside: ['2/3 width - t', '2/3 width - t', '1/3 height - t'],
  // clear of the base, towards which a tab inside a leaning side comes
  lets: { footGap: '1/8 in' },
  workings: {
    tip: 'min(90, 2 * atan(width / 2 / slant))',
  },
  quantities: {
    holeLeast: {
      means:
        'how far below the tip a side is wide enough for the hole and 1/16 in of card on both sides of it',
      formula: `(punch / 2 + ${BESIDE_HOLE_MM} * mm) * hypot(width / 2, slant) / (width / 2)`,
      of: ({ width = 0, slant = 0, punch = 0 }) =>
        ((punch / 2 + BESIDE_HOLE_MM) * Math.hypot(width / 2, slant)) / (width / 2),
    },
    height: {
      means: 'height of the tip above the base',
      formula: 'sqrt(slant ** 2 - width ** 2 / 4)',
      of: ({ width = 0, slant = 0 }) => Math.sqrt(slant * slant - (width * width) / 4),
    },
    edge: {
      means: 'length of a slanted edge',
      formula: 'hypot(width / 2, slant)',
      of: ({ width = 0, slant = 0 }) => Math.hypot(width / 2, slant),
    },
    tipGap: {
      means: 'how far the tab’s score ends before the tip, clear of the tab on the next side',
      formula: `${CLEAR_MM} * mm / sin(tip)`,
      of: (values) => CLEAR_MM / Math.sin(tipAngle(values)),
    },
    tipDraw: {
      means: 'how far the tab ends before the tip, inside the next side and clear of the tab there',
      formula: `max(2 * tab, tab / tan(tip) + ${CLEAR_MM} * mm / sin(tip))`,
      of: (values) => Math.max(2 * (values['tab'] ?? 0), pastTip(values)),
    },
  },
  angles: {
    baseFold: {
      means: 'fold of a side at the base',
      formula: '180 - acos(width / (2 * slant))',
      of: ({ width = 0, slant = 0 }) => 180 - toDegrees(Math.acos(width / (2 * slant))),
    },
    tabFold: {
      means: 'fold of a tab at a slanted edge',
      formula: 'acos(width ** 2 / (4 * slant ** 2))',
      of: ({ width = 0, slant = 0 }) => toDegrees(Math.acos((width * width) / (4 * slant * slant))),
    },
    tabTuck: {
      means: 'how far a tab is folded in before the sides come up',
      formula: `acos(width ** 2 / (4 * slant ** 2)) + ${TUCK}`,
      of: ({ width = 0, slant = 0 }) => toDegrees(Math.acos((width * width) / (4 * slant * slant))) + TUCK,
    },
  },
  options: {
    edges: {
      label: 'Edges',
      help: 'Tabs glued inside the slanted edges, or no tabs and a ribbon through a hole near each tip.',
      choices: [
        { id: 'glued', label: 'Glued with tabs' },
        { id: 'ribbon', label: 'Tied with a ribbon' },
      ],
      // glued, it can only be torn open
      forNew: 'ribbon',
    },
  },
  pieces: (chosen) => ({ pyramid: chosen['edges'] === 'ribbon' ? tiedPyramid : gluedPyramid }),
  constraints: [
    {
      code: 'pyramid-too-low',
      symbol: 'slant',
      atLeast: '3/4 width',
      severity: 'stop',
      given: [{ edges: 'glued' }],
      says: 'With a slant of {slant} over a base {width} wide the tabs catch on the sides they go behind.',
      remedy: 'Make the slant at least {limit}.',
    },
    {
      code: 'sides-do-not-meet',
      symbol: 'slant',
      atLeast: '5/8 width',
      severity: 'stop',
      given: [{ edges: 'ribbon' }],
      says: 'Sides {slant} long over a base {width} wide hardly rise, and the ribbon cannot gather them.',
      remedy: 'Make the slant at least {limit}.',
    },
    {
      code: 'tab-too-wide',
      symbol: 'tab',
      given: [{ edges: 'glued' }],
      atMost: '1/8 width + 1/16 slant',
      severity: 'stop',
      says: 'Glue tabs {tab} wide leave little straight length to glue on sides {width} wide.',
      remedy: 'Make them at most {limit}.',
    },
    {
      code: 'hole-near-tip',
      symbol: 'holeBelow',
      given: [{ edges: 'ribbon' }],
      atLeast: 'holeLeast',
      severity: 'stop',
      says: 'A hole {punch} wide only {holeBelow} below the tip leaves less than 1/16 in of card beside it.',
      remedy: 'Make it at least {limit}, or use a smaller punch.',
    },
    {
      code: 'hole-far-from-tip',
      symbol: 'holeBelow',
      given: [{ edges: 'ribbon' }],
      atMost: '1/2 slant',
      severity: 'stop',
      says: 'A ribbon {holeBelow} below the tip of sides {slant} long ties the middle, and the tips spread.',
      remedy: 'Make it at most {limit}, or the pyramid wider, or glue its edges.',
    },
  ],
  promises: [],
  traits: ['lid'],
});
