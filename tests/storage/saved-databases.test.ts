import 'fake-indexeddb/auto';
import { readdirSync, readFileSync } from 'node:fs';
import { Dexie } from 'dexie';
import { describe, expect, test } from 'vitest';
import { DATABASE_VERSIONS, declareVersions } from '../../src/storage/database-versions';
import { newName, openOrThrow } from './dexie-place';
import { LocalMap } from './local-map';
import { recipeRow } from './sample-rows';

const FOLDER = 'tests/fixtures/saved/';
const saved = readdirSync(FOLDER).filter((name) => /^database-v\d+\.json$/.test(name));

interface SavedDatabase {
  readonly version: number;
  readonly stores: Readonly<Record<string, readonly { id: string }[]>>;
}

describe('a database left behind by an earlier version', () => {
  test('is kept for every version there ever was', () => {
    expect(saved).toEqual(DATABASE_VERSIONS.map(({ version }) => `database-v${version}.json`));
  });

  test.each(saved)('opens today, with nothing lost: %s', async (file) => {
    const { version, stores } = JSON.parse(readFileSync(FOLDER + file, 'utf8')) as SavedDatabase;
    const name = newName();
    const then = new Dexie(name);
    declareVersions(
      then,
      DATABASE_VERSIONS.filter((declared) => declared.version <= version),
    );
    await then.open();
    for (const [store, rows] of Object.entries(stores)) await then.table(store).bulkAdd(rows);
    then.close();

    const storage = await openOrThrow({ name, outside: new LocalMap() });
    const loaded = await storage.load();
    if (!loaded.ok) throw new Error(loaded.fault.detail);
    expect(loaded.value).toMatchObject({ quarantined: [], loss: null, notes: { settings: { unit: 'mm' } } });
    expect(loaded.value.rows.recipes).toMatchObject([{ id: 'seed-box', name: 'Seed box', rev: 3 }]);
    expect(loaded.value.rows.papers).toHaveLength(1);
    expect(await storage.listBin()).toMatchObject({ ok: true, value: [{ id: 'recipes/old' }] });
    expect(await storage.listSnapshots('recipes', 'seed-box')).toMatchObject({
      ok: true,
      value: [{ rev: 2 }],
    });
    storage.close();
  });
});

test('a copy noted with the saves since is noted by the count of writes it holds, and no row is copied for it', async () => {
  const name = newName();
  const then = new Dexie(name);
  declareVersions(then, DATABASE_VERSIONS.slice(0, 2));
  await then.open();
  const backup = { at: '2026-11-26T09:00:00.000Z', savesSince: 3 };
  await then.table('notes').bulkAdd([
    { id: 'backup', value: backup },
    { id: 'census', value: { generation: 12, rows: 1, revSum: 1 } },
  ]);
  await then.table('recipes').add(recipeRow('a', { rev: 1 }));
  then.close();
  const storage = await openOrThrow({ name, outside: new LocalMap() });
  const loaded = await storage.load();
  if (!loaded.ok) throw new Error(loaded.fault.detail);
  expect(loaded.value.notes['backup']).toEqual({ at: backup.at, generation: 9 });
  expect(loaded.value).toMatchObject({ generation: 12, loss: null });
  expect(await storage.listAllSnapshots()).toEqual({ ok: true, value: [] });
  storage.close();
});
