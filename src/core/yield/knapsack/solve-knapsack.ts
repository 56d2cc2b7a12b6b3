import { fillTable, layTable, readSheet } from '../pattern/best-pattern';
import { layGrid } from '../pattern/cutting-grid';
import { LimitedPatterns } from '../pattern/limited-pattern';
import { keepWanted, type PatternTree, patternOf } from '../pattern/pattern';
import type { CuttingProblem } from '../problem/cutting-problem';
import { tableWork } from '../stock/column-generation';
import type { Effort } from '../stock/effort';
import { buildBlocks } from './build-blocks';
import { findDiscounts } from './discount-prices';
import { layBlockSizes } from './outer-bound';

/** The most worth one sheet can give, and how sure that is: no pattern is worth more than `bound`. */
export interface BestSheet {
  readonly value: number;
  readonly tree: PatternTree | null;
  readonly bound: number;
  /** Discounts on scarce items by which a bound is quickest to count. */
  readonly discounts: readonly number[];
}

/** The most worth of one sheet when every item may be cut any number of times: exact. */
export function solveFreeKnapsack(problem: CuttingProblem, values: readonly number[]): BestSheet {
  const table = layTable(layGrid(problem));
  const value = fillTable(table, values);
  return { value, tree: readSheet(table, values), bound: value, discounts: values.map(() => 0) };
}

/** The most worth of one sheet with at most the demand of each item. Values are whole numbers. Free stages, any tool length. */
export function solveLimitedKnapsack(
  problem: CuttingProblem,
  values: readonly number[],
  effort: Effort,
): BestSheet {
  const demands = capDemands(problem);
  const grid = layGrid(problem);
  const table = layTable(grid);
  const limited = new LimitedPatterns(grid);
  let best: { value: number; tree: PatternTree | null } = { value: 0, tree: null };
  const offer = (tree: PatternTree | null): void => {
    const { counts } = patternOf(tree, values.length);
    const value = counts.reduce((sum, count, item) => sum + count * values[item]!, 0);
    if (value > best.value) best = { value, tree };
  };
  fillTable(table, values);
  offer(keepWanted(readSheet(table, values), demands));
  let round = 0;
  const { discounts, bound } = findDiscounts(table, values, demands, 250, (now, free) => {
    effort.spend(tableWork(table));
    if (round++ % 12 === 0) {
      offer(limited.find(values.map((value, item) => value - now[item]!), demands).tree); // biome-ignore format: one line
      effort.spend(limited.work);
    }
    return Math.floor(free + 1e-6) <= best.value || effort.isSpent();
  });
  const ceiling = Math.floor(bound + 1e-6);
  if (ceiling <= best.value) return { ...best, bound: best.value, discounts };
  const none = values.map(() => 0);
  const question = {
    sizes: layBlockSizes(problem),
    values,
    demands,
    discounts: [discounts, none],
    above: best.value,
    room: 1_500_000,
  };
  const answer = buildBlocks(question, effort);
  if (answer.best !== null) best = { value: Math.round(answer.best.value), tree: answer.best.tree };
  return { ...best, bound: answer.complete ? best.value : ceiling, discounts };
}

/** Demands no larger than what one sheet could ever hold by area. */
const capDemands = ({ items, width, height }: CuttingProblem): number[] =>
  items.map((item) => Math.min(item.demand, Math.floor((width * height) / (item.width * item.height))));
