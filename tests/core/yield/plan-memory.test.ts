import { expect, test } from 'vitest';
import { type PlanMemory, planSheets } from '../../../src/core/yield';
import { checkPlan } from '../../../src/core/yield/proof/check-plan';
import { freshOrders } from '../../bench/fresh-orders';

test('a longer search starts from what the shorter one found: no more sheets, and no lower bound', () => {
  for (const { parts, paper, tool } of freshOrders(105, 8, [6, 12], 12)) {
    const memory: PlanMemory = { best: null };
    const first = planSheets(parts, paper, tool, { seconds: 0.002, memory });
    const told: number[] = [];
    const onProgress = ({ sheets }: { readonly sheets: number }) => told.push(sheets);
    const then = planSheets(parts, paper, tool, { seconds: 0.1, memory, onProgress });
    expect(then.sheets).toBeLessThanOrEqual(first.sheets);
    expect(then.lowerBound).toBeGreaterThanOrEqual(first.lowerBound);
    // Only what is better is told.
    expect(told.every((sheets) => sheets < first.sheets)).toBe(true);
    expect(checkPlan(then, parts, paper, tool)).toEqual([]);
  }
});
