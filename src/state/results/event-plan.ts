import { createContext, use, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { FavorEvent } from '../../../shared/workbook';
import type { EventPlan, EventRows } from '../../core/plan';
import { sameValue } from '../keeping/same-value';
import { rowsOf, type Shelf } from '../shelf';
import { useWorkbook } from '../use-workbook';

/** Who asks: what an event comes to must not wait for, or be overtaken by, what it might come to. */
export type Asker = 'plan' | 'comparison' | 'what-if' | 'season';

/** How one who asks is told of plans on the way to the last, and how they withdraw. */
export interface Heed {
  readonly tell?: (plan: EventPlan) => void;
  readonly signal?: AbortSignal;
}

/**
 * Works an event out, elsewhere if it can. Resolves to null where there is no such event, where the question was withdrawn, or a newer one of
 * the same asker overtook it. Rejects where it could not be worked out.
 */
export type Planner = (
  rows: EventRows,
  eventId: string,
  asker?: Asker,
  heed?: Heed,
) => Promise<EventPlan | null>;

/** Without a worker: here and now. */
export const planHere: Planner = async (rows, eventId) =>
  (await import('../../core/plan')).planEvent(rows, eventId);

export const PlannerContext = createContext<Planner>(planHere);

export interface PlanInSight {
  /** The newest plan there is; null before the first. */
  readonly plan: EventPlan | null;
  /** A newer one is being worked out. */
  readonly stale: boolean;
  /** The plan can be worked by; one with fewer sheets is still looked for, until `settle`. */
  readonly bettering: boolean;
  /** Looks no further: the plan there is, is the plan. */
  readonly settle: () => void;
  /** Why there is no plan and none is on its way; null while all is well. */
  readonly failed: string | null;
  readonly again: () => void;
}

/** Changes in one burst of typing are planned once. */
const PAUSE_MS = 120;

interface Found {
  readonly plan: EventPlan;
  readonly rows: EventRows;
  readonly bettering: boolean;
}

/** What an event comes to. Keeps the plan before in sight, marked stale, until the new one is there. */
export function useEventPlan(eventId: string | null): PlanInSight {
  const shelf = useWorkbook((state) => state.rows);
  const planner = use(PlannerContext);
  const read = useMemo(() => (eventId === null ? null : rowsForPlan(shelf, eventId)), [shelf, eventId]);
  // A tick or a count at the bench changes the event, but not what is planned from it.
  const [rows, setRows] = useState(read);
  if (!readsTheSame(rows, read)) setRows(read);
  const [found, setFound] = useState<Found | null>(null);
  const asking = useRef<AbortController | null>(null);
  const [fault, setFault] = useState<{ readonly rows: EventRows; readonly why: string } | null>(null);
  const [tries, setTries] = useState(0);

  useEffect(() => {
    if (!rows || eventId === null) return;
    const mine = new AbortController();
    asking.current = mine;
    const timer = setTimeout(() => {
      const { signal } = mine;
      const tell = (plan: EventPlan) => !signal.aborted && setFound({ plan, rows, bettering: true });
      planner(rows, eventId, 'plan', { tell, signal }).then(
        (plan) => !signal.aborted && plan && setFound({ plan, rows, bettering: false }),
        (error: unknown) => !signal.aborted && setFault({ rows, why: wordsOf(error) }),
      );
    }, PAUSE_MS);
    return () => {
      mine.abort();
      clearTimeout(timer);
    };
  }, [planner, rows, eventId, tries]);

  const settle = useCallback(() => {
    asking.current?.abort();
    setFound((now) => now && { ...now, bettering: false });
  }, []);
  const plan = found?.plan.eventId === eventId ? found.plan : null;
  const stale = rows !== null && found?.rows !== rows;
  return {
    plan,
    stale,
    bettering: plan !== null && !stale && found?.bettering === true,
    settle,
    failed: fault?.rows === rows ? fault.why : null,
    again: () => {
      setFault(null);
      setTries(tries + 1);
    },
  };
}

/** A slip in the words of whoever met it. */
const wordsOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** Everything that planning one event may read; of its run, only what was spoiled. */
export function rowsForPlan(shelf: Shelf, eventId: string): EventRows {
  const rows = rowsOf(shelf);
  const wanted = rows.events.filter(({ id }) => id === eventId).map(withoutTaps);
  const recipes = new Set(wanted.flatMap(({ lines }) => lines.map(({ recipeId }) => recipeId)));
  // Stock, prices and tools of the example count in the example alone.
  const ofExample = wanted.some(({ example }) => example);
  const counts = ({ example }: { readonly example?: true | undefined }) => ofExample || !example;
  return {
    events: wanted,
    recipes: rows.recipes.filter(({ id }) => recipes.has(id)),
    papers: rows.papers.filter(counts),
    supplies: rows.supplies.filter(counts),
    tools: rows.tools.filter(counts),
  };
}

function withoutTaps({ bought: _bought, run, ...event }: FavorEvent): FavorEvent {
  const spoiled = (run?.stages ?? []).filter((stage) => stage.spoiled > 0);
  if (spoiled.length === 0) return event;
  return {
    ...event,
    run: { stages: spoiled.map((stage) => ({ ...stage, done: 0, seconds: 0 })), firstRight: [] },
  };
}

const TABLES_READ = ['recipes', 'papers', 'supplies', 'tools'] as const;

function readsTheSame(a: EventRows | null, b: EventRows | null): boolean {
  if (a === null || b === null || a === b) return a === b;
  const same = TABLES_READ.every(
    (table) => a[table].length === b[table].length && a[table].every((row, i) => row === b[table][i]),
  );
  const stamped = (rows: EventRows) => rows.events.map((event) => ({ ...event, rev: 0, changedAt: '' }));
  return same && sameValue(stamped(a), stamped(b));
}
