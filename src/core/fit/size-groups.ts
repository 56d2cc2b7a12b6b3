import type { CoordinateForm, MarkForm, StyleForms } from './mark-forms';
import { type MarkReader, type MarkTool, markReader, type PartRating } from './rate-marks';

/** Sizes of some symbols whose marks read well together, with what each adds to the forms that need the other symbols too. */
interface SizeGroup {
  /** Places of its symbols in the style's order. */
  readonly symbols: readonly number[];
  readonly values: readonly (readonly number[])[];
  readonly ratings: readonly PartRating[];
  /** Per node and form, what this group's symbols add, in ticks; `stride` forms a node. */
  readonly adds: Float64Array;
}

export interface GroupedSearch {
  readonly first: SizeGroup;
  readonly second: SizeGroup;
  /** What all forms come to with every symbol of both groups at nothing. */
  readonly constants: readonly number[];
  readonly stride: number;
}

/** The forms a pair of nodes is judged by: inside room with the least of each axis, limits that must not be negative, and blanks. */
export interface JudgedForms {
  readonly inside: readonly CoordinateForm[];
  readonly need: readonly number[];
  readonly limits: readonly CoordinateForm[];
}

type Lists = readonly (readonly number[])[];

/**
 * All combinations of the lists, as pairs of nodes of two groups of symbols that share no mark. One symbol is taken value by value where
 * that parts the others better; what one group alone breaks, and what another node of its group beats with every partner, is left out.
 * Exact: no combination that nothing beats is lost.
 */
export function groupSizes(
  lists: Lists,
  forms: StyleForms,
  judged: JudgedForms,
  tool: MarkTool,
): GroupedSearch[] {
  const { marks } = forms;
  const all = [...judged.inside, ...judged.limits, ...forms.blanks.flatMap(({ across, up }) => [across, up])];
  const { cut, largest } = bestCut(marks, lists);
  const others = lists.flatMap((_, i) => (i === cut || largest.includes(i) ? [] : [i]));
  const isFirst = (mark: MarkForm) => largest.some((symbol) => asksFor(mark, symbol));
  const readers = [
    readerByStep(marks.filter(isFirst), largest, tool),
    readerByStep(
      marks.filter((mark) => !isFirst(mark)),
      others,
      tool,
    ),
  ] as const;
  return (cut === null ? [null] : (lists[cut] ?? [])).map((value) => {
    const now = cut === null ? lists : lists.map((list, i) => (i === cut ? [value ?? 0] : list));
    const shared = { lists: now, all, judged };
    const first = nodesOf(shared, largest, others, readers[0]);
    const second = nodesOf(shared, others, largest, readers[1]);
    const constants = all.map(
      ({ constant, times }) => constant + (cut === null ? 0 : (times[cut] ?? 0) * (value ?? 0)),
    );
    const pair = { all, judged, constants };
    return {
      first: unbeaten(first, second, pair),
      second: unbeaten(second, first, pair),
      constants,
      stride: all.length,
    };
  });
}

const asksFor = ({ at, span }: MarkForm, symbol: number): boolean =>
  (at.times[symbol] ?? 0) !== 0 || (span?.times[symbol] ?? 0) !== 0;

/** The values of all symbols at a pair of nodes. */
export const joinValues = ({ first, second }: GroupedSearch, a: number, b: number): number[] =>
  (first.values[a] ?? []).map((value, i) =>
    second.symbols.includes(i) ? (second.values[b]?.[i] ?? value) : value,
  );

/** The symbol to take value by value, and the largest group of those left: the choice with the fewest nodes in all. */
function bestCut(marks: readonly MarkForm[], lists: Lists): { cut: number | null; largest: number[] } {
  let best = { cut: null as number | null, largest: [] as number[], nodes: Number.POSITIVE_INFINITY };
  for (const cut of [null, ...lists.keys()]) {
    const groups = groupsOf(marks, lists.length, cut);
    const largest = groups.reduce(
      (a, b) => (combinationsOf(b, lists) > combinationsOf(a, lists) ? b : a),
      groups[0] ?? [],
    );
    const others = groups.flat().filter((i) => !largest.includes(i));
    const each = combinationsOf(largest, lists) + combinationsOf(others, lists);
    const nodes = each * (cut === null ? 1 : (lists[cut]?.length ?? 1));
    if (nodes < best.nodes) best = { cut, largest, nodes };
  }
  return best;
}

/** Symbols that stand in one mark, or in two that share another symbol; the cut one stands in none. */
function groupsOf(marks: readonly MarkForm[], symbols: number, cut: number | null): number[][] {
  const home = Array.from({ length: symbols }, (_, i) => i);
  for (const mark of marks) {
    const used = home.flatMap((_, i) => (i !== cut && asksFor(mark, i) ? [i] : []));
    const to = home[used[0] ?? 0] ?? 0;
    for (const symbol of used) {
      const from = home[symbol];
      home.forEach((at, i) => {
        if (at === from) home[i] = to;
      });
    }
  }
  return [...new Set(home)]
    .map((one) => home.flatMap((at, i) => (at === one && i !== cut ? [i] : [])))
    .filter((group) => group.length > 0);
}

const combinationsOf = (symbols: readonly number[], lists: Lists): number =>
  symbols.reduce((n, symbol) => n * (lists[symbol]?.length ?? 1), 1);

/** A reader of a group's marks, each known once the last symbol it asks for is chosen. */
const readerByStep = (marks: readonly MarkForm[], symbols: readonly number[], tool: MarkTool): MarkReader =>
  markReader(
    marks,
    tool,
    marks.map((mark) => symbols.reduce((last, symbol, depth) => (asksFor(mark, symbol) ? depth : last), 0)),
  );

interface Shared {
  readonly lists: Lists;
  readonly all: readonly CoordinateForm[];
  readonly judged: JudgedForms;
}

/**
 * Every combination of these symbols (those of the other group at their first) whose marks all read, and that breaks no form of its own.
 * A value is left out as soon as a mark known by then does not read, or no value of the symbols after it can mend a form.
 */
function nodesOf(
  { lists, all, judged }: Shared,
  symbols: readonly number[],
  others: readonly number[],
  reader: MarkReader,
): SizeGroup {
  const stride = all.length;
  const least = [...judged.need, ...judged.limits.map(() => 0)];
  const now = lists.map((list) => list[0] ?? 0);
  const own = least.flatMap((bound, f) => {
    const form = all[f];
    if (!form || others.some((i) => form.times[i] !== 0)) return [];
    const fixed = form.times.reduce(
      (sum, n, i) => (symbols.includes(i) ? sum : sum + n * (now[i] as number)),
      form.constant,
    );
    return [{ f, bound, hope: mostToCome(form, symbols, lists).map((most) => fixed + most) }];
  });
  const times = symbols.map((symbol) => Float64Array.from(all, (form) => form.times[symbol] as number));
  // What the symbols chosen so far add to every form, one row a depth.
  const sums = Array.from({ length: symbols.length + 1 }, () => new Float64Array(stride));
  const values: number[][] = [];
  const ratings: PartRating[] = [];
  let adds = new Float64Array(stride * 64);
  const last = symbols.length - 1;
  /** Keeps the node whose marks have all been measured. */
  const take = (): void => {
    const from = stride * values.length;
    if (from + stride > adds.length) {
      const more = new Float64Array(2 * adds.length);
      more.set(adds);
      adds = more;
    }
    adds.set(sums[last + 1] as Float64Array, from);
    values.push([...now]);
    ratings.push(reader.rated());
  };
  const choose = (depth: number): void => {
    const before = sums[depth] as Float64Array;
    const sum = sums[depth + 1] as Float64Array;
    const each = times[depth] as Float64Array;
    const symbol = symbols[depth] as number;
    value: for (const value of lists[symbol] as readonly number[]) {
      now[symbol] = value;
      for (const { f, hope, bound } of own) {
        const has = (before[f] as number) + (each[f] as number) * value;
        if (Math.round(has + (hope[depth] as number)) < bound) continue value;
      }
      if (!reader.measure(depth, now)) continue;
      for (let f = 0; f < stride; f++) sum[f] = (before[f] as number) + (each[f] as number) * value;
      if (depth === last) take();
      else choose(depth + 1);
    }
  };
  if (symbols.length > 0) choose(0);
  else if (reader.measure(0, now)) take();
  return { symbols, values, ratings, adds };
}

/** Per place of `symbols`, the most that those after it can add to the form. */
const mostToCome = ({ times }: CoordinateForm, symbols: readonly number[], lists: Lists): readonly number[] =>
  symbols.map((_, depth) =>
    symbols
      .slice(depth + 1)
      .reduce((sum, i) => sum + Math.max(...(lists[i] ?? []).map((value) => (times[i] ?? 0) * value)), 0),
  );

interface Paired {
  readonly all: readonly CoordinateForm[];
  readonly judged: JudgedForms;
  readonly constants: readonly number[];
}

/**
 * The nodes that no other node of the group beats or equals with every partner: no rougher, no more edges, no more distances even if every
 * distance that could be shared with a partner is; no larger blank; no larger room, and where a partner has a say in a room or a limit, one
 * that stands with every partner or no worse than this node's.
 */
function unbeaten(group: SizeGroup, partners: SizeGroup, { all, judged, constants }: Paired): SizeGroup {
  const stride = all.length;
  const axes = judged.need.length;
  const ends = axes + judged.limits.length;
  const least = Float64Array.from({ length: stride }, (_, f) => (f < axes ? (judged.need[f] ?? 0) : 0));
  // The least a partner adds to each form: what stands with that stands with every partner.
  const low = new Float64Array(stride).fill(Number.POSITIVE_INFINITY);
  for (let b = 0; b < partners.values.length; b++)
    for (let f = 0; f < stride; f++)
      low[f] = Math.min(low[f] as number, partners.adds[b * stride + f] as number);
  const shared = new Set(partners.ratings.flatMap(({ settings }) => settings));
  const alone = new Int32Array(group.ratings.length).fill(-1);
  /** Distances of a node that no partner has. */
  const fewest = (node: number): number => {
    let own = alone[node] as number;
    if (own >= 0) return own;
    own = 0;
    for (const distance of (group.ratings[node] as PartRating).settings) if (!shared.has(distance)) own++;
    alone[node] = own;
    return own;
  };
  const { adds, ratings } = group;
  const stands = (node: number, f: number): boolean =>
    Math.round((constants[f] as number) + (adds[node * stride + f] as number) + (low[f] as number)) >=
    (least[f] as number);
  const beats = (a: number, b: number): boolean => {
    const [mine, theirs] = [ratings[a] as PartRating, ratings[b] as PartRating];
    if (mine.roughness > theirs.roughness || mine.edges > theirs.edges) return false;
    for (let f = 0; f < stride; f++) {
      const gap = (adds[a * stride + f] as number) - (adds[b * stride + f] as number);
      if (gap > 0 && (f < axes || f >= ends)) return false;
      if (gap < 0 && f < ends && !stands(a, f)) return false;
    }
    return mine.settings.length <= fewest(b) || isPart(mine.settings, theirs.settings);
  };
  const order = ratings.map((_, i) => i);
  const sizeOf = (node: number) => {
    let sum = 0;
    for (let f = ends; f < stride; f++) sum += adds[node * stride + f] as number;
    return sum;
  };
  const sums = order.map(sizeOf);
  order.sort(
    (a, b) =>
      (ratings[a] as PartRating).roughness - (ratings[b] as PartRating).roughness ||
      (sums[a] as number) - (sums[b] as number),
  );
  const kept: number[] = [];
  for (const node of order) if (!kept.some((other) => beats(other, node))) kept.push(node);
  return {
    symbols: group.symbols,
    values: kept.map((node) => group.values[node] ?? []),
    ratings: kept.map((node) => ratings[node] as PartRating),
    adds: rowsOf(adds, kept, stride),
  };
}

function rowsOf(from: Float64Array, rows: readonly number[], stride: number): Float64Array {
  const taken = new Float64Array(rows.length * stride);
  for (const [i, row] of rows.entries())
    taken.set(from.subarray(row * stride, (row + 1) * stride), i * stride);
  return taken;
}

const isPart = (some: readonly number[], of: readonly number[]): boolean =>
  some.every((one) => of.includes(one));
