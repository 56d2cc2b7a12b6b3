import 'fake-indexeddb/auto';
import { readdirSync, readFileSync } from 'node:fs';
import { Dexie } from 'dexie';
import { describe, expect, test } from 'vitest';
import { DATABASE_VERSIONS, declareVersions } from '../../src/storage/database-versions';
import { newName, openOrThrow } from './dexie-place';
import { LocalMap } from './local-map';

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
