import { inEdges, inLids } from '../add-ons/places';
import { defineStyle } from '../language/define';
import type { PanelSpec } from '../language/types';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';
import { type TrayNames, trayPiece } from '../shapes/tray-piece';

const NAMES: TrayNames = { width: 'width', depth: 'depth', height: 'height', tab: 'tab' };
const tray = trayPiece('Box', NAMES);

/** The ends of the lid: they go down inside the side walls and keep dust out. */
const ear = (side: 'left' | 'right'): PanelSpec => ({
  role: 'dustFlap',
  size: ['ear', 'lidDepth - tuckClear - heelClear'],
  on: `lid.${side}`,
  // the tuck passes between the front wall and their front ends; behind they clear the card of the back
  at: side === 'right' ? 'heelClear' : 'tuckClear',
  taper: side === 'right' ? ['earHeel', 'earToe'] : ['earToe', 'earHeel'],
  fold: 90,
});

/** A tray with its lid on the back wall, all from one sheet. Construction: common practice, no source; FEFCO family 04 has one-piece boxes of this kind (from memory). */
export const hingedLid = defineStyle({
  id: 'hinged-lid',
  version: 1,
  name: 'Box with hinged lid',
  source: 'common practice, no source; FEFCO family 04 has its corrugated cousins (from memory)',
  goodFor: 'Cupcakes, cookies, a slice of pie: the box from the bakery, in one piece.',
  watchOut: 'It takes a long sheet: depth twice, height twice, and the tuck. Line it for bare food.',
  symbols: {
    width: sizeOf('Width', 'Floor, score to score, left to right.', '4 in', '1 1/2 in', '12 in'),
    depth: sizeOf('Depth', 'Floor, score to score, front to back.', '3 in', '1 1/4 in', '12 in'),
    height: sizeOf('Height', 'Wall, from its score to the rim.', '1 1/2 in', '3/4 in', '6 in'),
    tuck: allowanceOf('Tuck', 'The edge of the lid that goes inside the front.', '3/4 in', '3/8 in', '2 in'),
    ear: allowanceOf(
      'Lid ends',
      'How far the ends of the lid reach down inside.',
      '3/4 in',
      '3/8 in',
      '2 in',
    ),
    relief: allowanceOf(
      'Tab relief',
      'How much each corner tab is kept short so that it does not show.',
      '1/16 in',
      '0 in',
      '1/4 in',
    ),
  },
  inside: ['lidWidth - t', 'lidDepth - t', 'height - t'],
  allowances: {
    // between the side walls two corner tabs lie before the lid's ends
    lidNarrow: '4t + 1/32 in',
    lidShort: '2t + 1/64 in',
    tuckClear: '2t + 1/16 in',
  },
  lets: { lidWidth: 'width - lidNarrow', lidDepth: 'depth - lidShort', heelClear: '1/16 in' },
  quantities: {
    tab: {
      means: 'corner tab: short of the rim, and of half the wall it is glued to',
      of: ({ height = 0, depth = 0, relief = 0 }) => Math.min(height, depth / 2) - relief,
      formula: 'min(height, depth / 2) - relief',
    },
    earHeel: {
      means: 'how far an end of the lid slopes in at the back',
      of: ({ ear = 0 }) => ear / 4,
      formula: 'ear / 4',
      onMark: true,
    },
    earToe: {
      means: 'how far an end of the lid slopes in at the front, where the tuck swings in',
      of: ({ ear = 0 }) => ear / 2,
      formula: 'ear / 2',
      onMark: true,
    },
  },
  addOns: {
    window: inLids('box', 'lid'),
    notch: inEdges('box', 'front.down'),
    ribbon: inLids('box', 'lid'),
    corners: [{ id: 'tuck', label: 'On the tuck', piece: 'box', at: ['tuck.up', 'tuck.left'] }],
  },
  pieces: {
    box: {
      ...tray,
      panels: {
        ...tray.panels,
        lid: {
          role: 'lid',
          size: ['lidWidth', 'lidDepth'],
          on: 'back.up',
          at: '1/2 lidNarrow',
          fold: 90,
        },
        leftDust: ear('left'),
        rightDust: ear('right'),
        tuck: { role: 'tuck', size: ['lidWidth', 'tuck'], on: 'lid.up', taper: '1/3 tuck', fold: 90 },
      },
      closing: [
        ...tray.closing,
        { do: 'fold', panels: ['leftDust', 'rightDust'] },
        {
          do: 'tuck',
          panels: ['lid', 'tuck'],
          bends: true,
          tip: 'Guide the ends of the lid inside the side walls first, then the tuck behind the front.',
        },
      ],
    },
  },
  constraints: [
    {
      code: 'relief-eats-tab',
      symbol: 'relief',
      atMost: 'height - 1/4 in',
      severity: 'stop',
      says: 'Relief {relief} leaves too little of the corner tabs to glue.',
      remedy: 'Make it at most {limit}.',
    },
    {
      code: 'tuck-meets-floor',
      symbol: 'tuck',
      atMost: 'height - 1/8 in',
      severity: 'stop',
      says: 'A tuck {tuck} long meets the floor of a box {height} high.',
      remedy: 'Make it at most {limit}.',
    },
    {
      code: 'lid-ends-meet-floor',
      symbol: 'ear',
      atMost: 'height - 1/8 in',
      severity: 'stop',
      says: 'Lid ends {ear} long meet the floor of a box {height} high.',
      remedy: 'Make them at most {limit}.',
    },
    {
      code: 'lid-ends-cut-to-point',
      symbol: 'ear',
      atMost: 'lidDepth - tuckClear - 1/2 in',
      severity: 'stop',
      says: 'Lid ends {ear} long on a lid {depth} deep are cut to a point: their slopes meet.',
      remedy: 'Make them at most {limit}.',
    },
    {
      code: 'tuck-deeper-than-lid',
      symbol: 'tuck',
      atMost: 'depth',
      severity: 'stop',
      says: 'A tuck {tuck} is longer than its lid ({depth}) and won’t slip in.',
      remedy: 'Make it at most {limit}.',
    },
  ],
  promises: [{ claim: 'covers', piece: 'box', panels: ['base'], area: ['width', 'depth'] }],
  fits: [
    {
      what: 'lid ends inside the side walls and their corner tabs',
      room: 'width',
      body: 'lidWidth',
      card: '4t',
      ease: '1/32 in',
      marks: 4,
      truest: 'the two side scores of the floor and those of the lid',
      saves: 'Score the floor and the lid from the same edge.',
    },
  ],
  traits: ['lid'],
});
