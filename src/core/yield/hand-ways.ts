import { sequenceCuts } from './cut-sequence';
import { EasiestCuts, HAND_AIMS, type HandAim } from './easiest-cuts';
import { layProblem } from './problem/sheet-problem';
import { Effort } from './stock/effort';
import type { CuttingTool, Offcut, SheetPaper, SheetPart, SheetPlan } from './types';

/** What a whole plan costs the hands. */
interface PlanWork {
  readonly layouts: number;
  /** Strokes of the blade over all sheets. */
  readonly strokes: number;
  /** Different distances of the fence, added up over the layouts. */
  readonly fences: number;
  /** The largest piece left of any one sheet. */
  readonly offcut: Offcut | null;
}

/** One of several ways to cut the same sheets. */
export interface HandWay {
  readonly aim: HandAim;
  readonly plan: SheetPlan;
  readonly work: PlanWork;
}

const SECONDS = 0.05; // What other cuts of one plan may cost to find. source: our own

/** The same sheets with the same content, cut so that `aim` comes first, as far as a small effort finds; bound and proof stay. */
export function cutFor(
  aim: HandAim,
  plan: SheetPlan,
  parts: readonly SheetPart[],
  paper: SheetPaper,
  tool: CuttingTool,
): SheetPlan {
  const easiest = new EasiestCuts(layProblem(parts, paper, tool), paper, tool);
  const effort = new Effort({ seconds: SECONDS });
  return { ...plan, layouts: plan.layouts.map((layout) => easiest.layAgain(layout, aim, effort)) };
}

/**
 * The plan cut for fewest strokes, for fewest fence settings and for the largest piece left over, as far as found. A way that is no better
 * than the one for fewest strokes in what it aims at is left out, so that every way shown is a trade.
 */
export function waysByHand(
  plan: SheetPlan,
  parts: readonly SheetPart[],
  paper: SheetPaper,
  tool: CuttingTool,
): readonly HandWay[] {
  const ways = HAND_AIMS.map((aim): HandWay => {
    const cut = cutFor(aim, plan, parts, paper, tool);
    return { aim, plan: cut, work: planWorkOf(cut, paper, tool) };
  });
  const [usual] = ways;
  return ways.filter(
    ({ aim, work }) =>
      aim === 'strokes' ||
      (aim === 'fences' && usual !== undefined && work.fences < usual.work.fences) ||
      (aim === 'offcut' && usual !== undefined && areaOf(work.offcut) > areaOf(usual.work.offcut)),
  );
}

/** What the hands do for a plan, counted over its layouts. */
function planWorkOf({ layouts }: SheetPlan, paper: SheetPaper, tool: CuttingTool): PlanWork {
  const cut = layouts.map((layout) => sequenceCuts(layout, paper, tool));
  return {
    layouts: layouts.length,
    strokes: cut.reduce((sum, { strokes }) => sum + strokes, 0),
    fences: cut.reduce((sum, { fences }) => sum + fences.length, 0),
    offcut: layouts
      .flatMap(({ offcuts }) => offcuts)
      .reduce<Offcut | null>((best, one) => (areaOf(one) > areaOf(best) ? one : best), null),
  };
}

const areaOf = (offcut: Offcut | null): number => (offcut === null ? 0 : offcut.across * offcut.up);
