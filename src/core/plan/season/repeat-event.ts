import type { FavorEvent } from '../../rows';
import type { EventPlan } from '../event/types';
import { USUAL_PACE } from '../run/hours';
import type { RunSheet } from '../run/run-sheet';

type NewEvent = Omit<FavorEvent, 'id' | 'rev' | 'createdAt' | 'changedAt'>;
type SpoilingAct = NonNullable<FavorEvent['spares']['byAct']>[number]['act'];

/** Most of a share that an act may spoil. source: the limits of an event's own rows */
const MOST_SPOILED = 90;

/**
 * An event again: the same boxes, looks, papers and terms; photos and tips come with the boxes themselves. What was spoiled at each act,
 * and how long it truly took where it was timed, become its defaults. Guests, what was bought and the counts at the bench are left behind.
 */
export function repeatEvent(
  event: FavorEvent,
  name: string,
  { hours }: Pick<EventPlan, 'hours'>,
  { steps }: Pick<RunSheet, 'steps'>,
): NewEvent {
  const {
    spares,
    lines,
    notes,
    tapeId,
    currency,
    glueId,
    toolId,
    kits,
    lesson,
    terms,
    asking,
    nameCards,
    carry,
    cutFor,
  } = event;
  const done = actsDone(event.run, steps);
  const spoiled = done.flatMap(({ act, good, lost }) =>
    lost > 0 ? [{ act, percent: Math.min(MOST_SPOILED, Math.ceil((100 * lost) / (good + lost))) }] : [],
  );
  const timed = done.flatMap(({ act, share, seconds }) => {
    const times = (hours.stages.find((stage) => stage.act === act)?.times ?? 0) * share;
    return seconds > 0 && times > 0
      ? [{ act, seconds: Math.min(3600, Math.max(1, Math.round(seconds / times))) }]
      : [];
  });
  const pace = event.pace ?? USUAL_PACE;
  return {
    name,
    date: null,
    lines: lines.map(({ byGuests: _, ...line }) => line),
    spares: spoiled.length > 0 ? { ...spares, byAct: laidOver(spares.byAct ?? [], spoiled) } : spares,
    tapeId,
    currency,
    notes,
    ...(glueId !== undefined && { glueId }),
    ...(toolId !== undefined && { toolId }),
    ...(kits !== undefined && { kits }),
    ...(lesson && { lesson }),
    ...(terms && { terms }),
    ...(asking && { asking }),
    ...(nameCards && { nameCards }),
    ...(carry && { carry }),
    ...(cutFor && { cutFor }),
    ...((event.pace || timed.length > 0) && { pace: { ...pace, seconds: laidOver(pace.seconds, timed) } }),
  };
}

const laidOver = <Row extends { readonly act: string }>(rows: readonly Row[], now: readonly Row[]): Row[] => [
  ...rows.filter(({ act }) => now.every((each) => each.act !== act)),
  ...now,
];

/** What came of one act at the bench: pieces good and lost, the share of all its pieces that were done, and the seconds it took. */
interface ActDone {
  readonly act: SpoilingAct;
  readonly good: number;
  readonly lost: number;
  readonly share: number;
  readonly seconds: number;
}

function actsDone(run: FavorEvent['run'], steps: RunSheet['steps']): readonly ActDone[] {
  const acts = [...new Set(steps.map(({ act }) => act))].filter(
    (act): act is SpoilingAct => act !== 'set-up',
  );
  return acts.flatMap((act): ActDone[] => {
    const its = steps.filter((step) => step.act === act);
    const counts = (run?.stages ?? []).filter(({ stage }) => its.some(({ id }) => id === stage));
    const sum = (of: 'done' | 'spoiled' | 'seconds') => counts.reduce((total, each) => total + each[of], 0);
    const all = its.reduce((total, { of }) => total + of, 0);
    const [good, lost] = [sum('done'), sum('spoiled')];
    return good + lost === 0
      ? []
      : [{ act, good, lost, share: Math.min(1, (good + lost) / all), seconds: sum('seconds') }];
  });
}
