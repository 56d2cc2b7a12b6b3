import { fillTable, readSheet, type ValueTable } from '../pattern/best-pattern';
import { type Pattern, patternOf } from '../pattern/pattern';
import { CoverMaster } from './cover-master';
import type { Effort } from './effort';

/** The best mixture of patterns when sheets may be cut in fractions. */
export interface FractionalPlan {
  readonly uses: readonly { readonly pattern: Pattern; readonly sheets: number }[];
  readonly prices: readonly number[];
  readonly sheets: number;
}

/** Patterns generated as they are wanted, kept from one question to the next: what is still to be cut asks again and again. */
export class Columns {
  readonly patterns: Pattern[];
  private readonly table: ValueTable;
  private readonly items: number;
  private readonly starting: readonly Pattern[];
  private readonly known = new Set<string>();

  /** Items must all fit the sheet. */
  constructor(table: ValueTable) {
    this.table = table;
    this.items = table.grid.problem.items.length;
    this.starting = this.startingPatterns();
    this.patterns = [...this.starting];
    for (const { counts } of this.patterns) this.known.add(counts.join());
  }

  /** Keeps a pattern for the questions to come. */
  add(pattern: Pattern): void {
    const key = pattern.counts.join();
    if (this.known.has(key)) return;
    this.known.add(key);
    this.patterns.push(pattern);
  }

  /**
   * Solves the fractional problem for these demands. Stops early when the effort is spent or, unless `toTheEnd`, when the bound already
   * rounds up to the same number of sheets.
   */
  solve(demands: readonly number[], effort: Effort, toTheEnd = false): FractionalPlan {
    const { table, patterns } = this;
    const master = new CoverMaster(demands, this.starting.map(({ counts }) => counts)); // biome-ignore format: one line
    for (const { counts } of patterns.slice(this.starting.length)) master.add(counts);
    const work = tableWork(table);
    for (;;) {
      effort.spend(master.settle());
      if (effort.isSpent()) break;
      const prices = master.prices().map((price) => Math.max(price, 0));
      const value = fillTable(table, prices);
      effort.spend(work);
      if (value <= 1 + 1e-9) break;
      const sheets = master.value;
      if (!toTheEnd && Math.ceil(sheets - 1e-6) === Math.ceil(sheets / value - 1e-6)) break;
      const pattern = patternOf(readSheet(table, prices), this.items);
      const before = patterns.length;
      this.add(pattern);
      if (patterns.length === before) break; // Met before: the sums differ by rounding alone.
      master.add(pattern.counts);
    }
    return {
      uses: master.uses().map(({ column, sheets }) => ({ pattern: patterns[column]!, sheets })),
      prices: Array.from(master.prices(), (price) => Math.max(price, 0)),
      sheets: master.value,
    };
  }

  /** The most copies of each item alone: one pattern an item, from which the linear program starts. */
  private startingPatterns(): Pattern[] {
    return Array.from({ length: this.items }, (_, item) => {
      const values = new Float64Array(this.items);
      values[item] = 1;
      fillTable(this.table, values);
      return patternOf(readSheet(this.table, values), this.items);
    });
  }
}

/** Additions that filling a table takes. */
export function tableWork({ grid, rounds }: ValueTable): number {
  const { across, up } = grid;
  const cuts = across.first.length * up.points.length + up.first.length * across.points.length;
  return rounds.length * (cuts + across.points.length * up.points.length);
}
