import { toDegrees, toRadians } from '../../units/angles';
import { inEdges, inPanels } from '../add-ons/places';
import { defineStyle } from '../language/define';
import type { ClosingStep, Len, PanelSpec } from '../language/types';
import { gluedTube, TAB_LIMIT, TUBE_QUANTITIES, TUBE_SYMBOLS } from '../shapes/glued-tube';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';
import {
  BACK_SEAM_TOP_FITS,
  TOP_LIMITS,
  TOP_OPTION,
  TOP_QUANTITIES,
  TOP_SYMBOLS,
  topOf,
} from '../shapes/tube-top';
import { TUCK_ALLOWANCES, TUCK_LETS } from '../shapes/tuck-lid';

/**
 * Front and back flap: half of each reaches past the middle and lies on the short half of the other. Beside the glued corner it draws in one
 * to two: while the tube opens the wall there sweeps over just that much of it.
 */
const hook = (on: 'front.down' | 'back.down', across: Len): PanelSpec => ({
  role: 'bottomFlap',
  outline: [
    ['0', 'half'],
    ['hookAt', 'half'],
    ['hookAt', 'reach'],
    [`${across} - 1/2 reach`, 'reach'],
  ],
  on,
  fold: 90,
});

/** Side flap, mitred at both ends, and beyond the mitre at its start the triangle that is glued under the hook beside it. */
const sideFlap = (wall: 'left' | 'right', across: Len): Readonly<Record<string, PanelSpec>> => ({
  [`${wall}Flap`]: {
    role: 'bottomFlap',
    outline: [
      ['sideFlap', 'sideFlap'],
      [`${across} - sideFlap`, 'sideFlap'],
    ],
    on: `${wall}.down`,
    fold: 90,
  },
  [`${wall}Corner`]: {
    role: 'glueTab',
    outline: [['1/2 sideFlap', '-sideFlap']],
    asLies: true,
    on: `${wall}Flap.e1`,
    fold: 0,
  },
});

/** How far the tab's foot is kept clear of the front flap, which swings past it as the box opens. source: our choice, tried by the closing-path check */
const TAB_CLEAR = '2 tabClear';

const FLAPS = ['backFlap', 'frontFlap', 'rightFlap', 'leftFlap'] as const;
const CORNERS = ['rightCorner', 'leftCorner'] as const;
/** Stops on the way from flat to open. source: our choice, one a frame of the closing-path check */
const STOPS = 6;

/**
 * How the glued corners lead everything as the tube opens, its corner `corner` degrees wide: 0 flat, 90 open. Wall, flap and corner are a
 * spherical triangle with a hypotenuse of 45 degrees from the bottom edge to the mitre, and half the tube's corner as one leg.
 */
function opening(corner: number): Readonly<Record<string, number>> {
  const half = toRadians(corner / 2);
  const rise = Math.acos(Math.min(1, Math.SQRT1_2 / Math.cos(half)));
  const flap = 90 + toDegrees(Math.asin(Math.min(1, Math.sin(rise) / Math.SQRT1_2)));
  const mitre = 2 * toDegrees(Math.acos(Math.min(1, Math.tan(rise)))) - 180;
  return {
    right: 180 - corner,
    front: corner,
    left: 180 - corner,
    tab: corner,
    ...Object.fromEntries(FLAPS.map((name) => [name, flap])),
    ...Object.fromEntries(CORNERS.map((name) => [name, mitre])),
  };
}

const closing: readonly ClosingStep[] = [
  {
    do: 'fold',
    panels: FLAPS,
    to: 180,
    tip: 'Fold all four flaps up flat onto the insides of their walls.',
  },
  {
    do: 'fold',
    panels: CORNERS,
    to: -180,
    tip: 'Fold the two corners of the side flaps back on themselves, so they face you.',
  },
  {
    do: 'fold',
    panels: ['left'],
    to: 180,
    tip: 'No glue past the slanted fold, or the box won’t open.',
  },
  { do: 'glue', panel: 'leftCorner', onto: 'frontFlap' },
  { do: 'fold', panels: ['right'], to: 180 },
  { do: 'glue', panel: 'rightCorner', onto: 'backFlap' },
  { do: 'glue', panel: 'tab', onto: 'back', tip: 'The box lies flat now: let the glue set under a book.' },
  {
    do: 'fold',
    panels: ['right', 'front', 'left', 'tab', ...FLAPS, ...CORNERS],
    through: Array.from({ length: STOPS - 1 }, (_, at) => opening((90 * (at + 1)) / STOPS)),
    tip: 'Push the two folded edges toward each other. The bottom drops into place, and the hooks hold it.',
  },
];

/** A bottom that is glued once and falls into place as the tube opens. Corner rule derived; construction: common practice, no source. ECMA family A, auto bottom; FEFCO 07 (ready-glued) is its corrugated cousin (both from memory). */
export const crashLock = defineStyle({
  id: 'crash-lock',
  version: 1,
  name: 'Crash-lock bottom box',
  source:
    'corner rule derived from the fold angles; construction common practice, no source; FEFCO family 07 is its corrugated cousin (from memory)',
  goodFor: 'Glue many ahead and store them flat. Each opens in one move with its bottom in place.',
  watchOut:
    'Use liquid glue, not tape, and only on the two corners. One drop past the slanted fold and the box won’t open, so try one first.',
  symbols: {
    ...TUBE_SYMBOLS,
    depth: sizeOf('Depth', 'Side panel, score to score.', '2 in', '1 in', '8 in'),
    lock: allowanceOf(
      'Hook',
      'How far the hooks reach past the middle of the floor.',
      '3/8 in',
      '1/4 in',
      '2 in',
    ),
    ...TOP_SYMBOLS,
  },
  inside: ['width - t', 'depth - tuckTakes - t', 'height - lidTakes - 7/2 t'],
  allowances: { ...TUCK_ALLOWANCES, hookClear: '1/32 in' },
  lets: {
    ...TUCK_LETS,
    half: 'depth/2',
    reach: 'half + lock',
    // clear of the step of the other hook
    hookAt: 'width/2 + hookClear',
    sideFlap: 'half - 1/8 in',
  },
  quantities: { ...TUBE_QUANTITIES, ...TOP_QUANTITIES },
  addOns: {
    window: inPanels('box', 'front', 'back'),
    notch: inEdges('box', 'front.up'),
    hangTab: inEdges('box', 'front.up'),
  },
  options: TOP_OPTION,
  sidesRenamed: ['box'],
  pieces: (chosen) => {
    const top = topOf(chosen);
    const tube = gluedTube({ order: 'back', tab: 'right' }, TAB_CLEAR, top.clear);
    const { across } = tube;
    return {
      box: {
        label: 'Box',
        panels: {
          ...tube.panels,
          backFlap: hook('back.down', across.back),
          ...sideFlap('right', across.right),
          frontFlap: hook('front.down', across.front),
          ...sideFlap('left', across.left),
          ...top.panels(tube),
        },
        joints: [
          tube.joint,
          { panel: 'rightCorner', onto: 'backFlap', lap: 'outside', carries: true, glueOnly: true },
          { panel: 'leftCorner', onto: 'frontFlap', lap: 'outside', carries: true, glueOnly: true },
        ],
        seams: [tube.seam],
        overlaps: [['backFlap', 'frontFlap', 'rightFlap', 'leftFlap'], ...top.overlaps],
        closing: [...closing, ...top.closing],
        shell: ['back', 'right', 'front', 'left'],
        roomMm3: ({ width = 0, depth = 0, height = 0 }) => width * depth * height,
        roomFormula: 'width * depth * height',
      },
    };
  },
  constraints: [
    {
      code: 'hook-meets-wall',
      symbol: 'lock',
      atMost: 'depth/2 - 1/16 in',
      severity: 'stop',
      says: 'Hooks that reach {lock} past the middle are {reach} long and meet the far wall of a box {depth} deep.',
      remedy: 'Make them at most {limit}.',
    },
    {
      code: 'hook-cut-to-point',
      symbol: 'lock',
      atMost: 'width - half - 2 hookClear - 1/8 in',
      severity: 'stop',
      says: 'Hooks that reach {lock} past the middle are cut to a point under a front {width} wide.',
      remedy: 'Make them at most {limit}, or the box wider.',
    },
    {
      code: 'crash-shallow',
      symbol: 'depth',
      atLeast: '2 in',
      severity: 'warn',
      says: 'The two corners that are glued under a box {depth} deep are hardly larger than a fingertip.',
      remedy: 'Make it at least {limit} deep, or choose the snap-lock bottom.',
    },
    {
      code: 'crash-narrow-front',
      symbol: 'width',
      atLeast: 'depth',
      severity: 'stop',
      says: 'A front {width} wide is narrower than the side {depth} deep, so the side flaps meet before the bottom is down.',
      remedy: 'Make the width at least {limit}, or swap width and depth.',
    },
    {
      code: 'flaps-taller-than-walls',
      symbol: 'height',
      atLeast: 'reach',
      severity: 'stop',
      says: 'Hooks {reach} long stick out above walls {height} high while the box is flat.',
      remedy: 'Make the height at least {limit}.',
    },
    {
      code: 'tab-wider-than-front',
      symbol: 'tab',
      atMost: 'width - seamRelief',
      severity: 'stop',
      says: 'The glue tab {tab} is wider than the panel it is glued to, {width}.',
      remedy: 'Make it at most {limit}.',
    },
    TAB_LIMIT,
    ...TOP_LIMITS,
  ],
  promises: [{ claim: 'covers', piece: 'box', panels: [...FLAPS], area: ['width', 'depth'] }],
  fits: BACK_SEAM_TOP_FITS,
  traits: ['lid', 'tall'],
});
