import { inPanels } from '../add-ons/places';
import { defineStyle } from '../language/define';
import {
  GABLE_ANGLES,
  GABLE_CREASES,
  GABLE_FITS,
  GABLE_LETS,
  GABLE_LIMITS,
  GABLE_PANELS,
  GABLE_ROOM,
  GABLE_SHELL,
  GABLE_SYMBOLS,
  gableRoom,
} from '../shapes/gable-roof';
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
import { gluedTube, gluedWith, TAB_QUANTITIES, TUBE_LIMITS, TUBE_SYMBOLS } from '../shapes/glued-tube';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';

/** A gable with folded-in gussets and an upright strip to carry it by. Gusset rule derived; construction: common practice, no source. */
export const gableTop = defineStyle({
  id: 'gable-top',
  version: 1,
  name: 'Gable box with handle strip',
  source: 'gusset rule derived from the fold angles; construction common practice, no source',
  goodFor: 'Cookies for the way home, a small plant, a party bag that stands.',
  watchOut: 'The slanted creases fold outward. Press them from the other side, and try one box first.',
  symbols: {
    ...TUBE_SYMBOLS,
    width: sizeOf('Width', 'Front panel, score to score.', '3 in', '1 in', '10 in'),
    depth: sizeOf('Depth', 'Side panel, score to score; the width or less.', '2 in', '3/4 in', '8 in'),
    ...BOTTOM_SYMBOLS,
    ...GABLE_SYMBOLS,
    handle: allowanceOf('Handle strip', 'Upright strip above the ridge.', '1 1/4 in', '1/2 in', '3 in'),
  },
  inside: ['width - t', 'depth - t', 'height - 7/2 t'],
  roof: 'open',
  lets: { ...BOTTOM_LETS, ...GABLE_LETS },
  quantities: TAB_QUANTITIES,
  angles: GABLE_ANGLES,
  addOns: {
    window: inPanels('box', 'front', 'back'),
    ribbon: [
      {
        id: 'handle',
        label: 'In the handle strip',
        piece: 'box',
        at: ['frontHandle', 'backHandle'],
        forNew: true,
      },
    ],
    slot: [{ id: 'handle', label: 'In the handle strip', piece: 'box', at: ['frontHandle', 'backHandle'] }],
  },
  sidesRenamed: ['box'],
  options: {
    ridge: {
      label: 'Handle strips',
      help: 'Left open, they are tied or pegged together, and the box opens again. Glued, it can only be torn open.',
      choices: [
        { id: 'glued', label: 'Glued together' },
        { id: 'open', label: 'Left open, to tie or peg' },
      ],
      // glued, it can only be torn open
      forNew: 'open',
    },
  },
  pieces: (chosen) => {
    const opens = chosen['ridge'] === 'open';
    const tube = gluedTube({ order: 'front', tab: 'right' }, 'tabClear', '0', 'foot');
    return {
      box: {
        label: 'Box',
        panels: {
          ...tube.panels,
          ...bottomFlaps(tube),
          ...GABLE_PANELS,
          frontHandle: {
            role: 'handle',
            size: ['width', 'handle'],
            on: 'frontRoof.up',
            fold: 'backToUpright',
          },
          backHandle: { role: 'handle', size: ['width', 'handle'], on: 'backRoof.up', fold: 'backToUpright' },
        },
        creases: GABLE_CREASES,
        joints: [
          tube.joint,
          { panel: 'roofTab', onto: 'frontRoof', lap: 'inside' },
          ...BOTTOM_JOINTS,
          ...(opens ? [] : [{ panel: 'backHandle', onto: 'frontHandle', lap: 'inside' } as const]),
        ],
        seams: [tube.seam, ['roofTab.left', 'frontRoof.left'], ['frontRoof.up', 'backRoof.up']],
        overlaps: [
          BOTTOM_OVERLAP,
          ['rightFrontFold', 'roofTab', 'frontRoof'],
          ...(opens ? [['backHandle', 'frontHandle']] : []),
        ],
        closing: [
          ...gluedWith(tube.closing, { panel: 'roofTab', onto: 'frontRoof' }),
          ...BOTTOM_CLOSING,
          {
            do: 'fold',
            panels: [...Object.keys(GABLE_PANELS), 'frontHandle', 'backHandle'],
            bends: true,
            tip: opens
              ? 'Fill it first. Push both sides in while the roofs come together, then tie or peg the strips.'
              : 'Push both sides in while the roofs come together.',
          },
          ...(opens ? [] : [{ do: 'glue', panel: 'backHandle', onto: 'frontHandle' } as const]),
        ],
        shell: ['front', 'left', 'back', 'right', ...GABLE_SHELL],
        roomMm3: gableRoom,
        roomFormula: GABLE_ROOM,
      },
    };
  },
  constraints: [
    ...BOTTOM_LIMITS,
    ...TUBE_LIMITS.slice(0, 2).map(({ given: _, ...limit }) => limit),
    ...GABLE_LIMITS,
  ],
  promises: [{ claim: 'covers', piece: 'box', panels: ['frontFlap', 'backFlap'], area: ['width', 'depth'] }],
  fits: [...BOTTOM_FITS, ...GABLE_FITS],
  traits: ['lid', 'tall'],
});
