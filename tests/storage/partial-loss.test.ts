import 'fake-indexeddb/auto';
import type { Dexie } from 'dexie';
import { expect, test } from 'vitest';
import { recordFault } from '../setup/fault-record';
import { behindTheBack, newName, openOrThrow } from './dexie-place';
import { LocalMap } from './local-map';
import { readOne } from './read-one';
import { recipeRow } from './sample-rows';

const TRIES = 20;
const WRITES = 12;

type Contents = Readonly<Record<string, readonly { id: string }[]>>;
const readAll = (name: string) =>
  behindTheBack(name, async (db) => {
    const stores = await Promise.all(
      db.tables.map(async (table) => [table.name, await table.toArray()] as const),
    );
    return Object.fromEntries(stores);
  });
const putBack = (name: string, contents: Contents) =>
  behindTheBack(name, async (db: Dexie) => {
    for (const table of db.tables) {
      await table.clear();
      await table.bulkPut([...(contents[table.name] ?? [])]);
    }
  });

/** Fills a database write by write, puts an earlier state of it back as a cut log leaves one, and starts again: is the loss found? */
async function isFound(lastKept: number): Promise<boolean> {
  const name = newName();
  const outside = new LocalMap();
  const storage = await openOrThrow({ name, outside });
  let kept: Contents = {};
  for (let number = 0; number < WRITES; number++) {
    if (number === lastKept) kept = await readAll(name);
    const id = `r-${number % 7}`;
    const read = await readOne(storage, 'recipes', id);
    const basedOn = typeof read === 'string' ? null : read.rev;
    const row = recipeRow(id, { notes: `${number}` });
    await storage.write([{ table: 'recipes', id, row, deleted: false, basedOn }], '2026-01-17T09:00:00.000Z');
  }
  if (lastKept === WRITES) kept = await readAll(name);
  storage.close();
  await putBack(name, kept);
  const again = await openOrThrow({ name, outside });
  const loaded = await again.load();
  again.close();
  return loaded.ok && loaded.value.loss !== null;
}

test('a database that comes back older than it was is found out, twenty times out of twenty', async ({
  task,
}) => {
  let missed = 0;
  for (let tried = 0; tried < TRIES; tried++) if (!(await isFound(tried % WRITES))) missed++;
  recordFault(
    { task },
    { fault: 'a part of the database lost, and not noticed', tries: TRIES, lost: missed, goal: 0 },
  );
});

test('a database that comes back whole is not called a loss', async () => {
  expect(await isFound(WRITES)).toBe(false);
});
