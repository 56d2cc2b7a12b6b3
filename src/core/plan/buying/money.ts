/**
 * Shares a whole amount of minor units out by whole weights so that the shares add up to it exactly: the largest remainders get the odd units,
 * the earlier one on a tie. All zero weights give all zero shares, unless there is nothing to weigh by.
 */
export function shareOut(minor: number, weights: readonly number[]): number[] {
  const total = weights.reduce((sum, weight) => sum + BigInt(weight), 0n);
  if (total === 0n) return weights.map(() => 0);
  const exact = weights.map((weight) => BigInt(minor) * BigInt(weight));
  const shares = exact.map((share) => Number(share / total));
  const odd = minor - shares.reduce((sum, share) => sum + share, 0);
  const byRemainder = exact.map((share, index) => ({ index, rest: share % total }));
  byRemainder.sort((a, b) => (a.rest === b.rest ? a.index - b.index : a.rest < b.rest ? 1 : -1));
  for (const { index } of byRemainder.slice(0, odd)) shares[index]! += 1;
  return shares;
}

/** An amount divided among `count`, rounded half up to whole minor units. */
export const perPiece = (minor: number, count: number): number =>
  Math.floor((2 * minor + count) / (2 * count));

/** minor × over / under, rounded up to whole minor units; exact however large the product. */
export const proportionUp = (minor: number, over: number, under: number): number =>
  Number((BigInt(minor) * BigInt(over) + BigInt(under) - 1n) / BigInt(under));

/** Minor units as the reader writes money: `$12.50`. Decimals follow the currency (none for yen). */
export function printMoney(minor: number, currency: string, locale: string): string {
  const format = new Intl.NumberFormat(locale, { style: 'currency', currency });
  return format.format(minor / 10 ** (format.resolvedOptions().maximumFractionDigits ?? 2));
}

/** Digits behind the point in this money; none for yen. */
export const decimalsOf = (currency: string): number =>
  new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2;
