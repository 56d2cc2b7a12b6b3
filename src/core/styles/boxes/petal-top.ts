import { inPanels } from '../add-ons/places';
import { defineStyle } from '../language/define';
import {
  BOTTOM_CLOSING,
  BOTTOM_FITS,
  BOTTOM_JOINTS,
  BOTTOM_LETS,
  BOTTOM_LIMITS,
  BOTTOM_OVERLAP,
  BOTTOM_SYMBOLS,
  bottomFlaps,
} from '../shapes/glued-bottom';
import {
  gluedTube,
  TUBE_LIMITS,
  TUBE_OPTIONS,
  TUBE_QUANTITIES,
  TUBE_SYMBOLS,
  type Wall,
} from '../shapes/glued-tube';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';

/** Where each petal sits. They are numbered as the walls follow one another on the strip, so each lies over the one before. */
const PETALS: readonly (readonly [petal: string, wall: Wall])[] = [
  ['petal1', 'front'],
  ['petal2', 'left'],
  ['petal3', 'back'],
  ['petal4', 'right'],
];
const NAMES = PETALS.map(([petal]) => petal);

/**
 * A square tube closed by a ring of four leaves on straight scores. Why it locks: over each diagonal the lower leaf is farther from its own
 * score than the upper one, so it would rise faster; round the ring none can start. Geometry derived; construction: common practice, no source.
 */
export const petalTop = defineStyle({
  id: 'petal-top',
  version: 1,
  name: 'Petal-top cube',
  source: 'ring of leaves derived from the way they fold; construction common practice, no source',
  goodFor: 'Candy, soap, one ornament: a flower that opens and closes again without tape.',
  watchOut:
    'Eight curved cuts need a template and sharp scissors, and heavy cardstock creases where petals bend.',
  symbols: {
    width: sizeOf('Side', 'Every wall, score to score: the floor is square.', '2 1/2 in', '1 1/2 in', '6 in'),
    height: { ...TUBE_SYMBOLS.height, default: 'width', min: '1 in', max: '10 in' },
    flap: { ...BOTTOM_SYMBOLS.flap, default: '1 1/2 in' },
    tab: { ...TUBE_SYMBOLS.tab, default: '1/2 in' },
    petal: allowanceOf(
      'Petal curve',
      'How far a petal curves out past the straight line from its corner to the middle of the top.',
      '1/4 in',
      '1/8 in',
      '3/4 in',
    ),
  },
  inside: ['width - t', 'width - t', 'height - 7/2 t'],
  lets: { depth: 'width', ...BOTTOM_LETS },
  quantities: TUBE_QUANTITIES,
  options: TUBE_OPTIONS,
  addOns: { window: inPanels('box', 'front', 'back', 'left', 'right') },
  pieces: (chosen) => {
    const tube = gluedTube(chosen, 'tabClear', 'tabClear');
    const petals = PETALS.map(
      ([petal, wall]) => [petal, { role: 'lid', leaf: 'petal', on: `${wall}.up`, fold: 90 }] as const,
    );
    return {
      box: {
        label: 'Box',
        panels: { ...tube.panels, ...bottomFlaps(tube), ...Object.fromEntries(petals) },
        joints: [tube.joint, ...BOTTOM_JOINTS],
        seams: [tube.seam],
        overlaps: [BOTTOM_OVERLAP],
        rings: [NAMES],
        closing: [
          ...tube.closing,
          ...BOTTOM_CLOSING,
          {
            do: 'fold',
            panels: NAMES,
            tip: 'Fold each petal in turn over the one before, and slip the last under the first.',
          },
        ],
        shell: ['front', 'right', 'back', 'left'],
        roomMm3: ({ width = 0, height = 0 }) => width * width * height,
        roomFormula: 'width * width * height',
      },
    };
  },
  constraints: [
    ...BOTTOM_LIMITS,
    ...TUBE_LIMITS,
    {
      code: 'petals-meet-on-card',
      symbol: 'petal',
      atMost: '11/100 width',
      severity: 'stop',
      says: 'Petals that curve out {petal} on a side {width} wide come too near their neighbors on the cardstock to be cut apart.',
      remedy: 'Make the curve at most {limit}.',
    },
    {
      code: 'petals-lock-little',
      symbol: 'petal',
      atLeast: '1/20 width',
      severity: 'warn',
      says: 'Petals that curve out {petal} on a side {width} wide overlap little, and may spring open.',
      remedy: 'Make the curve at least {limit}.',
    },
  ],
  promises: [{ claim: 'covers', piece: 'box', panels: ['frontFlap', 'backFlap'], area: ['width', 'width'] }],
  fits: BOTTOM_FITS,
  traits: ['lid', 'tall'],
});
