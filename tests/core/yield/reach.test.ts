import { describe, expect, test } from 'vitest';
import { inches, type Ticks, ticks } from '../../../src/core/units/ticks';
import { planSheets, type SheetPart } from '../../../src/core/yield';
import { checkBound } from '../../../src/core/yield/proof/check-bound';
import { checkPlan } from '../../../src/core/yield/proof/check-plan';
import { swayFrom } from '../../../src/core/yield/stock/sway';
import { paperOf, partOf, TABLOID, toolOf } from './sheets-at-hand';

const mm = (length: number): Ticks => ticks(length * 320);
const eighths = (length: number): Ticks => inches(0, length * 8, 8);
const grained = (id: string, across: number, up: number, count: number, grain: 'across' | 'up') =>
  partOf(id, mm(across), mm(up), count, { grain });

const trimmer = toolOf({ longestCut: inches(12) });

describe('a sheet longer than the trimmer cuts', () => {
  // The counts were found and proven by a full list of layouts that knows no reach rule but "no upright cut in a piece taller than the
  // reach", written apart from this project (study of trimmer orders; the app answered 56, 6 and 30).
  const ORDERS: readonly (readonly [
    string,
    Parameters<typeof planSheets>[1],
    readonly SheetPart[],
    number,
  ])[] = [
    ['11 × 17 in, 94 squares and 47 boxes', TABLOID, [partOf('a', eighths(5.625), eighths(5.625), 94), partOf('b', eighths(7.875), inches(8, 1, 2), 47)], 55], // biome-ignore format: one order a line
    ['12 × 18 in, 25 cards and 50 bands', paperOf(inches(12), inches(18)), [partOf('a', eighths(5.625), eighths(3.75), 25), partOf('b', eighths(6.875), eighths(1.375), 50)], 5], // biome-ignore format: one order a line
    ['A3 with grain, three sizes', paperOf(mm(297), mm(420), { grain: 'across' }), [grained('a', 186, 40, 46, 'up'), grained('b', 222, 168, 15, 'across'), grained('c', 143, 154, 43, 'up')], 29], // biome-ignore format: one order a line
  ];
  test.each(ORDERS)('%s takes as few sheets as can be, and proves it', (_, paper, parts, sheets) => {
    const plan = planSheets(parts, paper, trimmer, { seconds: 4 });
    expect(plan).toMatchObject({ sheets, lowerBound: sheets, proven: true });
    expect(checkPlan(plan, parts, paper, trimmer)).toEqual([]);
    expect(plan.proof && checkBound(plan.proof, parts, paper, trimmer)).toBeNull();
  });

  test('no plan ever asks for a cut beyond the reach, and every bound is counted again', () => {
    const sway = swayFrom(20);
    const whole = (from: number, to: number): number => from + Math.floor(sway() * (to - from + 1));
    for (let order = 0; order < 120; order++) {
      const [short, long] = [whole(24, 96), whole(97, 150)];
      const [across, up] = sway() < 0.5 ? [short, long] : [long, short];
      const paper = paperOf(ticks(across), ticks(up), { grain: sway() < 0.3 ? 'up' : 'none' });
      const tool = toolOf({ longestCut: ticks(96) });
      const parts = Array.from({ length: whole(1, 3) }, (_, i) => {
        // Now and then a part as wide as the sheet and longer than the reach, which level cuts alone set free.
        const tall = sway() < 0.25;
        const side = tall ? short : whole(8, Math.min(60, short));
        return partOf(`p${i}`, ticks(side), ticks(tall ? whole(97, long) : whole(8, 70)), whole(1, 30), {
          grain: sway() < 0.2 ? 'up' : 'free',
        });
      });
      const plan = planSheets(parts, paper, tool, { seconds: 0.02 });
      const title = JSON.stringify({ order, across, up, parts });
      expect(checkPlan(plan, parts, paper, tool), title).toEqual([]);
      // A bound that its checker refuses is let go, so a bound of 0 would tell of a search that knows another reach.
      if (plan.sheets > 0) expect(plan.lowerBound, title).toBeGreaterThan(0);
      if (plan.proof) expect(checkBound(plan.proof, parts, paper, tool, plan.unplaced), title).toBeNull();
    }
  });
});
