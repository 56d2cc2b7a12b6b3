import { fillTable, layTable, readSheet, type ValueTable } from '../pattern/best-pattern';
import { layGrid } from '../pattern/cutting-grid';
import { type Pattern, patternOf } from '../pattern/pattern';
import type { CuttingProblem } from '../problem/cutting-problem';
import { CoverMaster } from './cover-master';
import type { Effort } from './effort';

/** The best mixture of patterns when sheets may be cut in fractions. */
export interface FractionalPlan {
  readonly uses: readonly { readonly pattern: Pattern; readonly sheets: number }[];
  readonly patterns: readonly Pattern[];
  readonly prices: readonly number[];
  readonly sheets: number;
}

/** The most copies of each item alone: one pattern an item, from which the linear program starts. */
function startingPatterns(table: ValueTable, problem: CuttingProblem): Pattern[] {
  const items = problem.items.length;
  return problem.items.map((_, item) => {
    const values = new Float64Array(items);
    values[item] = 1;
    fillTable(table, values);
    return patternOf(readSheet(table, values), items);
  });
}

/**
 * Solves the fractional problem by generating patterns as they are wanted. Stops early when the effort is spent or when the bound already
 * rounds up to the same number of sheets. Items must all fit the sheet.
 */
export function generateColumns(
  problem: CuttingProblem,
  effort: Effort,
  known: readonly Pattern[] = [],
): FractionalPlan {
  const table = layTable(layGrid(problem));
  const demands = problem.items.map(({ demand }) => demand);
  const patterns = startingPatterns(table, problem);
  const master = new CoverMaster(demands, patterns.map(({ counts }) => counts)); // biome-ignore format: one line
  const add = (pattern: Pattern): void => {
    master.add(pattern.counts);
    patterns.push(pattern);
  };
  known.forEach(add);
  const work = tableWork(table);
  for (;;) {
    master.settle();
    if (effort.isSpent()) break;
    const prices = master.prices().map((price) => Math.max(price, 0));
    const value = fillTable(table, prices);
    effort.spend(work);
    if (value <= 1 + 1e-9) break;
    const sheets = master.value;
    if (Math.ceil(sheets - 1e-6) === Math.ceil(sheets / value - 1e-6)) break;
    add(patternOf(readSheet(table, prices), demands.length));
  }
  return {
    uses: master.uses().map(({ column, sheets }) => ({ pattern: patterns[column] as Pattern, sheets })),
    patterns,
    prices: Array.from(master.prices(), (price) => Math.max(price, 0)),
    sheets: master.value,
  };
}

/** Additions that filling a table takes. */
export function tableWork({ grid, rounds }: ValueTable): number {
  const { across, up } = grid;
  const cuts = across.first.length * up.points.length + up.first.length * across.points.length;
  return rounds.length * (cuts + across.points.length * up.points.length);
}
