import { defineStyle } from '../language/define';
import type { PieceSpec } from '../language/types';
import { wornUpsideDown } from '../shapes/sides';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';
import { trayPiece } from '../shapes/tray-piece';

/** A floor with a wall on every side and nothing that holds them up but the lid. */
const cross: PieceSpec = {
  label: 'Box',
  panels: {
    base: { role: 'base', size: ['side', 'side'] },
    left: { role: 'wall', size: ['height', 'side'], on: 'base.left', fold: 90 },
    right: { role: 'wall', size: ['height', 'side'], on: 'base.right', fold: 90 },
    front: { role: 'wall', size: ['side', 'height'], on: 'base.down', fold: 90 },
    back: { role: 'wall', size: ['side', 'height'], on: 'base.up', fold: 90 },
  },
  joints: [],
  seams: [
    ['front.left', 'left.down'],
    ['front.right', 'right.down'],
    ['back.left', 'left.up'],
    ['back.right', 'right.up'],
  ],
  closing: [
    {
      do: 'fold',
      panels: ['left', 'right', 'front', 'back'],
      tip: 'Hold the four walls up with one hand and slip the lid over them.',
    },
  ],
  shell: ['base', 'left', 'right', 'front', 'back'],
  roomMm3: ({ side = 0, height = 0 }) => side * side * height,
  roomFormula: 'side * side * height',
};

/** A box whose walls fall open when its lid comes off. Construction: common practice, no source. */
export const openingOut = defineStyle({
  id: 'opening-out',
  version: 1,
  name: 'Opening-out box',
  source: 'common practice, no source',
  goodFor: 'A proposal, a birthday note, photos on the walls: lift the lid, and the box falls open.',
  watchOut: 'Only the lid holds the walls, so carry it upright. Nothing loose, nothing that rolls.',
  symbols: {
    side: sizeOf('Floor', 'Side of the square floor, score to score.', '3 in', '1 1/2 in', '8 in'),
    height: sizeOf('Height', 'Wall, from its score to its free edge.', '3 in', '1 in', '8 in'),
    lip: {
      ...sizeOf('Lid depth', 'Lid wall, from its score to the rim.', '1 in', '3/4 in', '4 in'),
      forNew: '3/8 height',
    },
    ease: allowanceOf(
      'Ease',
      'How much larger the lid is than the box, both sides together.',
      '1/16 in',
      '1/32 in',
      '1/8 in',
    ),
    relief: allowanceOf(
      'Tab relief',
      'How much each corner tab of the lid is kept short so that it does not show.',
      '1/16 in',
      '0 in',
      '1/4 in',
    ),
  },
  inside: ['side - t', 'side - t', 'height - t'],
  // left to right the lid's corner tabs lie between its walls and the box's
  allowances: { growth: '4t + ease', growthDeep: '2t + ease' },
  lets: { lidWidth: 'side + growth', lidDepth: 'side + growthDeep' },
  quantities: {
    lidTab: {
      means: 'corner tab of the lid: short of the rim, and of half the wall it is glued to',
      of: ({ lip = 0, lidDepth = 0, relief = 0 }) => Math.min(lip, lidDepth / 2) - relief,
      formula: 'min(lip, lidDepth / 2) - relief',
    },
  },
  addOns: {
    ribbon: [{ id: 'lid', label: 'In the top of the lid', piece: 'lid', at: ['base'] }],
    window: [{ id: 'lid', label: 'In the lid', piece: 'lid', at: ['base'] }],
  },
  sidesRenamed: ['lid'],
  pieces: {
    box: cross,
    lid: wornUpsideDown(
      trayPiece('Lid', { width: 'lidWidth', depth: 'lidDepth', height: 'lip', tab: 'lidTab' }),
    ),
  },
  constraints: [
    {
      code: 'lid-deeper-than-box',
      symbol: 'lip',
      atMost: 'height',
      severity: 'stop',
      says: 'A lid {lip} deep stands on the table before it reaches the top of a box {height} high.',
      remedy: 'Make it at most {limit}.',
    },
    {
      code: 'lid-holds-walls-loosely',
      symbol: 'lip',
      atLeast: '1/4 height',
      severity: 'warn',
      says: 'A lid {lip} deep hardly holds walls {height} high together.',
      remedy: 'Make it at least {limit} deep.',
    },
    {
      // low boxes too need a lid that holds their walls
      code: 'lid-too-deep',
      symbol: 'lip',
      atMost: '1/3 height + 1/2 in',
      severity: 'note',
      says: 'A lid {lip} deep is hard to lift off a box {height} high.',
      remedy: 'Make it at most {limit}.',
    },
    {
      code: 'relief-eats-tab',
      symbol: 'relief',
      atMost: 'lip - 1/4 in',
      severity: 'stop',
      says: 'Relief {relief} leaves too little of the corner tabs to glue.',
      remedy: 'Make it at most {limit}.',
    },
  ],
  promises: [
    { claim: 'covers', piece: 'box', panels: ['base'], area: ['side', 'side'] },
    { claim: 'nests', inner: 'box', outer: 'lid', gap: ['growth', 'growthDeep'] },
  ],
  fits: [
    {
      what: 'lid over the box, left to right',
      room: 'lidWidth',
      body: 'side',
      card: '4t',
      ease: 'ease',
      marks: 4,
      truest: 'the two side scores of the lid and of the box',
      saves: 'Score the box first, then the lid from the same edge.',
    },
    {
      what: 'lid over the box, front to back',
      room: 'lidDepth',
      body: 'side',
      card: '2t',
      ease: 'ease',
      marks: 4,
      truest: 'the front and back scores of the lid and of the box',
      saves: 'Score the box first, then the lid from the same edge.',
    },
  ],
  traits: ['lid'],
});
