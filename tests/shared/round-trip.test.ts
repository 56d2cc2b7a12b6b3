import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readWorkbook } from '../../shared/read-workbook';
import { inOrder, writeWorkbook } from '../../shared/write-workbook';
import { SEED } from '../seed';
import { anyWorkbook } from './any-workbook';

describe('a workbook in a file', () => {
  test('comes back as it was written, from bytes', { timeout: 120_000 }, () => {
    fc.assert(
      fc.property(anyWorkbook, (file) => {
        const reading = readWorkbook(new TextEncoder().encode(writeWorkbook(file)));
        // Through JSON once, since the generator's objects have no prototype.
        const written: unknown = JSON.parse(JSON.stringify(inOrder(file)));
        return reading.ok && isDeepStrictEqual(reading.file, written);
      }),
      { seed: SEED, numRuns: 5000 },
    );
  });

  test('gives the same text for the same content, however its rows and sizes are ordered', () => {
    fc.assert(
      fc.property(anyWorkbook, (file) => {
        const turned = {
          ...file,
          recipes: file.recipes.toReversed().map((recipe) => ({
            ...recipe,
            sizesMm: Object.fromEntries(Object.entries(recipe.sizesMm).reverse()),
          })),
          papers: file.papers.toReversed(),
        };
        expect(writeWorkbook(turned)).toBe(writeWorkbook(file));
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  test('reads minus zero as zero, wherever a zero may stand', () => {
    fc.assert(
      fc.property(anyWorkbook, (file) => {
        const text = writeWorkbook(file);
        expect(readWorkbook(text.replace(/: 0(,?)$/gm, ': -0$1'))).toEqual(readWorkbook(text));
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  test('opens with a byte order mark in front, as some editors leave one', () => {
    const [file] = fc.sample(anyWorkbook, { seed: SEED, numRuns: 1 });
    if (!file) throw new Error('no sample');
    const text = `\uFEFF${writeWorkbook(file)}`;
    expect(readWorkbook(text).ok).toBe(true);
    expect(readWorkbook(new TextEncoder().encode(text)).ok).toBe(true);
  });

  test('is not written at all if it could not be read back', () => {
    const [file] = fc.sample(anyWorkbook, { seed: SEED, numRuns: 1 });
    if (!file) throw new Error('no sample');
    expect(() => writeWorkbook({ ...file, schema: 4 as 3 })).toThrow();
  });
});
