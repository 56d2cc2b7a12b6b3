import 'fake-indexeddb/auto';
import { Dexie } from 'dexie';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { DATABASE_VERSIONS, type DatabaseVersion } from '../../src/storage/database-versions';
import { openDexie } from '../../src/storage/dexie';
import { faultOf, watchOver } from '../../src/storage/faults';
import type { StorageEvent, WorkbookStorage } from '../../src/storage/port';
import { recordFault } from '../setup/fault-record';
import { behindTheBack, newName, openOrThrow } from './dexie-place';
import { LocalMap } from './local-map';
import { recipeRow } from './sample-rows';

const AT = '2026-01-17T09:00:00.000Z';
const put = (id: string, basedOn: number | null = null) =>
  ({ table: 'recipes', id, row: recipeRow(id), deleted: false, basedOn }) as const;

const opened: WorkbookStorage[] = [];
afterEach(() => {
  for (const storage of opened.splice(0)) storage.close();
  vi.restoreAllMocks();
});
const open = async (name: string, versions?: readonly DatabaseVersion[]) => {
  const storage = await openOrThrow({ name, outside: new LocalMap(), ...(versions && { versions }) });
  opened.push(storage);
  return storage;
};
type Method = (...given: unknown[]) => unknown;

/** The n-th row that is put from now on is refused by the browser. */
function failPut(nth: number, name: string) {
  const real = Reflect.get(IDBObjectStore.prototype, 'put') as Method;
  let puts = 0;
  return vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
    this: IDBObjectStore,
    ...given
  ) {
    if (++puts === nth) throw new DOMException('as planned', name);
    return Reflect.apply(real, this, given) as IDBRequest<IDBValidKey>;
  });
}

/** The next transactions fail as they do on a connection that the browser dropped. */
function loseConnection(times: number) {
  const real = Reflect.get(Dexie.prototype as object, 'transaction') as Method;
  let left = times;
  return vi.spyOn(Dexie.prototype as { transaction: Method }, 'transaction').mockImplementation(function (
    this: unknown,
    ...given
  ) {
    if (left-- > 0) throw Object.assign(new Error('connection lost'), { name: 'UnknownError' });
    return Reflect.apply(real, this, given);
  });
}

const rowsIn = (name: string) => behindTheBack(name, (db) => db.table('recipes').toArray());
const NEWEST = DATABASE_VERSIONS.length;
const nextVersion: DatabaseVersion = { version: NEWEST + 1, stores: { recipes: 'id, name' } };

describe('a fault of the database is told apart by what the maker can do about it', () => {
  const error = (name: string, inner?: unknown) => Object.assign(new Error('as told'), { name, inner });
  test.each([
    [
      'a full disk, wrapped in an aborted transaction',
      error('AbortError', error('QuotaExceededError')),
      'full',
    ],
    ['a lost connection', error('UnknownError'), 'lost'],
    ['a closed database', error('DatabaseClosedError', error('InvalidStateError')), 'lost'],
    ['a newer database', error('VersionError'), 'newer'],
    ['a browser without one', error('MissingAPIError'), 'absent'],
    ['a browser that forbids it', error('SecurityError'), 'absent'],
    ['anything else', error('DataCloneError'), 'broken'],
    ['not even an error', 'gone fishing', 'broken'],
  ])('%s', (_, thrown, kind) => {
    expect(faultOf(thrown).kind).toBe(kind);
    expect(faultOf(thrown).detail).not.toBe('');
  });
});

describe('a save that never settles', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  test('counts as failed after five seconds, and not before', async ({ task }) => {
    const answer = watchOver(() => new Promise<never>(() => undefined));
    let settled = false;
    void answer.then(() => {
      settled = true;
    });
    await vi.advanceTimersByTimeAsync(4999);
    expect(settled).toBe(false);
    await vi.advanceTimersByTimeAsync(1);
    const told = await answer;
    expect(told).toMatchObject({ ok: false, fault: { kind: 'slow' } });
    recordFault({ task }, { fault: 'a save that never settles', tries: 1, lost: told.ok ? 1 : 0, goal: 0 });
  });

  test('that answers leaves no timer behind', async () => {
    expect(await watchOver(() => Promise.resolve(3))).toEqual({ ok: true, value: 3 });
    expect(vi.getTimerCount()).toBe(0);
  });
});

describe('an old tab, when a newer version of the app takes the database over', () => {
  test('lets go at once, hears why, and writes nothing more', async ({ task }) => {
    const name = newName();
    const old = await open(name);
    await old.write([put('a')], AT);
    const heard: StorageEvent[] = [];
    old.watch((event) => heard.push(event));
    await open(name, [...DATABASE_VERSIONS, nextVersion]);
    expect(heard).toMatchObject([{ event: 'fault', fault: { kind: 'stale' } }]);
    expect(await old.write([put('b')], AT)).toMatchObject({ ok: false, fault: { kind: 'stale' } });
    expect(await old.load()).toMatchObject({ ok: false, fault: { kind: 'stale' } });
    const extra = (await rowsIn(name)).length - 1;
    recordFault({ task }, { fault: 'an old tab after a newer version', tries: 1, lost: extra, goal: 0 });
  });
});

describe('an old app on a newer database', () => {
  test('does not open it, names both versions, and writes nothing', async ({ task }) => {
    const name = newName();
    const newer = await open(name, [...DATABASE_VERSIONS, nextVersion]);
    await newer.write([put('a')], AT);
    newer.close();
    const result = await openDexie({ name, outside: null });
    expect(result).toMatchObject({
      ok: false,
      fault: {
        kind: 'newer',
        detail: `the database is of version ${NEWEST + 1}0, this app knows ${NEWEST}0`,
      },
    });
    const lost = 1 - (await rowsIn(name)).length;
    recordFault({ task }, { fault: 'an old app on a newer database', tries: 1, lost, goal: 0 });
    expect((await indexedDB.databases()).find((database) => database.name === name)?.version).toBe(
      (NEWEST + 1) * 10,
    );
  });

  test('finds out even where the browser does not list its databases', async () => {
    const name = newName();
    (await open(name, [...DATABASE_VERSIONS, nextVersion])).close();
    vi.spyOn(indexedDB, 'databases').mockResolvedValue([]);
    expect(await openDexie({ name, outside: null })).toMatchObject({ ok: false, fault: { kind: 'newer' } });
  });
});

describe('a connection that is lost', () => {
  test('is made again once, and the save goes through', async () => {
    const storage = await open(newName());
    loseConnection(1);
    expect(await storage.write([put('a')], AT)).toMatchObject({ ok: true, value: { outcome: 'kept' } });
  });

  test('twice is said, after no more than one retry', async () => {
    const storage = await open(newName());
    const spy = loseConnection(9);
    expect(await storage.write([put('a')], AT)).toMatchObject({ ok: false, fault: { kind: 'lost' } });
    expect(spy).toHaveBeenCalledTimes(2);
  });
});

describe('a disk that is full', () => {
  test('keeps what was there, and nothing of what did not fit', async ({ task }) => {
    const name = newName();
    const storage = await open(name);
    await storage.write([put('a')], AT);
    failPut(3, 'QuotaExceededError');
    const result = await storage.write([put('b'), put('c'), put('d')], AT);
    expect(result).toMatchObject({ ok: false, fault: { kind: 'full' } });
    vi.restoreAllMocks();
    const rows = await rowsIn(name);
    expect(rows.map(({ id }: { id: string }) => id)).toEqual(['a']);
    recordFault({ task }, { fault: 'a disk that is full', tries: 1, lost: 1 - rows.length, goal: 0 });
    expect(await storage.load()).toMatchObject({ ok: true, value: { loss: null } });
  });

  test('does not make the count outside a reason to fail', async () => {
    const outside = new LocalMap();
    const storage = await openOrThrow({ name: newName(), outside });
    opened.push(storage);
    outside.isFull = true;
    expect(await storage.write([put('a')], AT)).toMatchObject({ ok: true });
  });
});

describe('a write that breaks off', () => {
  test('at any of its steps leaves all as it was', async ({ task }) => {
    let tries = 0;
    let lost = 0;
    for (let step = 1; step <= 6; step++) {
      const name = newName();
      const storage = await open(name);
      await storage.write([put('a')], AT);
      const spy = failPut(step, 'DataError');
      const result = await storage.write([put('a', 1), put('b'), put('c')], AT, [
        { id: 'settings', value: 1 },
      ]);
      spy.mockRestore();
      // Three rows, the state before, the settings and the count make six puts.
      expect(result.ok).toBe(false);
      const after = await storage.load();
      expect(after.ok && after.value).toMatchObject({ rows: { recipes: [{ id: 'a', rev: 1 }] }, loss: null });
      expect(after.ok && after.value.notes['settings']).toBeUndefined();
      tries++;
      lost += after.ok ? 1 - after.value.rows.recipes.length : 1;
    }
    recordFault({ task }, { fault: 'an import or save that breaks off', tries, lost, goal: 0 });
  });
});

test('where the browser has no database at all, opening says so', async () => {
  const real = globalThis.indexedDB;
  Reflect.deleteProperty(globalThis, 'indexedDB');
  try {
    expect(await openDexie({ name: newName(), outside: null })).toMatchObject({
      ok: false,
      fault: { kind: 'absent' },
    });
  } finally {
    globalThis.indexedDB = real;
  }
});
