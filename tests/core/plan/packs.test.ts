import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cheapestPacks, type Pack, type Purchase } from '../../../src/core/plan/packs';
import { SEED } from '../../seed';

/** Price, number of packs and units of the best purchase, by trying every combination. */
function bestByTrying(need: number, packs: readonly Pack[]): readonly [number, number, number] {
  let best: readonly [number, number, number] = [Infinity, Infinity, Infinity];
  const tryFrom = (at: number, price: number, count: number, units: number): void => {
    if (units >= need) {
      const found = [price, count, units] as const;
      const difference =
        found.map((value, i) => value - best[i]!).find((d) => d !== 0 && !Number.isNaN(d)) ?? 0;
      if (difference < 0) best = found;
      return;
    }
    for (let i = at; i < packs.length; i++)
      tryFrom(i, price + packs[i]!.priceMinor, count + 1, units + packs[i]!.units);
  };
  tryFrom(0, 0, 0, 0);
  return best;
}

const summary = (purchase: Purchase): readonly [number, number, number] => [
  purchase.priceMinor,
  purchase.packs.reduce((sum, { count }) => sum + count, 0),
  purchase.units,
];

describe('buying packs', () => {
  it('mixes pack sizes when that is cheaper', () => {
    // 44 sheets: one of 25 and two of 10 (45 sheets, 16.00) beats two of 25 (50 sheets, 18.00)
    const bought = cheapestPacks(44, [
      { units: 10, priceMinor: 350 },
      { units: 25, priceMinor: 900 },
    ]);
    expect(bought).toEqual({
      packs: [
        { pack: { units: 10, priceMinor: 350 }, count: 2 },
        { pack: { units: 25, priceMinor: 900 }, count: 1 },
      ],
      units: 45,
      priceMinor: 1600,
      left: 1,
    });
  });

  it('buys a big pack when it costs less than the small ones', () => {
    const bought = cheapestPacks(44, [
      { units: 10, priceMinor: 350 },
      { units: 50, priceMinor: 1500 },
    ]);
    expect(bought).toMatchObject({ units: 50, priceMinor: 1500, left: 6 });
  });

  it('buys nothing when nothing is needed, and cannot buy where nothing is sold', () => {
    expect(cheapestPacks(0, [{ units: 10, priceMinor: 350 }])).toMatchObject({ units: 0, priceMinor: 0 });
    expect(cheapestPacks(5, [])).toBeNull();
  });

  it('is as cheap as trying every combination, on 2,000 random shops', () => {
    const pack = fc.record({
      units: fc.integer({ min: 1, max: 12 }),
      priceMinor: fc.integer({ min: 0, max: 40 }),
    });
    const shop = fc.array(pack, { minLength: 1, maxLength: 4 });
    const check = fc.property(fc.integer({ min: 1, max: 24 }), shop, (need, packs) => {
      const bought = cheapestPacks(need, packs);
      expect(bought).not.toBeNull();
      expect(summary(bought!)).toEqual(bestByTrying(need, packs));
      const sum = (of: (pack: Pack) => number) =>
        bought!.packs.reduce((total, each) => total + of(each.pack) * each.count, 0);
      expect([sum((each) => each.units), sum((each) => each.priceMinor)]).toEqual([
        bought!.units,
        bought!.priceMinor,
      ]);
    });
    fc.assert(check, { seed: SEED, numRuns: 2000 });
  });
});
