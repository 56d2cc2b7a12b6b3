import { use, useEffect, useState } from 'react';
import type { Paper } from '../../shared/workbook';
import type { EventPlan } from '../core/plan';
import { type Planner, PlannerContext, rowsForPlan } from './event-plan';
import type { Shelf } from './shelf';
import { useWorkbook } from './use-workbook';

/** What an event would take if all of it were cut from one paper. */
export interface PaperOutcome {
  readonly paper: Paper;
  /** False if some part fits no sheet of it. */
  readonly fits: boolean;
  readonly sheets: number;
  readonly lowerBound: number;
  /** For what must be bought; null where no price is known. */
  readonly priceMinor: number | null;
}

/** The event on every paper of the shelf, one after the other, fewest sheets by area of card first as they come in. */
export function usePaperComparison(eventId: string): readonly PaperOutcome[] {
  const shelf = useWorkbook((state) => state.rows);
  const planner = use(PlannerContext);
  const [found, setFound] = useState<readonly PaperOutcome[]>([]);

  useEffect(() => {
    const asking = new AbortController();
    void compare(shelf, eventId, planner, asking.signal).then((outcomes) => {
      if (!asking.signal.aborted) setFound(outcomes);
    });
    return () => asking.abort();
  }, [planner, shelf, eventId]);
  return found;
}

async function compare(
  shelf: Shelf,
  eventId: string,
  planner: Planner,
  asking: AbortSignal,
): Promise<PaperOutcome[]> {
  const rows = rowsForPlan(shelf, eventId);
  const outcomes: PaperOutcome[] = [];
  for (const paper of shelf.papers.values()) {
    if (paper.offcutOfId !== undefined) continue;
    if (asking.aborted) break;
    const events = rows.events.map((event) => onPaper(event, paper.id));
    const plan = await planner({ ...rows, events }, eventId, 'comparison');
    if (plan) outcomes.push(outcomeOf(plan, paper));
  }
  return outcomes;
}

const onPaper = <Event extends { readonly lines: readonly object[] }>(
  event: Event,
  paperId: string,
): Event => ({
  ...event,
  lines: event.lines.map((line) => ({ ...line, paperId })),
});

function outcomeOf(plan: EventPlan, paper: Paper): PaperOutcome {
  const planned = plan.papers.find(({ paperId }) => paperId === paper.id);
  const bought = plan.shopping.find(({ id }) => id === paper.id);
  return {
    paper,
    fits: planned !== undefined && planned.plan.unplaced.length === 0,
    sheets: planned?.plan.sheets ?? 0,
    lowerBound: planned?.plan.lowerBound ?? 0,
    priceMinor: bought?.priceMinor ?? null,
  };
}
