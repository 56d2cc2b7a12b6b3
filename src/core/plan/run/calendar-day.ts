const MS_PER_DAY = 86_400_000; // source: definition; calendar dates here are all UTC, so no day is shorter

/** Days since 1 January 1970 of an ISO date, `2027-03-20`. */
export const dayNumber = (isoDate: string): number => Date.parse(`${isoDate}T00:00:00Z`) / MS_PER_DAY;

/** The ISO date of a day number. */
export const isoDate = (day: number): string => new Date(day * MS_PER_DAY).toISOString().slice(0, 10);

const clocks = new Map<string, Intl.DateTimeFormat>();

/** A minute of the day as clocks are read where the reader's language is spoken: 870 is `2:30 PM` in the United States, `14:30` in Britain. */
export function timeOfDay(minute: number, locale = 'en-US'): string {
  const clock =
    clocks.get(locale) ?? new Intl.DateTimeFormat(locale, { timeStyle: 'short', timeZone: 'UTC' });
  clocks.set(locale, clock);
  // Some engines set a narrow space that fonts for print lack.
  return clock.format(minute * 60_000).replace(/\s/g, ' ');
}
