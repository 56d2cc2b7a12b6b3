import { describe, expect, test } from 'vitest';
import { cheapestPacks } from '../../../src/core/plan/buying/packs';
import { inches, ticks } from '../../../src/core/units/ticks';
import { checkPlan, planSheets, sequenceCuts } from '../../../src/core/yield';
import { swayFrom } from '../../../src/core/yield/stock/sway';
import { SEED } from '../../seed';
import { BLANK, LINER, paperOf, partOf, SQUARE_12, TABLOID, toolOf } from './sheets-at-hand';

const sway = swayFrom(SEED);
const whole = (least: number, most: number): number => least + Math.floor(sway() * (most - least + 1));

/** How many of each of two parts one sheet holds. */
type Pair = readonly [number, number];

/**
 * Fewest layouts among plans on `sheets` sheets, by trying every one and every two of the contents with every split. Written without a
 * look at the solver.
 */
function fewestByTrying(contents: readonly Pair[], wanted: Pair, sheets: number): number {
  const does = (uses: readonly (readonly [Pair, number])[]): boolean =>
    wanted.every((count, i) => uses.reduce((sum, [pair, times]) => sum + pair[i]! * times, 0) >= count);
  if (contents.some((pair) => does([[pair, sheets]]))) return 1;
  for (const one of contents)
    for (const other of contents)
      for (let times = 1; times < sheets; times++) if (does([[one, times], [other, sheets - times]])) return 2; // biome-ignore format: one row
  return 3;
}

test('60 random orders of two strips: no plan on as few sheets has fewer layouts than ours', () => {
  for (let round = 0; round < 60; round++) {
    // Strips as wide as the sheet: a sheet of length L holds a of one and b of the other just when a·p + b·q ≤ L.
    const [length, p, q] = [whole(20, 40), whole(3, 12), whole(3, 12)];
    if (p === q) continue;
    const wanted: Pair = [whole(1, 60), whole(1, 60)];
    const contents: Pair[] = [];
    for (let a = 0; a * p <= length; a++) contents.push([a, Math.floor((length - a * p) / q)]);
    const paper = paperOf(ticks(10), ticks(length), { grain: 'across' });
    const parts = [p, q].map((up, i) =>
      partOf(String(i), ticks(10), ticks(up), wanted[i]!, { grain: 'across' }),
    );
    const plan = planSheets(parts, paper, toolOf());
    expect(plan.proven).toBe(true);
    expect(plan.layouts.length, JSON.stringify({ length, p, q, wanted })).toBeLessThanOrEqual(
      fewestByTrying(contents, wanted, plan.sheets),
    );
  }
});

describe('44 boxes with liners', () => {
  test.each([
    ['12 × 12', SQUARE_12, 28],
    ['11 × 17', TABLOID, 19],
  ] as const)('%s: two layouts do, and the sheets stay as few', (_, paper, sheets) => {
    const plan = planSheets([BLANK, LINER], paper, toolOf());
    expect(plan.sheets).toBe(sheets);
    expect(plan.layouts.length).toBeLessThanOrEqual(2);
  });
});

test('four squares out of one sheet take five strokes', () => {
  // 2 in squares in a corner of 12 × 12: two cuts free the block or row of four, three part it. Cut one by one it would be up to eight.
  const square = partOf('square', inches(2), inches(2), 4);
  const plan = planSheets([square], SQUARE_12, toolOf());
  const [layout] = plan.layouts;
  expect(plan.layouts).toHaveLength(1);
  expect(sequenceCuts(layout!, SQUARE_12, toolOf()).strokes).toBe(5);
  expect(checkPlan(plan, [square], SQUARE_12, toolOf())).toEqual([]);
});

test('fewest sheets is cheapest whatever the packs: 200 random shelves never ask less for a sheet more', () => {
  for (let round = 0; round < 200; round++) {
    const packs = Array.from({ length: whole(1, 3) }, () => ({
      units: whole(1, 30),
      priceMinor: whole(1, 900),
      ...(sway() < 0.3 ? { offer: { buy: whole(1, 3), free: 1 } } : {}),
    }));
    const need = whole(1, 60);
    const price = (units: number): number => cheapestPacks(units, packs)!.priceMinor;
    expect(price(need + 1), JSON.stringify({ packs, need })).toBeGreaterThanOrEqual(price(need));
  }
});

test('ten sizes twice over: the same order gives the same plan to the last cut', () => {
  const parts = Array.from({ length: 10 }, (_, i) => partOf(String(i), inches(whole(1, 5), whole(0, 7), 8), inches(whole(1, 5)), whole(20, 90))); // biome-ignore format: one row
  const plan = planSheets(parts, SQUARE_12, toolOf(), { seconds: 0.3 });
  expect(planSheets(parts, SQUARE_12, toolOf(), { seconds: 0.3 })).toEqual(plan);
});
