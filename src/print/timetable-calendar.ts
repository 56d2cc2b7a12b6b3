import { createEvents, type DateArray, type EventAttributes } from 'ics';
import { type EventPlan, STAGE_NAMES } from '../core/plan';
import type { PrintStamp } from './print-document';

/** The writer takes the moment it was made, though its types do not say so; without it no file would be the same twice. */
type Entry = EventAttributes & { readonly timestamp: number };

type Planned = Pick<EventPlan, 'eventId' | 'name' | 'date' | 'timetable' | 'making'>;

/**
 * The sittings of a timetable and the day of the event, as iCalendar (RFC 5545). Times are floating: nine o'clock wherever the maker is.
 * The same plan gives the same file. Empty without a timetable.
 */
export function writeCalendar(
  { eventId, name, date, timetable, making }: Planned,
  stamp: PrintStamp,
): string {
  if (!timetable || date === null) return '';
  const shared = {
    productId: 'crease-and-count',
    calName: name,
    timestamp: Date.parse(stamp.madeAt),
    startInputType: 'local',
    startOutputType: 'local',
  } as const satisfies Partial<Entry>;
  const sittings = timetable.sittings.map(
    (sitting, place): Entry => ({
      ...shared,
      uid: `${eventId}-${place + 1}@crease-and-count`,
      title: `${STAGE_NAMES[sitting.act]}: ${name}`,
      description: `${making} to make.`,
      start: [
        ...dateOf(sitting.date),
        Math.floor(sitting.startMinute / 60),
        sitting.startMinute % 60,
      ] as DateArray,
      duration: { hours: Math.floor(sitting.minutes / 60), minutes: sitting.minutes % 60 },
    }),
  );
  const [year, month, day] = dateOf(date);
  const theDay: Entry = {
    ...shared,
    uid: `${eventId}-day@crease-and-count`,
    title: name,
    start: [year, month, day],
    duration: { days: 1 },
  };
  const { error, value } = createEvents([...sittings, theDay]);
  if (error) throw error;
  return value ?? '';
}

function dateOf(isoDate: string): [year: number, month: number, day: number] {
  const [year = 0, month = 0, day = 0] = isoDate.split('-').map(Number);
  return [year, month, day];
}
