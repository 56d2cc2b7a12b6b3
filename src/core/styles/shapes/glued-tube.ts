import type {
  Chosen,
  ClosingStep,
  ConstraintSpec,
  JointSpec,
  Len,
  OptionSpec,
  PanelSpec,
  Quantity,
  SeamSpec,
} from '../language/types';
import { allowanceOf, sizeOf } from './size-symbols';

/**
 * The walls of a glued tube in the order they lie on the strip, inside up. Left and right are those of whoever looks at the front from
 * outside, so the left wall lies to the right of the front.
 */
export type Wall = 'front' | 'left' | 'back' | 'right';
const ROUND: readonly Wall[] = ['front', 'left', 'back', 'right'];

/** The sizes every glued tube has; `width`, `depth`, `height` and `tab` are the names its panels use. */
export const TUBE_SYMBOLS = {
  width: sizeOf('Width', 'Front panel, score to score.', '3 1/2 in', '1/2 in', '12 in'),
  depth: sizeOf('Depth', 'Side panel, score to score.', '1 1/2 in', '1/2 in', '12 in'),
  height: sizeOf(
    'Height',
    'Wall, from the bottom score to the top one or the rim.',
    '3 in',
    '1/2 in',
    '16 in',
  ),
  tab: allowanceOf('Glue tab', 'The strip that joins the last wall to the first.', '1 in', '3/8 in', '2 in'),
} as const;

/** source: common practice, no source; thinner card leaves the last panel on its mark */
const THICK_CARD_MM = 0.4064;

/** How far a glue tab stays clear of the floor, and of a lid, so that their flaps fold in past it. source: 1/16 in, common practice, no source */
const TAB_CLEAR_MM = 1.5875;
/** Layers of card that lie on one another in the thickest floor. */
const MOST_LAYERS = 5;

/** The slope of a tab's end over the tab's width, 15 degrees, and so much to the next mark that 30 are hardly passed. source: 15-30 degrees, common practice, no source */
const TAB_SLOPE = 0.27;

/** How the ends of a glue tab are cut: clear of the floor and the lid, and sloped so that the tab slips in and does not show. */
export const TAB_QUANTITIES = {
  tabClear: {
    means: 'how far the tab stays clear of the floor and of a lid',
    of: ({ t = 0 }) => (t >= THICK_CARD_MM ? Math.max(TAB_CLEAR_MM, MOST_LAYERS * t) : TAB_CLEAR_MM),
    formula: `t >= ${THICK_CARD_MM} * mm ? max(${TAB_CLEAR_MM} * mm, ${MOST_LAYERS} * t) : ${TAB_CLEAR_MM} * mm`,
    onMark: true,
  },
  tabBevel: {
    means: 'how far an end of the glue tab slopes in',
    of: ({ tab = 0 }) => TAB_SLOPE * tab,
    formula: `${TAB_SLOPE} * tab`,
    onMark: true,
  },
} as const satisfies Record<string, Quantity>;

export const TUBE_QUANTITIES = {
  ...TAB_QUANTITIES,
  seamRelief: {
    means:
      'how much the wall the tab hangs on is narrowed in thick card, because the tab ends up inside the next',
    of: ({ t = 0 }) => (t >= THICK_CARD_MM ? t : 0),
    formula: `t >= ${THICK_CARD_MM} * mm ? t : 0`,
  },
} as const satisfies Record<string, Quantity>;

const ORDER = {
  label: 'First panel',
  help: 'Which panel is at the left of the strip. The marks change; the box doesn’t.',
} as const;
const FRONT_FIRST = { id: 'front', label: 'Front first, seam beside the front' } as const;
const SIDE_FIRST = { id: 'side', label: 'Side first, seam at the back' } as const;

/** Where the strip starts and on which end the tab sits: the box is the same, the marks are not. */
export const TUBE_OPTIONS = {
  order: { ...ORDER, choices: [FRONT_FIRST, SIDE_FIRST] },
  tab: {
    label: 'Glue tab',
    help: 'The end of the strip the tab sits on.',
    choices: [
      { id: 'right', label: 'At the right end' },
      { id: 'left', label: 'At the left end' },
    ],
  },
} as const satisfies Record<string, OptionSpec>;

/** Under a lid the seam lies at the back unless the maker says otherwise: a tab inside the front is where the tuck goes in. */
export const LIDDED_OPTIONS = {
  ...TUBE_OPTIONS,
  order: { ...ORDER, choices: [SIDE_FIRST, FRONT_FIRST] },
} as const satisfies Record<string, OptionSpec>;

export interface Tube {
  /** Drawn width of each wall; the one the tab hangs on is narrower in thick card. */
  readonly across: Readonly<Record<Wall, Len>>;
  readonly panels: Readonly<Record<string, PanelSpec>>;
  readonly joint: JointSpec;
  readonly seam: SeamSpec;
  /** Glued while it lies flat, then opened. */
  readonly closing: readonly ClosingStep[];
}

/** Which wall of the round lies first. */
const STARTS: Readonly<Record<string, number>> = { front: 0, back: 2, side: 3 };

/** Four walls in a strip and the tab that closes them. `foot`, `head`: how far its ends are kept clear of floor and lid; `ends`: which of them slope. */
export function gluedTube(chosen: Chosen, foot: Len, head: Len, ends: 'both' | 'foot' = 'both'): Tube {
  const start = STARTS[chosen['order'] ?? 'front'] ?? 0;
  const walls = [0, 1, 2, 3].map((step) => ROUND[(start + step) % 4] ?? 'front');
  const [first = 'front', second = 'left', third = 'back', last = 'right'] = walls;
  const width = (wall: Wall): Len => (wall === 'front' || wall === 'back' ? 'width' : 'depth');
  const tabLeft = chosen['tab'] === 'left';
  const [hung, onto] = tabLeft ? [first, last] : [last, first];
  const across = Object.fromEntries(
    walls.map((wall) => [wall, wall === hung ? `${width(wall)} - seamRelief` : width(wall)]),
  ) as Record<Wall, Len>;
  const panels: Record<string, PanelSpec> = {};
  walls.forEach((wall, at) => {
    const before = walls[at - 1];
    const size = [across[wall], 'height'] as const;
    panels[wall] =
      before === undefined ? { role: 'wall', size } : { role: 'wall', size, on: `${before}.right`, fold: 90 };
  });
  const size = ['tab', `height - ${foot} - ${head}`] as const;
  const headBevel = ends === 'both' ? 'tabBevel' : '0';
  panels['tab'] = tabLeft
    ? { role: 'glueTab', size, on: `${hung}.left`, at: head, fold: 90, taper: [headBevel, 'tabBevel'] }
    : { role: 'glueTab', size, on: `${hung}.right`, at: foot, fold: 90, taper: ['tabBevel', headBevel] };
  const laidFlat = tabLeft ? (['tab', third] as const) : ([last, second] as const);
  return {
    across,
    panels,
    joint: { panel: 'tab', onto, lap: 'inside', gap: 'seamRelief' },
    seam: [`${last}.right`, `${first}.left`, 'seamRelief'],
    closing: [
      ...laidFlat.map((panel): ClosingStep => ({ do: 'fold', panels: [panel], to: 180 })),
      { do: 'glue', panel: 'tab', onto },
      { do: 'fold', panels: [second, third, last, 'tab'] },
    ],
  };
}

/** The closing of a tube whose tab runs on in other tabs, all glued in one go while it lies flat. */
export const gluedWith = (
  closing: readonly ClosingStep[],
  ...more: readonly { readonly panel: string; readonly onto: string }[]
): readonly ClosingStep[] =>
  closing.flatMap((step): readonly ClosingStep[] =>
    step.do === 'glue' ? [step, ...more.map((joint) => ({ do: 'glue' as const, ...joint }))] : [step],
  );

/** A tab has to keep some straight length between its sloped ends. */
export const TAB_LIMIT: ConstraintSpec = {
  code: 'tab-wider-than-high',
  symbol: 'tab',
  atMost: '7/8 height',
  severity: 'stop',
  says: 'The ends of a glue tab {tab} wide slope so far in that a wall {height} high leaves little to glue.',
  remedy: 'Make it at most {limit}.',
};

/** The tab lies wholly on the wall it is glued to: the front or the back, or a side, as the strip is ordered. */
export const TUBE_LIMITS: readonly ConstraintSpec[] = [
  TAB_LIMIT,
  {
    code: 'tab-wider-than-front',
    symbol: 'tab',
    atMost: 'width - seamRelief - 1/16 in',
    severity: 'stop',
    given: [
      { order: 'front', tab: 'right' },
      { order: 'side', tab: 'left' },
    ],
    says: 'The glue tab {tab} is too wide for the panel it is glued to, {width}.',
    remedy: 'Make it at most {limit}.',
  },
  {
    code: 'tab-wider-than-side',
    symbol: 'tab',
    atMost: 'depth - seamRelief - 1/16 in',
    severity: 'stop',
    given: [
      { order: 'side', tab: 'right' },
      { order: 'front', tab: 'left' },
    ],
    says: 'The glue tab {tab} is too wide for the side it is glued to, {depth}.',
    remedy: 'Make it at most {limit}.',
  },
];
