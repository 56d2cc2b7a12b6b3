import { toDegrees } from '../../units/angles';
import { inPanels } from '../add-ons/places';
import { defineStyle } from '../language/define';
import type { Chosen, PanelSpec, PieceSpec, Values } from '../language/types';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';

/** Half the angle at the tip, from the wall and the back as they are cut. */
const halfTip = ({ radius = 0, chord = 0 }: Values): number => Math.asin(chord / 2 / radius);

/** Room for a tab inside each wall, three of the thickest cards a side. source: 1/16 in, common practice, no source */
const CLEAR_MM = 1.5875;
const tipGap = (values: Values): number => CLEAR_MM / Math.sin(halfTip(values));

/** A triangle on the back, floor or lid, and a tab on each of its slanted edges. */
const end = (name: string, on: 'back.up' | 'back.down'): Readonly<Record<string, PanelSpec>> => {
  const tab = (
    edge: 'e1' | 'e2',
    at: string,
    outline: readonly (readonly [string, string])[],
  ): PanelSpec => ({
    role: name === 'floor' ? 'glueTab' : 'tuck',
    at,
    hinge: 'radius - tipGap',
    outline,
    on: `${name}.${edge}`,
    fold: 90,
  });
  return {
    [name]: { role: name === 'floor' ? 'base' : 'lid', outline: [['chord/2', 'reach']], on, fold: 90 },
    [`${name}StartTab`]: tab('e1', '0', [
      ['endTab', 'endTab'],
      ['radius - tipDraw', 'endTab'],
    ]),
    [`${name}EndTab`]: tab('e2', 'tipGap', [
      ['tipDraw - tipGap', 'endTab'],
      ['radius - tipGap - endTab', 'endTab'],
    ]),
  };
};

/** Where the strip begins and ends: at the narrow tip, where no finger gets in to press it, or beside the back. */
function ring(chosen: Chosen): Pick<PieceSpec, 'panels' | 'joints' | 'seams' | 'closing'> {
  // stands between the tabs of floor and lid, which run into the corner below and above it
  const tab = { role: 'glueTab', size: ['tab', 'height - 2 endTab'], at: 'endTab' } as const;
  const side = { role: 'wall', size: ['radius', 'height'] } as const;
  const back = { role: 'wall', size: ['chord', 'height'], on: 'left.right', fold: 'backFold' } as const;
  if (chosen['seam'] === 'back')
    return {
      panels: {
        right: side,
        left: { ...side, on: 'right.right', fold: 'tipFold' },
        back,
        tab: { ...tab, on: 'back.right', fold: 'backFold' },
      },
      joints: [{ panel: 'tab', onto: 'right', lap: 'inside' }],
      seams: [['back.right', 'right.left']],
      closing: [
        { do: 'fold', panels: ['tab'] },
        { do: 'fold', panels: ['left', 'back'] },
        { do: 'glue', panel: 'tab', onto: 'right', tip: 'Press it from inside with two fingers.' },
      ],
    };
  return {
    panels: {
      left: side,
      back,
      right: { ...side, on: 'back.right', fold: 'backFold' },
      tab: { ...tab, on: 'right.right', fold: 'tipFold' },
    },
    joints: [{ panel: 'tab', onto: 'left', lap: 'inside' }],
    seams: [['right.right', 'left.left']],
    closing: [
      { do: 'fold', panels: ['tab'] },
      { do: 'fold', panels: ['back', 'right'] },
      { do: 'glue', panel: 'tab', onto: 'left' },
    ],
  };
}

function sliceOf(chosen: Chosen): PieceSpec {
  const { panels, joints, seams = [], closing } = ring(chosen);
  return {
    label: 'Slice',
    panels: { ...panels, ...end('floor', 'back.down'), ...end('lid', 'back.up') },
    joints: [
      ...joints,
      { panel: 'floorStartTab', onto: 'left', lap: 'inside', carries: true },
      { panel: 'floorEndTab', onto: 'right', lap: 'inside', carries: true },
    ],
    seams: [
      ...seams,
      ['floor.e1', 'left.down'],
      ['floor.e2', 'right.down'],
      ['lid.e1', 'right.up'],
      ['lid.e2', 'left.up'],
    ],
    overlaps: [
      ['lidStartTab', 'right'],
      ['lidEndTab', 'left'],
    ],
    closing: [
      ...closing,
      { do: 'fold', panels: ['floorStartTab', 'floorEndTab'] },
      { do: 'fold', panels: ['floor'] },
      { do: 'glue', panel: 'floorStartTab', onto: 'left' },
      { do: 'glue', panel: 'floorEndTab', onto: 'right' },
      { do: 'tuck', panels: ['lidStartTab', 'lidEndTab', 'lid'], bends: true },
    ],
    shell: ['left', 'back', 'right', 'floor', 'lid'],
    roomFormula: 'chord * reach * height / 2',
    roomMm3: ({ chord = 0, reach = 0, height = 0 }) => (chord * reach * height) / 2,
  };
}

/** A slice of cake: so many of them make a ring. Geometry: isosceles triangles; construction: common practice, no source. */
export const wedge = defineStyle({
  id: 'wedge',
  version: 1,
  name: 'Cake slice',
  source: 'plane geometry of the isosceles triangle; construction common practice, no source',
  goodFor: 'A slice each, and all of them together a cake on the table.',
  watchOut:
    'The narrow tip creases badly across the grain. A real slice needs a liner, because cardstock isn’t for food.',
  symbols: {
    radius: sizeOf('Radius', 'Side wall, from the tip to the back, score to score.', '4 in', '2 in', '8 in'),
    height: sizeOf('Height', 'Wall, from the floor score to the lid score.', '1 1/2 in', '3/4 in', '5 in'),
    tab: allowanceOf('Glue tab', 'The strip that closes the ring of walls.', '1/2 in', '3/8 in', '1 in'),
    endTab: allowanceOf(
      'Floor and lid tabs',
      'Width of the tabs on floor and lid.',
      '3/8 in',
      '1/4 in',
      '3/4 in',
    ),
  },
  inside: ['1/2 chord - t', '1/2 reach - t', 'height - 2t'],
  addOns: { window: inPanels('slice', 'back') },
  options: {
    slices: {
      label: 'Slices per ring',
      help: 'How many of them make a whole cake.',
      choices: [12, 10, 8, 6].map((slices) => ({ id: String(slices), label: String(slices) })),
    },
    seam: {
      label: 'Seam',
      help: 'Beside the back a finger can press it. The box is the same, the marks are not.',
      choices: [
        { id: 'tip', label: 'At the tip' },
        { id: 'back', label: 'Beside the back' },
      ],
      forNew: 'back',
    },
  },
  quantities: {
    chord: {
      means: 'the back, taken up to a mark: the ring then opens by less than a degree a slice',
      formula: '2 * radius * sin(180 / number(slices))',
      of: ({ radius = 0 }, chosen) => 2 * radius * Math.sin(Math.PI / Number(chosen['slices'] ?? 12)),
      onMark: true,
    },
    reach: {
      means: 'from the back to the tip, straight',
      formula: 'sqrt(radius ** 2 - chord ** 2 / 4)',
      of: ({ radius = 0, chord = 0 }) => Math.sqrt(radius * radius - (chord * chord) / 4),
    },
    tipDraw: {
      means: 'how far a tab ends before the tip, so that the two of floor or lid stay apart',
      formula: `max(${CLEAR_MM} * mm / (chord / 2 / radius), max(2, 1.1 / tan(2 * asin(chord / 2 / radius))) * endTab)`,
      of: (values) =>
        Math.max(tipGap(values), Math.max(2, 1.1 / Math.tan(2 * halfTip(values))) * (values['endTab'] ?? 0)),
    },
    tipGap: {
      means: 'how far the score of a tab ends before the tip, where the slice is wide enough for its layers',
      formula: `${CLEAR_MM} * mm / (chord / 2 / radius)`,
      of: tipGap,
    },
  },
  angles: {
    backFold: {
      means: 'fold of a side wall at the back',
      formula: '90 + asin(chord / 2 / radius)',
      of: (values) => 90 + toDegrees(halfTip(values)),
    },
    tipFold: {
      means: 'fold of the tab at the tip',
      formula: '180 - 2 * asin(chord / 2 / radius)',
      of: (values) => 180 - 2 * toDegrees(halfTip(values)),
    },
  },
  pieces: (chosen) => ({ slice: sliceOf(chosen) }),
  constraints: [
    {
      code: 'tab-longer-than-wall',
      symbol: 'tab',
      atMost: 'radius/4',
      severity: 'stop',
      says: 'A glue tab {tab} fills the tip of a slice with a radius of {radius}.',
      remedy: 'Make it at most {limit}.',
    },
    {
      code: 'end-tabs-too-wide',
      symbol: 'endTab',
      atMost: 'radius/8',
      severity: 'stop',
      says: 'Floor and lid tabs {endTab} wide leave no straight length to glue on a radius of {radius}.',
      remedy: 'Make them at most {limit}.',
    },
    {
      code: 'end-tabs-meet',
      symbol: 'endTab',
      atMost: 'height/2 - 1/8 in',
      severity: 'stop',
      says: 'Floor and lid tabs {endTab} wide meet inside a slice {height} high.',
      remedy: 'Make them at most {limit}.',
    },
  ],
  promises: [{ claim: 'covers', piece: 'slice', panels: ['floor'], area: ['chord/2', 'reach'] }],
  fits: [
    {
      // each begins 1/16 in off the middle, and lies with a wall and a half of card inside its wall
      what: 'lid tabs beside each other at the tip',
      room: '1/8 in',
      body: '0 in',
      card: '3t',
      ease: '1/64 in',
      marks: 2,
      truest: 'where the scores of the lid tabs end at the tip',
      saves: 'Snip a little off the tip end of both tabs.',
    },
  ],
  traits: ['lid'],
});
