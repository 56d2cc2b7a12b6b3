import { inEdges } from '../add-ons/places';
import { defineStyle } from '../language/define';
import type { PanelSpec } from '../language/types';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';

const lock = (on: `${string}.${'left' | 'right'}`): PanelSpec => ({
  // pared at the rim too, where the strip of the rolled wall comes down on it
  role: 'lockFlap',
  size: ['lockTab', 'height'],
  on,
  fold: 90,
});

/** Every corner tab, and the outer wall it is stuck to. */
const LOCKS = [
  ['frontLeftLock', 'left'],
  ['backLeftLock', 'left'],
  ['frontRightLock', 'right'],
  ['backRightLock', 'right'],
] as const;

/** One side that rolls over: outer wall, strip along the top, inner wall, and a foot on the floor. */
const rolled = (side: 'left' | 'right'): Readonly<Record<string, PanelSpec>> => ({
  [side]: { role: 'wall', size: ['height', 'depth'], on: `base.${side}`, fold: 90 },
  [`${side}Strip`]: {
    role: 'liner',
    size: ['strip', 'innerDepth'],
    on: `${side}.${side}`,
    at: 'relief',
    fold: 90,
  },
  [`${side}Inner`]: {
    role: 'liner',
    size: ['innerHeight', 'innerDepth'],
    on: `${side}Strip.${side}`,
    fold: 90,
  },
  [`${side}Foot`]: {
    role: 'liner',
    size: ['foot', 'innerDepth'],
    on: `${side}Inner.${side}`,
    fold: -90,
    taper: '1/2 foot',
  },
});

/** A tray whose side walls roll over their corner tabs, which are stuck to the outer wall before; upside down it is a lid. FEFCO family 04; construction: common practice, no source. */
export const doubleWall = defineStyle({
  id: 'double-wall',
  version: 1,
  name: 'Double-wall tray or lid',
  source: 'common practice, no source; FEFCO family 04 has its corrugated cousins',
  goodFor: 'A stiff tray or a stately lid, with clean edges on its two side walls, which are double.',
  watchOut:
    'The strip along the top must be at least two layers wide, or the inner wall won’t fold down. Stick the corner tabs before you roll it over them.',
  symbols: {
    width: sizeOf('Width', 'Floor, score to score, left to right.', '4 in', '1 1/2 in', '12 in'),
    depth: sizeOf('Depth', 'Floor, score to score, front to back.', '3 in', '1 1/2 in', '12 in'),
    height: sizeOf('Height', 'Outer wall, from the floor score to the top score.', '1 in', '1/2 in', '4 in'),
    strip: allowanceOf(
      'Strip',
      'Along the top of a rolled wall, between its two scores.',
      '1/8 in',
      '1/16 in',
      '1/2 in',
    ),
    foot: allowanceOf(
      'Foot',
      'The edge of the inner wall that rests on the floor.',
      '1/4 in',
      '1/4 in',
      '1 in',
    ),
    relief: allowanceOf(
      'End relief',
      'How much an inner wall stays clear of front and back.',
      '1/16 in',
      '1/32 in',
      '1/4 in',
    ),
  },
  inside: ['width - 2 strip - t', 'depth - t', 'height - 2t'],
  allowances: { innerShort: 't' },
  lets: { innerHeight: 'height - innerShort', innerDepth: 'depth - 2 relief' },
  quantities: {
    lockTab: {
      means: 'corner tab held inside a rolled wall: short of the rim, and of half that wall',
      of: ({ height = 0, depth = 0, relief = 0 }) => Math.min(height, depth / 2) - relief,
      formula: 'min(height, depth / 2) - relief',
    },
  },
  addOns: {
    ribbon: [{ id: 'ends', label: 'A handle in front and back', piece: 'tray', at: ['front', 'back'] }],
    notch: inEdges('tray', 'front.down', 'back.up'),
  },
  pieces: {
    tray: {
      label: 'Tray',
      panels: {
        base: { role: 'base', size: ['width', 'depth'] },
        front: { role: 'wall', size: ['width', 'height'], on: 'base.down', fold: 90 },
        back: { role: 'wall', size: ['width', 'height'], on: 'base.up', fold: 90 },
        ...rolled('left'),
        ...rolled('right'),
        frontLeftLock: lock('front.left'),
        frontRightLock: lock('front.right'),
        backLeftLock: lock('back.left'),
        backRightLock: lock('back.right'),
      },
      joints: [
        ...LOCKS.map(([panel, onto]) => ({ panel, onto, lap: 'inside' }) as const),
        { panel: 'leftFoot', onto: 'base', lap: 'inside', gap: 'innerShort' },
        { panel: 'rightFoot', onto: 'base', lap: 'inside', gap: 'innerShort' },
      ],
      seams: [
        ['front.left', 'left.down'],
        ['front.right', 'right.down'],
        ['back.left', 'left.up'],
        ['back.right', 'right.up'],
      ],
      closing: [
        {
          do: 'fold',
          panels: ['front', 'back', ...LOCKS.map(([panel]) => panel)],
        },
        { do: 'fold', panels: ['left', 'right'] },
        ...LOCKS.map(([panel, onto]) => ({ do: 'glue', panel, onto }) as const),
        { do: 'fold', panels: ['leftFoot', 'rightFoot'] },
        { do: 'fold', panels: ['leftStrip'] },
        { do: 'fold', panels: ['leftInner'], tip: 'Roll the side over the corner tabs and press it down.' },
        { do: 'fold', panels: ['rightStrip'] },
        { do: 'fold', panels: ['rightInner'] },
        { do: 'glue', panel: 'leftFoot', onto: 'base' },
        { do: 'glue', panel: 'rightFoot', onto: 'base' },
      ],
      shell: ['base', 'left', 'right', 'front', 'back'],
      roomMm3: ({ width = 0, depth = 0, height = 0 }) => width * depth * height,
      roomFormula: 'width * depth * height',
    },
  },
  constraints: [
    {
      code: 'strip-too-narrow',
      symbol: 'strip',
      atLeast: '2t',
      severity: 'stop',
      says: 'A strip {strip} wide is narrower than two layers, {cards}.',
      remedy: 'Make it at least {limit}.',
      facts: { cards: '2t' },
    },
    {
      code: 'inner-walls-meet',
      symbol: 'strip',
      atMost: 'width/4',
      severity: 'stop',
      says: 'Strips {strip} wide leave no room between the inner walls of a tray {width} wide.',
      remedy: 'Make them at most {limit}.',
    },
    {
      code: 'feet-meet',
      symbol: 'foot',
      atMost: 'width/2 - strip - 1/8 in',
      severity: 'stop',
      says: 'Feet {foot} wide meet in the middle of a tray {width} wide.',
      remedy: 'Make them at most {limit}.',
    },
    {
      code: 'inner-walls-meet-when-rolled',
      symbol: 'height',
      atMost: 'width/2 - strip - 1/8 in',
      severity: 'stop',
      says: 'Inner walls of a tray {height} high meet while they are rolled in over a floor {width} wide.',
      remedy: 'Make it at most {limit} high.',
    },
  ],
  promises: [{ claim: 'covers', piece: 'tray', panels: ['base'], area: ['width', 'depth'] }],
  fits: [
    {
      // half of the outer and of the inner wall, and the corner tab between them
      what: 'corner tabs between the two walls of a side',
      room: 'strip',
      body: '0 in',
      card: '2t',
      ease: '0 in',
      marks: 2,
      truest: 'the two scores of each strip',
      saves: 'Score both strips at one setting from each end.',
    },
    {
      what: 'inner walls between front and back',
      room: 'depth',
      body: 'innerDepth',
      card: 't',
      ease: '1/32 in',
      marks: 4,
      truest: 'the front and back scores and the ends of the inner walls',
      saves: 'Pare the ends of an inner wall until it goes in.',
    },
  ],
  traits: [],
});
