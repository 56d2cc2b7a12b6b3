import type { Pace } from '../../rows';
import type { HandAct } from '../../rows/hand-times';
import { dayNumber, isoDate } from './calendar-day';
import type { EventHours } from './hours';

/** One sitting: part or all of a stage on one day. Minutes are counted from midnight. */
export interface Sitting {
  readonly date: string;
  readonly startMinute: number;
  readonly minutes: number;
  readonly act: HandAct;
  readonly label: string;
}

/** How long work must rest after a stage before the next begins. */
export type Waits = Readonly<Partial<Record<HandAct, number>>>;

export interface Timetable {
  /** First to last. */
  readonly sittings: readonly Sitting[];
  readonly startsOn: string;
  readonly readyOn: string;
  readonly waits: Waits;
}

const DAY = 1440;
/** Nine in the morning. source: our own default */
const DAY_STARTS = 540;

/** The working hours of a day, in minutes since day 0. */
interface Window {
  readonly start: number;
  readonly end: number;
}

/**
 * Stages laid back from the event: the last ends at the close of the last working day before the days left free, each earlier one before it,
 * with its wait in between. Makers share a stage evenly. Null when there is nothing to do.
 */
export function planTimetable(
  date: string,
  { stages, makers }: EventHours,
  { dayMinutes, daysFree }: Pick<Pace, 'dayMinutes' | 'daysFree'>,
  waits: Waits = {},
  dayStarts: number = DAY_STARTS,
): Timetable | null {
  if (stages.length === 0) return null;
  const minutesADay = Math.min(dayMinutes, DAY - dayStarts);
  const windowOf = (day: number): Window => ({
    start: day * DAY + dayStarts,
    end: day * DAY + dayStarts + minutesADay,
  });
  /** The latest moment not after `moment` at which work can end. */
  const latestEnd = (moment: number): number => {
    const today = windowOf(Math.floor(moment / DAY));
    if (moment > today.start) return Math.min(moment, today.end);
    return windowOf(Math.floor(moment / DAY) - 1).end;
  };

  let moment = windowOf(dayNumber(date) - 1 - daysFree).end;
  const readyOn = isoDate(Math.floor(moment / DAY));
  const sittings: Sitting[] = [];
  for (const [index, { act, label, fullSeconds }] of [...stages.entries()].reverse()) {
    if (index < stages.length - 1) moment -= waits[act] ?? 0;
    for (let left = Math.ceil(fullSeconds / 60 / makers); left > 0; ) {
      moment = latestEnd(moment);
      const day = Math.floor((moment - 1) / DAY);
      const minutes = Math.min(left, moment - windowOf(day).start);
      moment -= minutes;
      left -= minutes;
      sittings.push({ date: isoDate(day), startMinute: moment - day * DAY, minutes, act, label });
    }
  }
  sittings.reverse();
  return { sittings, startsOn: sittings[0]?.date ?? readyOn, readyOn, waits };
}
