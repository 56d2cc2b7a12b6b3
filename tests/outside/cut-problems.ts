import type { YieldInstance } from '../../shared/yield-instances';
import { ticks } from '../../src/core/units/ticks';
import {
  type BestSheetPlan,
  checkPlan,
  fillBestSheet,
  planSheets,
  type SheetPlan,
} from '../../src/core/yield';
import { paperOf, partOf, toolOf } from '../core/yield/sheets-at-hand';

/** Sheet, parts and tool of an instance; whole units stand for ticks. */
export function orderOf({ sheet, items, rotation = false, stages = 'unlimited' }: YieldInstance) {
  const paper = paperOf(ticks(sheet.w), ticks(sheet.h), { grain: rotation ? 'none' : 'across' });
  const parts = items.map(({ w, h, demand }, i) =>
    partOf(String(i), ticks(w), ticks(h), demand ?? 1, { grain: rotation ? 'free' : 'across' }),
  );
  return { paper, parts, tool: toolOf({ stages: stages === 'unlimited' ? 'free' : stages }) };
}

/** Fewest sheets for an instance, and what its checker says. */
export function solveSheets(
  instance: YieldInstance,
  seconds: number,
  now?: () => number,
): { readonly plan: SheetPlan; readonly faults: readonly string[] } {
  const { paper, parts, tool } = orderOf(instance);
  const plan = planSheets(parts, paper, tool, { seconds, now });
  return { plan, faults: checkPlan(plan, parts, paper, tool) };
}

/** The best sheet of an instance. */
export function solveBest(
  { sheet, items, rotation = false, kind }: YieldInstance,
  seconds: number,
  now?: () => number,
): BestSheetPlan {
  // biome-ignore format: one row
  const limited = kind === 'constrained-knapsack';
  const parts = items.map(({ w, h, value = w * h, demand = null }, i) => ({
    id: String(i),
    across: w,
    up: h,
    worth: value,
    most: limited ? demand : null,
  }));
  return fillBestSheet({ across: sheet.w, up: sheet.h }, parts, rotation, { seconds, now });
}
