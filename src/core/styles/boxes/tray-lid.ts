import { defineStyle } from '../language/define';
import { LID_DEPTH_NOTES } from '../shapes/lid-depth';
import { wornUpsideDown } from '../shapes/sides';
import { type TrayNames, trayPiece } from '../shapes/tray-piece';

const tray: TrayNames = { width: 'width', depth: 'depth', height: 'height', tab: 'trayTab' };
const lid: TrayNames = { width: 'lidWidth', depth: 'lidDepth', height: 'lip', tab: 'lidTab' };

/** FEFCO family 03 (telescope: body and lid); construction: common practice, no source. */
export const trayLid = defineStyle({
  id: 'tray-lid',
  version: 1,
  name: 'Tray with lift-off lid',
  source: 'common practice, no source; FEFCO family 03 is its corrugated cousin',
  goodFor: 'Chocolates, cookies, soap, jewelry: anything to show by lifting a lid.',
  watchOut: 'The lid is cut a little larger than the tray, so don’t mix up the two pieces.',
  symbols: {
    width: {
      role: 'size',
      label: 'Width',
      help: 'Tray floor, score to score, left to right.',
      default: '4 in',
      min: '1 in',
      max: '12 in',
    },
    depth: {
      role: 'size',
      label: 'Depth',
      help: 'Tray floor, score to score, front to back.',
      default: '3 in',
      min: '1 in',
      max: '12 in',
    },
    height: {
      role: 'size',
      label: 'Height',
      help: 'Tray wall, from its score to the rim.',
      default: '1 in',
      min: '3/8 in',
      max: '6 in',
    },
    lip: {
      role: 'size',
      label: 'Lid depth',
      help: 'Lid wall, from its score to the rim; the tray’s height makes a full telescope.',
      default: 'height',
      // a lid as deep as its tray is hard to lift: a third to a half is usual. source: common practice, no source
      forNew: '1/2 height',
      min: '3/8 in',
      max: '6 in',
    },
    ease: {
      role: 'allowance',
      label: 'Ease',
      help: 'How much larger the lid is than the tray, both sides together.',
      default: '3/64 in',
      min: '0 in',
      max: '1/8 in',
    },
    relief: {
      role: 'allowance',
      label: 'Tab relief',
      help: 'How much each corner tab is kept short so that it does not show.',
      default: '1/16 in',
      min: '0 in',
      max: '1/4 in',
    },
  },
  inside: ['width - t', 'depth - t', 'height - t'],
  // left to right the lid's corner tabs lie between its walls and the tray's: two cards more
  allowances: { growth: '4t + ease', growthDeep: '2t + ease' },
  lets: { lidWidth: 'width + growth', lidDepth: 'depth + growthDeep' },
  addOns: {
    ribbon: [{ id: 'lid', label: 'In the top of the lid', piece: 'lid', at: ['base'] }],
    window: [{ id: 'lid', label: 'In the lid', piece: 'lid', at: ['base'] }],
    notch: [
      {
        id: 'lid-ends',
        label: 'In both ends of the lid',
        piece: 'lid',
        at: ['right.left', 'left.right'],
        forNew: true,
      },
      { id: 'lid-front', label: 'In the front of the lid', piece: 'lid', at: ['front.down'] },
    ],
    slot: [{ id: 'ends', label: 'Through both ends of the tray', piece: 'tray', at: ['front', 'back'] }],
  },
  quantities: {
    trayTab: {
      means: 'corner tab of the tray: short of the rim, and of half the wall it is glued to',
      of: ({ height = 0, depth = 0, relief = 0 }) => Math.min(height, depth / 2) - relief,
      formula: 'min(height, depth / 2) - relief',
    },
    lidTab: {
      means: 'corner tab of the lid',
      of: ({ lip = 0, lidDepth = 0, relief = 0 }) => Math.min(lip, lidDepth / 2) - relief,
      formula: 'min(lip, lidDepth / 2) - relief',
    },
  },
  sidesRenamed: ['lid'],
  pieces: { tray: trayPiece('Tray', tray), lid: wornUpsideDown(trayPiece('Lid', lid)) },
  constraints: [
    {
      code: 'lid-deeper-than-tray',
      symbol: 'lip',
      atMost: 'height',
      severity: 'warn',
      says: 'The lid {lip} is deeper than the tray {height}, so the box would stand on the lid.',
      remedy: 'Make it at most {limit}.',
    },
    ...LID_DEPTH_NOTES,
    {
      code: 'relief-eats-tab',
      symbol: 'relief',
      atMost: 'height - 1/4 in',
      severity: 'stop',
      says: 'Relief {relief} leaves too little of the corner tabs to glue.',
      remedy: 'Make it at most {limit}.',
    },
  ],
  promises: [
    { claim: 'covers', piece: 'tray', panels: ['base'], area: ['width', 'depth'] },
    { claim: 'nests', inner: 'tray', outer: 'lid', gap: ['growth', 'growthDeep'] },
  ],
  fits: [
    {
      what: 'lid over the tray, left to right',
      room: 'lidWidth',
      body: 'width',
      card: '4t',
      ease: 'ease',
      marks: 4,
      truest: 'the two side scores of the lid and of the tray',
      saves: 'Score the tray first, then the lid from the same edge.',
    },
    {
      what: 'lid over the tray, front to back',
      room: 'lidDepth',
      body: 'depth',
      card: '2t',
      ease: 'ease',
      marks: 4,
      truest: 'the front and back scores of the lid and of the tray',
      saves: 'Score the tray first, then the lid from the same edge.',
    },
  ],
  traits: ['lid'],
});
