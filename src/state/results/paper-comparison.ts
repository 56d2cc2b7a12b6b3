import { use, useEffect, useState } from 'react';
import type { FavorEvent, Paper } from '../../../shared/workbook';
import type { EventPlan } from '../../core/plan';
import type { Shelf } from '../shelf';
import { useWorkbook } from '../use-workbook';
import { type Planner, PlannerContext, rowsForPlan } from './event-plan';
import { noteUnanswered } from './unanswered';

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

/** The event on every paper of the shelf, each shown as soon as it is known, and better if better is found. */
export function usePaperComparison(eventId: string): readonly PaperOutcome[] {
  const shelf = useWorkbook((state) => state.rows);
  const planner = use(PlannerContext);
  const [found, setFound] = useState<readonly PaperOutcome[]>([]);

  useEffect(() => {
    const asking = new AbortController();
    compare(shelf, eventId, planner, asking.signal, (outcome) =>
      setFound((before) => withOutcome(before, outcome, shelf)),
    ).catch(noteUnanswered);
    return () => asking.abort();
  }, [planner, shelf, eventId]);
  return found;
}

async function compare(
  shelf: Shelf,
  eventId: string,
  planner: Planner,
  signal: AbortSignal,
  tell: (outcome: PaperOutcome) => void,
): Promise<void> {
  const rows = rowsForPlan(shelf, eventId);
  for (const paper of shelf.papers.values()) {
    if (paper.offcutOfId !== undefined || !rows.papers.includes(paper)) continue;
    const events = rows.events.map((event) => onPaper(event, paper.id));
    const hear = (plan: EventPlan | null) => plan && !signal.aborted && tell(outcomeOf(plan, paper));
    hear(await planner({ ...rows, events }, eventId, 'comparison', { tell: hear, signal }));
    if (signal.aborted) return;
  }
}

/** In the order of the shelf; a paper that is gone is left out, and one not yet asked again stays as it was. */
const withOutcome = (
  before: readonly PaperOutcome[],
  outcome: PaperOutcome,
  { papers }: Shelf,
): readonly PaperOutcome[] =>
  [...papers.keys()].flatMap((id) =>
    id === outcome.paper.id ? outcome : before.filter(({ paper }) => paper.id === id),
  );

/** All of an event from one paper; a mix in use is left. */
export const onPaper = (event: FavorEvent, paperId: string): FavorEvent => ({
  ...event,
  lines: event.lines.map(({ mix: _, ...line }) => ({ ...line, paperId })),
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
