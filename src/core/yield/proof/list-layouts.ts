import type { SheetPaper, SheetPart } from '../types';

/** Parts that may stand for one another: equal sizes, equal freedom, equal points. */
export interface PartGroup {
  readonly ids: readonly string[];
  /** Wanted of all of them together. */
  readonly count: number;
  readonly points: number;
  readonly lies: readonly { readonly across: number; readonly up: number }[];
}

/** Groups of the parts, from the parts and the paper alone; sizes with one kerf added. */
export function groupParts(
  parts: readonly SheetPart[],
  paper: SheetPaper,
  kerf: number,
  points: Readonly<Record<string, number>>,
): PartGroup[] {
  const groups = new Map<string, PartGroup>();
  for (const part of parts) {
    if (part.count <= 0) continue;
    const [a, b] = [part.across + kerf, part.up + kerf];
    const free = part.grain === 'free' || paper.grain === 'none';
    const straight = free || part.grain === paper.grain;
    const lies = [...(straight ? [[a, b]] : []), ...(free || !straight ? [[b, a]] : [])];
    const key = `${lies.map(String).sort().join(' ')} for ${points[part.id] ?? 0}`;
    const known = groups.get(key);
    groups.set(key, {
      ids: [...(known?.ids ?? []), part.id],
      count: (known?.count ?? 0) + part.count,
      points: points[part.id] ?? 0,
      lies: lies.map(([across = 0, up = 0]) => ({ across, up })),
    });
  }
  return [...groups.values()];
}

/** Contents of one sheet by group. */
export type Content = readonly number[];

const TOO_MANY = 20_000; // Contents of one size of piece; beyond this the checker gives up, and the bound with it.

/**
 * Every content of at least `least` points that edge-to-edge cuts get out of one sheet, copies beyond what is wanted not counted, leaving out
 * what is part of another; null: too many. From the whole sheet down it is worked out what each size of piece must hold at least, then from
 * the smallest up what it can hold. Shares no line with the solver.
 */
export function listLayouts(
  groups: readonly PartGroup[],
  width: number,
  height: number,
  least: number,
): Content[] | null {
  const widths = lengthsOf(groups.flatMap(({ lies }) => lies.map(({ across }) => across)), width); // biome-ignore format: one line
  const heights = lengthsOf(groups.flatMap(({ lies }) => lies.map(({ up }) => up)), height); // biome-ignore format: one line
  const [columns, rows] = [widths.length, heights.length];
  const acrossCuts = widths.map((length) => cutsOf(widths, length));
  const upCuts = heights.map((length) => cutsOf(heights, length));
  const singles = groups.flatMap(({ lies }, group) =>
    lies.map((lie) => ({ group, column: firstHolding(widths, lie.across), row: firstHolding(heights, lie.up) })),
  ); // biome-ignore format: one chain
  const best = new Float64Array(columns * rows);
  for (let i = 1; i < columns; i++)
    for (let j = 1; j < rows; j++) {
      let most = 0;
      for (const { group, column, row } of singles)
        if (column <= i && row <= j) most = Math.max(most, groups[group]!.points);
      for (const [a, b] of acrossCuts[i]!) most = Math.max(most, best[a * rows + j]! + best[b * rows + j]!);
      for (const [a, b] of upCuts[j]!) most = Math.max(most, best[i * rows + a]! + best[i * rows + b]!);
      best[i * rows + j] = most;
    }
  const need = new Float64Array(columns * rows).fill(Number.POSITIVE_INFINITY);
  need[need.length - 1] = least;
  const ask = (at: number, other: number, wanted: number): void => {
    need[at] = Math.min(need[at]!, wanted - best[other]!);
    need[other] = Math.min(need[other]!, wanted - best[at]!);
  };
  for (let i = columns - 1; i > 0; i--)
    for (let j = rows - 1; j > 0; j--) {
      const wanted = need[i * rows + j]!;
      if (wanted > best[i * rows + j]!) continue;
      for (const [a, b] of acrossCuts[i]!) ask(a * rows + j, b * rows + j, wanted);
      for (const [a, b] of upCuts[j]!) ask(i * rows + a, i * rows + b, wanted);
    }
  const held: (Content[] | undefined)[] = [];
  for (let i = 1; i < columns; i++)
    for (let j = 1; j < rows; j++) {
      const at = i * rows + j;
      if (need[at]! > best[at]!) continue;
      const gather = new Contents(groups, need[at]!);
      for (const { group, column, row } of singles)
        if (column <= i && row <= j) gather.add(groups.map((_, other) => (other === group ? 1 : 0)));
      for (const [a, b] of acrossCuts[i]!) gather.join(held[a * rows + j], held[b * rows + j]);
      for (const [a, b] of upCuts[j]!) gather.join(held[i * rows + a], held[i * rows + b]);
      const contents = gather.largest();
      if (contents === null) return null;
      held[at] = contents;
    }
  return held[columns * rows - 1] ?? [];
}

/** Contents of one size of piece as they are met. */
class Contents {
  private readonly met = new Map<string, Content>();
  private readonly groups: readonly PartGroup[];
  private readonly need: number;

  constructor(groups: readonly PartGroup[], need: number) {
    this.groups = groups;
    this.need = need;
  }

  add(content: Content): void {
    if (this.met.size > TOO_MANY || this.pointsOf(content) < this.need) return;
    this.met.set(content.join(), content);
  }

  join(first: readonly Content[] = [], second: readonly Content[] = []): void {
    for (const a of first) this.add(a);
    for (const b of second) this.add(b);
    for (const a of first)
      for (const b of second) this.add(this.groups.map(({ count }, i) => Math.min(count, a[i]! + b[i]!)));
  }

  /** Without those that are part of another; null if there are too many. */
  largest(): Content[] | null {
    if (this.met.size > TOO_MANY) return null;
    const sizeOf = (content: Content): number => content.reduce((sum, count) => sum + count, 0);
    const kept: Content[] = [];
    const big = [...this.met.values()].map((content) => ({ content, size: sizeOf(content) }));
    for (const { content } of big.sort((a, b) => b.size - a.size))
      if (!kept.some((other) => content.every((count, i) => count <= other[i]!))) kept.push(content);
    return kept;
  }

  private pointsOf(content: Content): number {
    let sum = 0;
    for (const [i, count] of content.entries()) sum += count * this.groups[i]!.points;
    return sum;
  }
}

/** Sums of lengths that matter: what remains, rounded down to a sum, when a sum is taken off the span. */
function lengthsOf(lengths: readonly number[], span: number): number[] {
  const sums = new Set([0]);
  for (const length of new Set(lengths))
    for (const sum of sums) if (sum + length <= span) sums.add(sum + length);
  const ascending = [...sums].sort((a, b) => a - b);
  const remaining = ascending.map((sum) => ascending[lastWithin(ascending, span - sum)]!);
  return [...new Set([0, ...remaining])].sort((a, b) => a - b);
}

const lastWithin = (lengths: readonly number[], limit: number): number => {
  let [low, high] = [0, lengths.length];
  while (high - low > 1) {
    const middle = (low + high) >>> 1;
    if (lengths[middle]! <= limit) low = middle;
    else high = middle;
  }
  return low;
};

/** Place of the shortest length that holds `size`; beyond the end if none does. */
const firstHolding = (lengths: readonly number[], size: number): number => {
  const found = lengths.findIndex((length) => length >= size);
  return found < 0 ? lengths.length : found;
};

/** Ways to cut a length in two, each half rounded down, the smaller first. */
const cutsOf = (lengths: readonly number[], length: number): (readonly [number, number])[] =>
  lengths.flatMap((first, at) =>
    at > 0 && 2 * first <= length ? [[at, lastWithin(lengths, length - first)] as const] : [],
  );
