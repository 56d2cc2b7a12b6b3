import { createContext, use, useEffect, useMemo, useState } from 'react';
import type { EventPlan, EventRows } from '../core/plan';
import { rowsOf, type Shelf } from './shelf';
import { useWorkbook } from './use-workbook';

/** Works an event out, elsewhere if it can. Resolves to null where there is no such event, or a newer question overtook this one. */
export type Planner = (rows: EventRows, eventId: string) => Promise<EventPlan | null>;

/** Without a worker: here and now. */
export const planHere: Planner = async (rows, eventId) =>
  (await import('../core/plan')).planEvent(rows, eventId);

export const PlannerContext = createContext<Planner>(planHere);

export interface PlanInSight {
  /** The newest plan there is; null before the first. */
  readonly plan: EventPlan | null;
  /** A newer one is being worked out. */
  readonly stale: boolean;
}

/** Changes in one burst of typing are planned once. */
const PAUSE_MS = 120;

/** What an event comes to. Keeps the plan before in sight, marked stale, until the new one is there. */
export function useEventPlan(eventId: string | null): PlanInSight {
  const shelf = useWorkbook((state) => state.rows);
  const planner = use(PlannerContext);
  const rows = useMemo(() => (eventId === null ? null : rowsForPlan(shelf, eventId)), [shelf, eventId]);
  const [found, setFound] = useState<{ readonly plan: EventPlan; readonly rows: EventRows } | null>(null);

  useEffect(() => {
    if (!rows || eventId === null) return;
    let wanted = true;
    const timer = setTimeout(() => {
      void planner(rows, eventId).then((plan) => {
        if (wanted && plan) setFound({ plan, rows });
      });
    }, PAUSE_MS);
    return () => {
      wanted = false;
      clearTimeout(timer);
    };
  }, [planner, rows, eventId]);

  const plan = found?.plan.eventId === eventId ? found.plan : null;
  return { plan, stale: rows !== null && found?.rows !== rows };
}

/** Everything that planning one event may read. */
export function rowsForPlan(shelf: Shelf, eventId: string): EventRows {
  const rows = rowsOf(shelf);
  const wanted = rows.events.filter(({ id }) => id === eventId);
  const recipes = new Set(wanted.flatMap(({ lines }) => lines.map(({ recipeId }) => recipeId)));
  return { ...rows, events: wanted, recipes: rows.recipes.filter(({ id }) => recipes.has(id)) };
}
