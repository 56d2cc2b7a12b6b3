import { fillTable, layTable, readSheet, type ValueTable } from '../pattern/best-pattern';
import { type CuttingGrid, layGrid } from '../pattern/cutting-grid';
import { LimitedPatterns } from '../pattern/limited-pattern';
import { keepWanted, patternOf } from '../pattern/pattern';
import type { CuttingProblem } from '../problem/cutting-problem';
import { Columns, type FractionalPlan, tableWork } from './column-generation';
import type { Effort } from './effort';
import { listOf, PatternFinder } from './every-pattern';
import { fewerLayouts } from './fewer-layouts';
import { FreshDives } from './fresh-dive';
import { Insertion } from './insertion';
import { type PatternUse, sheetsOf, stillWanted } from './pattern-plan';
import { type PointsBound, simplestPoints } from './points-bound';
import { type FindPattern, planSequentially, type ValueMemory } from './sequential-plan';
import { type CasesBound, settleCases, tryDives } from './settle-cases';
import { swayFrom } from './sway';

export interface StockPlan {
  readonly uses: readonly PatternUse[];
  readonly sheets: number;
  /** Null before anything is known. */
  readonly bound: PointsBound | null;
  /** A better bound than `bound`, if every choice of patterns was looked at. */
  readonly cases: CasesBound | null;
}

export type TellStock = (plan: StockPlan) => void;

/** Fewest equal sheets for every item of a problem: a plan, a bound, and word of every better one on the way. */
export function solveStock(
  problem: CuttingProblem,
  effort: Effort,
  tell: TellStock = () => undefined,
  start: StockPlan | null = null,
): StockPlan {
  return new StockSearch(problem, effort, tell, start).run();
}

/** Blocks kept while every pattern is looked for: at first, and at most. source: our own, measured */
const FIRST_ROOM = 20_000;
const MOST_ROOM = 2_000_000;
const MOST_NODES = 8000; // Cases looked at; a longer proof nobody would read. source: our own
const ENRICHED = 8; // Rounds of taking in more patterns and diving again. source: our own, measured
const TIDY_STEPS = 6e6; // What fewer layouts may cost: some hundredths of a second. source: our own, measured
const TIDY_ROOM = 1500;
const EASY_WORK = 3e5;
const FRESH_DIVES = 6; // Tries to dive with new patterns. source: our own, measured
const INSERTIONS = 3e6; // Steps that trying other orders may take at a time. source: our own, measured
const DIVES = 8; // Tries to dive among the patterns of the fractional plan. source: our own, measured

class StockSearch {
  private best: StockPlan = { uses: [], sheets: Number.POSITIVE_INFINITY, bound: null, cases: null };
  private readonly problem: CuttingProblem;
  private readonly effort: Effort;
  private readonly tell: TellStock;
  private readonly wanted: readonly number[];
  private readonly areas: readonly number[];
  private readonly sheetArea: number;
  private readonly sway = swayFrom(1);
  private readonly grid: CuttingGrid;
  private readonly table: ValueTable;
  private columns: Columns | null = null;
  private findWork = 0;
  private everyPattern: PatternFinder | null = null;

  /** `start`: what an earlier search for the same came to; it is bettered or kept. */
  constructor(problem: CuttingProblem, effort: Effort, tell: TellStock, start: StockPlan | null) {
    if (start !== null) this.best = start;
    this.problem = problem;
    this.effort = effort;
    this.tell = tell;
    this.wanted = problem.items.map(({ demand }) => demand);
    this.areas = problem.items.map(({ width, height }) => width * height);
    this.sheetArea = problem.width * problem.height;
    this.grid = layGrid(problem);
    this.table = layTable(this.grid);
  }

  run(): StockPlan {
    const find = this.finder();
    this.search(find);
    this.tidy(find);
    return this.best;
  }

  /** Fewer layouts on as many sheets. */
  private tidy(find: FindPattern): void {
    const { uses, sheets } = this.best;
    const effort = this.effort.atMost(TIDY_STEPS);
    if (uses.length < 2 || effort.isSpent()) return;
    const columns = this.columns ?? new Columns(this.table);
    const findWithin: FindPattern = (values, wanted) => {
      effort.spend(this.findWork);
      return find(values, wanted);
    };
    const patterns = [...uses.map(({ pattern }) => pattern), ...columns.patterns];
    if (this.takesEvery && tableWork(this.table) < EASY_WORK) {
      const { prices } = columns.solve(this.wanted, effort, true);
      patterns.push(...this.patternFinder().find(prices, sheets, TIDY_ROOM, effort).patterns);
    }
    this.best = { ...this.best, uses: fewerLayouts(this.wanted, uses, patterns, findWithin, effort) };
  }

  /** Blocks are built where a larger piece is never worth less. */
  private get takesEvery(): boolean {
    return this.problem.stages === 'free' && !this.grid.exact;
  }

  private patternFinder(): PatternFinder {
    this.everyPattern ??= new PatternFinder(this.table);
    return this.everyPattern;
  }

  private search(find: FindPattern): void {
    this.raiseBound(this.areas);
    const memory: ValueMemory = { values: [...this.areas] };
    this.keep(
      planSequentially(
        this.wanted,
        this.areas,
        this.sheetArea,
        memory,
        find,
        this.sway,
        Number.POSITIVE_INFINITY,
      ),
    );
    if (this.isProven()) return;
    const columns = new Columns(this.table);
    this.columns = columns;
    const fractional = columns.solve(this.wanted, this.effort.share(0.5));
    this.raiseBound(fractional.prices);
    this.round(fractional, find);
    if (this.isProven()) return;
    const insertion = new Insertion(this.problem, this.sway);
    this.insertAfresh(insertion, INSERTIONS);
    if (this.isProven()) return;
    const { prices } = columns.solve(this.wanted, this.effort, true);
    const dives = new FreshDives(columns.patterns, find, this.sway);
    this.diveAfresh(dives, FRESH_DIVES);
    this.diveAmong(columns);
    const finder = this.takesEvery ? this.patternFinder() : null;
    for (let room = FIRST_ROOM; !this.isProven() && !this.effort.isSpent(); room *= 4) {
      this.diveAfresh(dives, FRESH_DIVES);
      this.insertAfresh(insertion, INSERTIONS * (room / FIRST_ROOM));
      if (finder !== null && room <= MOST_ROOM) {
        this.lookAtEvery(finder, prices, room);
      }
      const sequential = finder === null ? Number.POSITIVE_INFINITY : room / FIRST_ROOM;
      for (let i = 0; i < 20 * sequential && !this.isProven() && !this.effort.isSpent(); i++)
        this.keep(planSequentially(this.wanted, this.areas, this.sheetArea, memory, find, this.sway, this.best.sheets - 1)); // biome-ignore format: one line
    }
  }

  /** Item after item into the free piece it fills best, in one order after another. */
  private insertAfresh(insertion: Insertion, steps: number): void {
    if (!insertion.applies) return;
    const effort = this.effort.atMost(steps);
    while (!this.isProven() && !effort.isSpent()) this.keep(insertion.tryOnce(this.best.sheets - 1, effort));
  }

  /** Dives with patterns that take no more than is left, each asked for when it is wanted. */
  private diveAfresh(dives: FreshDives, tries: number): void {
    for (let i = 0; i < tries && !this.isProven() && !this.effort.isSpent(); i++)
      this.keep(dives.dive(this.wanted, this.best.sheets - 1, this.effort));
  }

  /** Dives among the patterns of the fractional plan, and among those that smaller orders of the same parts would like. */
  private diveAmong(columns: Columns): void {
    const { wanted, effort, sway } = this;
    for (let round = 0; round < ENRICHED && !this.isProven() && !effort.isSpent(); round++) {
      const list = listOf(columns.patterns, wanted.length);
      this.keep(tryDives(wanted, columns.patterns, list, this.lowest(), DIVES, effort, sway));
      if (this.best.sheets > this.lowest() + 1)
        this.keep(tryDives(wanted, columns.patterns, list, this.best.sheets - 1, 1, effort, sway));
      if (this.isProven()) return;
      for (let i = 0; i < 6; i++)
        columns.solve(wanted.map((count) => Math.ceil(count * sway() * sway())), effort, true); // biome-ignore format: one line
    }
  }

  /** Every pattern that a plan on as few sheets as the bound allows could use, and every choice of them; the bound may rise more than once. */
  private lookAtEvery(finder: PatternFinder, prices: readonly number[], room: number): void {
    while (!this.isProven() && !this.effort.isSpent()) {
      const aim = this.lowest();
      const choice = finder.find(prices, aim, room, this.effort);
      const { uses, bound } = settleCases(
        this.wanted,
        choice,
        aim,
        this.effort,
        this.sway,
        Math.min(MOST_NODES, room / 100),
      );
      this.keep(uses);
      if (bound === null) return;
      this.best = { ...this.best, cases: bound };
    }
  }

  private round(fractional: FractionalPlan, find: FindPattern): void {
    for (const cut of [0, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5]) {
      if (this.isProven() || this.effort.isSpent()) return;
      const whole = fractional.uses
        .map(({ pattern, sheets }) => ({ pattern, sheets: Math.floor(sheets + cut + 1e-9) }))
        .filter(({ sheets }) => sheets > 0);
      const left = stillWanted(this.wanted, whole);
      for (const values of [fractional.prices, this.areas]) {
        const rest = planSequentially(left, this.areas, this.sheetArea, { values: [...values] }, find, this.sway, this.best.sheets - 1 - sheetsOf(whole)); // biome-ignore format: one line
        if (rest !== null) this.keep([...whole, ...rest]);
      }
    }
  }

  private finder(): FindPattern {
    const { grid, table } = this;
    if (this.takesEvery) {
      const limited = new LimitedPatterns(grid);
      this.findWork = limited.work;
      return (values, wanted) => {
        this.effort.spend(limited.work);
        return limited.find(values, wanted);
      };
    }
    this.findWork = tableWork(table);
    return (values, wanted) => {
      const worth = values.map((value, item) => (wanted[item]! > 0 ? value : 0));
      fillTable(table, worth);
      this.effort.spend(tableWork(table));
      return patternOf(keepWanted(readSheet(table, worth), wanted), worth.length);
    };
  }

  private isProven = (): boolean => this.best.sheets <= this.lowest();

  /** No plan uses fewer sheets than this. */
  private lowest = (): number => Math.max(this.best.bound?.sheets ?? 0, this.best.cases?.sheets ?? 0);

  private keep(uses: readonly PatternUse[] | null): void {
    if (uses === null) return;
    const sheets = sheetsOf(uses);
    if (sheets >= this.best.sheets || stillWanted(this.wanted, uses).some((count) => count > 0)) return;
    this.best = { ...this.best, uses, sheets };
    this.tell(this.best);
  }

  private raiseBound(prices: readonly number[]): void {
    const worth = prices.reduce((sum, price, item) => sum + price * this.wanted[item]!, 0);
    const largest = Math.max(...prices);
    const bound = simplestPoints(prices.map((price) => price / largest), this.wanted, this.table, Math.ceil(worth - 1e-6)); // biome-ignore format: one line
    if (bound.sheets > (this.best.bound?.sheets ?? 0)) this.best = { ...this.best, bound };
  }
}
