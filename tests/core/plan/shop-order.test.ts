import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ShopTerms } from '../../../shared/workbook';
import { freePacks, type Pack } from '../../../src/core/plan/buying/packs';
import { orderWays, sumOrder } from '../../../src/core/plan/buying/shop-order';
import { spendAtLeast, type Wanted } from '../../../src/core/plan/buying/spend-at-least';
import { SEED } from '../../seed';

const terms = (change: Partial<ShopTerms> = {}): ShopTerms => ({
  discounts: [],
  minimumMinor: 0,
  shippingMinor: 0,
  freeShippingFromMinor: null,
  taxHundredths: 0,
  ...change,
});

/** Every subtotal that covers all needs, up to a limit, by trying every count of every pack. */
function subtotalsByTrying(rows: readonly Wanted[], limit: number): ReadonlySet<number> {
  let totals = new Set([0]);
  for (const { need, packs } of rows) {
    const next = new Set<number>();
    const tryFrom = (at: number, price: number, units: number): void => {
      const pack = packs[at];
      if (price > limit) return;
      if (!pack) {
        if (units >= need) for (const total of totals) if (total + price <= limit) next.add(total + price);
        return;
      }
      for (let count = 0; pack.priceMinor * (count - freePacks(count, pack)) <= limit && count <= 60; count++)
        tryFrom(
          at + 1,
          price + pack.priceMinor * (count - freePacks(count, pack)),
          units + count * pack.units,
        );
    };
    tryFrom(0, 0, 0);
    totals = next;
  }
  return totals;
}

describe('an order at the till', () => {
  it('takes the best discount reached, adds shipping and tax, in whole minor units', () => {
    const shop = terms({
      discounts: [
        { fromMinor: 5000, percent: 10 },
        { fromMinor: 8000, percent: 15 },
      ],
      shippingMinor: 595,
      freeShippingFromMinor: 6000,
      taxHundredths: 875,
    });
    // 55.55: 10 % is 5.555, down to 5.55; goods 50.00; tax 4.375, half up to 4.38; shipping 5.95
    expect(sumOrder(5555, shop)).toEqual({
      subtotalMinor: 5555,
      discountPercent: 10,
      discountMinor: 555,
      shippingMinor: 595,
      taxMinor: 438,
      totalMinor: 6033,
    });
    expect(sumOrder(8000, shop)).toMatchObject({ discountPercent: 15, shippingMinor: 0, totalMinor: 7395 });
    expect(sumOrder(0, shop).totalMinor).toBe(0);
  });

  it('buys a little more when free shipping is worth it', () => {
    const rows = [{ need: 4, packs: [{ units: 1, priceMinor: 600 }] }];
    const [best, other] = orderWays(rows, terms({ shippingMinor: 700, freeShippingFromMinor: 3000 }));
    expect(best).toMatchObject({ reaches: 3000, subtotalMinor: 3000, totalMinor: 3000 });
    expect(best.purchases[0]).toMatchObject({ units: 5, left: 1 });
    expect(other).toMatchObject({ reaches: null, subtotalMinor: 2400, totalMinor: 3100 });
  });

  it('goes up to a minimum order, and leaves out what is not sold', () => {
    const rows = [
      { need: 1, packs: [{ units: 1, priceMinor: 600 }] },
      { need: 3, packs: [] },
    ];
    const ways = orderWays(rows, terms({ minimumMinor: 1000 }));
    expect(ways).toHaveLength(1);
    expect(ways[0]).toMatchObject({ subtotalMinor: 1200, totalMinor: 1200 });
    expect(ways[0].purchases[1]).toBeNull();
  });

  it('orders nothing when everything is on hand, whatever the minimum', () => {
    const rows = [{ need: 0, packs: [{ units: 1, priceMinor: 600 }] }];
    expect(orderWays(rows, terms({ minimumMinor: 1000, shippingMinor: 500 }))[0]).toMatchObject({
      totalMinor: 0,
    });
  });

  it('gives up a search that would fill the memory rather than guess', () => {
    const rows = [
      {
        need: 100_000,
        packs: [
          { units: 1, priceMinor: 9999 },
          { units: 3, priceMinor: 10_000 },
        ],
      },
    ];
    expect(spendAtLeast(99_999_999, rows)).toBeNull();
  });

  const offer = fc.record({ buy: fc.integer({ min: 1, max: 2 }), free: fc.constant(1) });
  const pack: fc.Arbitrary<Pack> = fc.record({
    units: fc.integer({ min: 1, max: 4 }),
    priceMinor: fc.integer({ min: 2, max: 9 }),
    offer: fc.option(offer, { nil: undefined, freq: 2 }),
  });
  const row = fc.record({ need: fc.nat({ max: 5 }), packs: fc.array(pack, { minLength: 1, maxLength: 2 }) });

  it('pays no more than trying every purchase, on 2,000 random orders with thresholds', () => {
    const shop = fc.record({
      discounts: fc.array(fc.record({ fromMinor: fc.nat({ max: 40 }), percent: fc.nat({ max: 50 }) }), {
        maxLength: 2,
      }),
      minimumMinor: fc.nat({ max: 30 }),
      shippingMinor: fc.nat({ max: 15 }),
      freeShippingFromMinor: fc.option(fc.nat({ max: 40 })),
      taxHundredths: fc.nat({ max: 2500 }),
    });
    const check = fc.property(fc.array(row, { minLength: 1, maxLength: 2 }), shop, (rows, given) => {
      const [best] = orderWays(rows, given);
      const open = [...subtotalsByTrying(rows, 140)].filter(
        (total) => total >= given.minimumMinor || total === 0,
      );
      const cheapest = Math.min(...open.map((total) => sumOrder(total, given).totalMinor));
      expect(best.totalMinor).toBe(cheapest);
      for (const [i, { need }] of rows.entries())
        expect(best.purchases[i]?.units).toBeGreaterThanOrEqual(need);
    });
    fc.assert(check, { seed: SEED, numRuns: 2000 });
  });
});
