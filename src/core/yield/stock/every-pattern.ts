import { buildBlocks } from '../knapsack/build-blocks';
import { findDiscounts } from '../knapsack/discount-prices';
import { type BlockSizes, layBlockSizes } from '../knapsack/outer-bound';
import { fillTable, type ValueTable } from '../pattern/best-pattern';
import type { Pattern } from '../pattern/pattern';
import type { PatternList } from './case-program';
import { tableWork } from './column-generation';
import type { Effort } from './effort';

/** The patterns that a plan of so many sheets can be made of. */
export interface PatternChoice {
  readonly list: PatternList;
  readonly patterns: readonly Pattern[];
  /** Points by which the others are ruled out, and the most on one sheet. */
  readonly points: readonly number[];
  readonly most: number;
  /** Every such pattern is here, and none that another covers. */
  readonly complete: boolean;
}

const SCALE = 1e9; // Points for one sheet: fine enough for prices, and sums stay whole.
const MOST_LOOKS = 5e7; // Looks at pairs while covered patterns are taken out: some tenths of a second. source: our own, measured

/**
 * Finds every pattern that may be part of a plan on `sheets` sheets: each of its sheets must hold what the others, filled to the brim, leave
 * over. Copies beyond the demand are never counted. Free turns, and a tool that reaches along one side at least.
 */
export class PatternFinder {
  private sizes: BlockSizes | null = null;
  private readonly table: ValueTable;
  private readonly demands: readonly number[];
  private readonly caps: readonly number[];

  constructor(table: ValueTable) {
    const { items, width, height } = table.grid.problem;
    this.table = table;
    this.demands = items.map(({ demand }) => demand);
    this.caps = items.map((item) =>
      Math.min(item.demand, Math.floor((width * height) / (item.width * item.height))),
    );
  }

  find(prices: readonly number[], sheets: number, room: number, effort: Effort): PatternChoice {
    const { table, demands, caps } = this;
    this.sizes ??= layBlockSizes(table.grid.problem);
    const points = prices.map((price) => Math.floor(price * SCALE + 1e-3));
    const most = fillTable(table, points);
    const total = points.reduce((sum, point, item) => sum + point * demands[item]!, 0);
    const least = total - (sheets - 1) * most;
    const none = points.map(() => 0);
    const work = tableWork(table);
    const rounds = Math.min(40, Math.floor(2e7 / work));
    const { discounts, bound } = findDiscounts(table, points, caps, rounds, () => effort.isSpent());
    effort.spend(work * (rounds + 2));
    const question = {
      sizes: this.sizes,
      values: points,
      demands: caps,
      discounts: bound < most ? [discounts, none] : [none],
      above: least - 0.5,
      every: true,
      room,
    };
    const { all, complete } = buildBlocks(question, effort);
    const kept = uncovered(all, points, effort);
    const patterns = kept ?? all;
    return {
      patterns,
      list: listOf(patterns, demands.length),
      points,
      most,
      complete: complete && kept !== null,
    };
  }
}

/** Patterns in one flat list. */
export const listOf = (patterns: readonly Pattern[], items: number): PatternList => {
  const counts = new Int32Array(patterns.length * items);
  for (const [at, pattern] of patterns.entries()) counts.set(pattern.counts, at * items);
  return { items, size: patterns.length, counts };
};

/** The patterns that no other pattern covers, the fullest first; null: too many to compare. */
function uncovered(
  patterns: readonly Pattern[],
  points: readonly number[],
  effort: Effort,
): Pattern[] | null {
  const worth = ({ counts }: Pattern): number =>
    counts.reduce((sum, count, item) => sum + count * points[item]! + count * 1e-3, 0);
  let looks = 0;
  const kept: Pattern[] = [];
  const keptItems: number[] = [];
  const fullestFirst = patterns
    .map((pattern) => ({ pattern, worth: worth(pattern) }))
    .sort((a, b) => b.worth - a.worth);
  for (const { pattern } of fullestFirst) {
    const items = itemsIn(pattern);
    let covered = false;
    if (looks > MOST_LOOKS) return null;
    for (let at = 0; at < kept.length && !covered; at++, looks++)
      covered = (items & ~keptItems[at]!) === 0 && covers(kept[at]!.counts, pattern.counts);
    if (covered) continue;
    kept.push(pattern);
    keptItems.push(items);
  }
  effort.spend(looks);
  return kept;
}

/** A bit for each item that lies on the sheet; items 31 apart share one. */
const itemsIn = ({ counts }: Pattern): number => {
  let items = 0;
  for (let item = 0; item < counts.length; item++) if (counts[item]! > 0) items |= 1 << (item % 31);
  return items;
};

function covers(more: readonly number[], counts: readonly number[]): boolean {
  for (let item = 0; item < counts.length; item++) if (more[item]! < counts[item]!) return false;
  return true;
}
