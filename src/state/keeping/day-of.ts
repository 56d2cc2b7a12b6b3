/** The day of a moment where the maker is, as `YYYY-MM-DD`. */
export function dayOf(milliseconds: number): string {
  const date = new Date(milliseconds);
  const two = (number: number) => `${number}`.padStart(2, '0');
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}
