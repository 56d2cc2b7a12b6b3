import { fillTable, layTable, readSheet } from '../pattern/best-pattern';
import { layGrid } from '../pattern/cutting-grid';
import { LimitedPatterns } from '../pattern/limited-pattern';
import { keepWanted, type PatternTree, patternOf } from '../pattern/pattern';
import { normalPoints } from '../pattern/raster-points';
import { type CuttingProblem, liesOf } from '../problem/cutting-problem';
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

/**
 * The most worth of one sheet when every item may be cut any number of times: exact where the effort pays for it. Else sizes are rounded up to
 * a coarser unit, which gives a sheet that can be cut, and nothing bounds it.
 */
export function solveFreeKnapsack(
  problem: CuttingProblem,
  values: readonly number[],
  effort: Effort,
): BestSheet {
  const discounts = values.map(() => 0);
  let unit = 1;
  while (!effort.allows(workOf(coarser(problem, unit)))) unit *= 2;
  const table = layTable(layGrid(coarser(problem, unit)));
  const value = fillTable(table, values);
  return {
    value,
    tree: readSheet(table, values),
    bound: unit === 1 ? value : Number.POSITIVE_INFINITY,
    discounts,
  };
}

/** The problem in whole units: the sheet rounded down, items rounded up, and those left out that no longer fit. */
const coarser = (problem: CuttingProblem, unit: number): CuttingProblem => ({
  ...problem,
  width: Math.floor(problem.width / unit),
  height: Math.floor(problem.height / unit),
  items: problem.items.map((item) => ({
    ...item,
    width: Math.ceil(item.width / unit),
    height: Math.ceil(item.height / unit),
  })),
});

/** Additions that filling the table of a problem takes, before its grid is laid: never fewer than it will. */
function workOf(problem: CuttingProblem): number {
  const lies = liesOf(problem);
  const columns = normalPoints(lies.map(({ width }) => width), problem.width).length; // biome-ignore format: one line
  const rows = normalPoints(lies.map(({ height }) => height), problem.height).length; // biome-ignore format: one line
  return (columns * rows * (columns + rows)) / 4;
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
