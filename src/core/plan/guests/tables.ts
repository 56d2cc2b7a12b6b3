import type { FavorEvent, Guest } from '../../rows';
import { lineOfGuest } from './guest-counts';

/** One table: who sits there, and how many of each line's favors go to it. */
export interface GuestTable {
  /** Empty for guests without a table. */
  readonly table: string;
  readonly guests: readonly { readonly guest: Guest; readonly lineId: string | null }[];
  readonly counts: readonly { readonly lineId: string; readonly count: number }[];
}

const inNumber = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

/** Guests by table, tables in the order of their numbers, those without a table last; within a table in the order of the list. */
export function tablesOf(event: Pick<FavorEvent, 'lines' | 'guests'>): readonly GuestTable[] {
  const byTable = new Map<string, Guest[]>();
  for (const guest of event.guests ?? []) {
    const table = guest.table.trim();
    byTable.set(table, [...(byTable.get(table) ?? []), guest]);
  }
  return [...byTable]
    .sort(([a], [b]) => Number(a === '') - Number(b === '') || inNumber.compare(a, b))
    .map(([table, guests]) => {
      const placed = guests.map((guest) => ({ guest, lineId: lineOfGuest(event, guest)?.id ?? null }));
      const counts = event.lines.flatMap(({ id }) => {
        const count = placed.filter(({ lineId }) => lineId === id).length;
        return count > 0 ? [{ lineId: id, count }] : [];
      });
      return { table, guests: placed, counts };
    });
}
