let grouped: Intl.NumberFormat | null = null;

/** Small counts do without the browser's tables of numbers, which take a slow machine a tenth of a second to open. */
export function inDigits(count: number): string {
  if (Number.isInteger(count) && Math.abs(count) < 1000) return `${count}`;
  grouped ??= new Intl.NumberFormat('en');
  return grouped.format(count);
}

/** `plural(3, 'sheet')` is `3 sheets`. In English only 1 is not many (CLDR plural rules, `en`: one is i = 1 and v = 0). */
export const plural = (count: number, one: string, many = `${one}s`): string =>
  `${inDigits(count)} ${count === 1 ? one : many}`;
