/** A day as the reader's language writes it out: `2027-03-20` is `March 20, 2027` in the United States. */
export const longDate = (isoDate: string, locale = 'en-US'): string =>
  new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone: 'UTC' }).format(
    new Date(`${isoDate}T00:00:00Z`),
  );
