import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readRow, sortRows, TABLES } from '../../shared/tables';
import { MemoryDisk, openMemory } from '../../src/storage/memory';
import { SEED } from '../seed';
import { recordFault } from '../setup/fault-record';
import { anyWorkbook } from '../shared/any-workbook';

const TRIES = 2000;

/** A row with one thing wrong, or right: a field gone, of another kind, or of no name we know. */
const anyDamage = fc.record({
  how: fc.constantFrom('drop', 'replace', 'add', 'nest'),
  field: fc.nat(),
  value: fc.jsonValue({ maxDepth: 2 }),
});

function damage(
  row: object,
  { how, field, value }: { how: string; field: number; value: unknown },
): Record<string, unknown> {
  const fields: Record<string, unknown> = { ...row };
  const names = Object.keys(fields).filter((name) => name !== 'id');
  const name = names[field % names.length] ?? 'name';
  if (how === 'drop') Reflect.deleteProperty(fields, name);
  else if (how === 'add') fields['glitter'] = value;
  else fields[name] = how === 'nest' ? { [name]: fields[name] } : value;
  return fields;
}

test(`of ${TRIES} damaged rows each is read or set aside whole; none is deleted, none stops the others`, {
  timeout: 60_000,
}, async ({ task }) => {
  const seen = { read: 0, setAside: 0, stored: 0 };
  const files = fc.sample(anyWorkbook, { seed: SEED, numRuns: TRIES / 2 });
  const damages = fc.sample(anyDamage, { seed: SEED, numRuns: TRIES });
  let number = 0;
  for (const file of files) {
    const disk = new MemoryDisk();
    for (const table of TABLES)
      for (const row of file[table]) {
        const how = damages[number++ % TRIES];
        disk.contents[table].set(row.id, how ? damage(row, how) : row);
      }
    const before = structuredClone(disk.contents);
    const loaded = await openMemory(disk).load();
    if (!loaded.ok) throw new Error(loaded.fault.detail);
    const { rows, quarantined } = loaded.value;
    const readable = TABLES.reduce((sum, table) => sum + rows[table].length, 0);
    const stored = TABLES.reduce((sum, table) => sum + disk.contents[table].size, 0);
    expect(readable + quarantined.length).toBe(stored);
    for (const { table, id, raw, refusals } of quarantined) {
      expect(raw).toEqual(before[table].get(id));
      expect(refusals.length).toBeGreaterThan(0);
    }
    expect(disk.contents).toEqual(before);
    seen.read += readable;
    seen.setAside += quarantined.length;
    seen.stored += stored;
  }
  const { stored: tries, read, setAside } = seen;
  recordFault(
    { task },
    { fault: 'a row that cannot be read', tries, lost: tries - read - setAside, goal: 0 },
  );
  // Damage that hurts and damage that does not were both among them.
  expect(seen.setAside).toBeGreaterThan(TRIES / 4);
  expect(seen.read).toBeGreaterThan(TRIES / 50);
  expect(seen.read + seen.setAside).toBeGreaterThanOrEqual(TRIES);
});

test.each([null, 3, 'text', [], {}, { id: 7 }])(
  'a row that is not even a row (%j) is set aside too',
  (raw) => {
    expect(readRow('recipes', raw).ok).toBe(false);
    expect(sortRows({ recipes: [raw] }).quarantined).toHaveLength(1);
  },
);
