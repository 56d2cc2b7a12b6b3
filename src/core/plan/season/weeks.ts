import type { EventPlan } from '../event/types';
import { dayNumber, isoDate } from '../run/calendar-day';

/** One week's work, Monday to Sunday. */
export interface SeasonWeek {
  readonly monday: string;
  readonly minutes: number;
  readonly byEvent: readonly { readonly eventId: string; readonly minutes: number }[];
}

/** Two events that want the same day: both are held then, or their work together is more than that day has. */
export interface Clash {
  readonly kind: 'same-date' | 'day-too-full';
  readonly date: string;
  readonly eventIds: readonly string[];
  /** Work on that day, and what the day has; 0 for a date. */
  readonly minutes: number;
  readonly hasMinutes: number;
}

type Timed = Pick<EventPlan, 'eventId' | 'date' | 'timetable'>;

const sittingsOf = (plans: readonly Timed[]) =>
  plans.flatMap(({ eventId, timetable }) =>
    (timetable?.sittings ?? []).map(({ date, minutes }) => ({ eventId, date, minutes })),
  );

/** 1 January 1970 was a Thursday. source: ISO 8601 weeks begin on Monday */
export const mondayOf = (date: string): string => {
  const day = dayNumber(date);
  return isoDate(day - ((((day + 3) % 7) + 7) % 7));
};

/** Hours of all events by week, first to last; weeks without work are left out. */
export function weeksOf(plans: readonly Timed[]): readonly SeasonWeek[] {
  const sittings = sittingsOf(plans);
  const mondays = [...new Set(sittings.map(({ date }) => mondayOf(date)))].sort();
  return mondays.map((monday) => {
    const here = sittings.filter(({ date }) => mondayOf(date) === monday);
    const ids = [...new Set(here.map(({ eventId }) => eventId))];
    const sum = (all: typeof here) => all.reduce((total, { minutes }) => total + minutes, 0);
    return {
      monday,
      minutes: sum(here),
      byEvent: ids.map((eventId) => ({
        eventId,
        minutes: sum(here.filter((each) => each.eventId === eventId)),
      })),
    };
  });
}

/** Days that two events or more want at once. `dayMinutes`: what a working day of each event has. */
export function clashesOf(
  plans: readonly Timed[],
  dayMinutes: ReadonlyMap<string, number>,
): readonly Clash[] {
  const held = new Map<string, string[]>();
  for (const { eventId, date } of plans)
    if (date !== null) held.set(date, [...(held.get(date) ?? []), eventId]);
  const sameDate = [...held].flatMap(([date, eventIds]): Clash[] =>
    eventIds.length > 1 ? [{ kind: 'same-date', date, eventIds, minutes: 0, hasMinutes: 0 }] : [],
  );
  const sittings = sittingsOf(plans);
  const days = [...new Set(sittings.map(({ date }) => date))].sort();
  const tooFull = days.flatMap((date): Clash[] => {
    const here = sittings.filter((each) => each.date === date);
    const eventIds = [...new Set(here.map(({ eventId }) => eventId))];
    const minutes = here.reduce((sum, each) => sum + each.minutes, 0);
    const hasMinutes = Math.max(...eventIds.map((id) => dayMinutes.get(id) ?? 0));
    return eventIds.length > 1 && minutes > hasMinutes
      ? [{ kind: 'day-too-full', date, eventIds, minutes, hasMinutes }]
      : [];
  });
  return [...sameDate, ...tooFull].sort((a, b) => (a.date < b.date ? -1 : 1));
}
