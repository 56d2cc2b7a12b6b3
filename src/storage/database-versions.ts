import type { Dexie, Transaction as DexieTransaction } from 'dexie';
import { type AnyRow, TABLES } from '../../shared/tables';
import { readCensus } from './census';
import type { Snapshot } from './port';

/** One version of the database's shape. `upgrade` moves the rows of the version before it. */
export interface DatabaseVersion {
  readonly version: number;
  readonly stores: Readonly<Record<string, string | null>>;
  readonly upgrade?: (tx: DexieTransaction) => PromiseLike<unknown>;
  /** The upgrade moves notes only, so that no row is copied before it. */
  readonly leavesRows?: true;
}

/**
 * Every version there ever was. A published version is NEVER edited: people's browsers hold it. A change is a new entry below, which
 * says only what differs, keeps `id` as the key, and keeps the old stores for one release.
 */
export const DATABASE_VERSIONS: readonly DatabaseVersion[] = [
  {
    version: 1,
    stores: {
      recipes: 'id',
      events: 'id',
      papers: 'id',
      supplies: 'id',
      tools: 'id',
      bin: 'id',
      snapshots: 'id, of',
      notes: 'id',
    },
  },
  { version: 2, stores: { photos: 'id' } },
  // A revision on every note; the last copy is noted with the count of writes it holds, which every tab shares.
  { version: 3, stores: {}, leavesRows: true, upgrade: numberNotes },
];

async function numberNotes(tx: DexieTransaction): Promise<void> {
  const table = tx.table<{ id: string; value: unknown }, string>('notes');
  const notes = await table.toArray();
  const generation = readCensus(notes.find(({ id }) => id === 'census')?.value)?.generation ?? 0;
  const moved = notes.map(({ id, value }) => ({
    id,
    value: id === 'backup' ? withGeneration(value, generation) : value,
    rev: 1,
  }));
  await table.bulkPut(moved);
}

function withGeneration(backup: unknown, generation: number): unknown {
  if (typeof backup !== 'object' || backup === null) return backup;
  const { savesSince, ...rest } = backup as { readonly savesSince?: unknown };
  const since = typeof savesSince === 'number' ? savesSince : 0;
  return { ...rest, generation: Math.max(0, generation - since) };
}

/** Browsers number a database ten times higher than it is declared here. Source: the Dexie manual, `Version`. */
export const browserVersion = (version: number): number => version * 10;

/** Declares every version. Before an upgrade moves any row, every row is copied as it was among its earlier states. */
export function declareVersions(db: Dexie, versions: readonly DatabaseVersion[]): void {
  for (const { version, stores, upgrade, leavesRows } of versions) {
    const declared = db.version(version).stores(stores);
    if (upgrade)
      declared.upgrade(async (tx) => {
        if (!leavesRows) await copyRows(tx);
        await upgrade(tx);
      });
  }
}

async function copyRows(tx: DexieTransaction): Promise<void> {
  for (const table of TABLES) {
    const rows = await tx.table<Partial<AnyRow> & { id: string }, string>(table).toArray();
    const copies = rows.map(({ ...row }): Snapshot => {
      const of = `${table}/${row.id}`;
      const rev = typeof row.rev === 'number' ? row.rev : 0;
      return { id: `${of}@${rev}`, of, table, rev, takenAt: String(row.changedAt), row, before: 'upgrade' };
    });
    await tx.table<Snapshot, string>('snapshots').bulkPut(copies);
  }
}
