import { ticks } from '../units/ticks';
import { solveFreeKnapsack, solveLimitedKnapsack } from './knapsack/solve-knapsack';
import { layTree } from './layout';
import type { CuttingProblem } from './problem/cutting-problem';
import { Effort, type EffortLimits } from './stock/effort';
import type { Layout } from './types';

/** A rectangle worth something, wanted at most `most` times on the sheet; null: as often as it fits. */
export interface WorthPart {
  readonly id: string;
  readonly across: number;
  readonly up: number;
  readonly worth: number;
  readonly most: number | null;
}

export interface BestSheetPlan {
  readonly worth: number;
  /** No way of cutting is worth more. */
  readonly bound: number;
  readonly layout: Layout;
}

/** The most worth of one sheet by edge-to-edge cuts, how to cut it, and a bound: exact where no part is limited. Whole units of any length. */
export function fillBestSheet(
  sheet: { readonly across: number; readonly up: number },
  parts: readonly WorthPart[],
  turns: boolean,
  limits: EffortLimits,
): BestSheetPlan {
  const problem: CuttingProblem = {
    width: sheet.across,
    height: sheet.up,
    items: parts.map(({ across, up, most }) => ({
      width: across,
      height: up,
      turns,
      demand: most ?? Number.MAX_SAFE_INTEGER,
    })),
    longestCut: null,
    stages: 'free',
  };
  const worths = parts.map(({ worth }) => worth);
  const free = parts.every(({ most }) => most === null);
  const { value, tree, bound } = free
    ? solveFreeKnapsack(problem, worths)
    : solveLimitedKnapsack(problem, worths, new Effort(limits));
  const laid = layTree(
    tree,
    { problem, kinds: [], unit: 1, kerf: 0, x: 0, y: 0, across: sheet.across, up: sheet.up, unplaced: [] },
    (item) => {
      const { id, across = 0, up = 0 } = parts[item] ?? { id: '' };
      return { part: { id, across: ticks(across), up: ticks(up), count: 1, grain: 'free' }, turned: null };
    },
  );
  return { worth: value, bound, layout: { sheets: 1, ...laid } };
}
