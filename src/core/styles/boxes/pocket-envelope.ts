import { inEdges, inPanels } from '../add-ons/places';
import { defineStyle } from '../language/define';
import type { PanelSpec } from '../language/types';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';

/** `edge`: of the front as it lies, inside up. */
const sideTab = (edge: 'left' | 'right'): PanelSpec => ({
  role: 'glueTab',
  size: ['tab', 'height - mouth - 2 tabClear'],
  on: `front.${edge}`,
  at: edge === 'left' ? 'mouth + tabClear' : 'tabClear',
  taper: 'tabSlope',
  fold: 180,
});

/** A flat pocket with a flap. Construction: common practice, no source. */
export const pocketEnvelope = defineStyle({
  id: 'pocket-envelope',
  version: 1,
  name: 'Pocket envelope',
  source: 'common practice, no source',
  goodFor: 'Seeds, a coin, a gift card, a folded note. Glue the tabs to their ends for fine seeds.',
  watchOut: 'It is flat: what is thicker than 3/16 in pulls the sides in. Put bare food in a bag first.',
  symbols: {
    width: sizeOf('Width', 'Front, score to score.', '3 in', '1 1/4 in', '9 in'),
    height: sizeOf('Height', 'Front, from the bottom score to the flap’s.', '4 1/2 in', '1 1/4 in', '10 in'),
    flap: sizeOf('Flap', 'How far the flap reaches down over the back.', '1 1/4 in', '1/2 in', '5 in'),
    mouth: allowanceOf('Mouth', 'How far the back stays below the flap’s score.', '1/4 in', '0 in', '2 in'),
    tab: allowanceOf('Glue tab', 'The strips along both sides.', '1/2 in', '3/8 in', '1 in'),
  },
  // a pocket whose walls do not stretch is as much narrower as what is in it is thick
  inside: ['width - bulge - t', 'bulge', 'height - mouth - bulge - t'],
  slidesInBy: ['width', 'depth'],
  pocket: true,
  allowances: {
    flapShort: 't + 1/64 in',
    // the tabs stay clear of the bottom score and of the back's free edge
    tabClear: '2t + 1/16 in',
  },
  lets: { bulge: '3/16 in' },
  quantities: {
    tabSlope: {
      means: 'how far each end of a tab slopes in',
      of: ({ tab = 0 }) => tab / 3,
      formula: 'tab / 3',
      onMark: true,
    },
    flapSlope: {
      means: 'how far each side of the flap slopes in',
      of: ({ flap = 0, width = 0 }) => Math.min(flap / 4, width / 6),
      formula: 'min(flap / 4, width / 6)',
      onMark: true,
    },
  },
  addOns: {
    window: inPanels('envelope', 'front'),
    notch: inEdges('envelope', 'back.down'),
    corners: [{ id: 'flap', label: 'On the flap', piece: 'envelope', at: ['flap.up', 'flap.left'] }],
  },
  sidesRenamed: ['envelope'],
  pieces: {
    envelope: {
      label: 'Envelope',
      panels: {
        front: { role: 'base', size: ['width', 'height'] },
        rightTab: sideTab('left'),
        leftTab: sideTab('right'),
        back: {
          role: 'cover',
          size: ['width', 'height - mouth'],
          on: 'front.down',
          fold: 180,
        },
        flap: {
          role: 'cover',
          size: ['width - 2 flapShort', 'flap'],
          on: 'front.up',
          at: 'flapShort',
          taper: 'flapSlope',
          fold: 180,
        },
      },
      joints: [
        { panel: 'rightTab', onto: 'back', lap: 'inside' },
        { panel: 'leftTab', onto: 'back', lap: 'inside' },
      ],
      overlaps: [['front', 'rightTab', 'leftTab', 'back', 'flap']],
      closing: [
        { do: 'fold', panels: ['rightTab', 'leftTab'] },
        { do: 'fold', panels: ['back'] },
        { do: 'glue', panel: 'rightTab', onto: 'back' },
        { do: 'glue', panel: 'leftTab', onto: 'back' },
        { do: 'fold', panels: ['flap'], tip: 'Fill it, fold the flap down and close it with a seal.' },
      ],
      shell: [],
      roomMm3: () => 0,
      roomFormula: '0',
    },
  },
  constraints: [
    {
      code: 'side-tabs-meet',
      symbol: 'tab',
      atMost: '1/2 width - 1/8 in',
      severity: 'stop',
      says: 'Side tabs {tab} wide meet in an envelope {width} wide.',
      remedy: 'Make them at most {limit}.',
    },
    {
      code: 'side-tabs-cut-to-point',
      symbol: 'tab',
      atMost: '3/4 height - 3/4 mouth - 1/2 in',
      severity: 'stop',
      says: 'The slanted ends of a tab {tab} wide meet on an envelope {height} high.',
      remedy: 'Make it at most {limit}.',
    },
    {
      code: 'flap-short-of-back',
      symbol: 'flap',
      atLeast: 'mouth + 1/4 in',
      severity: 'stop',
      says: 'A flap {flap} long does not reach over the back, which stays {mouth} below its score.',
      remedy: 'Make it at least {limit}.',
    },
    {
      code: 'flap-longer-than-back',
      symbol: 'flap',
      atMost: 'height - 1/16 in',
      severity: 'stop',
      says: 'A flap {flap} long reaches past the bottom of an envelope {height} high.',
      remedy: 'Make it at most {limit}.',
    },
    {
      code: 'back-too-low',
      symbol: 'mouth',
      atMost: '1/2 height',
      severity: 'stop',
      says: 'A back {mouth} below the flap’s score leaves less than half of an envelope {height} high as a pocket.',
      remedy: 'Make it at most {limit}.',
    },
  ],
  promises: [],
  traits: ['lid', 'flat-packet'],
});
