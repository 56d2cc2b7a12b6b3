import { inPanels } from '../add-ons/places';
import { defineStyle } from '../language/define';
import type { Angle, CreaseSpec, Len, PanelSpec } from '../language/types';
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

const fin = (
  role: 'handle' | 'gusset' | 'glueTab',
  across: Len,
  on: NonNullable<PanelSpec['on']>,
  fold: Angle,
): PanelSpec => ({ role, size: [across, 'fin'], on, fold });

/** The fin runs all round the blank: upright on the roofs, and folded in between them over each gusset, in two halves back to back. */
const FINS: Readonly<Record<string, PanelSpec>> = {
  frontFin: fin('handle', 'width', 'frontRoof.up', 'backToUpright'),
  backFin: fin('handle', 'width', 'backRoof.up', 'backToUpright'),
  tabFin: fin('glueTab', 'tab', 'roofTab.up', 'backToUpright'),
  leftFrontFin: fin('gusset', 'farHalf', 'leftFrontFold.e2', 'eave'),
  leftBackFin: fin('gusset', 'nearHalf', 'leftBackFold.e1', 'eave'),
  rightBackFin: fin('gusset', 'farHalf', 'rightBackFold.e2', 'eave'),
  rightFrontFin: fin('gusset', 'nearHalf', 'rightFrontFold.e1', 'eave'),
};

const FIN_CREASES: readonly CreaseSpec[] = [
  { between: ['frontFin.right', 'leftFrontFin.left'], fold: 180 },
  { between: ['leftFrontFin.right', 'leftBackFin.left'], fold: -180 },
  { between: ['leftBackFin.right', 'backFin.left'], fold: 180 },
  { between: ['backFin.right', 'rightBackFin.left'], fold: 180 },
  { between: ['rightBackFin.right', 'rightFrontFin.left'], fold: -180 },
  { between: ['rightFrontFin.right', 'tabFin.left'], fold: 180 },
];

/** A gable with a fin along the ridge, all from one uncut strip. Gusset rule derived; construction: common practice, no source. */
export const finTop = defineStyle({
  id: 'fin-top',
  version: 1,
  name: 'Carton with fin top',
  source: 'gusset rule derived from the fold angles; construction common practice, no source',
  goodFor: 'Popcorn, cookies, a treat that looks like a little house; the fin takes a peg or a ribbon.',
  watchOut:
    'Six layers meet in the fin, so choose light cardstock. Press the slanted creases from the other side.',
  symbols: {
    ...TUBE_SYMBOLS,
    width: {
      ...sizeOf('Width', 'Front panel, score to score.', '2 1/2 in', '1 in', '8 in'),
      forNew: '2 5/8 in',
    },
    depth: sizeOf('Depth', 'Side panel, score to score; the width or less.', '2 1/2 in', '3/4 in', '8 in'),
    flap: { ...BOTTOM_SYMBOLS.flap, default: '1 1/2 in' },
    ...GABLE_SYMBOLS,
    roof: sizeOf(
      'Roof',
      'From the eave score to the ridge score, up the slant.',
      '1 3/4 in',
      '1/2 in',
      '6 in',
    ),
    fin: allowanceOf('Fin', 'Upright strip along the ridge.', '5/8 in', '3/8 in', '1 1/2 in'),
  },
  inside: ['width - t', 'depth - t', 'height - 7/2 t'],
  lets: { ...BOTTOM_LETS, ...GABLE_LETS },
  quantities: TAB_QUANTITIES,
  angles: GABLE_ANGLES,
  addOns: { window: inPanels('box', 'front', 'back') },
  sidesRenamed: ['box'],
  pieces: () => {
    const tube = gluedTube({ order: 'front', tab: 'right' }, 'tabClear', '0', 'foot');
    return {
      box: {
        label: 'Box',
        panels: { ...tube.panels, ...bottomFlaps(tube), ...GABLE_PANELS, ...FINS },
        creases: [...GABLE_CREASES, ...FIN_CREASES],
        joints: [
          tube.joint,
          { panel: 'roofTab', onto: 'frontRoof', lap: 'inside' },
          { panel: 'tabFin', onto: 'frontFin', lap: 'inside' },
          ...BOTTOM_JOINTS,
        ],
        seams: [
          tube.seam,
          ['roofTab.left', 'frontRoof.left'],
          ['tabFin.left', 'frontFin.left'],
          ['frontRoof.up', 'backRoof.up'],
        ],
        overlaps: [
          BOTTOM_OVERLAP,
          ['rightFrontFold', 'roofTab', 'frontRoof'],
          ['leftFrontFin', 'leftBackFin', 'rightBackFin', 'rightFrontFin', 'tabFin', 'backFin', 'frontFin'],
        ],
        closing: [
          ...gluedWith(
            tube.closing,
            { panel: 'roofTab', onto: 'frontRoof' },
            { panel: 'tabFin', onto: 'frontFin' },
          ),
          ...BOTTOM_CLOSING,
          {
            do: 'fold',
            panels: [...Object.keys(GABLE_PANELS), ...Object.keys(FINS)],
            bends: true,
            tip: 'Push both sides in while the roofs come together, and peg the fin.',
          },
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
