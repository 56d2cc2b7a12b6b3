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

/** Rows as a CSV file; lines end as RFC 4180 has them. The byte order mark tells a spreadsheet that it is UTF-8; without, some guess another. source: Unicode, section 23.8, from memory */
export const csvOf = (rows: readonly (readonly (string | number)[])[]): string =>
  `\uFEFF${rows.map((row) => `${row.map(csvCell).join(',')}\r\n`).join('')}`;
