import { describe, expect, test } from 'vitest';
import { cheapestMix } from '../../../src/core/plan/mix/cheapest-mix';
import { checkMix } from '../../../src/core/plan/mix/check-mix';
import type { MixFormat, MixLot, MixOrder, MixPlan } from '../../../src/core/plan/mix/types';
import { inches } from '../../../src/core/units';
import { mixOrders, tinyOrders } from '../../bench/mix-orders';
import { loadWholeSolver } from '../../general-solver';
import { paperOf, partOf, toolOf } from '../yield/sheets-at-hand';
import { leastByTrying } from './mix-by-trying';

const solveWhole = await loadWholeSolver();

const format = (id: string, w: number, h: number, price: number, units = 1, onHand = 0): MixFormat => ({
  card: id,
  sheet: paperOf(inches(w), inches(h), { id, onHand }),
  packs: price > 0 ? [{ units, priceMinor: price }] : [],
});
const lot = (id: string, boxes: number, cards: readonly string[], ...sizes: [number, number][]): MixLot => ({
  id,
  boxes,
  cards,
  parts: sizes.map(([w, h], at) => partOf(`${id}${at}`, inches(w), inches(h), 1)),
});
const orderOf = (lots: readonly MixLot[], formats: readonly MixFormat[]): MixOrder => ({ lots, formats, tool: toolOf() }); // biome-ignore format: one row
const solved = (order: MixOrder): MixPlan => cheapestMix(order, { solveWhole })!;
const told = ({ shares }: MixPlan) => shares.map(({ lot, card, boxes }) => `${boxes} ${lot} from ${card}`);

describe('the cheapest mix of papers', () => {
  test('takes what is left over from the paper that suits it', () => {
    // Nine 4 × 4 squares: a 12 × 12 sheet at 100 holds nine, a 4 × 8 at 30 holds two. Ten squares: one of each, 130; else 200 or 150.
    const formats = [format('large', 12, 12, 100), format('small', 4, 8, 30)];
    const plan = solved(orderOf([lot('a', 10, ['large', 'small'], [4, 4])], formats));
    expect(plan.priceMinor).toBe(130);
    expect(plan.proven).toBe(true);
    expect(checkMix(plan, orderOf([lot('a', 10, ['large', 'small'], [4, 4])], formats))).toEqual([]);
  });

  test('cuts boxes from offcuts on hand before anything is bought', () => {
    const formats = [format('oat', 12, 12, 100), { ...format('scrap', 4, 5, 0, 1, 3), card: 'oat' }];
    const plan = solved(orderOf([lot('a', 12, ['oat'], [4, 4])], formats));
    expect(plan.priceMinor).toBe(100);
    expect(plan.cuts.map(({ format, plan: { sheets } }) => `${sheets} ${format}`)).toEqual(['3 scrap', '1 oat']); // biome-ignore format: one row
  });

  test('cuts all parts of a box from the same card', () => {
    // Two trays of 6 × 6 and two lids of 6 × 6: half a sheet of each paper is on hand, but a box has one card.
    const formats = [format('oat', 6, 18, 70, 1, 1), format('fern', 6, 6, 40, 1, 1)];
    const plan = solved(orderOf([lot('a', 2, ['oat', 'fern'], [6, 6], [6, 6])], formats));
    // By the piece the four squares would be there for nothing. One box of fern needs another sheet of it.
    expect(plan.priceMinor).toBe(40);
    expect(told(plan)).toEqual(['1 a from oat', '1 a from fern']);
  });

  test('takes an offer, and sheets on hand first', () => {
    const offer = { ...format('oat', 4, 4, 50, 2, 1), packs: [{ units: 2, priceMinor: 50, offer: { buy: 1, free: 1 } }] }; // biome-ignore format: one row
    const plan = solved(orderOf([lot('a', 5, ['oat', 'fern'], [4, 4])], [offer, format('fern', 4, 4, 15)]));
    // Four to buy: two packs for the price of one, 50, or four at 15.
    expect(plan.priceMinor).toBe(50);
    expect(plan.proven).toBe(true);
  });

  test('says so where papers without a price do not reach', () => {
    expect(cheapestMix(orderOf([lot('a', 5, ['oat'], [4, 4])], [format('oat', 4, 4, 0, 1, 4)]))).toBeNull();
    expect(cheapestMix(orderOf([lot('a', 1, ['oat'], [5, 5])], [format('oat', 4, 4, 10)]))).toBeNull();
  });

  test('costs what the best of every way to share out costs, on tiny orders', () => {
    for (const [at, order] of tinyOrders(302, 40).entries()) {
      const least = leastByTrying(order);
      const plan = cheapestMix(order, { solveWhole });
      expect([at, plan?.priceMinor ?? Number.POSITIVE_INFINITY]).toEqual([at, least]);
      if (plan) expect([at, checkMix(plan, order)]).toEqual([at, []]);
    }
  });

  test('is never below, and its bound never above, the least without a general solver', () => {
    for (const order of tinyOrders(303, 15)) {
      const least = leastByTrying(order);
      const plan = cheapestMix(order);
      if (plan === null) continue;
      expect(plan.priceMinor).toBeGreaterThanOrEqual(least);
      expect(plan.boundMinor).toBeLessThanOrEqual(least);
      expect(checkMix(plan, order)).toEqual([]);
    }
  });

  test('is never dearer than the best single paper', () => {
    for (const order of mixOrders(304, 2, 30)) {
      const mix = cheapestMix(order, { solveWhole });
      for (const { card } of order.formats) {
        const lots = order.lots.map((lot) => (lot.cards.length > 1 ? { ...lot, cards: [card] } : lot));
        const one = cheapestMix({ ...order, lots }, { solveWhole });
        if (one) expect(mix?.priceMinor ?? Number.POSITIVE_INFINITY).toBeLessThanOrEqual(one.priceMinor);
      }
      expect(mix && checkMix(mix, order)).toEqual([]);
    }
  });
});

describe('the checker of a mix', () => {
  const order = orderOf(
    [lot('a', 11, ['large', 'small'], [4, 4]), lot('b', 2, ['large'], [6, 3])],
    [format('large', 12, 12, 100, 1, 1), format('small', 4, 8, 30)],
  );
  const plan = solved(order);
  const faultsOf = (change: Partial<MixPlan>) => checkMix({ ...plan, ...change }, order).join('; ');
  const row = plan.proof.choices[0]!.rows[0]!;
  const withRow = (changed: typeof row) => ({ ...plan.proof, choices: [{ cards: null, rows: [changed] }] });

  test('passes what was found', () => expect(checkMix(plan, order)).toEqual([]));
  test('counts the packs', () => expect(faultsOf({ priceMinor: plan.priceMinor - 1 })).toContain('the packs cost')); // biome-ignore format: one row
  test('counts the boxes', () =>
    expect(faultsOf({ shares: plan.shares.map((share) => ({ ...share, boxes: share.boxes - 1 })) })).toContain('boxes of a')); // biome-ignore format: one row
  test('counts the pieces', () => expect(faultsOf({ cuts: plan.cuts.slice(1) })).toMatch(/\d+ a0 from|\d+ b0 from/)); // biome-ignore format: one row
  test('lets no box come from another card', () =>
    expect(faultsOf({ shares: plan.shares.map((share) => (share.lot === 'b' ? { ...share, card: 'small' } : share)) })).toContain('may not')); // biome-ignore format: one row
  test('counts the sheets', () =>
    expect(faultsOf({ cuts: plan.cuts.map((cut) => ({ ...cut, purchase: { ...cut.purchase, packs: [] } })) })).toContain('on hand and 0 bought')); // biome-ignore format: one row
  test('knows what is sold', () =>
    expect(faultsOf({ cuts: plan.cuts.map((cut) => ({ ...cut, purchase: { ...cut.purchase, packs: [{ pack: { units: 9, priceMinor: 1 }, count: 1, free: 0 }] } })) })).toContain('not sold')); // biome-ignore format: one row
  test('lets no bound stand above what the rows rule out', () => {
    const boundMinor = plan.priceMinor + 1;
    expect(faultsOf({ boundMinor, proof: { ...plan.proof, boundMinor } })).toContain('not ruled out');
  });
  test('counts the most on a sheet', () =>
    expect(faultsOf({ proof: withRow({ ...row, most: { ...row.most, large: row.most['large']! - 1 } }) })).toContain('can hold')); // biome-ignore format: one row
  test('needs points that are worth something', () =>
    expect(faultsOf({ proof: withRow({ points: {}, most: {} }) })).toContain('not ruled out'));
  test('needs a proof for every choice of cards', () =>
    expect(checkMix({ ...plan, proof: { ...plan.proof, choices: [] } }, order, 1).join()).toContain('no proof')); // biome-ignore format: one row
  test('counts the cards', () => expect(checkMix(plan, order, 0).join()).toContain('asked for 0'));
});
