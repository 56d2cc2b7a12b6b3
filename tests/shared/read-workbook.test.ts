import { describe, expect, test } from 'vitest';
import { moveToNewest } from '../../shared/migrations';
import { FILE_LIMITS, readWorkbook } from '../../shared/read-workbook';
import { workbookOf, writeWorkbook } from '../../shared/write-workbook';
import { paperRow, recipeRow } from '../storage/sample-rows';

const codes = (original: string | Uint8Array) => {
  const reading = readWorkbook(original);
  return reading.ok ? [] : reading.refusals.map(({ code }) => code);
};
const fileText = (change: object = {}) =>
  JSON.stringify({ ...workbookOf('recipe', { recipes: [recipeRow('a')] }), ...change });

describe('the gates, in their order', () => {
  test('a file of six megabytes is let in as a backup of everything, and not as a recipe', () => {
    const padding = ' '.repeat(6 * 1_048_576);
    expect(codes(fileText() + padding)).toEqual(['too-large']);
    expect(codes(fileText({ kind: 'everything' }) + padding)).toEqual([]);
    expect(codes(' '.repeat(FILE_LIMITS.backupBytes + 1))).toEqual(['too-large']);
  });

  test('a newer file is refused before anything in it is looked at', () => {
    expect(codes(JSON.stringify({ format: 'crease-and-count', schema: 7, pages: [[]] }))).toEqual([
      'newer-schema',
    ]);
  });

  test.each(['0', '-1', '1.5', '"1"', 'null', '1e400'])('a schema of %s is no schema', (schema) => {
    expect(codes(`{"format":"crease-and-count","schema":${schema}}`)).toEqual(['not-a-workbook']);
  });

  test.each(['', 'null', '[]', '3', '"crease-and-count"', 'NaN', '{"format":"crease-and-count",}'])(
    '%s is not a workbook',
    (text) => expect(codes(text)).toHaveLength(1),
  );

  test('every fault of a file is named, not the first alone', () => {
    const bad = recipeRow('a', { name: '', caliperUm: 1, grain: 'sideways' as 'free' });
    expect(codes(fileText({ recipes: [bad] }))).toEqual(['empty', 'too-small', 'not-a-choice']);
  });

  test('a number too large for a number is no number', () => {
    expect(codes(fileText().replace('"caliperUm":300', '"caliperUm":1e400'))).toEqual(['wrong-type']);
  });

  test('minus zero is kept as zero', () => {
    const file = workbookOf('everything', { papers: [paperRow('p', { onHandSheets: -0 })] });
    const reading = readWorkbook(JSON.stringify(file).replace('"onHandSheets":0', '"onHandSheets":-0'));
    if (!reading.ok) throw new Error('refused');
    expect(Object.is(reading.file.papers[0]?.onHandSheets, 0)).toBe(true);
  });

  test('a key named __proto__ is refused wherever it stands, since validators pass over it', () => {
    expect(codes(fileText().replace('"sizesMm":{', '"sizesMm":{"__proto__":3,'))).toEqual(['repeated-key']);
    expect(codes(fileText().replace('"schema":2', '"schema":2,"__proto__":{"kind":"event"}'))).toEqual([
      'repeated-key',
    ]);
  });

  test('hidden characters in names are taken out on the way in', () => {
    const reading = readWorkbook(fileText({ recipes: [recipeRow('a', { name: 'Snow\u202E\u0000 tray' })] }));
    expect(reading.ok && reading.file.recipes[0]?.name).toBe('Snow tray');
  });
});

describe('older formats', () => {
  const steps = [
    { from: 1, move: (file: object) => ({ ...file, tools: [] }) },
    { from: 2, move: (file: object) => ({ ...file, kind: 'everything' }) },
  ];

  test('are moved step by step, each once, to the newest', () => {
    expect(moveToNewest({ schema: 1 }, 1, steps, 3)).toEqual({ schema: 3, tools: [], kind: 'everything' });
    expect(moveToNewest({ schema: 2 }, 2, steps, 3)).toEqual({ schema: 3, kind: 'everything' });
    expect(moveToNewest({ schema: 3 }, 3, steps, 3)).toEqual({ schema: 3 });
  });

  test('a step that is missing is a slip of ours', () => {
    expect(() => moveToNewest({ schema: 0 }, 0, steps, 3)).toThrow('no way from schema 0');
  });

  test('the file written today is read today', () => {
    expect(codes(writeWorkbook(workbookOf('recipe', { recipes: [recipeRow('a')] })))).toEqual([]);
  });
});
