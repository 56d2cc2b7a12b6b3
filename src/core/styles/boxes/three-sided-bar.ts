import { inPanels } from '../add-ons/places';
import { defineStyle } from '../language/define';
import type { Chosen, PanelSpec, PieceSpec } from '../language/types';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';

const isGlued = (chosen: Chosen): boolean => chosen['ends'] === 'glued';

/** A triangle on the bottom wall and a tab on each of its slanted edges. */
const end = (name: string, on: 'bottom.up' | 'bottom.down', glued: boolean): Record<string, PanelSpec> => {
  const tab = (edge: 'e1' | 'e2'): PanelSpec => ({
    role: glued ? 'glueTab' : 'tuck',
    at: 'tabGap',
    hinge: 'side - 2 tabGap',
    outline: [
      ['endTab - tabGap', 'endTab'],
      ['side - endTab - tabGap', 'endTab'],
    ],
    on: `${name}.${edge}`,
    fold: 90,
  });
  return {
    [name]: { role: glued ? 'base' : 'lid', outline: [['side/2', 'reach']], on, fold: 90 },
    [`${name}StartTab`]: tab('e1'),
    [`${name}EndTab`]: tab('e2'),
  };
};

/** The first tab of each end, and the wall it lies on: the two ends look opposite ways. */
const LIES_ON = [
  ['near', 'left', 'right'],
  ['far', 'right', 'left'],
] as const;

function barOf(chosen: Chosen): PieceSpec {
  const glued = isGlued(chosen);
  const tabs = LIES_ON.map(([name, first, second]) => [
    { panel: `${name}StartTab`, onto: first },
    { panel: `${name}EndTab`, onto: second },
  ]);
  return {
    label: 'Bar',
    panels: {
      left: { role: 'wall', size: ['side', 'length'] },
      bottom: { role: 'wall', size: ['side', 'length'], on: 'left.right', fold: 120 },
      right: { role: 'wall', size: ['side', 'length'], on: 'bottom.right', fold: 120 },
      // stands between the tabs of both ends, which lie on the same wall
      tab: {
        role: 'glueTab',
        size: ['tab', 'length - 2 endTab'],
        at: 'endTab',
        on: 'right.right',
        fold: 120,
      },
      ...end('near', 'bottom.down', glued),
      ...end('far', 'bottom.up', glued),
    },
    joints: [
      { panel: 'tab', onto: 'left', lap: 'inside' },
      ...(glued ? tabs.flat().map((joint) => ({ ...joint, lap: 'inside' as const })) : []),
    ],
    seams: [
      ['right.right', 'left.left'],
      ['near.e1', 'left.down'],
      ['near.e2', 'right.down'],
      ['far.e1', 'right.up'],
      ['far.e2', 'left.up'],
    ],
    overlaps: glued ? [] : tabs.flat().map(({ panel, onto }) => [panel, onto]),
    closing: [
      { do: 'fold', panels: ['tab'] },
      { do: 'fold', panels: ['bottom', 'right'] },
      {
        do: 'glue',
        panel: 'tab',
        onto: 'left',
        tip: 'Press it along a ruler put inside, before the ends close.',
      },
      ...LIES_ON.flatMap(([name], at): PieceSpec['closing'] => {
        const [start, last] = [`${name}StartTab`, `${name}EndTab`];
        return glued
          ? [
              { do: 'fold', panels: [start, last] },
              { do: 'fold', panels: [name] },
              ...(tabs[at] ?? []).map((joint) => ({ do: 'glue', ...joint }) as const),
            ]
          : [{ do: 'tuck', panels: [start, last, name], bends: true }];
      }),
    ],
    shell: ['left', 'bottom', 'right', 'near', 'far'],
    roomMm3: ({ side = 0, reach = 0, length = 0 }) => (side * reach * length) / 2,
    roomFormula: 'side * reach * length / 2',
  };
}

/** A bar of three equal walls. Geometry: equilateral triangles; construction: common practice, no source. */
export const threeSidedBar = defineStyle({
  id: 'three-sided-bar',
  version: 1,
  name: 'Three-sided bar',
  source: 'plane geometry of the equilateral triangle; construction common practice, no source',
  goodFor: 'Wrapped chocolates in a row, a rolled print, a pair of socks: three scores and a bar.',
  watchOut: 'Score the three walls alike: a hair off each shows as a gap along the ridge.',
  symbols: {
    side: sizeOf('Side', 'One wall across, score to score; all three are alike.', '2 in', '1 in', '5 in'),
    length: sizeOf('Length', 'From one end to the other, score to score.', '6 in', '1 1/2 in', '11 in'),
    tab: allowanceOf('Glue tab', 'The strip along the ridge.', '1/2 in', '3/8 in', '1 in'),
    endTab: allowanceOf('End tabs', 'Width of the tabs on both ends.', '3/8 in', '1/4 in', '3/4 in'),
  },
  inside: ['side/2 - t', 'reach/2 - t', 'length - 2t'],
  // in a corner of 60 degrees a tab inside one wall comes near the next
  lets: { tabGap: '1/8 in' },
  addOns: { window: inPanels('bar', 'bottom') },
  options: {
    ends: {
      label: 'Ends',
      help: 'Tucked ends open again; glued ends do not.',
      choices: [
        { id: 'tucked', label: 'Tucked' },
        { id: 'glued', label: 'Glued' },
      ],
    },
  },
  quantities: {
    reach: {
      means: 'height of the triangle at each end',
      of: ({ side = 0 }) => (side * Math.sqrt(3)) / 2,
      formula: 'side * sqrt(3) / 2',
    },
  },
  pieces: (chosen) => ({ bar: barOf(chosen) }),
  constraints: [
    {
      code: 'tab-longer-than-wall',
      symbol: 'tab',
      atMost: 'side/2',
      severity: 'stop',
      says: 'A glue tab {tab} fills the ridge of a bar whose walls are {side}.',
      remedy: 'Make it at most {limit}.',
    },
    {
      code: 'end-tabs-too-wide',
      symbol: 'endTab',
      atMost: 'side/4',
      severity: 'stop',
      says: 'End tabs {endTab} wide leave no straight edge on a wall {side} across.',
      remedy: 'Make them at most {limit}.',
    },
    {
      code: 'end-tabs-meet',
      symbol: 'endTab',
      atMost: 'length/2 - 1/8 in',
      severity: 'stop',
      says: 'End tabs {endTab} wide meet inside a bar {length} long.',
      remedy: 'Make them at most {limit}.',
    },
  ],
  promises: [{ claim: 'covers', piece: 'bar', panels: ['near'], area: ['side/2', 'reach'] }],
  fits: [
    {
      // each begins so far from the corner of 60 degrees that it is half of that off the middle, and lies a card and a half inside its wall
      what: 'end tabs beside each other in the corner',
      room: 'tabGap',
      body: '0 in',
      card: '13/5 t',
      ease: '1/32 in',
      marks: 2,
      truest: 'where the scores of the end tabs end',
      saves: 'Snip a little off the pointed end of both tabs.',
    },
  ],
  traits: ['lid'],
});
