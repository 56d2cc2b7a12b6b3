import { use, useEffect, useMemo, useState } from 'react';
import type { Paper } from '../../../shared/workbook';
import { type EventPlan, type EventRows, netOfRecipe } from '../../core/plan';
import { mmOfTicks, ticksOfMm } from '../../core/rows/lengths';
import { type Ticks, ticks } from '../../core/units';
import { useWorkbook } from '../use-workbook';
import { PlannerContext, rowsForPlan } from './event-plan';
import { noteUnanswered } from './unanswered';

/** Something that might be otherwise; nothing on the shelf is changed by asking. */
export type WhatIf =
  /** One size of one recipe smaller by so much. */
  | { readonly change: 'smaller'; readonly recipeId: string; readonly symbol: string; readonly by: Ticks }
  /** Every sheet squared by so much on each edge, or not at all (0). */
  | { readonly change: 'squaring'; readonly margin: Ticks }
  /** The same papers in another size of sheet; what that costs is not known. */
  | { readonly change: 'sheet'; readonly across: Ticks; readonly up: Ticks };

/** The rows as they would be. */
function rowsIf(rows: EventRows, what: WhatIf): EventRows {
  const papers = (change: (paper: Paper) => Paper) => ({ ...rows, papers: rows.papers.map(change) });
  if (what.change === 'squaring') {
    const edge = mmOfTicks(what.margin);
    return papers((paper) => ({ ...paper, squaringMm: { left: edge, right: edge, near: edge, far: edge } }));
  }
  if (what.change === 'sheet')
    return papers((paper) =>
      paper.offcutOfId === undefined
        ? { ...paper, acrossMm: mmOfTicks(what.across), upMm: mmOfTicks(what.up), packs: [], onHandSheets: 0 }
        : paper,
    );
  return {
    ...rows,
    recipes: rows.recipes.map((recipe) => {
      if (recipe.id !== what.recipeId) return recipe;
      const saved = recipe.sizesMm[what.symbol];
      const now = saved === undefined ? netOfRecipe(recipe)?.values[what.symbol] : ticksOfMm(saved);
      if (now === undefined) return recipe;
      const next = mmOfTicks(ticks(Math.max(0, now - what.by)));
      return { ...recipe, sizesMm: { ...recipe.sizesMm, [what.symbol]: next } };
    }),
  };
}

/** Whole sheets that a plan cuts; offcuts from the shelf are no whole sheets. */
export const wholeSheets = (plan: EventPlan, papers: ReadonlyMap<string, Paper>): number =>
  plan.papers.reduce(
    (sum, planned) => sum + (papers.get(planned.paperId)?.offcutOfId === undefined ? planned.plan.sheets : 0),
    0,
  );

/** What the paper of a plan costs to buy; null where a price is missing. */
export function paperMoney(plan: EventPlan): number | null {
  const rows = plan.shopping.filter(({ kind }) => kind === 'paper');
  return rows.some(({ priceMinor }) => priceMinor === null)
    ? null
    : rows.reduce((sum, { priceMinor }) => sum + (priceMinor ?? 0), 0);
}

export interface WhatIfInSight {
  readonly plan: EventPlan | null;
  /** A newer answer is being worked out. */
  readonly stale: boolean;
}

/**
 * What the event would come to, a first answer soon and a better one if there is one; the answer before stays in sight, marked stale, until
 * the new one is there. Null: nothing is asked.
 */
export function useWhatIf(eventId: string, what: WhatIf | null): WhatIfInSight {
  const shelf = useWorkbook((state) => state.rows);
  const planner = use(PlannerContext);
  const rows = useMemo(() => what && rowsIf(rowsForPlan(shelf, eventId), what), [shelf, eventId, what]);
  const [found, setFound] = useState<{ readonly plan: EventPlan; readonly rows: EventRows } | null>(null);

  useEffect(() => {
    if (!rows) return;
    const asking = new AbortController();
    const { signal } = asking;
    const hear = (plan: EventPlan | null) => plan && !signal.aborted && setFound({ plan, rows });
    planner(rows, eventId, 'what-if', { tell: hear, signal }).then(hear).catch(noteUnanswered);
    return () => asking.abort();
  }, [planner, rows, eventId]);
  return { plan: rows === null ? null : (found?.plan ?? null), stale: rows !== null && found?.rows !== rows };
}
