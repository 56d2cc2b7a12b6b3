import { describe, expect, it } from 'vitest';
import { type EasyRow, isTrade, threeRows } from '../../../src/core/fit';

const row = (roughness: number, excess: number, sheetsPerBox: number | null): EasyRow => ({
  sizes: {},
  options: {},
  marks: [],
  byTemplate: 0,
  blanks: [],
  inside: [1, 1, 1] as never,
  roughness,
  settings: 0,
  edges: 0,
  excess,
  sheetsPerBox,
});

describe('the rows shown first', () => {
  const [easy, snug, sparing] = [row(2, 0.5, 1), row(9, 0.1, 1), row(5, 0.4, 0.5)];
  it('are the easiest, the snuggest and the one of least paper, each once', () => {
    expect(threeRows([easy, sparing, snug])).toEqual([
      { row: easy, merits: ['easiest'] },
      { row: snug, merits: ['snuggest'] },
      { row: sparing, merits: ['least-paper'] },
    ]);
  });
  it('are one row where one is all of it, and the easier of two alike', () => {
    expect(threeRows([easy])).toEqual([{ row: easy, merits: ['easiest', 'snuggest', 'least-paper'] }]);
    expect(threeRows([easy, row(3, 0.5, 1)])).toHaveLength(1);
    expect(threeRows([])).toEqual([]);
  });
  it('rank a row that fits no sheet last for paper', () => {
    expect(threeRows([row(1, 1, null), sparing])[1]?.merits).toContain('least-paper');
  });
});

describe('something to trade', () => {
  it('is there only where easier marks take more paper', () => {
    expect(isTrade([row(2, 0, 1), row(5, 0, 0.5)])).toBe(true);
    expect(isTrade([row(2, 0, 0.5), row(5, 0, 0.5)])).toBe(false);
    expect(isTrade([row(2, 0, 0.5), row(5, 0, 1)])).toBe(false);
    expect(isTrade([])).toBe(false);
  });
});
