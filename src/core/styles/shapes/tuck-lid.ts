import type { ConstraintSpec, Len, PanelSpec, Quantity } from '../language/types';
import type { Tube, Wall } from './glued-tube';
import { allowanceOf } from './size-symbols';

/** The sizes of a closure: a lid on one wall, a tuck at its free edge, and dust flaps on the sides. */
export const TUCK_SYMBOLS = {
  tuck: allowanceOf('Tuck', 'The edge of the lid that goes inside the box.', '1/2 in', '3/8 in', '1 1/2 in'),
  relief: allowanceOf(
    'Side relief',
    'How much narrower the lid is than the box, at each side.',
    '1/16 in',
    '1/32 in',
    '1/4 in',
  ),
} as const;

/** The lid is one caliper short of the depth, so that its tuck passes inside the far wall. */
export const TUCK_ALLOWANCES = { lidShort: 't' } as const;

export const TUCK_LETS = {
  lidDepth: 'depth - lidShort',
  lidWidth: 'width - 2 relief',
  dustCut: 'lidShort + relief',
} as const;

export const TUCK_QUANTITIES = {
  dust: {
    means: 'length of a dust flap: two of them do not meet, and neither reaches the far end of the lid',
    of: ({ width = 0, lidDepth = 0, relief = 0 }) => Math.min(width / 2 - relief, lidDepth - relief),
  },
} as const satisfies Record<string, Quantity>;

/** Lid, tuck and two dust flaps at one end of a tube. The dust flaps are cut back where the tuck passes them. */
export function tuckLid(
  tube: Tube,
  lidOn: 'front' | 'back',
  end: 'up' | 'down',
  name: string,
): Readonly<Record<string, PanelSpec>> {
  const dust = (wall: Extract<Wall, 'left' | 'right'>): PanelSpec => {
    // the tuck passes beside the wall across from the lid; hinge frames start at the right when they look up, at the left when down
    const tuckAtLeft = (wall === 'right') === (lidOn === 'back');
    const tuckAtStart = tuckAtLeft === (end === 'down');
    const across: Len = `${tube.across[wall]} - dustCut`;
    return {
      role: 'dustFlap',
      size: [across, 'dust'],
      on: `${wall}.${end}`,
      at: tuckAtStart ? 'dustCut' : '0',
      taper: '1/4 dust',
      fold: 90,
    };
  };
  return {
    [`${name}RightDust`]: dust('right'),
    [`${name}LeftDust`]: dust('left'),
    [`${name}Lid`]: {
      role: 'lid',
      size: ['lidWidth', 'lidDepth'],
      on: `${lidOn}.${end}`,
      at: 'relief',
      fold: 90,
    },
    [`${name}Tuck`]: {
      role: 'tuck',
      size: ['lidWidth', 'tuck'],
      on: `${name}Lid.${end}`,
      taper: '1/3 tuck',
      fold: 90,
    },
  };
}

/** Layers of card that meet the glue tab at a tucked end, as the caliper's own form. */
export const TUCK_LAYERS = '3 seamRelief';

/** Panels that lie on one another under a closed lid, innermost first. */
export const tuckOverlap = (name: string): readonly string[] => [
  `${name}RightDust`,
  `${name}LeftDust`,
  `${name}Lid`,
];

/** Dust flaps in, then lid and tuck together; the tuck bends as it slips in. */
export const tuckClosing = (name: string) =>
  [
    { do: 'fold', panels: [`${name}RightDust`, `${name}LeftDust`] },
    { do: 'tuck', panels: [`${name}Lid`, `${name}Tuck`], bends: true },
  ] as const;

export const TUCK_LIMITS: readonly ConstraintSpec[] = [
  {
    code: 'tuck-longer-than-wall',
    symbol: 'tuck',
    atMost: '1/2 height',
    severity: 'stop',
    says: 'A tuck {tuck} reaches more than half way down a box {height} high.',
    remedy: 'Make it at most {limit}.',
  },
  {
    code: 'tuck-deeper-than-lid',
    symbol: 'tuck',
    atMost: 'depth',
    severity: 'stop',
    says: 'A tuck {tuck} is longer than its lid ({depth}) and won’t slip in.',
    remedy: 'Make it at most {limit}.',
  },
  {
    code: 'tuck-corners-meet',
    symbol: 'tuck',
    atMost: 'lidWidth',
    severity: 'stop',
    facts: { lidWidth: 'lidWidth' },
    says: 'A tuck {tuck} long on a lid {lidWidth} wide is cut to a point: its slanted corners meet.',
    remedy: 'Make it at most {limit}.',
  },
  {
    code: 'relief-narrows-lid',
    symbol: 'relief',
    atMost: '1/16 width',
    severity: 'stop',
    says: 'A relief of {relief} at each side leaves gaps beside the lid of a box {width} wide.',
    remedy: 'Make it at most {limit}.',
  },
];
