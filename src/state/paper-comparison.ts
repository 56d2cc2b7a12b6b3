import { use, useEffect, useState } from 'react';
import type { Paper } from '../../shared/workbook';
import type { EventPlan } from '../core/plan';
import { PlannerContext, rowsForPlan } from './event-plan';
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
    let wanted = true;
    void (async () => {
      const outcomes: PaperOutcome[] = [];
      for (const paper of shelf.papers.values()) {
        const rows = rowsForPlan(shelf, eventId);
        const plan = await planner(
          { ...rows, events: rows.events.map((event) => onPaper(event, paper.id)) },
          eventId,
        );
        if (!wanted) return;
        if (plan) outcomes.push(outcomeOf(plan, paper));
      }
      setFound(outcomes);
    })();
    return () => {
      wanted = false;
    };
  }, [planner, shelf, eventId]);
  return found;
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
