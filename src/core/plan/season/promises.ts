import type { ShoppingRow } from '../buying/shopping';

/** What one event needs of a paper or supply, and where it comes from. */
interface Promised {
  readonly eventId: string;
  readonly need: number;
  /** Of the need, what is on hand and promised to it; the rest is bought. */
  readonly fromStock: number;
  readonly toBuy: number;
}

/** One row of the season's list: all that is needed of one paper or supply, the events in the order of their dates. */
export interface SeasonRow extends Pick<ShoppingRow, 'id' | 'kind' | 'name' | 'unit' | 'onHand'> {
  readonly need: number;
  readonly toBuy: number;
  readonly promised: readonly Promised[];
  /** The first event that something must be bought for; null where stock does for all. */
  readonly firstFor: string | null;
}

interface Asked {
  readonly eventId: string;
  readonly rows: readonly ShoppingRow[];
}

/**
 * One stock shared among events, the earliest served first. `saved` is what cutting together saves of a paper; the latest events need so
 * much less. Rows that must be bought first come first.
 */
export function promiseStock(
  asked: readonly Asked[],
  saved: ReadonlyMap<string, number> = new Map(),
): readonly SeasonRow[] {
  const ids = [...new Set(asked.flatMap(({ rows }) => rows.map(({ id }) => id)))];
  const rows = ids.map((id) => {
    const wanted = asked.flatMap(({ eventId, rows: own }) =>
      own.filter((row) => row.id === id).map((row) => ({ eventId, row })),
    );
    const { kind, name, unit, onHand } = wanted[0]!.row;
    const needs = lessSaved(
      wanted.map(({ row }) => row.need),
      saved.get(id) ?? 0,
    );
    let left = onHand;
    const promised = wanted.map(({ eventId }, at): Promised => {
      const need = needs[at] ?? 0;
      const fromStock = Math.min(left, need);
      left -= fromStock;
      return { eventId, need, fromStock, toBuy: need - fromStock };
    });
    const sum = (of: 'need' | 'toBuy') => promised.reduce((total, each) => total + each[of], 0);
    const firstFor = promised.find(({ toBuy }) => toBuy > 0)?.eventId ?? null;
    return { id, kind, name, unit, onHand, need: sum('need'), toBuy: sum('toBuy'), promised, firstFor };
  });
  const order = (row: SeasonRow): number =>
    row.firstFor === null ? asked.length : asked.findIndex(({ eventId }) => eventId === row.firstFor);
  return rows.sort((a, b) => order(a) - order(b));
}

/** Needs with what is saved taken off the last first. */
function lessSaved(needs: readonly number[], saved: number): readonly number[] {
  let left = saved;
  return needs
    .toReversed()
    .map((need) => {
      const off = Math.min(left, need);
      left -= off;
      return need - off;
    })
    .reverse();
}
