const MS_PER_DAY = 86_400_000; // source: definition; calendar dates here are all UTC, so no day is shorter

/** Days since 1 January 1970 of an ISO date, `2027-03-20`. */
export const dayNumber = (isoDate: string): number => Date.parse(`${isoDate}T00:00:00Z`) / MS_PER_DAY;

/** The ISO date of a day number. */
export const isoDate = (day: number): string => new Date(day * MS_PER_DAY).toISOString().slice(0, 10);
