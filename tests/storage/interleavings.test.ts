import { expect, test } from 'vitest';
import type { WorkbookStorage } from '../../src/storage/port';
import { newDexiePlace } from './dexie-place';
import { readOne } from './read-one';
import { recipeRow } from './sample-rows';

const WORDS = 100;

/** Adds its words to one recipe, reading again whenever somebody else was there first. Gives how often that was. */
async function jot(storage: WorkbookStorage, tab: string): Promise<number> {
  let met = 0;
  for (let word = 0; word < WORDS; ) {
    const read = await readOne(storage, 'recipes', 'a');
    if (typeof read === 'string' || !('notes' in read)) throw new Error('not read');
    const row = recipeRow('a', { notes: `${read.notes} ${tab}${word};` });
    const change = { table: 'recipes', id: 'a', row, deleted: false, basedOn: read.rev } as const;
    const written = await storage.write([change], '2026-01-17T09:00:00.000Z');
    if (!written.ok) throw new Error(written.fault.detail);
    if (written.value.outcome === 'kept') word++;
    else met++;
  }
  return met;
}

test('two tabs that write to one recipe as fast as they can lose no word in the browser database', async () => {
  const place = newDexiePlace();
  const [one, two] = [await place.open(), await place.open()];
  await one.write([{ table: 'recipes', id: 'a', row: recipeRow('a'), deleted: false, basedOn: null }], '');
  const [met, alsoMet] = await Promise.all([jot(one, 'x'), jot(two, 'y')]);
  const read = await readOne(one, 'recipes', 'a');
  const notes = typeof read !== 'string' && 'notes' in read ? read.notes : '';
  for (const tab of ['x', 'y'])
    for (let word = 0; word < WORDS; word++) expect(notes).toContain(` ${tab}${word};`);
  // They did get in each other's way, or this would have shown nothing.
  expect(met + alsoMet).toBeGreaterThan(10);
  one.close();
  two.close();
});
