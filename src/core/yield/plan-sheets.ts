import { layTree } from './layout';
import type { SheetProblem } from './problem/sheet-problem';
import { layProblem } from './problem/sheet-problem';
import { checkBound } from './proof/check-bound';
import { Effort, type EffortLimits } from './stock/effort';
import { nameParts } from './stock/name-parts';
import { type StockPlan, solveStock } from './stock/solve-stock';
import type { BoundProof, CuttingTool, SheetPaper, SheetPart, SheetPlan } from './types';
import { writePoints, writeProof } from './write-proof';

export interface PlanOptions extends EffortLimits {
  /** Told every better plan on the way to the last. */
  readonly onProgress?: (plan: SheetPlan) => void;
}

/**
 * How many sheets of one paper these parts need, and how to cut them: a feasible plan at once, then better ones, always with a lower bound.
 * Parts that fit no sheet are left out and named. Same input, same plan, unless a clock cuts it short. No bound leaves here that `checkBound`,
 * which shares nothing with the search, has not counted again.
 */
export function planSheets(
  parts: readonly SheetPart[],
  paper: SheetPaper,
  tool: CuttingTool,
  options: PlanOptions = {},
): SheetPlan {
  const sheet = layProblem(parts, paper, tool);
  const holds = (plan: SheetPlan): boolean =>
    plan.proof === null || checkBound(plan.proof, parts, paper, tool, plan.unplaced) === null;
  const write = (plan: StockPlan): SheetPlan => {
    const written = writePlan(plan, writeProof(plan, sheet), sheet, paper);
    if (holds(written)) return written;
    const plain = writePlan(plan, plan.bound && writePoints(plan.bound, sheet), sheet, paper);
    return plan.cases !== null && holds(plain) ? plain : withoutBound(written);
  };
  const tell =
    options.onProgress === undefined ? undefined : (plan: StockPlan) => options.onProgress?.(write(plan));
  if (sheet.problem.items.length === 0) return write({ uses: [], sheets: 0, bound: null, cases: null });
  return write(solveStock(sheet.problem, new Effort(options), tell));
}

const withoutBound = (plan: SheetPlan): SheetPlan => ({
  ...plan,
  lowerBound: 0,
  proven: plan.sheets === 0,
  proof: null,
});

function writePlan(
  { uses, sheets }: StockPlan,
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
    layouts: nameParts(uses, sheet).map(({ tree, names, sheets: copies }) => {
      const next = names.map((parts) => parts.values());
      return { sheets: copies, ...layTree(tree, sheet, (item) => next[item]!.next().value!) };
    }),
    proof,
    unplaced: sheet.unplaced,
  };
}
