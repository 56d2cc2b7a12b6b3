import { CoverMaster } from './cover-master';
import type { Effort } from './effort';
import { type RoundingRow, roundedWeight } from './rounding-cuts';

/** Patterns in one flat list: `counts[pattern × items + item]`. */
export interface PatternList {
  readonly items: number;
  readonly size: number;
  readonly counts: Int32Array;
}

/** A case: sheets already decided on and patterns that may be used only so often from here on. */
export interface Case {
  /** What is left to be cut. */
  readonly left: readonly number[];
  /** Sheets decided on. */
  readonly fixed: number;
  /** Pattern and how often it may still be used. */
  readonly caps: ReadonlyMap<number, number>;
  /** Rows that every whole plan keeps; none where `left` is less than the demands. */
  readonly rows?: readonly RoundingRow[];
}

export interface CaseMixture {
  readonly uses: readonly { readonly pattern: number; readonly sheets: number }[];
  readonly prices: readonly number[];
  /** Prices of the rounding rows. */
  readonly rowPrices: readonly number[];
  readonly sheets: number;
  /** False: effort ran out, and `sheets` is no bound. */
  readonly settled: boolean;
}

/** Dear enough that no mixture wants one unless the caps leave no other way; cheap enough to keep the sums well scaled. */
const LOOSE_COST = 4;

/** Copies of one item on a sheet of a pattern that are still of use. */
export const usefulCopies = (
  list: PatternList,
  pattern: number,
  item: number,
  left: readonly number[],
): number => Math.min(list.counts[pattern * list.items + item]!, left[item]!);

/** The best mixture in fractions within a case. `pool` holds patterns that mixtures of other cases liked, and takes in those of this one. */
export function mixWithin(now: Case, list: PatternList, pool: Set<number>, effort: Effort): CaseMixture {
  const { left, caps, rows: rounding = [] } = now;
  const covered = list.items + rounding.length;
  const capped = [...caps].filter(([, times]) => times > 0).map(([pattern]) => pattern);
  const rowOf = new Map(capped.map((pattern, i) => [pattern, covered + i]));
  const rows = covered + capped.length;
  const least = [...left, ...rounding.map((row) => roundedWeight(row, (item) => left[item]!))];
  const loose = least.map((_, at) => Array.from({ length: rows }, (_, row) => (row === at ? 1 : 0)));
  const master = new CoverMaster([...least, ...capped.map((pattern) => -caps.get(pattern)!)], loose, LOOSE_COST); // biome-ignore format: one line
  const inMaster: number[] = [];
  const add = (pattern: number): void => {
    const column = new Array<number>(rows).fill(0);
    for (let item = 0; item < list.items; item++) column[item] = usefulCopies(list, pattern, item, left);
    for (const [at, row] of rounding.entries())
      column[list.items + at] = roundedWeight(row, (item) => usefulCopies(list, pattern, item, left));
    const cap = rowOf.get(pattern);
    if (cap !== undefined) column[cap] = -1;
    master.add(column);
    inMaster.push(pattern);
  };
  for (const pattern of pool) if (caps.get(pattern) !== 0) add(pattern);
  let settled = false;
  for (let round = 0; round < 500; round++) {
    effort.spend(master.settle());
    if (effort.isSpent()) break;
    const prices = master.prices();
    effort.spend(list.counts.length * (1 + rounding.length));
    const wanted = cheapest(prices, now, list, rowOf);
    settled = wanted.length === 0;
    if (settled) break;
    for (const pattern of wanted) {
      pool.add(pattern);
      add(pattern);
    }
  }
  return {
    uses: master
      .uses()
      .filter(({ column }) => column >= covered)
      .map(({ column, sheets }) => ({ pattern: inMaster[column - covered]!, sheets })),
    prices: Array.from(master.prices().subarray(0, list.items), (price) => Math.max(0, price)),
    rowPrices: Array.from(master.prices().subarray(list.items, covered), (price) => Math.max(0, price)),
    sheets: master.value,
    settled,
  };
}

const AT_ONCE = 12; // Patterns taken in at a time: fewer rounds, and still few columns.

/** The patterns that the prices pay for best, if any does. */
function cheapest(
  prices: Float64Array,
  { left, caps, rows = [] }: Case,
  list: PatternList,
  rowOf: ReadonlyMap<number, number>,
): number[] {
  const found: { pattern: number; worth: number }[] = [];
  let least = 1 + 1e-7;
  for (let pattern = 0, at = 0; pattern < list.size; pattern++, at += list.items) {
    let worth = 0;
    for (let item = 0; item < list.items; item++) {
      const count = list.counts[at + item]!;
      if (count > 0) worth += prices[item]! * Math.min(count, left[item]!);
    }
    for (const [row, rounding] of rows.entries()) {
      const price = prices[list.items + row]!;
      if (price > 0)
        worth += price * roundedWeight(rounding, (item) => usefulCopies(list, pattern, item, left));
    }
    if (worth <= least) continue;
    if (caps.size > 0) {
      if (caps.get(pattern) === 0) continue;
      const row = rowOf.get(pattern);
      if (row !== undefined) worth -= prices[row]!;
      if (worth <= least) continue;
    }
    found.push({ pattern, worth });
    if (found.length <= AT_ONCE) continue;
    found.sort((a, b) => b.worth - a.worth);
    found.pop();
    least = found.at(-1)!.worth;
  }
  return found.map(({ pattern }) => pattern);
}
