import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { perPiece, printMoney, shareOut } from '../../../src/core/plan/buying/money';
import { SEED } from '../../seed';

describe('money in whole minor units', () => {
  it('shares out so that the shares add up, whatever the weights', () => {
    const weights = fc.array(fc.nat({ max: 1_000_000 }), { minLength: 1, maxLength: 8 });
    const check = fc.property(fc.nat({ max: 100_000_000 }), weights, (minor, by) => {
      const shares = shareOut(minor, by);
      const total = by.reduce((sum, weight) => sum + weight, 0);
      expect(shares.reduce((sum, share) => sum + share, 0)).toBe(total === 0 ? 0 : minor);
      shares.forEach((share, i) => {
        if (total > 0) expect(Math.abs(share - (minor * by[i]!) / total)).toBeLessThan(1 + 1e-6);
      });
    });
    fc.assert(check, { seed: SEED });
  });

  it('gives the odd cent to the largest remainder', () => {
    expect(shareOut(100, [1, 1, 1])).toEqual([34, 33, 33]);
    expect(shareOut(100, [1, 2])).toEqual([33, 67]);
  });

  it('rounds a price a piece half up', () => {
    expect([perPiece(1600, 40), perPiece(1, 2), perPiece(1, 3), perPiece(2, 3)]).toEqual([40, 1, 0, 1]);
  });

  it('prints the decimals its currency has', () => {
    expect(printMoney(1250, 'USD', 'en-US')).toBe('$12.50');
    expect(printMoney(1250, 'JPY', 'en-US')).toBe('¥1,250');
  });
});
