import { Dexie } from 'dexie';
import { censusKeyOf, DATABASE_NAME } from './database-name';
import {
  browserVersion,
  DATABASE_VERSIONS,
  type DatabaseVersion,
  declareVersions,
} from './database-versions';
import { faultOf, watchOver } from './faults';
import type { FaultKind, Result, Snapshot, StorageEvent, StorageFault, WorkbookStorage } from './port';
import { STORES, type Transaction } from './transaction';
import { type Database, keepWorkbook } from './workbook-storage';

export { DATABASE_NAME };

export interface DexieOptions {
  readonly name?: string;
  readonly versions?: readonly DatabaseVersion[];
  /** A second place of the same browser, to count in; null: none. */
  readonly outside: Pick<Storage, 'getItem' | 'setItem' | 'removeItem'> | null;
  /** Called when another tab holds an older version open; opening goes on by itself once it closes. */
  readonly onBlocked?: () => void;
}

/** Opens the browser's database. Refuses one that is newer than this app (`newer`), does not open (`broken`) or is not there (`absent`). */
export async function openDexie(options: DexieOptions): Promise<Result<WorkbookStorage>> {
  const { name = DATABASE_NAME, versions = DATABASE_VERSIONS, outside, onBlocked } = options;
  if (typeof indexedDB === 'undefined') return fail('absent', 'this browser has no database');
  const newest = browserVersion(Math.max(...versions.map(({ version }) => version)));
  const found = await watchOver(() => versionInBrowser(name));
  if (!found.ok) return found;
  if (found.value > newest) return withSalvage(name, failNewer(found.value, newest));

  const db = new Dexie(name, { chromeTransactionDurability: 'strict' });
  declareVersions(db, versions);
  db.on('blocked', () => {
    onBlocked?.();
    return false; // Dexie's own answer is a warning nobody reads.
  });
  const opened = await open(db);
  // Not to open at all is no passing fault, whatever the browser calls it.
  if (!opened.ok)
    return withSalvage(name, opened.fault.kind === 'lost' ? fail('broken', opened.fault.detail) : opened);
  // Where the browser does not list its databases, their version shows only now.
  const version = db.backendDB().version;
  if (version > newest) {
    db.close({ disableAutoOpen: true });
    return withSalvage(name, failNewer(version, newest));
  }
  return { ok: true, value: keepWorkbook(databaseOn(db, outside)) };
}

function databaseOn(db: Dexie, outside: DexieOptions['outside']): Database {
  const listeners = new Set<(event: StorageEvent) => void>();
  const tell = (event: StorageEvent) => {
    for (const listener of listeners) listener(event);
  };
  let closed = false;
  const channel = openChannel(db.name, tell);
  const censusKey = censusKeyOf(db.name);

  // A newer version of the app wants the database: let go of it, and never come back by ourselves to write rows of an old shape.
  let stale: StorageFault | null = null;
  db.on('versionchange', () => {
    stale = { kind: 'stale', detail: 'a newer version was opened in another tab' };
    db.close({ disableAutoOpen: true });
    tell({ event: 'fault', fault: stale });
    return false; // Dexie's own answer, which would open again by itself, is not wanted.
  });

  const taken = () => (stale ? ({ ok: false, fault: stale } as const) : null);
  // The function handed to Dexie must itself be async, or it takes the transaction for done at the first await.
  const attempt = <Value>(mode: 'read' | 'read-all' | 'write', work: (tx: Transaction) => Promise<Value>) =>
    watchOver(
      () => db.transaction(mode === 'write' ? 'rw' : 'r', STORES, async () => work(transactionOn(db))),
      mode === 'read-all' ? Infinity : undefined,
    );

  return {
    keeps: 'browser',
    async run(mode, work) {
      const first = taken() ?? (await attempt(mode, work));
      if (first.ok || first.fault.kind !== 'lost') return first;
      // Some browsers drop the connection of a page left in the background: open it again once, then say so.
      db.close();
      const again = taken() ?? (await open(db));
      return again.ok ? attempt(mode, work) : again;
    },
    outside: {
      read: () => parse(outside?.getItem(censusKey) ?? ''),
      write: (census) => ignoreFull(() => outside?.setItem(censusKey, JSON.stringify(census))),
      clear: () => outside?.removeItem(censusKey),
    },
    // A write that was under way when this was closed is kept all the same, and told by nobody.
    announce: (event) => {
      if (!closed) channel?.postMessage(event);
    },
    watch(listener) {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
    close() {
      closed = true;
      listeners.clear();
      channel?.close();
      db.close();
    },
  };
}

function transactionOn(db: Dexie): Transaction {
  return {
    get: (store, id) => db.table<unknown, string>(store).get(id),
    getMany: (store, ids) => db.table<unknown, string>(store).bulkGet([...ids]),
    all: (store) => db.table<unknown, string>(store).toArray(),
    put: (store, value) => db.table<unknown, string>(store).put(value),
    drop: (store, id) => db.table<unknown, string>(store).delete(id),
    clear: (store) => db.table(store).clear(),
    snapshotsOf: async (of) => {
      const found = await db.table<Snapshot, string>('snapshots').where('of').equals(of).sortBy('rev');
      return found.reverse();
    },
  };
}

/** The version a database has in this browser; 0 if there is none, or if the browser does not tell. */
async function versionInBrowser(name: string): Promise<number> {
  const list = 'databases' in indexedDB ? await indexedDB.databases() : [];
  return list.find((database) => database.name === name)?.version ?? 0;
}

/** Opening may wait for another tab or move every row, so no watchdog hurries it. */
async function open(db: Dexie): Promise<Result<Dexie>> {
  try {
    return { ok: true, value: await db.open() };
  } catch (error) {
    db.close({ disableAutoOpen: true });
    const fault = faultOf(error);
    return { ok: false, fault: fault.kind === 'lost' ? { ...fault, kind: 'broken' } : fault };
  }
}

function openChannel(name: string, tell: (event: StorageEvent) => void): BroadcastChannel | null {
  if (typeof BroadcastChannel === 'undefined') return null;
  const channel = new BroadcastChannel(name);
  channel.onmessage = ({ data }: MessageEvent<StorageEvent>) => tell(data);
  return channel;
}

type Failed = { readonly ok: false; readonly fault: StorageFault };

async function withSalvage(name: string, { fault }: Failed): Promise<Failed> {
  const salvaged = await salvage(name);
  return { ok: false, fault: salvaged ? { ...fault, salvaged } : fault };
}

const fail = (kind: FaultKind, detail: string): Failed => ({
  ok: false,
  fault: { kind, detail },
});

const failNewer = (found: number, newest: number) =>
  fail('newer', `the database is of version ${found}, this app knows ${newest}`);

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

/** The count outside is a second witness; where it has no room, the one in the database still stands. */
function ignoreFull(write: () => void): void {
  try {
    write();
  } catch (error) {
    if (faultOf(error).kind !== 'full') throw error;
  }
}

/**
 * Everything that can be read of a database that this app may not or cannot open as its own, store by store, as it stands there.
 * Only reads, and lets go of it again. Null if there is none, or nothing of it can be read.
 */
async function salvage(name: string): Promise<Readonly<Record<string, readonly unknown[]>> | null> {
  const result = await watchOver(async () => {
    if (!(await Dexie.exists(name))) return null;
    // Without a declared version Dexie takes the database as it is.
    const db = new Dexie(name, { autoOpen: false });
    await db.open();
    try {
      const stores = await Promise.all(
        db.tables.map(async (table): Promise<[string, unknown[]]> => [table.name, await table.toArray()]),
      );
      return Object.fromEntries(stores);
    } finally {
      db.close();
    }
  });
  return result.ok ? result.value : null;
}
