import { fillTable, layTable, readSheet, type ValueTable } from '../../yield/pattern/best-pattern';
import { layGrid } from '../../yield/pattern/cutting-grid';
import { countItems } from '../../yield/pattern/pattern';
import { layProblem, type SheetProblem } from '../../yield/problem/sheet-problem';
import { CoverMaster } from '../../yield/stock/cover-master';
import type { Effort } from '../../yield/stock/effort';
import { PatternFinder } from '../../yield/stock/every-pattern';
import type { SheetPart } from '../../yield/types';
import type { MixFormat, MixLot, MixOrder, MixRow } from './types';

/** One way of cutting a sheet of a format: parts by id. */
export interface MixPattern {
  readonly format: number;
  readonly counts: ReadonlyMap<string, number>;
}

/** What sheets cost in the linear program: as many as are free, then a price each; at most so many. */
export interface SheetTerms {
  readonly free: number;
  readonly price: number | null;
}

/** A mixture in fractions: patterns, shares of the lots, what is short, and the prices that show it. */
export interface FractionalMix {
  readonly uses: readonly { readonly pattern: MixPattern; readonly sheets: number }[];
  readonly shares: ReadonlyMap<string, number>;
  readonly short: number;
  /** Price of a part on a card. */
  readonly priceOf: (part: string, card: string) => number;
}

interface FormatTable {
  readonly format: MixFormat;
  readonly problem: SheetProblem;
  readonly table: ValueTable;
}

const LEAST = 1e-5; // Keeps the first basis of the linear program feasible; far below one sheet.
const MOST_ROUNDS = 400;

export const keyOf = (part: string, card: string): string => `${part} ${card}`;

/**
 * The linear program of an order over several papers: patterns for each format, boxes shared out among cards. Patterns are found as they are
 * wanted and kept for the next question. Only a guide: whatever it claims is counted again in whole numbers. Source: one pricing for each size of
 * sheet, Gilmore & Gomory, Oper. Res. 11 (1963) 863-888 (from memory).
 */
export class MixProgram {
  readonly formats: readonly MixFormat[];
  private readonly tables: readonly (FormatTable | null)[];
  private readonly order: MixOrder;
  readonly patterns: MixPattern[] = [];
  private readonly known = new Set<string>();

  constructor(order: MixOrder) {
    this.order = order;
    this.formats = order.formats;
    this.tables = order.formats.map((format) => {
      const parts = partsOn(order, format.card);
      const problem = layProblem(parts, format.sheet, order.tool);
      if (problem.problem.items.length === 0) return null;
      return { format, problem, table: layTable(layGrid(problem.problem)) };
    });
  }

  /**
   * Solves for what sheets cost, and what it costs to be short of a box of each lot. The lots are those of the order, or fewer cards for each;
   * `cut`: pieces by part and card that are there already.
   */
  solve(
    { lots }: Pick<MixOrder, 'lots'>,
    terms: readonly SheetTerms[],
    shortCost: (lot: MixLot) => number,
    isOver: () => boolean,
    cut: ReadonlyMap<string, number> = new Map(),
  ): FractionalMix {
    const rows = new Rows(lots, cut, terms);
    const master = new CoverMaster(rows.demands, rows.starting, 0);
    for (const [row, lot] of rows.lotOf.entries()) master.reprice(row, shortCost(lot));
    const columns: (MixPattern | null)[] = rows.starting.map(() => null);
    const shares: { readonly column: number; readonly key: string }[] = [];
    const add = (entries: ReadonlyMap<number, number>, cost: number, pattern: MixPattern | null): number => {
      const column = new Array<number>(rows.demands.length).fill(0);
      for (const [row, count] of entries) column[row] = column[row]! + count;
      columns.push(pattern);
      return master.add(column, cost);
    };
    for (const { key, entries } of rows.shareColumns) shares.push({ column: add(entries, 0, null), key });
    for (const { entries, cost } of rows.supplyColumns) add(entries, cost, null);
    const addPattern = (pattern: MixPattern): void => {
      const entries = new Map([[rows.sheetRow[pattern.format]!, -1]]);
      const { card } = this.order.formats[pattern.format]!;
      for (const [part, count] of pattern.counts) {
        const row = rows.partRow(part, card);
        if (row !== undefined) entries.set(row, (entries.get(row) ?? 0) + count);
      }
      add(entries, 0, pattern);
    };
    const usable = (format: number): boolean => terms[format]!.free > 0 || terms[format]!.price !== null;
    for (const pattern of this.patterns) if (usable(pattern.format)) addPattern(pattern);
    for (let round = 0; round < MOST_ROUNDS; round++) {
      master.settle();
      if (isOver()) break;
      const prices = master.prices();
      let found = 0;
      for (const [at, table] of this.tables.entries()) {
        if (table === null || !usable(at)) continue;
        const pattern = this.bestPattern(at, table, (part) => prices[rows.partRow(part, table.format.card) ?? -1] ?? 0, prices[rows.sheetRow[at]!]!); // biome-ignore format: one row
        if (pattern === null) continue;
        addPattern(pattern);
        found++;
      }
      if (found === 0) break;
    }
    const prices = master.prices();
    const uses = master.uses();
    return {
      uses: uses.flatMap(({ column, sheets }) => {
        const pattern = columns[column];
        return pattern ? [{ pattern, sheets }] : [];
      }),
      shares: new Map(shares.map(({ column, key }) => [key, uses.find((use) => use.column === column)?.sheets ?? 0])), // biome-ignore format: one row
      short: uses.reduce((sum, { column, sheets }) => sum + (column < rows.starting.length ? sheets : 0), 0),
      priceOf: (part, card) => Math.max(0, prices[rows.partRow(part, card) ?? -1] ?? 0),
    };
  }

  /** A pattern worth more than its sheet, if there is a new one. */
  private bestPattern(
    format: number,
    { problem, table }: FormatTable,
    priceOf: (part: string) => number,
    sheetPrice: number,
  ): MixPattern | null {
    const best = problem.kinds.map(
      ({ parts }) =>
      parts.map(({ part }) => ({ id: part.id, price: priceOf(part.id) })).reduce((a, b) => (b.price > a.price ? b : a)), // biome-ignore format: one row
    );
    const values = best.map(({ price }) => Math.max(0, price));
    if (fillTable(table, values) <= sheetPrice + 1e-9 * Math.max(1, sheetPrice)) return null;
    const counts = new Map<string, number>();
    for (const [item, count] of countItems(readSheet(table, values), values.length).entries())
      if (count > 0) counts.set(best[item]!.id, count);
    return this.keep(format, counts);
  }

  /** Takes in patterns of every format that are worth at least this share of the best one at these prices, so many at most. */
  takeIn(priceOf: (part: string, card: string) => number, share: number, room: number, effort: Effort): void {
    for (const [at, its] of this.tables.entries()) {
      if (its === null || its.table.grid.exact || its.problem.problem.stages !== 'free' || effort.isSpent())
        continue;
      const { card } = its.format;
      const best = its.problem.kinds.map(({ parts }) => parts.map(({ part }) => ({ id: part.id, price: priceOf(part.id, card) })).reduce((a, b) => (b.price > a.price ? b : a))); // biome-ignore format: one row
      const prices = best.map(({ price }) => Math.max(0, price));
      // Where all is on hand, nothing has a price, and pieces count by their size.
      const values = prices.some((price) => price > 0) ? prices : its.problem.problem.items.map(({ width, height }) => width * height); // biome-ignore format: one row
      const most = fillTable(its.table, values);
      const points = values.map((value) => value / most);
      const total = points.reduce(
        (sum, point, item) => sum + point * its.problem.problem.items[item]!.demand,
        0,
      );
      const { patterns } = new PatternFinder(its.table).find(points, total + 1 - share, room, effort);
      for (const { counts } of patterns)
        this.keep(at, new Map(counts.flatMap((count, item) => (count > 0 ? [[best[item]!.id, count] as const] : [])))); // biome-ignore format: one row
    }
  }

  /** The pattern, if it is new. */
  private keep(format: number, counts: ReadonlyMap<string, number>): MixPattern | null {
    const key = `${format}: ${[...counts].sort().join(' ')}`;
    if (this.known.has(key)) return null;
    this.known.add(key);
    const pattern = { format, counts };
    this.patterns.push(pattern);
    return pattern;
  }

  /** Parts that may stand for one another on a format, the part itself among them. */
  standIns(format: number, part: string): readonly string[] {
    const kind = this.tables[format]?.problem.kinds.find(({ parts }) => parts.some((laid) => laid.part.id === part)); // biome-ignore format: one row
    return kind?.parts.map((laid) => laid.part.id) ?? [];
  }

  /** These prices as whole points, and the most of them that a sheet of each format holds. */
  rowOf(priceOf: (part: string, card: string) => number): MixRow {
    const cards = [...new Set(this.order.formats.map(({ card }) => card))];
    const largest = Math.max(1e-12, ...cards.flatMap((card) => partsOn(this.order, card).map(({ id }) => priceOf(id, card)))); // biome-ignore format: one row
    const points = Object.fromEntries(
      cards.map((card) => [
        card,
        Object.fromEntries(
          partsOn(this.order, card).map(({ id }) => [id, Math.floor((priceOf(id, card) / largest) * POINTS + 1e-6)]), // biome-ignore format: one row
        ),
      ]),
    );
    const most = Object.fromEntries(
      this.tables.flatMap((table) => {
        if (table === null) return [];
        const { format, problem } = table;
        const each = problem.kinds.map(({ parts }) => Math.max(...parts.map(({ part }) => points[format.card]?.[part.id] ?? 0))); // biome-ignore format: one row
        return [[format.sheet.id, fillTable(table.table, each)]];
      }),
    );
    return { points, most };
  }
}

const POINTS = 1e6; // Points of the dearest part: prices keep six figures.

/** Every part that may be cut from a card, as often as all boxes would take it. */
export const partsOn = ({ lots }: MixOrder, card: string): SheetPart[] =>
  lots
    .filter(({ cards }) => cards.includes(card))
    .flatMap(({ boxes, parts }) => parts.map((part) => ({ ...part, count: part.count * boxes })));

/** The rows of the program. Boxes of one part, or of one card, are counted by the piece; others by the box, with a row for each part and card. */
class Rows {
  readonly demands: number[] = [];
  readonly starting: readonly (readonly number[])[];
  readonly lotOf: MixLot[] = [];
  readonly sheetRow: number[] = [];
  readonly shareColumns: { readonly key: string; readonly entries: Map<number, number> }[] = [];
  readonly supplyColumns: { readonly entries: Map<number, number>; readonly cost: number }[] = [];
  private readonly rowOf = new Map<string, number>();

  constructor(lots: readonly MixLot[], cut: ReadonlyMap<string, number>, terms: readonly SheetTerms[]) {
    const total = (part: string, cards: readonly string[]) => cards.reduce((sum, card) => sum + (cut.get(keyOf(part, card)) ?? 0), 0); // biome-ignore format: one row
    for (const lot of lots) {
      if (isByPiece(lot))
        for (const part of lot.parts) {
          const row = this.cover(lot.boxes * part.count - total(part.id, lot.cards), lot);
          for (const card of lot.cards) this.rowOf.set(keyOf(part.id, card), row);
        }
    }
    const byBox = lots.filter((lot) => !isByPiece(lot)).map((lot) => ({ lot, whole: this.cover(lot.boxes, lot) })); // biome-ignore format: one row
    for (const { lot, whole } of byBox)
      for (const card of lot.cards) {
        const entries = new Map([[whole, 1]]);
        for (const part of lot.parts) {
          const row = this.cap(cut.get(keyOf(part.id, card)) ?? 0);
          this.rowOf.set(keyOf(part.id, card), row);
          entries.set(row, -part.count);
        }
        this.shareColumns.push({ key: keyOf(lot.id, card), entries });
      }
    for (const { free, price } of terms) {
      const row = this.cap(0);
      this.sheetRow.push(row);
      if (free > 0) this.supplyColumns.push({ entries: new Map([[row, 1], [this.cap(free), -1]]), cost: 0 }); // biome-ignore format: one row
      if (price !== null) this.supplyColumns.push({ entries: new Map([[row, 1]]), cost: price });
    }
    this.starting = this.lotOf.map((_, at) => this.demands.map((_, row) => (row === at ? 1 : 0)));
  }

  partRow = (part: string, card: string): number | undefined => this.rowOf.get(keyOf(part, card));

  private cover(demand: number, lot: MixLot): number {
    this.lotOf.push(lot);
    return this.demands.push(Math.max(0, demand)) - 1;
  }

  private cap(amount: number): number {
    return this.demands.push(-amount - LEAST) - 1;
  }
}

/** Whether pieces may be counted without asking which box they belong to. */
export const isByPiece = ({ parts, cards }: MixLot): boolean =>
  cards.length === 1 || (parts.length === 1 && parts[0]!.count === 1);
