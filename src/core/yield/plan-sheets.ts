import { EasiestCuts, layUse } from './easiest-cuts';
import type { SheetProblem } from './problem/sheet-problem';
import { layProblem } from './problem/sheet-problem';
import { checkBound } from './proof/check-bound';
import { Effort, type EffortLimits } from './stock/effort';
import { type NamedUse, nameParts } from './stock/name-parts';
import { type StockPlan, solveStock } from './stock/solve-stock';
import type { BoundProof, CuttingTool, Layout, SheetPaper, SheetPart, SheetPlan } from './types';
import { writeArea, writePoints, writeProof } from './write-proof';

export interface PlanOptions extends EffortLimits {
  /** Told every better plan on the way to the last. */
  readonly onProgress?: (plan: SheetPlan) => void;
  /** What an earlier and shorter search for the very same came to: this one starts from it, and leaves its own. */
  readonly memory?: PlanMemory | undefined;
}

/** Kept by whoever asks twice. */
export interface PlanMemory {
  best: StockPlan | null;
}

type LayUse = (use: NamedUse) => Layout;

const HAND_STEPS = 6e6; // What easier cuts may cost to find: some hundredths of a second. source: our own, measured

/**
 * How many sheets of one paper these parts need, and how to cut them: a feasible plan at once, then better ones, always with a lower bound.
 * Parts that fit no sheet are left out and named. Fewest sheets come first, which
 * is also the cheapest whatever the packs; then fewer layouts, strokes, fence settings, and a large offcut, as far as they are found. Same
 * input, same plan, unless a clock cuts it short. No bound leaves here that `checkBound`,
 * which shares nothing with the search, has not counted again.
 */
export function planSheets(
  parts: readonly SheetPart[],
  paper: SheetPaper,
  tool: CuttingTool,
  options: PlanOptions = {},
): SheetPlan {
  const sheet = layProblem(parts, paper, tool);
  const isLate = latenessOf(options);
  const isOver = (): boolean => (options.shouldStop?.() ?? false) || isLate();
  const holds = (plan: SheetPlan): boolean =>
    plan.proof === null ||
    // Points alone are counted even when the search is asked to stop: a plan without any bound says nothing.
    checkBound(plan.proof, parts, paper, tool, plan.unplaced, plan.proof.cases ? isOver : isLate) === null;
  const write = (plan: StockPlan, lay: LayUse): SheetPlan => {
    const layouts = nameParts(plan.uses, sheet).map(lay);
    const written = writePlan(plan, layouts, writeProof(plan, sheet), sheet, paper);
    if (holds(written)) return written;
    const plain = writePlan(plan, layouts, plan.bound && writePoints(plan.bound, sheet), sheet, paper);
    if (plan.cases !== null && holds(plain)) return plain;
    const placed = parts.filter(({ id }) => !sheet.unplaced.includes(id));
    return writePlan(plan, layouts, writeArea(placed, paper), sheet, paper);
  };
  if (sheet.problem.items.length === 0) return write({ uses: [], sheets: 0, bound: null, cases: null }, (use) => layUse(use, sheet)); // biome-ignore format: one line
  const { onProgress } = options;
  const tell = onProgress && ((plan: StockPlan) => onProgress(write(plan, (use) => layUse(use, sheet))));
  const effort = new Effort(options);
  const best = solveStock(sheet.problem, effort, tell, options.memory?.best);
  if (options.memory) options.memory.best = best;
  const easiest = new EasiestCuts(sheet, paper, tool);
  const handWork = effort.atMost(HAND_STEPS);
  return write(best, (use) => easiest.lay(use, handWork));
}

/** A proof that takes longer to count than a fifth of the time allowed is let go; the area alone still says something. */
function latenessOf({ seconds = 5, now }: PlanOptions): () => boolean {
  if (now === undefined) return () => false;
  const end = now() + seconds * 1200;
  return () => now() > end;
}

function writePlan(
  { sheets }: StockPlan,
  layouts: readonly Layout[],
  proof: BoundProof | null,
  sheet: SheetProblem,
  paper: SheetPaper,
): SheetPlan {
  const lowerBound = proof?.sheets ?? 0;
  return {
    paper: paper.id,
    sheets,
    lowerBound,
    proven: sheets === lowerBound,
    layouts,
    proof,
    unplaced: sheet.unplaced,
  };
}
