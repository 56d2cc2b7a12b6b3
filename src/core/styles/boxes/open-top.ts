import { inEdges, inPanels } from '../add-ons/places';
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
import { gluedTube, TUBE_LIMITS, TUBE_OPTIONS, TUBE_QUANTITIES, TUBE_SYMBOLS } from '../shapes/glued-tube';
import { underSavedIds } from '../shapes/sides';

/** FEFCO family 02 (slotted, one piece) made with a glued four-flap bottom; construction: common practice, no source. */
export const openTop = defineStyle({
  id: 'open-top',
  version: 1,
  name: 'Open-top box',
  source: 'common practice, no source; FEFCO family 02 is its corrugated cousin',
  goodFor: 'Treats in a bag, soap, a small candle: anything that may show above the rim.',
  watchOut: 'Nothing closes the top, and the four bottom flaps carry the weight, so glue them well.',
  symbols: { ...TUBE_SYMBOLS, ...BOTTOM_SYMBOLS },
  inside: ['width - t', 'depth - t', 'height - 7/2 t'],
  lets: BOTTOM_LETS,
  quantities: TUBE_QUANTITIES,
  options: TUBE_OPTIONS,
  addOns: {
    window: underSavedIds(inPanels('box', 'front', 'back', 'right', 'left')),
    notch: underSavedIds(inEdges('box', 'front.up', 'back.up', 'right.up', 'left.up')),
    slot: [{ id: 'sides', label: 'Through both sides', piece: 'box', at: ['right', 'left'] }],
    ribbon: [
      { id: 'sides', label: 'A handle through both sides', piece: 'box', at: ['right.up', 'left.up'] },
    ],
    hangTab: inEdges('box', 'back.up', 'front.up'),
  },
  sidesRenamed: ['box'],
  pieces: (chosen) => {
    const tube = gluedTube(chosen, 'tabClear', '0');
    return {
      box: {
        label: 'Box',
        panels: { ...tube.panels, ...bottomFlaps(tube) },
        joints: [tube.joint, ...BOTTOM_JOINTS],
        seams: [tube.seam],
        overlaps: [BOTTOM_OVERLAP],
        closing: [...tube.closing, ...BOTTOM_CLOSING],
        shell: ['front', 'left', 'back', 'right'],
        roomMm3: ({ width = 0, depth = 0, height = 0 }) => width * depth * height,
        roomFormula: 'width * depth * height',
      },
    };
  },
  constraints: [...BOTTOM_LIMITS, ...TUBE_LIMITS],
  promises: [{ claim: 'covers', piece: 'box', panels: ['frontFlap', 'backFlap'], area: ['width', 'depth'] }],
  fits: BOTTOM_FITS,
  traits: ['tall'],
});
