import { defineStyle } from '../language/define';
import { sizeOf } from '../shapes/size-symbols';

/** A card folded over the mouth of a bag. Construction: common practice, no source. */
export const bagTopper = defineStyle({
  id: 'bag-topper',
  version: 1,
  name: 'Bag topper',
  source: 'common practice, no source',
  goodFor: 'A clear bag of candy, popcorn or small parts: a printed card that closes it.',
  watchOut:
    'It holds nothing by itself. A staple is sharp and small: use tape for food and for small children.',
  symbols: {
    width: sizeOf('Width', 'Of the bag, with its folded mouth laid flat.', '4 in', '1 1/2 in', '12 in'),
    height: sizeOf('Height', 'How far each half reaches down the bag.', '2 in', '1 in', '6 in'),
    neck: sizeOf(
      'Top',
      'Between the two scores, for the folded mouth of the bag.',
      '1/4 in',
      '1/8 in',
      '1 in',
    ),
  },
  inside: ['width - t', 'neck - t', 'height - t'],
  slidesInBy: ['width', 'depth'],
  addOns: {
    ribbon: [
      {
        id: 'both',
        label: 'A hole to hang it by, through both halves',
        piece: 'topper',
        at: ['front', 'back'],
      },
    ],
    slot: [{ id: 'both', label: 'Through both halves', piece: 'topper', at: ['front', 'back'] }],
    corners: [
      {
        id: 'both',
        label: 'On both halves',
        piece: 'topper',
        at: ['front.down', 'front.right', 'back.up', 'back.left'],
      },
    ],
  },
  pieces: {
    topper: {
      label: 'Topper',
      panels: {
        front: { role: 'cover', size: ['width', 'height'] },
        top: { role: 'cover', size: ['width', 'neck'], on: 'front.up', fold: 90 },
        back: { role: 'cover', size: ['width', 'height'], on: 'top.up', fold: 90 },
      },
      joints: [],
      closing: [
        {
          do: 'fold',
          panels: ['top', 'back'],
          tip: 'Fold the mouth of the bag over once, slip the topper on, and tape it inside or staple it twice.',
        },
      ],
      // open on three sides: it bounds no room
      shell: [],
      roomMm3: () => 0,
      roomFormula: '0',
    },
  },
  constraints: [
    {
      code: 'topper-too-short',
      symbol: 'neck',
      atMost: '1/2 height',
      severity: 'stop',
      says: 'A top {neck} wide leaves halves {height} long too little to hold the bag with.',
      remedy: 'Make it at most {limit}.',
    },
  ],
  promises: [],
  traits: ['flat-packet'],
});
