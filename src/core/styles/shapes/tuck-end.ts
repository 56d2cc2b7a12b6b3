import { inEdges, inPanels } from '../add-ons/places';
import type { BoxStyle, Chosen, Pieces } from '../language/types';
import { gluedTube, TUBE_LIMITS, TUBE_OPTIONS, TUBE_QUANTITIES, TUBE_SYMBOLS } from './glued-tube';
import {
  TUCK_ALLOWANCES,
  TUCK_LAYERS,
  TUCK_LETS,
  TUCK_LIMITS,
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
    options: TUBE_OPTIONS,
    addOns: {
      window: inPanels('box', 'front', 'back', 'left', 'right', 'topLid'),
      notch: inEdges('box', 'front.up'),
      hangTab: inEdges('box', 'front.up'),
      dustFlaps: true,
    },
    pieces: (chosen: Chosen): Pieces => {
      const tube = gluedTube(chosen, TUCK_LAYERS, TUCK_LAYERS);
      return {
        box: {
          label: 'Box',
          panels: {
            ...tube.panels,
            ...tuckLid(tube, bottomLidOn, 'down', 'bottom'),
            ...tuckLid(tube, 'back', 'up', 'top'),
          },
          joints: [tube.joint],
          seams: [tube.seam],
          overlaps: [tuckOverlap('bottom'), tuckOverlap('top')],
          closing: [...tube.closing, ...tuckClosing('bottom'), ...tuckClosing('top')],
          shell: ['front', 'right', 'back', 'left'],
          roomMm3: ({ width = 0, depth = 0, height = 0 }) => width * depth * height,
        },
      };
    },
    constraints: [...TUBE_LIMITS, ...TUCK_LIMITS],
    promises: [],
    traits: ['lid', 'tall'],
  }) as const satisfies Partial<BoxStyle>;
