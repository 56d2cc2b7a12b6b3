import { fillTable, readSheet, type ValueTable } from '../pattern/best-pattern';
import { countItems } from '../pattern/pattern';

/**
 * Discounts for scarce items: with each item worth its value less its discount, no pattern that keeps to the demands is worth more than the
 * best free pattern plus all discounts times demands. `bound` is that sum.
 */
export interface Discounts {
  readonly discounts: readonly number[];
  readonly bound: number;
}

/** Whole-number values above which a pattern within the demands cannot go, by ever better discounts (Lagrangian relaxation, subgradient steps). */
export function findDiscounts(
  table: ValueTable,
  values: readonly number[],
  demands: readonly number[],
  rounds: number,
  visit: (discounts: readonly number[], bound: number) => boolean,
): Discounts {
  const discounts = values.map(() => 0);
  let best: Discounts = { discounts: [...discounts], bound: Number.POSITIVE_INFINITY };
  let stride = 1;
  let stale = 0;
  for (let round = 0; round < rounds; round++) {
    const worth = values.map((value, item) => value - discounts[item]!);
    const free = fillTable(table, worth);
    const bound = free + discounts.reduce((sum, discount, item) => sum + discount * demands[item]!, 0);
    if (bound < best.bound - 1e-9) {
      best = { discounts: [...discounts], bound };
      stale = 0;
    } else if (++stale >= 12) {
      stale = 0;
      stride *= 0.7;
      for (const [item, discount] of best.discounts.entries()) discounts[item] = discount;
    }
    if (visit(discounts, bound)) break;
    const counts = countItems(readSheet(table, worth), values.length);
    const over = counts.map((count, item) => count - demands[item]!);
    const push = over.map((excess, item) => (excess > 0 || discounts[item]! > 0 ? excess : 0));
    const length = push.reduce((sum, each) => sum + each * each, 0);
    if (length === 0) break;
    const step = (stride * 0.02 * best.bound) / length;
    for (const [item, each] of push.entries())
      discounts[item] = Math.min(values[item]!, Math.max(0, discounts[item]! + step * each));
  }
  return best;
}
