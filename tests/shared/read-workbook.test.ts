import { describe, expect, test } from 'vitest';
import { moveToNewest } from '../../shared/migrations';
import { FILE_LIMITS, readWorkbook } from '../../shared/read-workbook';
import { workbookOf, writeWorkbook } from '../../shared/write-workbook';
import { recordFault } from '../setup/fault-record';
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
    expect(codes(fileText().replace('"schema":3', '"schema":3,"__proto__":{"kind":"event"}'))).toEqual([
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

describe('a file far wider than any workbook', () => {
  const many = (value: string) => Array.from({ length: 1_000_000 }, (_, at) => `"s${at}":${value}`).join(',');
  const sizes = (fields: string) =>
    fileText({ kind: 'everything' }).replace(/"sizesMm":\{[^}]*\}/, `"sizesMm":{${fields}}`);
  const list = (key: string, entry: string) =>
    fileText({ kind: 'everything' }).replace(
      `"${key}":[]`,
      `"${key}":[${Array(1_000_000).fill(entry).join(',')}]`,
    );

  test.each([
    ['a million sizes that are none', sizes(many('0')), 'recipes.0.sizesMm'],
    ['a million sizes', sizes(many('5')), 'recipes.0.sizesMm'],
    ['ten megabytes of events', list('events', '{"id":1}'), 'events'],
    ['a million papers', list('papers', '7'), 'papers'],
  ])('%s: refused by name within a second', (_, text, path) => {
    const began = performance.now();
    const reading = readWorkbook(text);
    expect(reading).toMatchObject({ ok: false, refusals: [{ code: 'too-many', path }] });
    expect(performance.now() - began).toBeLessThan(1000);
  });

  test('a hundred sizes are let in, one more is not, and no number of faults is too many to be told of', (context) => {
    const sizesOf = (count: number) =>
      sizes(Array.from({ length: count }, (_, at) => `"s${at}":5`).join(','));
    let lost = 0;
    if (!readWorkbook(sizesOf(100)).ok) lost++;
    const over = readWorkbook(sizesOf(101));
    if (over.ok || over.refusals[0]?.code !== 'too-many' || over.refusals[0].path !== 'recipes[0].sizesMm')
      lost++;
    // Two hundred thousand faults, no list of them longer than a list may be.
    const bad = `{${Array.from({ length: 900 }, (_, at) => `"s${at}":0`).join(',')}}`;
    const row =
      fileText()
        .match(/"recipes":\[(.*?)\],"events"/)?.[1]
        ?.replace(/"sizesMm":\{[^}]*\}/, `"sizesMm":${bad}`) ?? '';
    const text = fileText({ kind: 'everything' }).replace(
      /"recipes":\[.*?\],"events"/,
      `"recipes":[${Array(250).fill(row).join(',')}],"events"`,
    );
    const reading = readWorkbook(text);
    if (reading.ok || reading.refusals[0]?.code !== 'too-many') lost++;
    recordFault(context, { fault: 'a file with a million entries', tries: 3, lost, goal: 0 });
  });
});

test('a name of letters that are never seen is refused; one with a mark that writing needs is not', (context) => {
  const unseen = [
    ' ',
    '\u00A0\u3000',
    '\u200B',
    '\u2060\uFEFF',
    '\u200F\u061C',
    '\u2800',
    '\u3164',
    '\u0301',
  ];
  const taken = unseen.filter(
    (name) => codes(fileText({ recipes: [recipeRow('a', { name })] })).join() !== 'empty',
  );
  recordFault(context, {
    fault: 'a name that nobody can see',
    tries: unseen.length,
    lost: taken.length,
    goal: 0,
  });
  for (const name of ['\u05E2\u200F', 'a\u200B', '\u{1F389}', '\u7BB1', '-'])
    expect(codes(fileText({ recipes: [recipeRow('a', { name })] }))).toEqual([]);
});
