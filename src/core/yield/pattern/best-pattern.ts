import { canTrim, reachOf } from '../problem/cutting-problem';
import type { CellItem, CuttingGrid } from './cutting-grid';
import { joinPieces, type PatternTree } from './pattern';

/** Cuts allowed in one round before the piece goes `below`, to the next round (an index, or -1: items only). */
interface Round {
  readonly upright: boolean;
  readonly level: boolean;
  readonly below: number;
}

const FREE: readonly Round[] = [{ upright: true, level: true, below: -1 }];

/** Rounds of one direction each, the last two being the whole sheet started either way. */
function stagedRounds(stages: 2 | 3): Round[] {
  const rounds: Round[] = [];
  for (let stage = 0; stage < stages; stage++) {
    const last = rounds.length;
    rounds.push(
      { upright: true, level: false, below: last - 1 },
      { upright: false, level: true, below: last - 2 },
    );
    if (stage === 0) for (const [i, round] of rounds.entries()) rounds[i] = { ...round, below: -1 };
  }
  return rounds;
}

/** Best value of every piece of a grid, for given item values. Filled again and again with new values, so its room is kept. */
export interface ValueTable {
  readonly grid: CuttingGrid;
  readonly rounds: readonly Round[];
  readonly items: Float64Array;
  readonly best: readonly Float64Array[];
}

export function layTable(grid: CuttingGrid): ValueTable {
  const cells = grid.across.points.length * grid.up.points.length;
  const { stages } = grid.problem;
  const rounds = stages === 'free' ? FREE : stagedRounds(stages);
  return { grid, rounds, items: new Float64Array(cells), best: rounds.map(() => new Float64Array(cells)) };
}

function placeItems(table: ValueTable, values: ArrayLike<number>): void {
  const { grid, items } = table;
  const rows = grid.up.points.length;
  items.fill(0);
  if (grid.exact) {
    const reach = reachOf(grid.problem);
    for (const item of grid.items)
      for (let i = item.column; i < grid.across.points.length; i++)
        for (let j = item.row; j < rows; j++) {
          const width = grid.across.points[i]!;
          const height = grid.up.points[j]!;
          const value = values[item.lie.item]!;
          if (value > items[i * rows + j]! && canTrim(width, height, item.lie, reach))
            items[i * rows + j] = value;
        }
    return;
  }
  for (const { lie, column, row } of grid.items) {
    const at = column * rows + row;
    items[at] = Math.max(items[at]!, values[lie.item]!);
  }
  inherit(items, grid.across.points.length, rows);
}

/** A piece is worth at least what a smaller piece is. */
function inherit(values: Float64Array, columns: number, rows: number): void {
  for (let i = 1; i < columns; i++)
    for (let j = 1; j < rows; j++) {
      const at = i * rows + j;
      const smaller = Math.max(values[at - rows]!, values[at - 1]!);
      if (smaller > values[at]!) values[at] = smaller;
    }
}

function fillRound(table: ValueTable, round: Round, best: Float64Array): void {
  const { grid } = table;
  const rows = grid.up.points.length;
  const columns = grid.across.points.length;
  best.set(round.below < 0 ? table.items : table.best[round.below]!);
  const shortColumns = round.level ? grid.shortColumns : 0;
  const shortRows = round.upright ? grid.shortRows : 0;
  const { from: acrossFrom, first: acrossFirst, rest: acrossRest } = grid.across;
  const { from: upFrom, first: upFirst, rest: upRest } = grid.up;
  for (let i = 1; i < columns; i++) {
    const row = i * rows;
    if (!grid.exact)
      for (let j = 1; j < rows; j++) {
        const before = best[row - rows + j]!;
        if (before > best[row + j]!) best[row + j] = before;
      }
    const end = acrossFrom[i + 1]!;
    for (let cut = acrossFrom[i]!; cut < end; cut++) {
      const first = acrossFirst[cut]! * rows;
      const rest = acrossRest[cut]! * rows;
      for (let j = 1; j < shortRows; j++) {
        const both = best[first + j]! + best[rest + j]!;
        if (both > best[row + j]!) best[row + j] = both;
      }
    }
    const canLevel = i < shortColumns;
    for (let j = 1; j < rows; j++) {
      let most = best[row + j]!;
      if (!grid.exact && best[row + j - 1]! > most) most = best[row + j - 1]!;
      if (canLevel) {
        const stop = upFrom[j + 1]!;
        for (let cut = upFrom[j]!; cut < stop; cut++) {
          const both = best[row + upFirst[cut]!]! + best[row + upRest[cut]!]!;
          if (both > most) most = both;
        }
      }
      best[row + j] = most;
    }
  }
}

/** Fills the table for these item values and answers the value of the whole sheet. Exact for whole-number values. */
export function fillTable(table: ValueTable, values: ArrayLike<number>): number {
  placeItems(table, values);
  for (const [i, round] of table.rounds.entries()) fillRound(table, round, table.best[i]!);
  return sheetValue(table);
}

const lastRounds = ({ rounds }: ValueTable): number[] =>
  rounds.length === 1 ? [0] : [rounds.length - 2, rounds.length - 1];

/** Value of the whole sheet in a filled table. */
function sheetValue(table: ValueTable): number {
  return Math.max(...lastRounds(table).map((round) => table.best[round]?.at(-1) ?? 0));
}

/** A best tree of cell (`column`, `row`) of a filled table; null where nothing is worth cutting. */
function readCell(
  table: ValueTable,
  values: ArrayLike<number>,
  column: number,
  row: number,
): PatternTree | null {
  const rows = table.grid.up.points.length;
  const at = column * rows + row;
  const [round = 0] = lastRounds(table).sort(
    (a, b) => (table.best[b]?.[at] ?? 0) - (table.best[a]?.[at] ?? 0),
  );
  return readTree(table, values, round, column, row);
}

/** A best tree of the whole sheet in a filled table. */
export const readSheet = (table: ValueTable, values: ArrayLike<number>): PatternTree | null =>
  readCell(table, values, table.grid.across.points.length - 1, table.grid.up.points.length - 1);

function readTree(
  table: ValueTable,
  values: ArrayLike<number>,
  round: number,
  column: number,
  row: number,
): PatternTree | null {
  const { grid } = table;
  const rows = grid.up.points.length;
  const best = table.best[round]!;
  let [i, j] = [column, row];
  const value = best[i * rows + j]!;
  if (!(value > 0)) return null;
  if (!grid.exact) {
    while (best[(i - 1) * rows + j] === value) i--;
    while (best[i * rows + j - 1] === value) j--;
  }
  const below = table.rounds[round]?.below ?? -1;
  if (below >= 0 && table.best[below]?.[i * rows + j] === value) return readTree(table, values, below, i, j);
  if (below < 0 && table.items[i * rows + j] === value) return readItem(table, values, i, j);
  return readCut(table, values, round, i, j);
}

function readItem(table: ValueTable, values: ArrayLike<number>, i: number, j: number): PatternTree {
  const { grid } = table;
  const value = table.items[i * grid.up.points.length + j];
  const reach = reachOf(grid.problem);
  const fits = (item: CellItem): boolean =>
    item.column <= i &&
    item.row <= j &&
    values[item.lie.item] === value &&
    (!grid.exact || canTrim(grid.across.points[i]!, grid.up.points[j]!, item.lie, reach));
  const found = grid.items.find(fits);
  if (found === undefined) throw new Error('value table and items disagree');
  return { kind: 'item', item: found.lie.item, turned: found.lie.turned };
}

function readCut(
  table: ValueTable,
  values: ArrayLike<number>,
  round: number,
  i: number,
  j: number,
): PatternTree | null {
  const { grid, rounds } = table;
  const rows = grid.up.points.length;
  const best = table.best[round]!;
  const value = best[i * rows + j]!;
  if (rounds[round]?.upright && j < grid.shortRows)
    for (let cut = grid.across.from[i]!; cut < grid.across.from[i + 1]!; cut++) {
      const first = grid.across.first[cut]!;
      const rest = grid.across.rest[cut]!;
      if (best[first * rows + j]! + best[rest * rows + j]! === value)
        return joinPieces(
          true,
          readTree(table, values, round, first, j),
          readTree(table, values, round, rest, j),
        );
    }
  if (rounds[round]?.level && i < grid.shortColumns)
    for (let cut = grid.up.from[j]!; cut < grid.up.from[j + 1]!; cut++) {
      const first = grid.up.first[cut]!;
      const rest = grid.up.rest[cut]!;
      if (best[i * rows + first]! + best[i * rows + rest]! === value)
        return joinPieces(
          false,
          readTree(table, values, round, i, first),
          readTree(table, values, round, i, rest),
        );
    }
  throw new Error('value table and cuts disagree');
}
