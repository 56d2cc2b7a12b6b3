import { inEdges, inLids, inPanels } from '../add-ons/places';
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
import { gluedTube, LIDDED_OPTIONS, TUBE_LIMITS, TUBE_QUANTITIES, TUBE_SYMBOLS } from '../shapes/glued-tube';
import { underSavedIds } from '../shapes/sides';
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
} from '../shapes/tuck-lid';

/** The open-top box with a lid on its back panel. ECMA family A (glued side seam, rectangular; from memory); construction: common practice, no source. */
export const lidFlap = defineStyle({
  id: 'lid-flap',
  version: 1,
  name: 'Box with closing lid',
  source: 'common practice, no source; ECMA family A (from memory)',
  goodFor: 'Wrapped candy, tea bags, seed packets, small toys. Put loose seeds or tea in a bag first.',
  watchOut: 'The tuck holds by friction only. Seal it with a sticker if the box will be carried.',
  symbols: { ...TUBE_SYMBOLS, ...BOTTOM_SYMBOLS, ...TUCK_SYMBOLS },
  inside: ['width - t', 'depth - lidShort - t', 'height - 11/2 t'],
  allowances: TUCK_ALLOWANCES,
  lets: { ...BOTTOM_LETS, ...TUCK_LETS },
  quantities: { ...TUBE_QUANTITIES, ...TUCK_QUANTITIES },
  options: { ...LIDDED_OPTIONS, ...TUCK_OPTIONS },
  addOns: {
    window: [...underSavedIds(inPanels('box', 'front', 'back', 'right', 'left')), ...inLids('box', 'topLid')],
    notch: inEdges('box', 'front.up'),
    hangTab: inEdges('box', 'front.up'),
    dustFlaps: true,
  },
  sidesRenamed: ['box'],
  pieces: (chosen) => {
    const tube = gluedTube(chosen, 'tabClear', 'tabClear');
    return {
      box: {
        label: 'Box',
        panels: { ...tube.panels, ...bottomFlaps(tube), ...tuckLid(chosen, tube, 'back', 'up', 'top') },
        joints: [tube.joint, ...BOTTOM_JOINTS],
        seams: [tube.seam],
        overlaps: [BOTTOM_OVERLAP, tuckOverlap('top')],
        closing: [...tube.closing, ...BOTTOM_CLOSING, ...tuckClosing('top')],
        shell: ['front', 'left', 'back', 'right'],
        roomMm3: ({ width = 0, depth = 0, height = 0 }) => width * depth * height,
        roomFormula: 'width * depth * height',
      },
    };
  },
  constraints: [...BOTTOM_LIMITS, ...TUBE_LIMITS, ...TUCK_LIMITS, ...HUNG_LIMITS],
  promises: [{ claim: 'covers', piece: 'box', panels: ['frontFlap', 'backFlap'], area: ['width', 'depth'] }],
  fits: [...BOTTOM_FITS, ...TUCK_FITS],
  traits: ['lid', 'tall'],
});
