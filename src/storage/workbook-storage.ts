import { readRow, sortRows, TABLES, type TableName } from '../../shared/tables';
import { applyChanges, CENSUS_NOTE, noteValue, revOf } from './apply-changes';
import { asideKeeping, readableBinned } from './aside';
import { lossOf, NOTHING_COUNTED, readCensus } from './census';
import type { Binned, Census, Result, Snapshot, StorageEvent, Stored, WorkbookStorage } from './port';
import { STORES, type Transaction } from './transaction';

/** What differs between one place to keep a workbook and another; everything else is written once, here. */
export interface Database {
  readonly keeps: WorkbookStorage['keeps'];
  /** Runs `work` inside one transaction; nothing of it stays if it throws. Never rejects, and answers within five seconds. */
  run<Value>(mode: 'read' | 'write', work: (tx: Transaction) => Promise<Value>): Promise<Result<Value>>;
  /** A second place of the same browser, to count in. */
  readonly outside: { read(): unknown; write(census: Census): void; clear(): void };
  announce(event: StorageEvent): void;
  watch(listener: (event: StorageEvent) => void): () => void;
  close(): void;
}

/** The port over one database. */
export function keepWorkbook(database: Database): WorkbookStorage {
  const noteOutside = (census: Census) => {
    const outside = readCensus(database.outside.read());
    if (!outside || outside.generation < census.generation) database.outside.write(census);
  };

  let generationSeen = 0;
  const see = (census: Census | null) => {
    generationSeen = census?.generation ?? 0;
  };

  return {
    keeps: database.keeps,
    watch: (listener) => database.watch(listener),
    close: () => database.close(),

    async load() {
      const outside = readCensus(database.outside.read());
      const result = await database.run('read', (tx) => readEverything(tx, outside));
      if (!result.ok) return result;
      const { stored, census } = result.value;
      see(census);
      if (!stored.loss && census) noteOutside(census);
      return { ok: true, value: stored };
    },

    async write(changes, at, notes = {}) {
      const written = await database.run('write', (tx) =>
        applyChanges(
          tx,
          changes,
          at,
          Object.entries(notes).map(([id, value]) => ({ id, value })),
          generationSeen,
        ),
      );
      if (!written.ok) return written;
      const { written: value, census } = written.value;
      if (census) {
        see(census);
        noteOutside(census);
        const keys = changes.map(({ table, id }) => ({ table, id }));
        if (keys.length > 0) database.announce({ event: 'changed-elsewhere', keys });
      }
      return { ok: true, value };
    },

    readRow: (table, id) =>
      database.run('read', async (tx) => {
        const raw = await tx.get(table, id);
        if (raw === undefined) return 'gone';
        const reading = readRow(table, raw);
        return reading.ok ? reading.row : 'unreadable';
      }),

    listBin: () =>
      database.run('read', async (tx) => readableBinned(await tx.all('bin')).toSorted(newestFirst)),

    purgeBin: (before) =>
      database.run('write', async (tx) => {
        const old = ((await tx.all('bin')) as Binned[]).filter(({ deletedAt }) => deletedAt < before);
        for (const { id } of old) {
          for (const snapshot of await tx.snapshotsOf(id)) await tx.drop('snapshots', snapshot.id);
          await tx.drop('bin', id);
        }
        return old.length;
      }),

    listSnapshots: (table, id) => database.run('read', (tx) => tx.snapshotsOf(`${table}/${id}`)),

    listAllSnapshots: () =>
      database.run('read', async (tx) =>
        ((await tx.all('snapshots')) as Snapshot[]).toSorted((a, b) => (a.takenAt < b.takenAt ? 1 : -1)),
      ),

    ...asideKeeping(database, (census) => {
      see(census);
      noteOutside(census);
    }),

    async acceptLoss() {
      const result = await database.run('write', async (tx) => {
        const outside = readCensus(database.outside.read());
        const noted = readCensus(noteValue(await tx.get('notes', CENSUS_NOTE)));
        const generation = Math.max(outside?.generation ?? 0, noted?.generation ?? 0) + 1;
        const census = { generation, ...count(await rawRows(tx)) };
        await tx.put('notes', { id: CENSUS_NOTE, value: census });
        return census;
      });
      if (!result.ok) return result;
      see(result.value);
      noteOutside(result.value);
      return { ok: true, value: null };
    },

    async eraseAll() {
      const result = await database.run('write', async (tx) => {
        for (const store of STORES) await tx.clear(store);
        return null;
      });
      if (result.ok) {
        see(null);
        database.outside.clear();
      }
      return result;
    },
  };
}

const newestFirst = (a: Binned, b: Binned) => (a.deletedAt < b.deletedAt ? 1 : -1);

type RawRows = Readonly<Record<TableName, readonly unknown[]>>;

async function rawRows(tx: Transaction): Promise<RawRows> {
  const raw: [TableName, readonly unknown[]][] = [];
  for (const table of TABLES) raw.push([table, await tx.all(table)]);
  return Object.fromEntries(raw) as RawRows;
}

function count(raw: RawRows): Omit<Census, 'generation'> {
  const revs = TABLES.flatMap((table) => raw[table].map(revOf));
  return { rows: revs.length, revSum: revs.reduce((sum, rev) => sum + rev, 0) };
}

async function readEverything(tx: Transaction, outside: Census | null) {
  const raw = await rawRows(tx);
  const notes = Object.fromEntries(
    (await tx.all('notes')).map((note) => [(note as { id: string }).id, noteValue(note)]),
  );
  const noted = readCensus(notes[CENSUS_NOTE]);
  const counted = count(raw);
  const loss = lossOf(noted ?? (counted.rows > 0 ? NOTHING_COUNTED : null), outside, counted);
  const stored: Stored = { ...sortRows(raw), notes, loss };
  return { stored, census: noted };
}
