import { inPanels } from '../add-ons/places';
import { defineStyle } from '../language/define';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';

/** A sleeve round a chocolate bar, open at both ends. Construction: common practice, no source. */
export const barWrapper = defineStyle({
  id: 'bar-wrapper',
  version: 1,
  name: 'Bar wrapper',
  source: 'common practice, no source',
  goodFor: 'A chocolate bar in its foil, a pack of gum, a bar of soap: a printed band round it.',
  watchOut: 'It touches food unless the bar keeps its foil. Measure the bar: brands differ and sizes change.',
  symbols: {
    width: sizeOf('Width', 'Front, score to score, a little more than the bar.', '3 1/8 in', '1 in', '8 in'),
    thick: sizeOf('Thickness', 'Both narrow sides, score to score.', '1/2 in', '1/4 in', '2 in'),
    length: sizeOf('Length', 'Along the bar.', '5 1/2 in', '1 in', '12 in'),
    lap: allowanceOf('Glue tab', 'The strip under the edge of the back.', '1/2 in', '3/8 in', '1 1/2 in'),
  },
  inside: ['width - t', 'thick - t', 'length'],
  slidesInBy: ['width', 'depth'],
  lets: { tabClear: '1/16 in' },
  quantities: {
    tabSlope: {
      means: 'how far each end of the tab slopes in',
      of: ({ lap = 0 }) => lap / 3,
      formula: 'lap / 3',
      onMark: true,
    },
  },
  addOns: { window: inPanels('wrapper', 'front') },
  sidesRenamed: ['wrapper'],
  pieces: {
    wrapper: {
      label: 'Wrapper',
      panels: {
        front: { role: 'wall', size: ['width', 'length'] },
        left: { role: 'wall', size: ['thick', 'length'], on: 'front.right', fold: 90 },
        right: { role: 'wall', size: ['thick', 'length'], on: 'front.left', fold: 90 },
        back: { role: 'wall', size: ['width', 'length'], on: 'left.right', fold: 90 },
        tab: {
          role: 'glueTab',
          size: ['lap', 'length - 2 tabClear'],
          on: 'right.left',
          at: 'tabClear',
          taper: 'tabSlope',
          fold: 90,
        },
      },
      joints: [{ panel: 'tab', onto: 'back', lap: 'inside' }],
      seams: [['right.left', 'back.right']],
      closing: [
        { do: 'fold', panels: ['right', 'tab'] },
        {
          do: 'fold',
          panels: ['left', 'back'],
          tip: 'Fold it round the bar itself, and glue card to card, not to the bar.',
        },
        { do: 'glue', panel: 'tab', onto: 'back' },
      ],
      shell: ['front', 'left', 'back', 'right'],
      roomMm3: ({ width = 0, thick = 0, length = 0 }) => width * thick * length,
      roomFormula: 'width * thick * length',
    },
  },
  constraints: [
    {
      code: 'tab-wider-than-back',
      symbol: 'lap',
      atMost: '3/4 width',
      severity: 'stop',
      says: 'A glue tab {lap} wide fills the back of a wrapper {width} wide.',
      remedy: 'Make it at most {limit}.',
    },
    {
      code: 'tab-cut-to-point',
      symbol: 'lap',
      atMost: 'length - 1/2 in',
      severity: 'stop',
      says: 'The sloped ends of a tab {lap} wide meet on a wrapper {length} long.',
      remedy: 'Make it at most {limit}.',
    },
  ],
  promises: [],
  traits: ['flat-packet'],
});
