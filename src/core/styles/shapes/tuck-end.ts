import { inEdges, inLids, inPanels } from '../add-ons/places';
import type { BoxStyle, Chosen, Pieces } from '../language/types';
import { gluedTube, LIDDED_OPTIONS, TUBE_LIMITS, TUBE_QUANTITIES, TUBE_SYMBOLS } from './glued-tube';
import { underSavedIds } from './sides';
import {
  HUNG_LIMITS,
  TUCK_ALLOWANCES,
  TUCK_FITS,
  TUCK_LETS,
  TUCK_LIMITS,
  TUCK_OPTIONS,
  TUCK_QUANTITIES,
  TUCK_SYMBOLS,
  tuckClosing,
  tuckLid,
  tuckOverlap,
} from './tuck-lid';

/** All that straight and reverse tuck ends share: a glued tube with a tucked lid at each end, the upper one on the back. */
export const tuckEnd = (bottomLidOn: 'front' | 'back') =>
  ({
    version: 1,
    symbols: { ...TUBE_SYMBOLS, ...TUCK_SYMBOLS },
    // tucks behind both walls take the lid's shortness twice
    inside: [
      'width - t',
      bottomLidOn === 'back' ? 'depth - lidShort - t' : 'depth - 2 lidShort - t',
      'height - 4t',
    ],
    allowances: TUCK_ALLOWANCES,
    lets: TUCK_LETS,
    quantities: { ...TUBE_QUANTITIES, ...TUCK_QUANTITIES },
    options: { ...LIDDED_OPTIONS, ...TUCK_OPTIONS },
    addOns: {
      window: [
        ...underSavedIds(inPanels('box', 'front', 'back', 'right', 'left')),
        ...inLids('box', 'topLid'),
      ],
      notch: inEdges('box', 'front.up'),
      hangTab: inEdges('box', 'front.up'),
      dustFlaps: true,
    },
    sidesRenamed: ['box'],
    pieces: (chosen: Chosen): Pieces => {
      const tube = gluedTube(chosen, 'tabClear', 'tabClear');
      return {
        box: {
          label: 'Box',
          panels: {
            ...tube.panels,
            ...tuckLid(chosen, tube, bottomLidOn, 'down', 'bottom'),
            ...tuckLid(chosen, tube, 'back', 'up', 'top'),
          },
          joints: [tube.joint],
          seams: [tube.seam],
          overlaps: [tuckOverlap('bottom'), tuckOverlap('top')],
          closing: [...tube.closing, ...tuckClosing('bottom'), ...tuckClosing('top')],
          shell: ['front', 'left', 'back', 'right'],
          roomMm3: ({ width = 0, depth = 0, height = 0 }) => width * depth * height,
          roomFormula: 'width * depth * height',
        },
      };
    },
    constraints: [...TUBE_LIMITS, ...TUCK_LIMITS, ...HUNG_LIMITS],
    promises: [],
    fits: TUCK_FITS,
    traits: ['lid', 'tall'],
  }) as const satisfies Partial<BoxStyle>;
