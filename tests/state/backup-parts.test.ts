import { expect, test } from 'vitest';
import { readWorkbook } from '../../shared/read-workbook';
import { type BackupPart, backupParts, dayOf, partName } from '../../src/state/keeping/backup-parts';
import { shelfOf } from '../../src/state/shelf';
import { eventRow, paperRow, photoRow, recipeRow, supplyRow, toolRow } from '../storage/sample-rows';
import { openTab, World } from './open-tab';

/** A picture's bytes: nothing that text could be mistaken for, and every value of a byte. */
const bytes = (seed: number, length: number) =>
  Uint8Array.from({ length }, (_, at) => (at * 131 + seed * 17 + (at >> 8)) & 255);
const base64 = (data: Uint8Array) => Buffer.from(data).toString('base64');

const PHOTOS = [1, 2, 3, 4, 5].map((n) => photoRow(`p${n}`, { jpeg: base64(bytes(n, 9000 + n)) }));
const SHELF = shelfOf({
  recipes: [recipeRow('a', { name: 'Schnee, Ω und 雪' })],
  events: [eventRow('b')],
  papers: [paperRow('c')],
  supplies: [supplyRow('d')],
  tools: [toolRow('e')],
  photos: PHOTOS,
});

const readAll = (parts: readonly BackupPart[]) =>
  parts.map(({ text }) => {
    const reading = readWorkbook(text);
    if (!reading.ok) throw new Error(reading.refusals[0]?.code);
    return reading.file;
  });

/** Reads the files one after the other into an empty workbook. */
async function restore(parts: readonly BackupPart[]) {
  const store = await openTab(new World());
  for (const file of readAll(parts)) {
    const { planImport, importPlanned } = store.getState();
    importPlanned(planImport(file), 'Take it in');
  }
  return store.getState().rows;
}

test('a backup is one file, and brings every photo back to the byte', async () => {
  const parts = backupParts(SHELF);
  expect(parts).toHaveLength(1);
  const rows = await restore(parts);
  for (const table of Object.keys(SHELF) as (keyof typeof SHELF)[])
    expect([...rows[table].values()].map((row) => ({ ...row, changedAt: '' }))).toEqual(
      [...SHELF[table].values()].map((row) => ({ ...row, changedAt: '' })),
    );
  for (const [at, photo] of [...rows.photos.values()].entries())
    expect(Uint8Array.from(Buffer.from(photo.jpeg, 'base64'))).toEqual(bytes(at + 1, 9000 + at + 1));
});

test('where one file would be too large to be read again, there are several, each small enough, with nothing left out', async () => {
  const most = 40_000;
  const parts = backupParts(SHELF, most);
  expect(parts.length).toBeGreaterThan(1);
  for (const { text } of parts) expect(new TextEncoder().encode(text).length).toBeLessThanOrEqual(most);
  const rows = await restore(parts);
  expect([...rows.photos.values()].map(({ jpeg }) => jpeg)).toEqual(PHOTOS.map(({ jpeg }) => jpeg));
  expect([...rows.recipes.keys()]).toEqual(['a']);
  // In whatever order she reads them.
  const backwards = await restore(parts.toReversed());
  expect(backwards.photos.size).toBe(5);
  expect(backwards.recipes.size).toBe(1);
});

test('a box with more photos than five megabytes is let in as a recipe', () => {
  const photos = Array.from({ length: 9 }, (_, n) =>
    photoRow(`p${n}`, { jpeg: base64(new Uint8Array(520_000)) }),
  );
  const text = backupParts(shelfOf({ ...noRows, recipes: [recipeRow('a')], photos }))[0]?.text ?? '';
  const asRecipe = text.replace('"kind": "everything"', '"kind": "recipe"');
  expect(asRecipe.length).toBeGreaterThan(5 * 1_048_576);
  expect(readWorkbook(asRecipe).ok).toBe(true);
});

const noRows = { recipes: [], events: [], papers: [], supplies: [], tools: [], photos: [] };

test('files say their day, and which of how many they are', () => {
  expect(dayOf(new Date(2026, 0, 5, 23, 59).getTime())).toBe('2026-01-05');
  expect(partName('2026-01-05', { number: 1, of: 1 })).toBe('crease-and-count-2026-01-05');
  expect(partName('2026-01-05', { number: 2, of: 3 })).toBe('crease-and-count-2026-01-05-2-of-3');
});
