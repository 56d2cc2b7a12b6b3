import { useMemo } from 'react';
import { useParams, useSearchParams } from 'react-router';
import { isMendable, type Mendable, useMendEvent } from '../state/intents/event-mends';
import { useEventPlan } from '../state/results/event-plan';
import { useWorkbook } from '../state/use-workbook';
import type { MendOf } from '../ui/frame/event-findings';
import type { OpenWorkbook } from '../ui/frame/open-workbook';
import { useWords } from '../ui/words';
import { ChoosePaper, lacksPaper } from './choose-paper';
import { ChooseTape, lacksTape } from './choose-tape';

/** The workbook at this address with its rows and its plan; null where there is none. */
export function useOpenWorkbook(): OpenWorkbook | null {
  const { kind, id = '' } = useParams();
  const [search] = useSearchParams();
  const shelf = useWorkbook((state) => state.rows);
  const event = kind === 'event' ? (shelf.events.get(id) ?? null) : null;
  const { plan, stale, bettering, settle, failed, again } = useEventPlan(event?.id ?? null);
  const wanted = search.get('recipe');
  const recipes = useMemo(() => {
    const ids = event ? event.lines.map(({ recipeId }) => recipeId) : kind === 'recipe' ? [id] : [];
    return [...new Set(ids)].flatMap((each) => shelf.recipes.get(each) ?? []);
  }, [event, kind, id, shelf.recipes]);

  const mends = useWords().findings.mends;
  const mendEvent = useMendEvent(event);
  const mendOf: MendOf = (finding) =>
    isMendable(finding.code)
      ? { label: mends[finding.code], mend: () => mendEvent(finding, mends[finding.code as Mendable]) }
      : null;

  if (kind !== 'recipe' && kind !== 'event') return null;
  if (kind === 'recipe' ? recipes.length === 0 : event === null) return null;
  const recipe = recipes.find((each) => each.id === wanted) ?? recipes[0] ?? null;
  const choosePaper = event && plan && lacksPaper(plan) ? <ChoosePaper event={event} plan={plan} /> : null;
  return {
    workbook: { kind, id },
    recipe,
    recipes,
    event,
    plan,
    stale,
    bettering,
    settle,
    failed,
    again,
    mendOf,
    choosePaper,
    chooseTape: event && lacksTape(plan) ? <ChooseTape event={event} /> : null,
  };
}
