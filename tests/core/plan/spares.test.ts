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

  // by hand: 40 ÷ .96 = 41.67; 40 ÷ .5 is 80, but at half the percentage stands; 40 ÷ .51 = 78.43
  it.each([
    [100, 40],
    [99, 41],
    [96, 42],
    [94, 43],
    [51, 79],
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

  it('makes spare kits whole: 12 kits of 3 boxes, 90 of 100 close, are 14 kits', () => {
    expect(addSpareKits(12, 3, RULE, 90)).toMatchObject({ ordered: 36, spares: 6, making: 42 });
  });

  it('is the fewest of which, on average, enough close', () => {
    const check = fc.property(
      fc.integer({ min: 1, max: 100_000 }),
      fc.integer({ min: 51, max: 100 }),
      (n, closes) => {
        const { making } = addSpares(n, RULE, closes);
        expect(making * closes).toBeGreaterThanOrEqual(n * 100);
        expect((making - 1) * closes).toBeLessThan(n * 100);
      },
    );
    fc.assert(check, { seed: SEED });
  });
});
