import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addSpareKits, addSpares, addSpoilage } from '../../../src/core/plan/event/spares';
import { SEED } from '../../seed';

describe('spares', () => {
  // derived from the common-practice rule N + ceil(N × percent / 100)
  it.each([
    [12, 10, 14],
    [24, 10, 27],
    [40, 10, 44],
    [60, 10, 66],
    [100, 10, 110], // in decimals 100 × 1.1 rounds up to 111
    [12, 5, 13],
    [24, 5, 26],
    [40, 5, 42],
    [60, 5, 63],
    [100, 5, 105],
  ])('%i and %i percent of spares makes %i', (ordered, percent, making) => {
    expect(addSpares(ordered, { percent, atLeast: 1 })).toMatchObject({
      ordered,
      spares: making - ordered,
      making,
    });
  });

  it('never makes fewer spares than asked for at least', () => {
    expect(addSpares(8, { percent: 10, atLeast: 3 }).making).toBe(11);
    expect(addSpares(8, { percent: 0, atLeast: 0 }).making).toBe(8);
  });

  it('is the smallest whole number that covers the percentage, at any size', () => {
    const check = fc.property(
      fc.integer({ min: 1, max: 100_000 }),
      fc.integer({ min: 0, max: 100 }),
      (n, percent) => {
        const { spares } = addSpares(n, { percent, atLeast: 0 });
        expect(spares * 100).toBeGreaterThanOrEqual(n * percent);
        expect((spares - 1) * 100).toBeLessThan(n * percent);
      },
    );
    fc.assert(check, { seed: SEED });
  });

  it('compounds what each operation spoils: 40 through 3, 2 and 3 % needs 44', () => {
    expect(addSpoilage(40, [3, 2, 3])).toBe(44); // 40 / (0.97 × 0.98 × 0.97) = 43.38
    expect(addSpoilage(40, [])).toBe(40);
    expect(addSpoilage(90, [10])).toBe(100);
  });

  it('takes the largest of the percentage, the least number, and what the acts spoil', () => {
    const byAct = [
      { act: 'cut', percent: 3 },
      { act: 'score', percent: 2 },
      { act: 'fold', percent: 3 },
    ] as const;
    expect(addSpares(40, { percent: 5, atLeast: 1, byAct: [...byAct] }).spares).toBe(4);
    expect(addSpares(40, { percent: 20, atLeast: 1, byAct: [...byAct] }).spares).toBe(8);
  });

  it('adds pieces to practise on beyond the spares', () => {
    expect(addSpares(40, { percent: 10, atLeast: 1, practice: 3 })).toMatchObject({
      spares: 4,
      practice: 3,
      making: 47,
    });
  });

  it('makes spare kits whole: 12 kits of 3 boxes at 10 % are 14 kits, 42 boxes', () => {
    expect(addSpareKits(12, 3, { percent: 10, atLeast: 1 })).toEqual({
      ordered: 36,
      spares: 6,
      practice: 0,
      making: 42,
      perKit: 3,
    });
  });
});

describe('spares by the share that closes', () => {
  const RULE = { percent: 10, atLeast: 0 };

  // binom.sf of SciPy 1.17.1: enough of 44 at 96 in 97.0 of 100 batches, of 43 in 90.8; at half the percentage stands
  it.each([
    [100, 40],
    [99, 42],
    [96, 44],
    [94, 46],
    [51, 93],
    [50, 44],
    [0, 44],
  ])('%i of 100 close: 40 needed takes %i', (closes, making) => {
    expect(addSpares(40, RULE, closes).making).toBe(making);
  });

  it('never makes fewer than the minimum, nor than the acts spoil', () => {
    expect(addSpares(40, { ...RULE, atLeast: 5 }, 96).spares).toBe(5);
    // 40 ÷ .9 = 44.4
    expect(addSpares(40, { ...RULE, byAct: [{ act: 'cut', percent: 10 }] }, 96).spares).toBe(5);
  });

  it('makes spare kits whole: 12 kits of 3 boxes, 90 of 100 close, are 15 kits', () => {
    // 36 of 44 close in 97.2 of 100 batches, of 43 in 93.9 (SciPy): 8 boxes are 3 kits
    expect(addSpareKits(12, 3, RULE, 90)).toMatchObject({ ordered: 36, spares: 9, making: 45 });
  });

  // exact, in whole numbers of as many digits as it takes: n boxes, closes^k × (100 − closes)^(n − k) over 100^n, ways by Pascal's rule
  const ways = (n: number): bigint[] =>
    Array.from({ length: n }).reduce<bigint[]>(
      (row) => [...row, 0n].map((way, k) => way + (row[k - 1] ?? 0n)),
      [1n],
    );
  const isEnough = (n: number, ordered: number, closes: number): boolean => {
    const part = (way: bigint, k: number) =>
      k < ordered ? 0n : way * BigInt(closes) ** BigInt(k) * BigInt(100 - closes) ** BigInt(n - k);
    const good = ways(n).reduce((sum, way, k) => sum + part(way, k), 0n);
    return good * 100n >= 95n * 100n ** BigInt(n);
  };

  it('is the fewest of which enough close in 95 of 100 batches', () => {
    const check = fc.property(
      fc.integer({ min: 1, max: 60 }),
      fc.integer({ min: 51, max: 99 }),
      (n, closes) => {
        const { making } = addSpares(n, RULE, closes);
        expect(isEnough(making, n, closes)).toBe(true);
        expect(making === n || !isEnough(making - 1, n, closes)).toBe(true);
      },
    );
    fc.assert(check, { seed: SEED });
  });

  // textbook tables of the cumulative binomial, from memory: at n = 20, p = .95 more than 17 in 92.5 of 100, more than 16 in 98.4;
  // at n = 10, p = .9 more than 7 in 93.0, more than 6 in 98.7
  it.each([
    [18, 95, 21],
    [17, 95, 20],
    [8, 90, 11],
    [7, 90, 10],
  ])('%i needed at %i of 100 take %i, as published tables say', (ordered, closes, making) => {
    expect(addSpares(ordered, RULE, closes).making).toBe(making);
  });

  it('counts thousands: of 1040 at 97 at least 1000 close in 95.0 of 100 batches, of 1039 in 93.1 (SciPy 1.17.1)', () => {
    expect(addSpares(1000, RULE, 97).making).toBe(1040);
  });
});
