import type {
  Chosen,
  ConstraintSpec,
  FitSpec,
  Len,
  OptionSpec,
  PanelSpec,
  Quantity,
} from '../language/types';
import type { Tube, Wall } from './glued-tube';
import { allowanceOf } from './size-symbols';

/** The sizes of a closure: a lid on one wall, a tuck at its free edge, and dust flaps on the sides. */
export const TUCK_SYMBOLS = {
  tuck: allowanceOf('Tuck', 'The edge of the lid that goes inside the box.', '1/2 in', '3/8 in', '1 1/2 in'),
  relief: allowanceOf(
    'Side relief',
    'How much narrower the lid is than the box, at each side. It is taken up to the next mark of your tool.',
    '1/32 in',
    '1/64 in',
    '1/4 in',
  ),
} as const;

/** The lid is one caliper short of the depth, so that its tuck passes inside the far wall. */
export const TUCK_ALLOWANCES = {
  // clear of a glue tab inside the far wall
  lidShort: '2t + 1/64 in',
  sideRelief: 'relief',
  // the shoulder of a dust flap: the tuck passes beside it
  dustCut: 't + 1/16 in',
} as const;

export const TUCK_LETS = {
  lidDepth: 'depth - lidShort',
  lidWidth: 'width - 2 sideRelief',
  lidSlit: '1/4 in',
  slitOpens: '1/16 in',
} as const;

/** How the tuck is cut. Friction alone holds the first two; from memory, common practice, no source. */
export const TUCK_OPTIONS = {
  tuckCut: {
    label: 'Tuck',
    help: 'Rounded corners slip in more easily. Slits at both ends of its score hold it behind the dust flaps.',
    choices: [
      { id: 'slanted', label: 'Slanted corners' },
      { id: 'round', label: 'Rounded corners' },
      { id: 'slits', label: 'Rounded, with slits that lock' },
    ],
    addOn: true,
  },
} as const satisfies Record<string, OptionSpec>;

/** Where a rounded corner goes from the side of the tuck to its end: three chords on an arc of half the tuck, so many of its lengths in and short of the end. */
const ROUND: readonly (readonly [inwards: Len, short: Len])[] = [
  ['0', '1/2 tuck'],
  ['13/194 tuck', '1/4 tuck'],
  ['1/4 tuck', '13/194 tuck'],
  ['1/2 tuck', '0'],
];

/** The tuck on a lid's free edge. Slits part it from the lid at both ends of its score. */
function tuckOn(chosen: Chosen, on: `${string}.${'up' | 'down'}`): PanelSpec {
  const cut = chosen['tuckCut'] ?? 'slanted';
  const whole = { role: 'tuck', on, fold: 90 } as const;
  if (cut === 'slanted') return { ...whole, size: ['lidWidth', 'tuck'], taper: 'tuckSlope' };
  const slit = cut === 'slits' ? 'lidSlit' : '0 in';
  const left = ROUND.map(([inwards, short]) => [`${inwards} - ${slit}`, `tuck - ${short}`] as const);
  const right = ROUND.map(
    ([inwards, short]) => [`lidWidth - ${inwards} - ${slit}`, `tuck - ${short}`] as const,
  ).reverse();
  if (cut === 'round') return { ...whole, outline: [...left, ...right] };
  return {
    ...whole,
    at: slit,
    hinge: `lidWidth - 2 ${slit}`,
    outline: [[`0 - ${slit}`, 'slitOpens'], ...left, ...right, [`lidWidth - ${slit}`, 'slitOpens']],
  };
}

export const TUCK_QUANTITIES = {
  dust: {
    means: 'length of a dust flap: two of them do not meet, and neither reaches the far end of the lid',
    // half a width between two marks is taken up by half a mark, less than the relief
    of: ({ width = 0, lidDepth = 0, sideRelief = 0 }) => Math.min(width / 2, lidDepth) - sideRelief,
    formula: 'min(width / 2, lidDepth) - sideRelief',
    onMark: true,
  },
  dustSlope: {
    means: 'how far each side of a dust flap slopes in',
    of: ({ dust = 0 }) => dust / 4,
    formula: 'dust / 4',
    onMark: true,
  },
  tuckSlope: {
    means: 'how far each corner of the tuck slopes in',
    of: ({ tuck = 0 }) => tuck / 3,
    formula: 'tuck / 3',
    onMark: true,
  },
} as const satisfies Record<string, Quantity>;

/** Lid, tuck and two dust flaps at one end of a tube. The dust flaps are cut back where the tuck passes them. */
export function tuckLid(
  chosen: Chosen,
  tube: Tube,
  lidOn: 'front' | 'back',
  end: 'up' | 'down',
  name: string,
): Readonly<Record<string, PanelSpec>> {
  const dust = (wall: Extract<Wall, 'left' | 'right'>): PanelSpec => {
    // the tuck passes beside the wall across from the lid; hinge frames start at the right when they look up, at the left when down
    const tuckAtLeft = (wall === 'left') === (lidOn === 'back');
    const tuckAtStart = tuckAtLeft === (end === 'down');
    const across: Len = `${tube.across[wall]} - dustCut`;
    return {
      role: 'dustFlap',
      size: [across, 'dust'],
      on: `${wall}.${end}`,
      at: tuckAtStart ? 'dustCut' : '0',
      taper: 'dustSlope',
      fold: 90,
    };
  };
  return {
    [`${name}LeftDust`]: dust('left'),
    [`${name}RightDust`]: dust('right'),
    [`${name}Lid`]: {
      role: 'lid',
      size: ['lidWidth', 'lidDepth'],
      on: `${lidOn}.${end}`,
      at: 'sideRelief',
      fold: 90,
    },
    [`${name}Tuck`]: tuckOn(chosen, `${name}Lid.${end}`),
  };
}

/** Panels that lie on one another under a closed lid, innermost first. */
export const tuckOverlap = (name: string): readonly string[] => [
  `${name}LeftDust`,
  `${name}RightDust`,
  `${name}Lid`,
];

/** Dust flaps in, then lid and tuck together; the tuck bends as it slips in. */
export const tuckClosing = (name: string) =>
  [
    { do: 'fold', panels: [`${name}LeftDust`, `${name}RightDust`] },
    { do: 'tuck', panels: [`${name}Lid`, `${name}Tuck`], bends: true },
  ] as const;

/** A header above the front stands in the way of a long tuck, and more so where its end is not slanted. */
export const HUNG_LIMITS: readonly ConstraintSpec[] = [
  { code: 'tuck-catches-header', atMost: '1/2 depth', given: [{ hangTab: 'front' }] },
  {
    code: 'round-tuck-catches-header',
    atMost: '1/4 depth',
    given: [
      { hangTab: 'front', tuckCut: 'round' },
      { hangTab: 'front', tuckCut: 'slits' },
    ],
  },
].map((limit) => ({
  ...limit,
  symbol: 'tuck',
  severity: 'stop',
  says: 'A tuck {tuck} long catches on the header above the front under a lid {depth} deep.',
  remedy: 'Make it at most {limit}, or leave the header out.',
}));

type TuckCard = readonly [card: Len, given?: readonly Chosen[]];

/** Half of the lid and of the far wall lie between their lines, and a glue tab where it lies inside the front. */
const TAB_CARDS: readonly TuckCard[] = [
  ['t', [{ order: 'side' }, { order: 'front', tab: 'left' }]],
  ['2t', [{ order: 'front', tab: 'right' }]],
];

/** The lid and its tuck between the walls. */
const tuckFits = (cards: readonly TuckCard[]): readonly FitSpec[] => [
  {
    what: 'lid between the sides',
    room: 'width',
    body: 'lidWidth',
    card: 't',
    ease: '0.2 mm',
    marks: 4,
    truest: 'the two side scores of the back and the two sides of the lid',
    saves: 'Pare a little more off the sides of the lid.',
  },
  ...cards.map(
    ([card, given]): FitSpec => ({
      what: 'tuck behind the far wall',
      room: 'depth',
      body: 'lidDepth',
      card,
      ease: '1/64 in',
      marks: 3,
      truest: 'the depth of the sides and the two scores of the lid',
      saves: 'Score the lid a hair short rather than long.',
      ...(given && { given }),
    }),
  ),
];

/** A seam at the front puts a glue tab where the tuck goes in. */
export const TUCK_FITS = tuckFits(TAB_CARDS);
/** Of a tube that has its seam at the back, however it is made. */
export const BACK_SEAM_TUCK_FITS = tuckFits([['t']]);

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
    code: 'round-tuck-catches',
    symbol: 'tuck',
    atMost: '3/4 depth',
    severity: 'stop',
    given: [{ tuckCut: 'round' }, { tuckCut: 'slits' }],
    says: 'A rounded tuck {tuck} long catches on the far wall under a lid {depth} deep.',
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
    code: 'slits-meet',
    symbol: 'width',
    atLeast: '1 in',
    severity: 'stop',
    given: [{ tuckCut: 'slits' }],
    says: 'The two slits of a tuck leave too little score on a lid {width} wide.',
    remedy: 'Make the width at least {limit}, or leave the slits out.',
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
