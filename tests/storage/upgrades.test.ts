import 'fake-indexeddb/auto';
import { afterEach, describe, expect, test } from 'vitest';
import { DATABASE_VERSIONS, type DatabaseVersion } from '../../src/storage/database-versions';
import { openDexie } from '../../src/storage/dexie';
import type { WorkbookStorage } from '../../src/storage/port';
import { recordFault } from '../setup/fault-record';
import { behindTheBack, newName, openOrThrow } from './dexie-place';
import { LocalMap } from './local-map';
import { eventRow, recipeRow } from './sample-rows';

const AT = '2026-01-17T09:00:00.000Z';
const opened: WorkbookStorage[] = [];
afterEach(() => {
  for (const storage of opened.splice(0)) storage.close();
});
const open = async (name: string, versions: readonly DatabaseVersion[] = DATABASE_VERSIONS) => {
  const storage = await openOrThrow({ name, outside: new LocalMap(), versions });
  opened.push(storage);
  return storage;
};
const rename = (word: string) => (tx: Parameters<NonNullable<DatabaseVersion['upgrade']>>[0]) =>
  tx
    .table('recipes')
    .toCollection()
    .modify((row: { name: string }) => {
      row.name += word;
    });

const NEWEST = DATABASE_VERSIONS.length;
/** Two versions that might come one day; each moves every recipe, so that a step left out or done twice shows. */
const VERSIONS: readonly DatabaseVersion[] = [
  ...DATABASE_VERSIONS,
  { version: NEWEST + 1, stores: { recipes: 'id, name' }, upgrade: rename(' two') },
  { version: NEWEST + 2, stores: { ribbons: 'id' }, upgrade: rename(' three') },
];

async function fill(name: string, versions = DATABASE_VERSIONS) {
  const storage = await open(name, versions);
  await storage.write(
    [
      { table: 'recipes', id: 'a', row: recipeRow('a', { name: 'Snow' }), deleted: false, basedOn: null },
      { table: 'events', id: 'e', row: eventRow('e'), deleted: false, basedOn: null },
    ],
    AT,
  );
  storage.close();
}
const namesIn = async (storage: WorkbookStorage) => {
  const loaded = await storage.load();
  return loaded.ok ? loaded.value.rows.recipes.map(({ name }) => name) : loaded.fault.kind;
};

describe('a newer version of the database', () => {
  test('is reached from every older one, each step done once', async () => {
    const fromOne = newName();
    await fill(fromOne);
    expect(await namesIn(await open(fromOne, VERSIONS))).toEqual(['Snow two three']);

    const fromTwo = newName();
    await fill(fromTwo, VERSIONS.slice(0, NEWEST + 1));
    expect(await namesIn(await open(fromTwo, VERSIONS))).toEqual(['Snow three']);

    const fresh = newName();
    await fill(fresh, VERSIONS);
    expect(await namesIn(await open(fresh, VERSIONS))).toEqual(['Snow']);
  });

  test('keeps every row as it was before among its earlier states', async () => {
    const name = newName();
    await fill(name);
    const storage = await open(name, VERSIONS);
    const recipes = await storage.listSnapshots('recipes', 'a');
    expect(recipes.ok && recipes.value.map(({ row }) => row)).toEqual([
      recipeRow('a', { name: 'Snow two', rev: 1 }),
    ]);
    expect(recipes.ok && recipes.value.map(({ before }) => before)).toEqual(['upgrade']);
    const events = await storage.listSnapshots('events', 'e');
    expect(events.ok && events.value).toHaveLength(1);
  });

  test('is not called a loss', async () => {
    const name = newName();
    await fill(name);
    const loaded = await (await open(name, VERSIONS)).load();
    expect(loaded.ok && loaded.value.loss).toBeNull();
  });

  test.for([NEWEST, NEWEST + 1])(
    'whose step %i breaks off leaves the old database as it was, to look at and to export',
    async (step, { task }) => {
      const name = newName();
      await fill(name);
      const broken = VERSIONS.map((version, index) =>
        index === step
          ? {
              ...version,
              upgrade: async (tx: Parameters<NonNullable<DatabaseVersion['upgrade']>>[0]) => {
                await rename(' half')(tx);
                throw new Error('as planned');
              },
            }
          : version,
      );
      const result = await openDexie({ name, outside: null, versions: broken });
      expect(result).toMatchObject({
        ok: false,
        fault: {
          kind: 'broken',
          salvaged: { recipes: [{ id: 'a', name: 'Snow', rev: 1 }], events: [{ id: 'e' }] },
        },
      });
      const names = await namesIn(await open(name));
      expect(names).toEqual(['Snow']);
      recordFault({ task }, { fault: 'an upgrade that throws', tries: 1, lost: 1 - names.length, goal: 0 });
      expect(await namesIn(await open(name, VERSIONS))).toEqual(['Snow two three']);
    },
  );

  test('waits for a tab that holds the old one, says so at once, and goes on by itself', async () => {
    const name = newName();
    await fill(name);
    // A tab that does not answer: open in the old version, deaf to the wish of others.
    const holder = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open(name);
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(new Error('not opened'));
    });
    let blocked = false;
    const opening = openDexie({
      name,
      outside: null,
      versions: VERSIONS,
      onBlocked: () => {
        blocked = true;
        holder.close();
      },
    });
    const result = await opening;
    expect(blocked).toBe(true);
    if (!result.ok) throw new Error(result.fault.detail);
    opened.push(result.value);
    expect(await namesIn(result.value)).toEqual(['Snow two three']);
  });
});

test('the rows of a newer database can be looked at by an old app, which leaves it as it is', async () => {
  const name = newName();
  await fill(name, VERSIONS);
  const result = await openDexie({ name, outside: null });
  expect(result).toMatchObject({
    ok: false,
    fault: { kind: 'newer', salvaged: { recipes: [{ name: 'Snow' }], ribbons: [] } },
  });
  expect(await behindTheBack(name, (db) => Promise.resolve(db.verno))).toBe(NEWEST + 2);
});

test('a database put in the place of ours while we stand on it is found out before anything is written to it', async () => {
  const name = newName();
  const storage = await open(name);
  const put = { table: 'recipes', id: 'a', row: recipeRow('a'), deleted: false } as const;
  await storage.write([{ ...put, basedOn: null }], AT);
  await behindTheBack(name, async (db) => {
    for (const table of db.tables) await table.clear();
  });
  expect(await storage.write([{ ...put, basedOn: 1 }], AT)).toMatchObject({
    ok: false,
    fault: { kind: 'lost' },
  });
  expect(await behindTheBack(name, (db) => db.table('recipes').count())).toBe(0);
});
