import { inEdges } from '../add-ons/places';
import { defineStyle } from '../language/define';
import { trayPiece } from '../shapes/tray-piece';

/** FEFCO family 03/04 (trays); construction: common practice, no source. */
export const tray = defineStyle({
  id: 'tray',
  version: 1,
  name: 'Tray',
  source: 'common practice, no source; FEFCO family 04 has its corrugated cousins',
  goodFor: 'Cookies under a band, a set of soaps, the inside of a sleeve: the quickest box there is.',
  watchOut: 'It has no lid, so the contents need a bag or a band.',
  symbols: {
    width: {
      role: 'size',
      label: 'Width',
      help: 'Floor, score to score, left to right.',
      default: '4 in',
      min: '1 in',
      max: '12 in',
    },
    depth: {
      role: 'size',
      label: 'Depth',
      help: 'Floor, score to score, front to back.',
      default: '3 in',
      min: '1 in',
      max: '12 in',
    },
    height: {
      role: 'size',
      label: 'Height',
      help: 'Wall, from its score to the rim.',
      default: '1 in',
      min: '3/8 in',
      max: '6 in',
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
  addOns: {
    ribbon: [{ id: 'ends', label: 'A handle in both ends', piece: 'tray', at: ['front', 'back'] }],
    notch: inEdges('tray', 'front.down', 'back.up', 'left.left', 'right.right'),
    slot: [{ id: 'ends', label: 'Through both ends', piece: 'tray', at: ['front', 'back'] }],
  },
  quantities: {
    tab: {
      means: 'corner tab: short of the rim, and of half the wall it is glued to',
      of: ({ height = 0, depth = 0, relief = 0 }) => Math.min(height, depth / 2) - relief,
      formula: 'min(height, depth / 2) - relief',
    },
  },
  pieces: { tray: trayPiece('Tray', { width: 'width', depth: 'depth', height: 'height', tab: 'tab' }) },
  constraints: [
    {
      code: 'relief-eats-tab',
      symbol: 'relief',
      atMost: 'height - 1/4 in',
      severity: 'stop',
      says: 'Relief {relief} leaves too little of the corner tabs to glue.',
      remedy: 'Make it at most {limit}.',
    },
  ],
  promises: [{ claim: 'covers', piece: 'tray', panels: ['base'], area: ['width', 'depth'] }],
  traits: [],
});
