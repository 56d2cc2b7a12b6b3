import { defineStyle } from './define';

/** FEFCO family 02 (slotted, one piece) made with a glued four-flap bottom; construction: common practice, no source. */
export const openTop = defineStyle({
  id: 'open-top',
  version: 1,
  name: 'Open-top box',
  source: 'common practice, no source; FEFCO family 02 is its corrugated cousin',
  goodFor: 'Treats in a bag, soap, a small candle: something that may show above the rim.',
  watchOut: 'Nothing closes the top, and the four bottom flaps carry the weight, so glue them well.',
  symbols: {
    width: { role: 'size', label: 'Width', help: 'Front panel, score to score.', default: '3 1/2 in', min: '1/2 in', max: '12 in' },
    depth: { role: 'size', label: 'Depth', help: 'Side panel, score to score.', default: '1 1/2 in', min: '1/2 in', max: '12 in' },
    height: { role: 'size', label: 'Height', help: 'From the bottom score to the rim.', default: '3 in', min: '1/2 in', max: '16 in' },
    tab: { role: 'allowance', label: 'Glue tab', help: 'The strip that joins the last side to the front.', default: '1 in', min: '3/8 in', max: '2 in' },
    flap: { role: 'allowance', label: 'Bottom flap', help: 'From the bottom score to the flap’s free edge.', default: '1 1/2 in', min: '1/4 in', max: '12 in' },
  },
  inside: ['width - t', 'depth - t', 'height - 7/2 t'],
  lets: { hole: 'depth - 2 flap', lap: '2 flap - depth' },
  quantities: {
    // source: common practice, no source; below .016 in the last panel is left on its mark
    seamRelief: { means: 'how much the last side is narrowed for thick card', of: ({ t = 0 }) => (t >= 0.4064 ? t : 0) },
  },
  pieces: {
    box: {
      label: 'Box',
      panels: {
        front: { role: 'wall', size: ['width', 'height'] },
        right: { role: 'wall', size: ['depth', 'height'], on: 'front.right', fold: 90 },
        back: { role: 'wall', size: ['width', 'height'], on: 'right.right', fold: 90 },
        left: { role: 'wall', size: ['depth - seamRelief', 'height'], on: 'back.right', fold: 90 },
        tab: { role: 'glueTab', size: ['tab', 'height'], on: 'left.right', fold: 90 },
        frontFlap: { role: 'bottomFlap', size: ['width', 'flap'], on: 'front.down', fold: 90 },
        rightFlap: { role: 'bottomFlap', size: ['depth', 'flap'], on: 'right.down', fold: 90 },
        backFlap: { role: 'bottomFlap', size: ['width', 'flap'], on: 'back.down', fold: 90 },
        leftFlap: { role: 'bottomFlap', size: ['depth - seamRelief', 'flap'], on: 'left.down', fold: 90 },
      },
      joints: [
        { panel: 'tab', onto: 'front', lap: 'inside', gap: 'seamRelief' },
        { panel: 'frontFlap', onto: 'rightFlap', lap: 'outside', carries: true },
        { panel: 'frontFlap', onto: 'leftFlap', lap: 'outside', carries: true },
        { panel: 'backFlap', onto: 'frontFlap', lap: 'outside', carries: true },
      ],
      seams: [['left.right', 'front.left', 'seamRelief']],
      overlaps: [['rightFlap', 'leftFlap', 'frontFlap', 'backFlap']],
      closing: [
        { do: 'fold', panels: ['left'], to: 180 },
        { do: 'fold', panels: ['right'], to: 180 },
        { do: 'glue', panel: 'tab', onto: 'front', tip: 'Glue the side while the box lies flat.' },
        { do: 'fold', panels: ['right', 'back', 'left', 'tab'], tip: 'Open it up with the seam to the back.' },
        { do: 'fold', panels: ['rightFlap', 'leftFlap'] },
        { do: 'fold', panels: ['frontFlap'] },
        { do: 'glue', panel: 'frontFlap', onto: 'rightFlap' },
        { do: 'glue', panel: 'frontFlap', onto: 'leftFlap' },
        { do: 'fold', panels: ['backFlap'] },
        { do: 'glue', panel: 'backFlap', onto: 'frontFlap' },
      ],
      shell: ['front', 'right', 'back', 'left'],
      roomMm3: ({ width = 0, depth = 0, height = 0 }) => width * depth * height,
    },
  },
  constraints: [
    {
      code: 'bottom-leaves-hole', symbol: 'flap', atLeast: 'depth/2', severity: 'stop',
      says: 'Bottom flaps {flap} leave a hole {hole} wide.', remedy: 'Make them at least {limit}.',
    },
    {
      code: 'bottom-laps-little', symbol: 'flap', atLeast: 'depth/2 + 1/8 in', severity: 'warn',
      says: 'Bottom flaps {flap} lap by only {lap}, too little for 1/4 in tape.', remedy: 'Make them at least {limit}.',
    },
    {
      code: 'flap-meets-wall', symbol: 'flap', atMost: 'depth', severity: 'stop',
      says: 'Bottom flaps {flap} are longer than the box is deep ({depth}) and meet the far wall.', remedy: 'Make them at most {limit}.',
    },
    {
      code: 'side-flap-meets-wall', symbol: 'flap', atMost: 'width', severity: 'stop',
      says: 'Bottom flaps {flap} are longer than the box is wide ({width}), so the side flaps meet the far wall.', remedy: 'Make them at most {limit}.',
    },
    {
      code: 'tab-wider-than-panel', symbol: 'tab', atMost: 'width', severity: 'stop',
      says: 'The glue tab {tab} is wider than the front panel {width} it is glued to.', remedy: 'Make it at most {limit}.',
    },
  ],
  promises: [{ claim: 'covers', piece: 'box', panels: ['frontFlap', 'backFlap'], area: ['width', 'depth'] }],
  traits: ['tall', 'trimmer-only'],
});
