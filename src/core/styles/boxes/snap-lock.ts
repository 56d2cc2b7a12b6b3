import { inEdges, inPanels } from '../add-ons/places';
import { defineStyle } from '../language/define';
import type { PanelSpec } from '../language/types';
import {
  gluedTube,
  LIDDED_OPTIONS,
  TUBE_LIMITS,
  TUBE_QUANTITIES,
  TUBE_SYMBOLS,
  type Tube,
} from '../shapes/glued-tube';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';
import { TOP_FITS, TOP_LIMITS, TOP_OPTION, TOP_QUANTITIES, TOP_SYMBOLS, topOf } from '../shapes/tube-top';
import { TUCK_ALLOWANCES, TUCK_LETS } from '../shapes/tuck-lid';

/**
 * First the back flap, a notch between two ears at its free edge; second the side flaps, slanted where the last one comes in; third the
 * front flap, whose tongue goes through the notch and so lies above the first flap while the ears lie above the third.
 */
const snapFlaps = ({ across }: Tube): Readonly<Record<string, PanelSpec>> => ({
  backFlap: {
    role: 'bottomFlap',
    outline: [
      ['0', 'reach'],
      ['ear', 'reach'],
      ['ear', 'notchFloor'],
      [`${across.back} - ear`, 'notchFloor'],
      [`${across.back} - ear`, 'reach'],
      [across.back, 'reach'],
    ],
    on: 'back.down',
    fold: 90,
  },
  leftFlap: {
    role: 'bottomFlap',
    size: [across.left, 'sideFlap'],
    on: 'left.down',
    taper: ['sideFlap', '0'],
    fold: 90,
  },
  rightFlap: {
    role: 'bottomFlap',
    size: [across.right, 'sideFlap'],
    on: 'right.down',
    taper: ['0', 'sideFlap'],
    fold: 90,
  },
  frontFlap: { role: 'bottomFlap', size: [across.front, 'half'], on: 'front.down', fold: 90 },
  tongue: {
    role: 'lockFlap',
    hinge: `${across.front} - 2 ear - 2 ease`,
    outline: [
      ['tongueDraw', 'lock'],
      [`${across.front} - 2 ear - 2 ease - tongueDraw`, 'lock'],
    ],
    on: 'frontFlap.down',
    at: 'ear + ease',
    flush: true,
  },
});

/** A bottom of four flaps that snaps shut without glue. Construction from memory; common practice, no source. ECMA family A, tuck top and snap-lock bottom; FEFCO 02 has none (both from memory). */
export const snapLock = defineStyle({
  id: 'snap-lock',
  version: 1,
  name: 'Snap-lock bottom box',
  source: 'common practice, no source; one, two, three as the flaps are folded (from memory)',
  goodFor: 'Make many ahead and store them flat. The bottom closes in three moves, without glue.',
  watchOut: 'The tongue holds by friction only. For anything heavy, choose a glued bottom.',
  symbols: {
    ...TUBE_SYMBOLS,
    depth: sizeOf('Depth', 'Side panel, score to score.', '2 in', '3/4 in', '12 in'),
    lock: allowanceOf(
      'Lock',
      'How far the tongue and the ears reach past the middle of the floor.',
      '1/2 in',
      '1/4 in',
      '2 in',
    ),
    ...TOP_SYMBOLS,
  },
  inside: ['width - t', 'depth - tuckTakes - t', 'height - lidTakes - 7/2 t'],
  allowances: TUCK_ALLOWANCES,
  lets: {
    ...TUCK_LETS,
    half: 'depth/2',
    // a little deeper than the tongue stands, so that it turns up through it freely
    notchFloor: 'half - 1/16 in',
    reach: 'half + lock',
    ear: 'width/4',
    tongue: 'width - 2 ear',
    ease: '1/32 in',
    tongueDraw: 'width/16',
  },
  quantities: {
    ...TUBE_QUANTITIES,
    ...TOP_QUANTITIES,
    sideFlap: {
      means: 'length of a side flap: to the middle of the depth, or as far as the tongue leaves room',
      of: ({ half = 0, ear = 0 }) => Math.min(half, ear),
      formula: 'min(half, ear)',
    },
  },
  addOns: {
    window: inPanels('box', 'front', 'back'),
    notch: inEdges('box', 'front.up'),
    hangTab: inEdges('box', 'front.up'),
  },
  options: { ...LIDDED_OPTIONS, ...TOP_OPTION },
  sidesRenamed: ['box'],
  pieces: (chosen) => {
    const top = topOf(chosen);
    const tube = gluedTube(chosen, 'tabClear', top.clear);
    return {
      box: {
        label: 'Box',
        panels: { ...tube.panels, ...snapFlaps(tube), ...top.panels(tube) },
        joints: [tube.joint],
        seams: [tube.seam],
        overlaps: [['tongue', 'backFlap', 'leftFlap', 'rightFlap', 'frontFlap'], ...top.overlaps],
        closing: [
          ...tube.closing,
          { do: 'fold', panels: ['backFlap'], tip: 'One: turn the box upside down.' },
          { do: 'fold', panels: ['leftFlap', 'rightFlap'], tip: 'Two: both sides, onto the first flap.' },
          {
            do: 'tuck',
            panels: ['frontFlap'],
            bends: true,
            tip: 'Three: press the tongue through the notch of the first flap until it snaps in, and look inside that it lies on top.',
          },
          ...top.closing,
        ],
        shell: ['front', 'left', 'back', 'right'],
        roomMm3: ({ width = 0, depth = 0, height = 0 }) => width * depth * height,
        roomFormula: 'width * depth * height',
      },
    };
  },
  constraints: [
    {
      code: 'lock-meets-wall',
      symbol: 'lock',
      atMost: 'depth/2 - 1/16 in',
      severity: 'stop',
      says: 'Flaps that reach {lock} past the middle are {reach} long and meet the far wall of a box {depth} deep.',
      remedy: 'Make the lock at most {limit}.',
    },
    {
      code: 'snap-narrow-front',
      symbol: 'width',
      atLeast: 'depth',
      severity: 'warn',
      says: 'A front {width} wide on a floor {depth} deep leaves a narrow lock.',
      remedy: 'Make the width at least {limit}, or swap width and depth.',
    },
    {
      code: 'tongue-narrow',
      symbol: 'width',
      atLeast: '1 1/2 in',
      severity: 'warn',
      says: 'The tongue would be {tongue} wide, too narrow to press in with a thumb.',
      remedy: 'Make the width at least {limit}, or choose a glued bottom.',
    },
    ...TUBE_LIMITS,
    ...TOP_LIMITS,
  ],
  promises: [
    {
      claim: 'covers',
      piece: 'box',
      panels: ['frontFlap', 'backFlap', 'tongue', 'leftFlap', 'rightFlap'],
      area: ['width', 'depth'],
    },
  ],
  fits: [
    {
      what: 'tongue through its notch',
      room: 'depth',
      body: 'half + notchFloor',
      card: 't',
      ease: '1/32 in',
      marks: 3,
      truest: 'the depth of the notch and the length of the front flap',
      saves: 'Cut the notch a hair deeper rather than shallower.',
    },
    ...TOP_FITS,
  ],
  traits: ['lid', 'tall'],
});
