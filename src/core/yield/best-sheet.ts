import { ticks } from '../units/ticks';
import { solveFreeKnapsack, solveLimitedKnapsack } from './knapsack/solve-knapsack';
import { layTree } from './layout';
import type { CuttingProblem } from './problem/cutting-problem';
import { holdsNoMore, mostByArea, mostByDiscounts } from './proof/check-best-sheet';
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

/**
 * The most worth of one sheet by edge-to-edge cuts, how to cut it, and a bound that code which shares nothing with the search has counted
 * again: the worth itself if that comes out in time. Whole units of any length.
 */
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
  const { seconds = 5, now, shouldStop = () => false } = limits;
  const deadline = now === undefined ? Number.POSITIVE_INFINITY : now() + seconds * 1000;
  const isOver = (): boolean => shouldStop() || (now !== undefined && now() > deadline);
  const worths = parts.map(({ worth }) => worth);
  const free = parts.every(({ most }) => most === null);
  const { value, tree, discounts, bound } = free
    ? solveFreeKnapsack(problem, worths, new Effort(limits))
    : solveLimitedKnapsack(problem, worths, new Effort(limits));
  const laid = layTree(
    tree,
    { problem, kinds: [], unit: 1, kerf: 0, reach: Number.POSITIVE_INFINITY, x: 0, y: 0, across: sheet.across, up: sheet.up, unplaced: [] }, // biome-ignore format: one line
    (item) => {
      const { id, across = 0, up = 0 } = parts[item] ?? { id: '' };
      return { part: { id, across: ticks(across), up: ticks(up), count: 1, grain: 'free' }, turned: null };
    },
  );
  const stopped = free && bound > value;
  const counted = stopped ? mostByArea(sheet, parts) : mostByDiscounts(sheet, parts, turns, discounts);
  const holds = counted <= value || (bound <= value && holdsNoMore(sheet, parts, turns, value, discounts, isOver)); // biome-ignore format: one line
  return { worth: value, bound: holds ? value : counted, layout: { sheets: 1, ...laid } };
}
