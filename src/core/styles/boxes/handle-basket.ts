import { defineStyle } from '../language/define';
import type { ClosingStep, JointSpec, PanelSpec, PieceSpec } from '../language/types';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';
import { trayPiece } from '../shapes/tray-piece';

const tray = trayPiece('Basket', { width: 'width', depth: 'depth', height: 'height', tab: 'tab' });

/** Creased alone; its corners are glued with the handle in one go. */
const basket: PieceSpec = {
  ...tray,
  joints: [],
  overlaps: (['left', 'right'] as const).map((side) => [
    ...tray.joints.filter(({ onto }) => onto === side).map(({ panel }) => panel),
    side,
  ]),
  closing: tray.closing
    .filter((step) => step.do === 'fold')
    .map((step, at, folds) => (at === folds.length - 1 ? { ...step, tip: 'Lay it flat again.' } : step)),
  shell: [],
  roomMm3: () => 0,
  roomFormula: '0',
};

/** The strip from foot to foot; the first of its panels lies as its piece or the whole asks. */
const strip = (first: Pick<PanelSpec, 'on' | 'at' | 'fold'>): Readonly<Record<string, PanelSpec>> => ({
  leftLegTab: { role: 'glueTab', size: ['height', 'strip'], ...first },
  leftLeg: { role: 'handle', size: ['rise', 'strip'], on: 'leftLegTab.left', flush: true },
  top: { role: 'handle', size: ['span', 'strip'], on: 'leftLeg.left', fold: 90 },
  rightLeg: { role: 'handle', size: ['rise', 'strip'], on: 'top.left', fold: 90 },
  // clear of the floor, so that the other foot alone sets how high the handle stands
  rightLegTab: { role: 'glueTab', size: ['height - footClear', 'strip'], on: 'rightLeg.left', flush: true },
});

const FEET: readonly JointSpec[] = [
  { panel: 'leftLegTab', onto: 'left', lap: 'inside', carries: true },
  { panel: 'rightLegTab', onto: 'right', lap: 'inside', carries: true, gap: 'twoCards' },
];

const ARCH: ClosingStep = { do: 'fold', panels: ['top', 'rightLeg'] };

const handle: PieceSpec = {
  label: 'Handle',
  panels: strip({}),
  joints: [],
  closing: [{ ...ARCH, tip: 'Lay it flat again.' }],
  shell: [],
  roomMm3: () => 0,
  roomFormula: '0',
};

/** The basket with its handle glued inside both ends. */
const whole: PieceSpec = {
  ...tray,
  label: 'Whole basket',
  panels: {
    ...tray.panels,
    ...strip({ on: 'base.left', at: 'besideStrip', fold: 90 }),
  },
  joints: [...tray.joints, ...FEET],
  closing: [
    ARCH,
    ...tray.closing.map(
      (step): ClosingStep =>
        step.do === 'fold' && step.panels.includes('left')
          ? { ...step, panels: [...step.panels, 'leftLegTab'] }
          : step,
    ),
    { do: 'glue', panel: 'leftLegTab', onto: 'left' },
    { do: 'glue', panel: 'rightLegTab', onto: 'right' },
  ],
};

/** A tray with a strip over it to carry it by. Construction: common practice, no source. */
export const handleBasket = defineStyle({
  id: 'handle-basket',
  version: 1,
  name: 'Basket with strip handle',
  source: 'common practice, no source',
  goodFor: 'Eggs in paper grass, rolls, a table of party candy: open, easy to reach into.',
  watchOut: 'The handle is for light things: carry a full basket from below. Line it for bare food.',
  symbols: {
    width: sizeOf(
      'Width',
      'Floor, score to score, from one foot of the handle to the other.',
      '4 in',
      '1 1/2 in',
      '10 in',
    ),
    depth: sizeOf('Depth', 'Floor, score to score, front to back.', '3 in', '1 1/2 in', '10 in'),
    height: sizeOf('Height', 'Wall, from its score to the rim.', '1 1/2 in', '3/4 in', '6 in'),
    rise: sizeOf('Handle above rim', 'From the rim up to the top of the handle.', '2 in', '1 in', '8 in'),
    strip: sizeOf('Handle strip', 'How wide the handle is.', '3/4 in', '1/2 in', '2 in'),
    relief: allowanceOf(
      'Tab relief',
      'How much each corner tab is kept short so that it does not show.',
      '1/16 in',
      '0 in',
      '1/4 in',
    ),
  },
  // a foot lies inside each end
  inside: ['width - twoCards - t', 'depth - t', 'height - t'],
  roof: 'open',
  allowances: { twoCards: '2t', footClear: 't' },
  lets: { span: 'width - twoCards', besideStrip: 'depth/2 - strip/2' },
  quantities: {
    tab: {
      means: 'corner tab: short of the rim, and of the foot of the handle between two of them',
      of: ({ height = 0, besideStrip = 0, relief = 0 }) => Math.min(height, besideStrip) - relief,
      formula: 'min(height, besideStrip) - relief',
    },
  },
  pieces: { basket, handle },
  whole,
  constraints: [
    {
      code: 'tabs-meet-handle',
      symbol: 'strip',
      atMost: 'depth - 1 1/4 in',
      severity: 'stop',
      says: 'A handle {strip} wide leaves too little of an end {depth} wide for the corner tabs.',
      remedy: 'Make it at most {limit}.',
    },
    {
      code: 'relief-eats-tab',
      symbol: 'relief',
      atMost: 'height - 1/4 in',
      severity: 'stop',
      says: 'Relief {relief} leaves too little of the corner tabs to glue.',
      remedy: 'Make it at most {limit}.',
    },
  ],
  promises: [{ claim: 'covers', piece: 'whole', panels: ['base'], area: ['width', 'depth'] }],
  traits: [],
});
