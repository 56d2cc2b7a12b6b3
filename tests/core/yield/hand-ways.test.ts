import { describe, expect, it } from 'vitest';
import { inches } from '../../../src/core/units/ticks';
import { planSheets, waysByHand } from '../../../src/core/yield';
import { freshOrders } from '../../bench/fresh-orders';
import { checkHandWays } from './check-hand-ways';
import { BLANK, LETTER, toolOf } from './sheets-at-hand';

describe('several ways to cut the same sheets', () => {
  it('every figure of 40 fresh orders is counted again, and each way is a trade', () => {
    const aims = { strokes: 0, fences: 0, offcut: 0 };
    for (const { name, parts, paper, tool } of freshOrders(401, 40, [1, 4], 60)) {
      const ways = waysByHand(planSheets(parts, paper, tool, { seconds: 0.2 }), parts, paper, tool);
      expect(checkHandWays(ways, parts, paper, tool), name).toEqual([]);
      for (const { aim } of ways) aims[aim]++;
    }
    expect(aims.strokes).toBe(40);
    expect(aims.fences).toBeGreaterThan(0);
    expect(aims.offcut).toBeGreaterThan(0);
  });

  it('counts the trade box by hand: 11 × 4 1/2 from letter, one cut at 4 1/2, and 4 x 11 left', () => {
    // 8 1/2 × 11 takes one blank of 4 1/2 × 11; what is left, 4 × 11, is no blank. One cut a sheet, 44 sheets.
    const tool = toolOf();
    const [usual, ...others] = waysByHand(planSheets([BLANK], LETTER, tool), [BLANK], LETTER, tool);
    expect(others).toEqual([]);
    expect(usual?.work).toMatchObject({ layouts: 1, strokes: 44, fences: 1 });
    expect(usual?.work.offcut).toMatchObject({ across: inches(4), up: inches(11) });
  });

  it('the checker objects to a figure that is off, to other sheets and to a way that is no trade', () => {
    const tool = toolOf();
    const [usual] = waysByHand(planSheets([BLANK], LETTER, tool), [BLANK], LETTER, tool);
    if (!usual) throw new Error('no way');
    const check = (...ways: Parameters<typeof checkHandWays>[0]) =>
      checkHandWays(ways, [BLANK], LETTER, tool);
    expect(check(usual)).toEqual([]);
    expect(check({ ...usual, work: { ...usual.work, fences: 2 } })).toEqual(['strokes: 2 fences, counted 1']);
    expect(check({ ...usual, work: { ...usual.work, strokes: 43 } })).toEqual([
      'strokes: 43 strokes, counted 44',
    ]);
    expect(check({ ...usual, work: { ...usual.work, offcut: null } })[0]).toMatch(/largest offcut/);
    expect(check(usual, { ...usual, aim: 'fences' })).toEqual(['fences: no fewer settings']);
    expect(check(usual, { ...usual, aim: 'offcut' })).toEqual(['offcut: no larger piece left']);
    expect(check()).toEqual(['no way at all']);
  });
});
