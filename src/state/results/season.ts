import { use, useEffect, useState } from 'react';
import {
  type EventPlan,
  inSeason,
  papersShared,
  partsTogether,
  type SeasonPlan,
  sumSeason,
} from '../../core/plan';
import type { SheetPlan } from '../../core/yield';
import { rowsOf, type Shelf } from '../shelf';
import { type Planner, PlannerContext, rowsForPlan } from './event-plan';
import { type SheetAsker, SheetAskerContext } from './sheet-asker';
import { noteUnanswered } from './unanswered';

interface SeasonInSight {
  /** The newest there is; null before the first. */
  readonly season: SeasonPlan | null;
  readonly stale: boolean;
}

/** How often a season is asked for again that was not answered. source: our own */
const MOST_TRIES = 3;

/** What these events come to together; the season before stays in sight until the new one is there. */
export function useSeason(shelf: Shelf, eventIds: readonly string[]): SeasonInSight {
  const planner = use(PlannerContext);
  const asker = use(SheetAskerContext);
  const key = eventIds.join(' ');
  const [found, setFound] = useState<{ shelf: Shelf; key: string; season: SeasonPlan } | null>(null);
  const [tries, setTries] = useState(0);
  useEffect(() => {
    // Without events there is nothing to add up, and an empty season would stay in sight while a real one is added up.
    if (key === '') return;
    const asking = new AbortController();
    addUp(shelf, key.split(' '), planner, asker, asking.signal)
      .then((season) => season && !asking.signal.aborted && setFound({ shelf, key, season }))
      .catch(() => {
        if (asking.signal.aborted) return;
        // A busy machine may answer late once or twice; only then has the page stopped.
        if (tries < MOST_TRIES) setTries(tries + 1);
        else noteUnanswered();
      });
    return () => asking.abort();
  }, [shelf, key, planner, asker, tries]);
  return { season: found?.season ?? null, stale: found?.shelf !== shelf || found.key !== key };
}

/** Event after event, then paper after paper; null where it was withdrawn. */
async function addUp(
  shelf: Shelf,
  eventIds: readonly string[],
  planner: Planner,
  asker: SheetAsker,
  signal: AbortSignal,
): Promise<SeasonPlan | null> {
  const rows = rowsOf(shelf);
  const plans: EventPlan[] = [];
  for (const { id } of inSeason(rows.events.filter((event) => eventIds.includes(event.id)))) {
    const plan = await planner(rowsForPlan(shelf, id), id, 'season', { signal });
    if (signal.aborted) return null;
    if (plan) plans.push(plan);
  }
  const shared = papersShared(rows, plans);
  const joints = new Map<string, SheetPlan>();
  for (const { paper, tool, apart } of shared) {
    const answer = await asker({ cut: { parts: partsTogether(apart), paper, tool } }, signal);
    if (signal.aborted) return null;
    if (answer && 'cut' in answer) joints.set(paper.id, answer.cut);
  }
  return sumSeason(rows, plans, shared, joints);
}
