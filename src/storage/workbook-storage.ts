import { sortRows, TABLES, type TableName } from '../../shared/tables';
import {
  applyChanges,
  CENSUS_NOTE,
  DAYS_NOTE,
  keepNote,
  noteValue,
  readDays,
  readRowOr,
  revOf,
} from './apply-changes';
import { asideKeeping, readableBinned } from './aside';
import { lossOf, NOTHING_COUNTED, readCensus } from './census';
import type { Binned, Census, Result, Snapshot, StorageEvent, Stored, WorkbookStorage } from './port';
import { STORES, type Transaction } from './transaction';

/** What differs between one place to keep a workbook and another; everything else is written once, here. */
export interface Database {
  readonly keeps: WorkbookStorage['keeps'];
  /** Runs `work` inside one transaction; nothing of it stays if it throws. Never rejects, and answers within five seconds but for `read-all`. */
  run<Value>(
    mode: 'read' | 'read-all' | 'write',
    work: (tx: Transaction) => Promise<Value>,
  ): Promise<Result<Value>>;
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

  const settle = (census: Census | null) => {
    see(census);
    if (census) noteOutside(census);
  };

  return {
    keeps: database.keeps,
    watch: (listener) => database.watch(listener),
    close: () => database.close(),

    async load(progress = () => undefined) {
      const outside = readCensus(database.outside.read());
      const result = await database.run('read-all', (tx) => readEverything(tx, outside, progress));
      if (!result.ok) return result;
      const { stored, census } = result.value;
      see(census);
      if (!stored.loss && census) noteOutside(census);
      return { ok: true, value: stored };
    },

    async write(changes, at, notes = []) {
      const written = await database.run('write', (tx) =>
        applyChanges(tx, changes, at, notes, generationSeen),
      );
      if (!written.ok) return written;
      const { written: value, census } = written.value;
      if (census) settle(census);
      if (value.outcome === 'kept' && changes.length + notes.length > 0)
        database.announce({
          event: 'changed-elsewhere',
          keys: changes.map(({ table, id }) => ({ table, id })),
          notes: notes.map(({ id }) => id),
          generation: value.generation,
        });
      return { ok: true, value };
    },

    readNotes: () => database.run('read', readNotes),

    readRows: (keys) =>
      database.run('read', async (tx) => {
        const found = new Map<string, unknown>();
        for (const table of TABLES) {
          const ids = keys.filter((key) => key.table === table).map(({ id }) => id);
          const raw = ids.length > 0 ? await tx.getMany(table, ids) : [];
          for (const [at, id] of ids.entries()) found.set(`${table}/${id}`, raw[at]);
        }
        return keys.map(({ table, id }) => {
          const raw = found.get(`${table}/${id}`);
          return raw === undefined ? 'gone' : readRowOr(table, raw);
        });
      }),

    ...binKeeping(database),

    ...asideKeeping(database, settle),

    ...lossKeeping(database, settle),
  };
}

/** What was deleted, and earlier states: found, and cleared away by age or for room. */
function binKeeping(
  database: Database,
): Pick<WorkbookStorage, 'listBin' | 'openDay' | 'freeRoom' | 'listSnapshots' | 'listAllSnapshots'> {
  return {
    listBin: () =>
      database.run('read', async (tx) => readableBinned(await tx.all('bin')).toSorted(newestFirst)),

    openDay: (day, keep) =>
      database.run('write', async (tx) => {
        const days = await readDays(tx);
        const bin = (await tx.all('bin')) as Binned[];
        const count = days.count + (day > days.last ? 1 : 0);
        if (day !== days.last) await keepNote(tx, { id: DAYS_NOTE, value: { count, last: day } });
        // What an earlier version put there lies as long as anything else, from now on.
        for (const binned of bin)
          if (binned.onDay === undefined) await tx.put('bin', { ...binned, onDay: count });
        const old = bin.filter(({ onDay = count }) => count - onDay > keep);
        for (const { id } of old) await dropBinned(tx, id);
        return old.length;
      }),

    freeRoom: (earlier) =>
      database.run('write', async (tx) => {
        const bin = (await tx.all('bin')) as Binned[];
        const snapshots = earlier ? (await tx.all('snapshots')).length : 0;
        for (const { id } of earlier ? [] : bin) await dropBinned(tx, id);
        if (earlier) {
          await tx.clear('bin');
          await tx.clear('snapshots');
        }
        return bin.length + snapshots;
      }),

    listSnapshots: (table, id) => database.run('read', (tx) => tx.snapshotsOf(`${table}/${id}`)),

    listAllSnapshots: () =>
      database.run('read', async (tx) =>
        ((await tx.all('snapshots')) as Snapshot[]).toSorted((a, b) => (a.takenAt < b.takenAt ? 1 : -1)),
      ),
  };
}

/** A loss taken as it is, and everything erased; `settle` hears how many rows there are from then on. */
function lossKeeping(
  database: Database,
  settle: (census: Census | null) => void,
): Pick<WorkbookStorage, 'acceptLoss' | 'eraseAll'> {
  return {
    async acceptLoss() {
      const result = await database.run('write', async (tx) => {
        const outside = readCensus(database.outside.read());
        const noted = readCensus(noteValue(await tx.get('notes', CENSUS_NOTE)));
        const generation = Math.max(outside?.generation ?? 0, noted?.generation ?? 0) + 1;
        const census = { generation, ...count(await rawRows(tx)) };
        await keepNote(tx, { id: CENSUS_NOTE, value: census });
        return census;
      });
      if (!result.ok) return result;
      settle(result.value);
      return { ok: true, value: null };
    },

    async eraseAll() {
      const result = await database.run('write', async (tx) => {
        for (const store of STORES) await tx.clear(store);
        return null;
      });
      if (result.ok) {
        settle(null);
        database.outside.clear();
      }
      return result;
    },
  };
}

const newestFirst = (a: Binned, b: Binned) => (a.deletedAt < b.deletedAt ? 1 : -1);

/** A thing in the bin and its earlier states. */
async function dropBinned(tx: Transaction, id: string): Promise<void> {
  for (const snapshot of await tx.snapshotsOf(id)) await tx.drop('snapshots', snapshot.id);
  await tx.drop('bin', id);
}

type RawRows = Readonly<Record<TableName, readonly unknown[]>>;

async function rawRows(tx: Transaction, told: (rows: number) => void = () => undefined): Promise<RawRows> {
  const raw: [TableName, readonly unknown[]][] = [];
  for (const table of TABLES) {
    const rows = await tx.all(table);
    raw.push([table, rows]);
    told(rows.length);
  }
  return Object.fromEntries(raw) as RawRows;
}

function count(raw: RawRows): Omit<Census, 'generation'> {
  const revs = TABLES.flatMap((table) => raw[table].map(revOf));
  return { rows: revs.length, revSum: revs.reduce((sum, rev) => sum + rev, 0) };
}

async function readNotes(tx: Transaction) {
  const stored = await tx.all('notes');
  const notes = Object.fromEntries(stored.map((note) => [(note as { id: string }).id, noteValue(note)]));
  const census = readCensus(notes[CENSUS_NOTE]);
  return { notes, census, generation: census?.generation ?? 0 };
}

async function readEverything(
  tx: Transaction,
  outside: Census | null,
  progress: (read: number, of: number) => void,
) {
  const { notes, census, generation } = await readNotes(tx);
  let read = 0;
  const raw = await rawRows(tx, (rows) => {
    read += rows;
    progress(read, Math.max(read, census?.rows ?? 0));
  });
  const counted = count(raw);
  const loss = lossOf(census ?? (counted.rows > 0 ? NOTHING_COUNTED : null), outside, counted);
  const stored: Stored = { ...sortRows(raw), notes, generation, loss };
  return { stored, census };
}
