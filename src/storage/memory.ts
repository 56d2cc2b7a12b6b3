import type { Snapshot, StorageEvent, WorkbookStorage } from './port';
import { STORES, type StoreName, type Transaction } from './transaction';
import { keepWorkbook } from './workbook-storage';

type Contents = Record<StoreName, Map<string, unknown>>;

/** What several memory storages may stand on together, as tabs stand on one database. */
export class MemoryDisk {
  contents: Contents = emptyContents();
  outside: unknown = null;
  readonly listeners = new Set<(event: StorageEvent) => void>();
  /** Transactions run one after the other. */
  queue: Promise<unknown> = Promise.resolve();
}

const emptyContents = (): Contents =>
  Object.fromEntries(STORES.map((store) => [store, new Map<string, unknown>()])) as Contents;

const copyOf = (contents: Contents): Contents =>
  Object.fromEntries(STORES.map((store) => [store, new Map(contents[store])])) as Contents;

/** Keeps a workbook until the tab closes: where the browser has no database, and in tests. */
export function openMemory(disk = new MemoryDisk()): WorkbookStorage {
  const mine = new Set<(event: StorageEvent) => void>();
  return keepWorkbook({
    keeps: 'memory',
    run(mode, work) {
      const result = disk.queue.then(async () => {
        const contents = mode === 'write' ? copyOf(disk.contents) : disk.contents;
        const value = await work(transactionOn(contents));
        disk.contents = contents;
        return { ok: true as const, value };
      });
      disk.queue = result.catch(() => null);
      return result;
    },
    outside: {
      read: () => disk.outside,
      write: (census) => {
        disk.outside = census;
      },
      clear: () => {
        disk.outside = null;
      },
    },
    announce(event) {
      for (const listener of disk.listeners) if (!mine.has(listener)) listener(event);
    },
    watch(listener) {
      disk.listeners.add(listener);
      mine.add(listener);
      return () => {
        disk.listeners.delete(listener);
        mine.delete(listener);
      };
    },
    close() {
      for (const listener of mine) disk.listeners.delete(listener);
      mine.clear();
    },
  });
}

/** Values go in and come out as copies, as they do with a database. */
function transactionOn(contents: Contents): Transaction {
  const answer = <Value>(value: Value): Promise<Value> => Promise.resolve(structuredClone(value));
  const done = (_: unknown): Promise<null> => answer(null);
  return {
    get: (store, id) => answer(contents[store].get(id)),
    getMany: (store, ids) => answer(ids.map((id) => contents[store].get(id))),
    all: (store) => answer([...contents[store].values()]),
    put: (store, value) => done(contents[store].set(value.id, structuredClone(value))),
    drop: (store, id) => done(contents[store].delete(id)),
    clear: (store) => {
      contents[store].clear();
      return done(store);
    },
    snapshotsOf: (of) =>
      answer(
        ([...contents.snapshots.values()] as Snapshot[])
          .filter((snapshot) => snapshot.of === of)
          .sort((a, b) => b.rev - a.rev),
      ),
  };
}
