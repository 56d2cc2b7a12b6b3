import { defineStyle } from '../language/define';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';

/** A cover with a spine and a pocket on each half, like a small book. Construction: common practice, no source. */
export const wallet = defineStyle({
  id: 'wallet',
  version: 1,
  name: 'Book-style wallet',
  source: 'common practice, no source',
  goodFor: 'Gift cards, tickets, seed packets, photographs: flat things, two by two.',
  watchOut: 'The pockets hold thin items only. For a thick packet, use the envelope box.',
  symbols: {
    width: sizeOf('Width', 'One cover, from the spine to its outer edge.', '3 in', '1 1/2 in', '8 in'),
    height: sizeOf('Height', 'Cover, from the pocket score to the upper edge.', '4 in', '1 1/2 in', '10 in'),
    spine: sizeOf('Spine', 'Between the two spine scores.', '1/4 in', '1/4 in', '1 in'),
    pocket: sizeOf('Pocket', 'How far the pockets reach up the covers.', '1 3/4 in', '3/4 in', '6 in'),
    tab: allowanceOf(
      'Pocket tab',
      'The strip that closes the outer end of each pocket.',
      '1/2 in',
      '3/8 in',
      '1 in',
    ),
    relief: allowanceOf(
      'Pocket relief',
      'How much a pocket stays clear of the spine, and its tab of both ends.',
      '1/16 in',
      '1/32 in',
      '1/4 in',
    ),
  },
  inside: ['width - 2t', 'spine - 3t', 'height - t'],
  slidesInBy: ['width', 'height'],
  lets: { pocketWidth: 'width - relief' },
  addOns: {
    notch: [
      {
        id: 'pockets',
        label: 'In both pockets',
        piece: 'wallet',
        at: ['frontPocket.down', 'backPocket.down'],
      },
    ],
    corners: [
      { id: 'covers', label: 'At the top of both covers', piece: 'wallet', at: ['front.left', 'back.up'] },
    ],
  },
  pieces: {
    wallet: {
      label: 'Wallet',
      panels: {
        front: { role: 'cover', size: ['width', 'height'] },
        spine: { role: 'wall', size: ['spine', 'height'], on: 'front.right', fold: 90 },
        back: { role: 'cover', size: ['width', 'height'], on: 'spine.right', fold: 90 },
        frontPocket: { role: 'liner', size: ['pocketWidth', 'pocket'], on: 'front.down', fold: 180 },
        backPocket: {
          role: 'liner',
          size: ['pocketWidth', 'pocket'],
          on: 'back.down',
          at: 'relief',
          fold: 180,
        },
        frontTab: {
          role: 'glueTab',
          size: ['tab', 'pocket - 2 relief'],
          on: 'frontPocket.left',
          at: 'relief',
          fold: 180,
          taper: '1/4 tab',
        },
        backTab: {
          role: 'glueTab',
          size: ['tab', 'pocket - 2 relief'],
          on: 'backPocket.right',
          at: 'relief',
          fold: 180,
          taper: '1/4 tab',
        },
      },
      joints: [
        { panel: 'frontTab', onto: 'front', lap: 'inside' },
        { panel: 'backTab', onto: 'back', lap: 'inside' },
      ],
      overlaps: [
        ['frontPocket', 'frontTab', 'front'],
        ['backPocket', 'backTab', 'back'],
      ],
      closing: [
        { do: 'fold', panels: ['frontTab', 'backTab'] },
        { do: 'fold', panels: ['frontPocket', 'backPocket'] },
        { do: 'glue', panel: 'frontTab', onto: 'front' },
        { do: 'glue', panel: 'backTab', onto: 'back' },
        { do: 'fold', panels: ['spine', 'back'] },
      ],
      // open on three sides: it bounds no room
      shell: [],
      roomMm3: () => 0,
      roomFormula: '0',
    },
  },
  constraints: [
    {
      code: 'corner-meets-pocket',
      symbol: 'cornerRadius',
      atMost: 'height - pocket',
      severity: 'stop',
      given: [{ corners: 'covers' }],
      says: 'Corners rounded by {cornerRadius} reach down to pockets {pocket} high, and the tabs behind them show.',
      remedy: 'Make the radius at most {limit}.',
    },
    {
      code: 'pocket-too-deep',
      symbol: 'pocket',
      atMost: 'height - 1/4 in',
      severity: 'stop',
      says: 'Pockets {pocket} deep leave nothing to take hold of on a wallet {height} high.',
      remedy: 'Make them at most {limit}.',
    },
    {
      code: 'tab-wider-than-pocket',
      symbol: 'tab',
      atMost: 'width/2',
      severity: 'stop',
      says: 'A pocket tab {tab} fills half of a pocket on a cover {width} wide.',
      remedy: 'Make it at most {limit}.',
    },
    {
      code: 'tab-ends-meet',
      symbol: 'tab',
      atMost: '2 pocket - 4 relief - 1/2 in',
      severity: 'stop',
      says: 'The slanted ends of a tab {tab} wide meet on a pocket {pocket} deep.',
      remedy: 'Make it at most {limit}.',
    },
  ],
  promises: [],
  fits: [
    {
      what: 'pockets beside the spine',
      room: 'width',
      body: 'pocketWidth',
      card: 't',
      ease: '0.2 mm',
      marks: 2,
      truest: 'the spine score and the end of each pocket',
      saves: 'Pare the end of a pocket that pushes the spine open.',
    },
  ],
  traits: ['lid', 'flat-packet'],
});
