import { begunNew, fillSizes, nameValues, newSizes } from '../net/name-values';
import { evaluateForm, expandForm, formOf } from '../styles/language/linear-form';
import type { BoxStyle, Chosen, ConstraintSpec, Len } from '../styles/language/types';
import { limitsFor } from '../styles/shapes/limits-for';
import { MARK_STEPS, markAbove, markBelow, nearestMark, type Ruler, type Ticks, ticks } from '../units';

/** What a search may vary: see `EasyMarkQuestion`. */
export interface SearchBounds {
  readonly style: BoxStyle;
  readonly caliperUm: number;
  readonly need: readonly [Ticks, Ticks, Ticks];
  readonly slack: Ticks;
  readonly ruler: Ruler;
  readonly held: Readonly<Record<string, Ticks>>;
  readonly options?: Chosen;
}

type Lengths = Readonly<Record<string, Ticks>>;

const ALLOWANCE_TRIES = 9; // source: our choice; all eighths of an inch of slack
const MOST_COMBINATIONS = 130_000; // source: our choice; some 60 ms

/** The lengths to try for each symbol, in the style's order, and the one of them it takes where it makes no difference. */
export interface Tries {
  readonly lists: readonly (readonly Ticks[])[];
  readonly usual: readonly Ticks[];
}

/**
 * Sizes are tried from the least that gives the room on, mark by mark, through `slack`; allowances on coarser marks within their limits,
 * nearest their usual; a held symbol has its one. Where that is too many, the last allowances keep to their usual.
 */
export function triesFor(bounds: SearchBounds): Tries {
  const { style, held, ruler } = bounds;
  const filled = leastSizes(bounds);
  const entries = Object.entries(style.symbols);
  const usual = entries.map(([name]) => held[name] ?? filled[name] ?? ticks(0));
  const lists = entries.map(([name, { role }], i): readonly Ticks[] => {
    const own = usual[i] ?? ticks(0);
    if (held[name] !== undefined || feedsRounding(style, name) || isEase(style, name)) return [own];
    const givesRoom = role === 'size' && leastForRoom(bounds, name, filled) !== null;
    return givesRoom ? marksFrom(own, bounds.slack, ruler.finest) : nearUsual(bounds, name, filled);
  });
  for (let i = lists.length - 1; i >= 0 && combinations(lists) > MOST_COMBINATIONS; i--) {
    const [name, spec] = entries[i] ?? [];
    const isOpen = name !== undefined && held[name] === undefined;
    if (isOpen && spec?.role === 'allowance') lists[i] = usualOnly(bounds, name, filled);
  }
  return { lists, usual };
}

/** The style's sizes at the least marks that give the room; held ones as they are. Allowances are left to follow. */
export function sizesForRoom(bounds: SearchBounds): Readonly<Record<string, Ticks>> {
  const { usual } = triesFor(bounds);
  return Object.fromEntries(
    Object.entries(bounds.style.symbols).flatMap(([name, { role }], i) =>
      role === 'size' ? [[name, usual[i] ?? ticks(0)]] : [],
    ),
  );
}

/** The same for a box that is not there yet, with what new boxes begin with, all of it on the tool's marks. */
export function newSizesForRoom(bounds: SearchBounds): Readonly<Record<string, Ticks>> {
  const { style, held, ruler } = bounds;
  const least = sizesForRoom({ ...bounds, style: begunNew(style) });
  const sizes = newSizes(style, { ...least, ...held }, ruler.finest);
  const onMarks = Object.fromEntries(
    Object.entries(sizes).map(([name, size]) => [
      name,
      held[name] ?? (isSize(style, name) ? nearestMark(size, ruler.finest) : size),
    ]),
  );
  return { ...withinLimits(bounds, onMarks), ...onMarks };
}

const isSize = ({ symbols }: BoxStyle, name: string): boolean => symbols[name]?.role === 'size';

/** Allowances that would break a limit at these sizes, on the nearest mark that keeps it: a bottom flap of a deep box, a tab of a low one. */
function withinLimits(bounds: SearchBounds, sizes: Lengths): Lengths {
  const { style, held } = bounds;
  const lengths = namesAt(bounds, fillSizes(style, sizes));
  return Object.fromEntries(
    Object.keys(style.symbols).flatMap((name) => {
      const allowed =
        isSize(style, name) || held[name] !== undefined ? null : allowedOf(bounds, name, lengths);
      return allowed === null ? [] : [[name, allowed]];
    }),
  );
}

/** The mark nearest to a length that a limit or an advice of the style forbids at these sizes; null where none does. */
function allowedOf(
  { style, ruler, options = {} }: SearchBounds,
  name: string,
  lengths: Lengths,
): Ticks | null {
  const length = lengths[name] ?? ticks(0);
  const [low, high] = limitsAt(style, name, lengths, limitsFor(style, options));
  if (length < low) return markAbove(low, ruler.finest);
  return length > high ? markBelow(high, ruler.finest) : null;
}

const combinations = (lists: readonly (readonly Ticks[])[]): number =>
  lists.reduce((n, list) => n * list.length, 1);

/** The style's sizes with each room-giving size at the least mark that gives the room, and whatever follows from them; every name filled in. */
function leastSizes(bounds: SearchBounds): Lengths {
  const { style, held, ruler } = bounds;
  const free = Object.entries(style.symbols).filter(
    ([name, { role }]) => role === 'size' && held[name] === undefined,
  );
  let sizes: Lengths = fillSizes(style, held);
  // One round settles what is linear; bowed and slanted rooms come nearer round by round.
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const before = sizes;
    for (const [name, { min }] of free) {
      const least = leastForRoom(bounds, name, sizes);
      if (least === null) continue;
      const low = evaluateForm(formOf(min), {});
      const size = markAbove(ticks(Math.max(least, low)), ruler.finest);
      if (size !== sizes[name]) sizes = { ...sizes, [name]: size };
    }
    if (free.every(([name]) => before[name] === sizes[name])) break;
  }
  const grown = Object.fromEntries(
    free.flatMap(([name]) => {
      const size = sizes[name];
      return size !== undefined && leastForRoom(bounds, name, sizes) !== null ? [[name, size]] : [];
    }),
  );
  return namesAt(bounds, fillSizes(style, { ...grown, ...held }));
}

const MOST_ROUNDS = 6; // source: our choice; bowed rooms settle in three or four
const NUDGE = ticks(1016); // 1/8 in: whole after division by two, three and four
const LEAST_SLOPE = 0.05; // a size that gives the room less than a twentieth of what it grows by gives it nothing

const namesAt = ({ style, caliperUm, ruler, options = {} }: SearchBounds, sizes: Lengths): Lengths =>
  nameValues(style, { sizes, caliperUm, mark: ruler.finest, options }).lengths;

/** The least of this symbol that leaves the room on the axes it adds to, the others as they are; null if it adds to none. */
function leastForRoom(bounds: SearchBounds, name: string, sizes: Lengths): Ticks | null {
  const { style, need } = bounds;
  const own = sizes[name] ?? ticks(0);
  const here = namesAt(bounds, sizes);
  const there = namesAt(bounds, { ...sizes, [name]: ticks(own + NUDGE) });
  let least: Ticks | null = null;
  style.inside.forEach((text, axis) => {
    const form = expandForm(formOf(text), style.lets ?? {});
    const has = exactValue(form, here);
    const slope = (exactValue(form, there) - has) / NUDGE;
    if (slope < LEAST_SLOPE) return;
    least = ticks(Math.max(least ?? 0, Math.ceil(own + ((need[axis] ?? 0) - has) / slope - 1e-6)));
  });
  return least;
}

/** A form's value before it is rounded. */
const exactValue = ({ terms, constant, over }: ReturnType<typeof formOf>, lengths: Lengths): number =>
  terms.reduce((sum, { name, times }) => sum + times * (lengths[name] ?? 0), constant) / over;

function marksFrom(least: Ticks, slack: Ticks, finest: Ticks): Ticks[] {
  const marks: Ticks[] = [];
  for (let mark = least; mark <= least + slack; mark = ticks(mark + finest)) marks.push(mark);
  return marks;
}

/** An allowance that is rounded up to the marks together with the caliper does not move marks evenly, so it keeps to its usual. */
const feedsRounding = (style: BoxStyle, name: string): boolean =>
  Object.values(style.allowances ?? {}).some((text) => formOf(text).terms.some((term) => term.name === name));

/** An allowance as it usually is, or where limits and advice forbid that, as they allow it at the least sizes and at the largest. */
function usualOnly(bounds: SearchBounds, name: string, filled: Lengths): Ticks[] {
  const { style, slack, ruler, held } = bounds;
  const usual = nearestMark(filled[name] ?? ticks(0), ruler.finest);
  const grown = Object.entries(filled).map(([own, length]): [string, Ticks] => [
    own,
    isSize(style, own) && held[own] === undefined ? ticks(length + slack) : length,
  ]);
  const lengths = namesAt(bounds, fillSizes(style, { ...ownSizes(style, grown), [name]: usual }));
  return [...new Set([filled, lengths].map((at) => allowedOf(bounds, name, at) ?? usual))];
}

const ownSizes = ({ symbols }: BoxStyle, lengths: readonly (readonly [string, Ticks])[]): Lengths =>
  Object.fromEntries(lengths.filter(([name]) => name in symbols));

/** What a fit asks to stay clear is not given away for an easier mark. */
const isEase = ({ fits = [] }: BoxStyle, name: string): boolean =>
  fits.some(({ ease }) => formOf(ease).terms.some((term) => term.name === name));

/** Marks one step coarser than the tool's finest, but 1/8 in or 1 mm at the finest, inside the symbol's limits and nearest its usual. */
function nearUsual({ style, slack, ruler }: SearchBounds, name: string, filled: Lengths): Ticks[] {
  const [low, high] = limitsAt(style, name, filled);
  const own = evaluateForm(formOf(style.symbols[name]?.max ?? '0 mm'), {});
  const most = ticks(Math.max(low, Math.min(own, high + slack)));
  const usual = ticks(Math.min(most, Math.max(low, filled[name] ?? low)));
  const step = coarser(ruler);
  const tries: Ticks[] = [];
  for (let mark = markAbove(low, step); mark <= most; mark = ticks(mark + step)) tries.push(mark);
  const nearest = tries.sort((a, b) => Math.abs(a - usual) - Math.abs(b - usual)).slice(0, ALLOWANCE_TRIES);
  return [...new Set([...nearest, nearestMark(usual, ruler.finest)])].sort((a, b) => a - b);
}

function coarser({ unit, finest }: Ruler): Ticks {
  const steps = MARK_STEPS[unit];
  const usual = unit === 'in' ? 3 : 2;
  return steps[Math.min(usual, Math.max(0, steps.indexOf(finest) - 1))] ?? finest;
}

/** Least and most of a symbol: its own, and those of the style's constraints where they stand with these sizes. */
function limitsAt(
  style: BoxStyle,
  name: string,
  filled: Lengths,
  bounds: readonly ConstraintSpec[] = style.constraints.filter(({ severity }) => severity !== 'note'),
): [Ticks, Ticks] {
  const spec = style.symbols[name];
  const own = bounds.filter(({ symbol }) => symbol === name);
  const at = (texts: readonly (Len | undefined)[]) =>
    texts.flatMap((text) => {
      const form = text === undefined ? null : expandForm(formOf(text), style.lets ?? {});
      return form?.terms.every((term) => term.name in filled) ? [evaluateForm(form, filled)] : [];
    });
  const least = at([spec?.min, ...own.map(({ atLeast }) => atLeast)]);
  const most = at([spec?.max, ...own.map(({ atMost }) => atMost)]);
  return [ticks(Math.max(0, ...least)), ticks(Math.min(...most))];
}
