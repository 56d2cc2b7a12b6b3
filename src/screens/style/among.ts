/** One of these, or the first where what was chosen is gone. */
export const among = (wanted: string, of: readonly string[]): string =>
  of.includes(wanted) ? wanted : (of[0] ?? '');
