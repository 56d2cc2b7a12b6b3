/**
 * One cell of a CSV file that a spreadsheet will not run: text that begins like a formula gets an apostrophe before it, then quotes where
 * commas, quotes or line breaks call for them. source: OWASP, "CSV Injection"; quoting by RFC 4180 (both from memory).
 */
export function csvCell(value: string | number): string {
  if (typeof value === 'number') return `${value}`;
  const harmless = /^[=+\-@\t\r\n＝＋－＠]/u.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(harmless) || harmless !== harmless.trim()
    ? `"${harmless.replace(/"/g, '""')}"`
    : harmless;
}

/** Rows as a CSV file; lines end as RFC 4180 has them. */
export const csvOf = (rows: readonly (readonly (string | number)[])[]): string =>
  rows.map((row) => `${row.map(csvCell).join(',')}\r\n`).join('');
