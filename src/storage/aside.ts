import { readRow } from '../../shared/tables';
import { CENSUS_NOTE, keepNote, noteValue, readDays, revOf } from './apply-changes';
import { NOTHING_COUNTED, readCensus } from './census';
import type { Binned, BinnedAside, Census, WorkbookStorage } from './port';
import type { Transaction } from './transaction';
import type { Database } from './workbook-storage';

/** The bin as it lies in the database: rows of any version of the app. */
type RawBinned = Omit<Binned, 'row'> & { readonly row: unknown };

/** What of the bin today's schema reads. */
export const readableBinned = (bin: readonly unknown[]): readonly Binned[] =>
  (bin as RawBinned[]).flatMap(({ row, ...binned }): Binned[] => {
    const reading = readRow(binned.table, row);
    return reading.ok ? [{ ...binned, row: reading.row }] : [];
  });

type AsideKeeping = Pick<WorkbookStorage, 'readAgain' | 'binAside' | 'listBinAside' | 'unbinAside'>;

/**
 * Rows that today's schema cannot read, on their way to the bin and back: always whole, as they were stored. `counted` hears what the rows
 * were counted to be after a move, so that a move is not taken for a loss.
 */
export function asideKeeping(database: Database, counted: (census: Census) => void): AsideKeeping {
  async function move(work: (tx: Transaction) => Promise<Census | null>) {
    const moved = await database.run('write', work);
    if (!moved.ok) return moved;
    if (moved.value) counted(moved.value);
    return { ok: true, value: moved.value !== null } as const;
  }

  return {
    readAgain: (table, id) =>
      database.run('read', async (tx) => {
        const raw = await tx.get(table, id);
        if (raw === undefined) return 'gone';
        const reading = readRow(table, raw);
        return reading.ok ? reading.row : { table, id, raw, refusals: reading.refusals };
      }),

    binAside: (table, id, at) =>
      move(async (tx) => {
        const raw = await tx.get(table, id);
        if (raw === undefined || readRow(table, raw).ok) return null;
        const { count: onDay } = await readDays(tx);
        await tx.put('bin', { id: `${table}/${id}`, table, row: raw as Binned['row'], deletedAt: at, onDay });
        await tx.drop(table, id);
        return recount(tx, -1, -revOf(raw));
      }),

    listBinAside: () =>
      database.run('read', async (tx) =>
        ((await tx.all('bin')) as RawBinned[])
          .filter(({ table, row }) => !readRow(table, row).ok)
          .map(({ row, onDay: _, ...binned }): BinnedAside => ({ ...binned, raw: row }))
          .toSorted((a, b) => (a.deletedAt < b.deletedAt ? 1 : -1)),
      ),

    unbinAside: (table, id) =>
      move(async (tx) => {
        const binned = (await tx.get('bin', `${table}/${id}`)) as RawBinned | undefined;
        if (!binned || (await tx.get(table, id)) !== undefined) return null;
        await tx.put(table, binned.row as never);
        await tx.drop('bin', binned.id);
        return recount(tx, 1, revOf(binned.row));
      }),
  };
}

/** The count after so many rows, of so many revisions together, came or went. */
async function recount(tx: Transaction, rows: number, revs: number): Promise<Census> {
  const noted = readCensus(noteValue(await tx.get('notes', CENSUS_NOTE))) ?? NOTHING_COUNTED;
  const census = {
    generation: noted.generation + 1,
    rows: Math.max(0, noted.rows + rows),
    revSum: Math.max(0, noted.revSum + revs),
  };
  await keepNote(tx, { id: CENSUS_NOTE, value: census });
  return census;
}
