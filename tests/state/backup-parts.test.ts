import { expect, test } from 'vitest';
import { readWorkbook } from '../../shared/read-workbook';
import { TABLES } from '../../shared/tables';
import { FILE_ROWS } from '../../shared/workbook';
import { type BackupPart, backupParts, partName } from '../../src/state/keeping/backup-parts';
import { dayOf } from '../../src/state/keeping/day-of';
import { shelfOf } from '../../src/state/shelf';
import { recordFault } from '../setup/fault-record';
import { eventRow, paperRow, photoRow, recipeRow, supplyRow, toolRow } from '../storage/sample-rows';
import { openTab, World } from './open-tab';

/** A picture's bytes: nothing that text could be mistaken for, and every value of a byte. */
const bytes = (seed: number, length: number) =>
  Uint8Array.from({ length }, (_, at) => (at * 131 + seed * 17 + (at >> 8)) & 255);
const base64 = (data: Uint8Array) => Buffer.from(data).toString('base64');

const PHOTOS = [1, 2, 3, 4, 5].map((n) => photoRow(`p${n}`, { jpeg: base64(bytes(n, 9000 + n)) }));
const ROWS = {
  recipes: [recipeRow('a', { name: 'Schnee, Ω und 雪' })],
  events: [eventRow('b')],
  papers: [paperRow('c')],
  supplies: [supplyRow('d')],
  tools: [toolRow('e')],
  photos: PHOTOS,
};
const SHELF = shelfOf(ROWS);

const partsOf = async (...given: Parameters<typeof backupParts>) => {
  const written = await backupParts(...given);
  if (!written.ok) throw new Error(written.refusals[0]?.code);
  return written.parts;
};

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
  const parts = await partsOf(ROWS);
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
  const parts = await partsOf(ROWS, { bytes: most, rows: FILE_ROWS });
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

test('a box with more photos than five megabytes is let in as a recipe', async () => {
  const photos = Array.from({ length: 9 }, (_, n) =>
    photoRow(`p${n}`, { jpeg: base64(new Uint8Array(520_000)) }),
  );
  const text = (await partsOf({ ...noRows, recipes: [recipeRow('a')], photos }))[0]?.text ?? '';
  const asRecipe = text.replace('"kind": "everything"', '"kind": "recipe"');
  expect(asRecipe.length).toBeGreaterThan(5 * 1_048_576);
  expect(readWorkbook(asRecipe).ok).toBe(true);
});

const noRows = { recipes: [], events: [], papers: [], supplies: [], tools: [], photos: [] };

/** Rows that do not come back out of a backup of them. */
async function notInBackup(rows: Parameters<typeof backupParts>[0]) {
  const written = await backupParts(rows);
  const texts = written.ok ? written.parts.map(({ text }) => new TextEncoder().encode(text)) : [];
  const back = new Set(
    texts.flatMap((text) => {
      const reading = readWorkbook(text);
      return reading.ok
        ? TABLES.flatMap((table) => reading.file[table].map(({ id }) => `${table}/${id}`))
        : [];
    }),
  );
  return TABLES.flatMap((table) => rows[table].filter(({ id }) => !back.has(`${table}/${id}`))).length;
}

const many = <Row>(count: number, make: (id: string) => Row) =>
  Array.from({ length: count }, (_, n) => make(`r${n}`));

test('a backup larger than one file is read is written in several', { timeout: 60_000 }, async (context) => {
  const drawings = many(26, (id) => recipeRow(id, { styleId: 'own-net', ownNet: `"${'x'.repeat(950_000)}` }));
  const lost = await notInBackup({ ...noRows, recipes: drawings });
  recordFault(context, { fault: 'a backup of more than one file can hold', tries: 26, lost, goal: 0 });
});

test('so is one of more rows than a file may list', { timeout: 60_000 }, async (context) => {
  const rows = {
    ...noRows,
    recipes: many(5002, recipeRow),
    papers: many(1002, paperRow),
    tools: many(102, toolRow),
    events: many(5001, eventRow),
  };
  const lost = await notInBackup(rows);
  recordFault(context, { fault: 'a backup of more than one file can hold', tries: 11_107, lost, goal: 0 });
});

test('files say their day, and which of how many they are', () => {
  expect(dayOf(new Date(2026, 0, 5, 23, 59).getTime())).toBe('2026-01-05');
  expect(partName('2026-01-05', { number: 1, of: 1 })).toBe('crease-and-count-2026-01-05');
  expect(partName('2026-01-05', { number: 2, of: 3 })).toBe('crease-and-count-2026-01-05-2-of-3');
});
