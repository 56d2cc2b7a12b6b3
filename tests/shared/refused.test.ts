import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { FILE_LIMITS, readWorkbook } from '../../shared/read-workbook';
import { REFUSAL_CODES, type Refusal, type RefusalCode } from '../../src/core/rows/refusals';

const FOLDER = 'tests/fixtures/refused/';
const files = readdirSync(FOLDER);
const codeOf = (file: string) => file.replace(/\.(json|txt)$/, '');

/** A kilobyte stands for the megabytes of the real limit, so that the fixture stays readable. */
const SMALL_LIMITS = { ...FILE_LIMITS, backupBytes: 1024 };

/** Where the fault is in each file, what stands there, and what should; written down from the files, not from the reader. */
const FAULTS: Readonly<Record<Exclude<RefusalCode, 'damaged'>, Omit<Refusal, 'code'>>> = {
  'too-large': { path: '', found: '1683 bytes', expected: 'at most 1024 bytes' },
  'not-utf8': { path: '', found: 'bytes that are not text', expected: 'text in UTF-8' },
  'too-deep': { path: '', found: 'more than 64 levels', expected: 'at most 64 levels' },
  'not-json': {
    path: '',
    found: '"{\\n  \\"format\\": \\"crease-and-count\\",\\n  \\"sch"',
    expected: 'a saved workbook',
  },
  'repeated-key': { path: 'name', found: '“name” twice in one place', expected: 'each name once' },
  'not-a-workbook': { path: 'format', found: '"another-program"', expected: 'crease-and-count' },
  'newer-schema': { path: 'schema', found: '1000', expected: 'at most 3' },
  'missing-field': { path: 'recipes[0].grain', found: 'nothing', expected: 'a value' },
  'unknown-field': { path: 'recipes[0].glitter', found: 'glitter', expected: 'a field of this format' },
  'wrong-type': { path: 'recipes[0].caliperUm', found: '"300"', expected: 'number' },
  'not-whole': { path: 'recipes[0].caliperUm', found: '300.5', expected: 'a whole number' },
  'too-small': { path: 'recipes[0].caliperUm', found: '3', expected: 'at least 50' },
  'too-big': { path: 'recipes[0].sizesMm.width', found: '2540', expected: 'at most 2000' },
  'off-tick': { path: 'recipes[0].sizesMm.width', found: '88.9001', expected: 'a whole number of 1/320 mm' },
  'not-a-choice': { path: 'recipes[0].grain', found: '"sideways"', expected: 'upright, around, free' },
  'bad-spelling': { path: 'recipes[0].createdAt', found: '"last Tuesday"', expected: 'datetime' },
  empty: { path: 'recipes[0].name', found: '""', expected: 'at least one letter' },
  'too-long': {
    path: 'recipes[0].name',
    found: '"Snow tray Snow tray Snow tray Snow tray Snow tray Snow tray',
    expected: 'at most 200 letters',
  },
  'too-many': { path: 'recipes[0].dressings', found: 'a list of 21', expected: 'at most 20' },
  'same-id': { path: 'recipes[1].id', found: 'r-1', expected: 'an id used once' },
};

describe('a file that is refused', () => {
  test('every reason has a file of its name, and every file a reason', () => {
    expect(files.map(codeOf).sort()).toEqual(REFUSAL_CODES.filter((code) => code !== 'damaged').sort());
  });

  test.each(files)('%s is refused for that one reason, and handed back as it came', (file) => {
    const code = codeOf(file) as Exclude<RefusalCode, 'damaged'>;
    const original = new Uint8Array(readFileSync(FOLDER + file));
    const untouched = original.slice();
    const reading = readWorkbook(original, code === 'too-large' ? SMALL_LIMITS : FILE_LIMITS);
    expect(reading).toEqual({ ok: false, refusals: [{ code, ...FAULTS[code] }], original });
    expect(original).toEqual(untouched);
  });
});
