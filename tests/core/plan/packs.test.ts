import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cheapestPacks, freePacks, type Pack, type Purchase } from '../../../src/core/plan/buying/packs';
import { SEED } from '../../seed';

type Found = readonly [price: number, packs: number, units: number];

/** Price, packs and units of the best purchase, by trying every count of every pack up to where one alone is enough. */
function bestByTrying(need: number, packs: readonly Pack[]): Found {
  let best: Found = [Number.POSITIVE_INFINITY, 0, 0];
  const tryFrom = (at: number, found: Found): void => {
    const pack = packs[at];
    if (!pack) {
      const difference = found.map((value, i) => value - best[i]!).find((each) => each !== 0) ?? 0;
      if (found[2] >= need && difference < 0) best = found;
      return;
    }
    // an offer may give a few more than need be
    const enough = Math.ceil(need / pack.units) + (pack.offer?.free ?? 0);
    for (let count = 0; count <= enough; count++)
      tryFrom(at + 1, [
        found[0] + pack.priceMinor * (count - freePacks(count, pack)),
        found[1] + count,
        found[2] + count * pack.units,
      ]);
  };
  tryFrom(0, [0, 0, 0]);
  return best;
}

const summary = (purchase: Purchase): Found => [
  purchase.priceMinor,
  purchase.packs.reduce((sum, { count }) => sum + count, 0),
  purchase.units,
];

describe('buying packs', () => {
  it('mixes pack sizes when that is cheaper', () => {
    const ten = { units: 10, priceMinor: 350 };
    const twentyFive = { units: 25, priceMinor: 900 };
    // 44 sheets: one of 25 and two of 10 (45 sheets, 16.00) beats two of 25 (50 sheets, 18.00)
    expect(cheapestPacks(44, [ten, twentyFive])).toEqual({
      packs: [
        { pack: ten, count: 2, free: 0 },
        { pack: twentyFive, count: 1, free: 0 },
      ],
      units: 45,
      priceMinor: 1600,
      left: 1,
    });
  });

  it('buys a big pack when it costs less than the small ones', () => {
    const sold = [
      { units: 10, priceMinor: 350 },
      { units: 50, priceMinor: 1500 },
    ];
    expect(cheapestPacks(44, sold)).toMatchObject({ units: 50, priceMinor: 1500, left: 6 });
  });

  it('takes the free pack of an offer', () => {
    // 44 sheets in tens: five packs; buy 3, get 1 free: four cost 3 × 3.50, one more 3.50
    const ten = { units: 10, priceMinor: 350, offer: { buy: 3, free: 1 } };
    expect(cheapestPacks(44, [ten])).toMatchObject({
      packs: [{ pack: ten, count: 5, free: 1 }],
      priceMinor: 1400,
    });
  });

  it.each([
    [2, 0],
    [3, 0],
    [4, 1],
    [5, 2],
    [8, 2],
    [10, 4],
  ])('of %i packs, buy 3 get 2 gives %i free', (count, free) => {
    expect(freePacks(count, { units: 1, priceMinor: 1, offer: { buy: 3, free: 2 } })).toBe(free);
  });

  it('buys nothing when nothing is needed, and cannot buy where nothing is sold', () => {
    expect(cheapestPacks(0, [{ units: 10, priceMinor: 350 }])).toMatchObject({ units: 0, priceMinor: 0 });
    expect(cheapestPacks(5, [])).toBeNull();
    expect(cheapestPacks(5, [{ units: 0, priceMinor: 1 }])).toBeNull();
  });

  it('is as cheap as trying every combination, on 2,000 random shops with offers', () => {
    const offer = fc.record({ buy: fc.integer({ min: 1, max: 3 }), free: fc.integer({ min: 1, max: 2 }) });
    const pack = fc.record({
      units: fc.integer({ min: 1, max: 9 }),
      priceMinor: fc.integer({ min: 1, max: 40 }),
      offer: fc.option(offer, { nil: undefined, freq: 2 }),
    });
    const shop = fc.array(pack, { minLength: 1, maxLength: 3 });
    const check = fc.property(fc.integer({ min: 1, max: 20 }), shop, (need, packs) => {
      const bought = cheapestPacks(need, packs);
      // what an offer gives free is always taken, so only the price is the least there
      const compared = packs.some((each) => each.offer) ? 1 : 3;
      expect(bought && summary(bought).slice(0, compared)).toEqual(
        bestByTrying(need, packs).slice(0, compared),
      );
    });
    fc.assert(check, { seed: SEED, numRuns: 2000 });
  });
});
