import type { ShopTerms } from '../../rows';
import { cheapestPacks, type Purchase } from './packs';
import { spendAtLeast, type Wanted } from './spend-at-least';

/** What one way of buying comes to at the till. */
export interface OrderSum {
  readonly subtotalMinor: number;
  readonly discountPercent: number;
  readonly discountMinor: number;
  readonly shippingMinor: number;
  readonly taxMinor: number;
  readonly totalMinor: number;
}

/** One way of buying everything. `reaches`: the amount this way spends up to; null for the plainly cheapest packs. */
export interface OrderWay extends OrderSum {
  readonly reaches: number | null;
  /** Beside the rows; null where a row is not sold. */
  readonly purchases: readonly (Purchase | null)[];
}

/** One way at least. */
export type OrderWays = readonly [OrderWay, ...OrderWay[]];

const NO_TERMS: ShopTerms = {
  discounts: [],
  minimumMinor: 0,
  shippingMinor: 0,
  freeShippingFromMinor: null,
  taxHundredths: 0,
};

/**
 * An order at the till: the best discount it reaches, rounded down; shipping unless it is free from there; tax on the goods less discount,
 * rounded half up. An order for nothing costs nothing.
 */
export function sumOrder(subtotalMinor: number, terms: ShopTerms = NO_TERMS): OrderSum {
  const reached = terms.discounts.filter(({ fromMinor }) => subtotalMinor >= fromMinor);
  const discountPercent = Math.max(0, ...reached.map(({ percent }) => percent));
  const discountMinor = Math.floor((subtotalMinor * discountPercent) / 100);
  const goods = subtotalMinor - discountMinor;
  const isFree = terms.freeShippingFromMinor !== null && subtotalMinor >= terms.freeShippingFromMinor;
  const shippingMinor = subtotalMinor === 0 || isFree ? 0 : terms.shippingMinor;
  const taxMinor = Math.floor((goods * terms.taxHundredths + 5000) / 10_000);
  const totalMinor = goods + shippingMinor + taxMinor;
  return { subtotalMinor, discountPercent, discountMinor, shippingMinor, taxMinor, totalMinor };
}

/**
 * Ways of buying all rows, the cheapest at the till first: the cheapest packs as they are, and for every threshold of the terms the least
 * that reaches it. Between thresholds more never costs less, so one of these is the best there is.
 */
export function orderWays(rows: readonly Wanted[], terms: ShopTerms = NO_TERMS): OrderWays {
  const purchases = rows.map(({ need, packs }) => cheapestPacks(need, packs));
  const plain = writeWay(null, purchases, terms);
  const thresholds = [
    terms.minimumMinor,
    terms.freeShippingFromMinor ?? 0,
    ...terms.discounts.map(({ fromMinor }) => fromMinor),
  ].map((each) => Math.max(each, terms.minimumMinor));
  const further = plain.subtotalMinor === 0 ? [] : thresholds.filter((each) => each > plain.subtotalMinor);
  const reaching = [...new Set(further)].flatMap((each) => wayReaching(each, rows, purchases, terms));
  const isOpen = plain.subtotalMinor === 0 || plain.subtotalMinor >= terms.minimumMinor;
  const [best, ...others] = [...(isOpen ? [plain] : []), ...reaching].sort(
    (a, b) => a.totalMinor - b.totalMinor,
  );
  return best ? [best, ...others] : [plain];
}

function wayReaching(
  reaches: number,
  rows: readonly Wanted[],
  plain: readonly (Purchase | null)[],
  terms: ShopTerms,
): OrderWay[] {
  const sold = rows.filter((_, i) => plain[i] !== null);
  const bought = spendAtLeast(reaches, sold);
  if (!bought) return [];
  const purchases = rows.map((row) => bought[sold.indexOf(row)] ?? null);
  return [writeWay(reaches, purchases, terms)];
}

const writeWay = (
  reaches: number | null,
  purchases: readonly (Purchase | null)[],
  terms: ShopTerms,
): OrderWay => ({
  reaches,
  purchases,
  ...sumOrder(
    purchases.reduce((sum, purchase) => sum + (purchase?.priceMinor ?? 0), 0),
    terms,
  ),
});
