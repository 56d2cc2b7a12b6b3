import { perPiece, shareOut } from './money';
import type { OrderSum } from './shop-order';
import type { ShoppingRow } from './shopping';

export type CostOf = 'paper' | 'adhesive' | 'ribbon' | 'extras' | 'contents';

const COST_OF: Readonly<Record<ShoppingRow['kind'], CostOf>> = {
  paper: 'paper',
  tape: 'adhesive',
  glue: 'adhesive',
  mount: 'adhesive',
  ribbon: 'ribbon',
  twine: 'ribbon',
  closure: 'extras',
  wrap: 'extras',
  contents: 'contents',
};

/** An amount, split by what it is for; the shares a favor add up to the price a favor. */
export interface CostSplit {
  readonly totalMinor: number;
  readonly perFavorMinor: number;
  readonly shares: readonly { readonly of: CostOf; readonly minor: number; readonly perFavorMinor: number }[];
}

export interface EventCost {
  readonly currency: string;
  /** Favors ordered; spares are paid for by these. */
  readonly favors: number;
  /** What is paid at the shop now for whole packs, before discount, shipping and tax. */
  readonly buying: CostSplit;
  /** What the favors themselves use up, stock on hand included. */
  readonly using: CostSplit;
  /** Discount, shipping, tax and what is handed over at the till. */
  readonly till: OrderSum;
  /** What stays on hand afterwards. */
  readonly leftOverMinor: number;
  /** Rows whose price is not known and that are left out of all of it. */
  readonly unpriced: readonly string[];
}

/** What an event costs to buy and to use up, split by kind; `favors` are those ordered, who pay for the spares. */
export function planCost(
  rows: readonly ShoppingRow[],
  till: OrderSum,
  favors: number,
  currency: string,
): EventCost {
  return {
    currency,
    favors,
    buying: split(rows, favors, ({ priceMinor }) => priceMinor),
    using: split(rows, favors, ({ usedMinor }) => usedMinor),
    till,
    leftOverMinor: rows.reduce((sum, row) => sum + (row.leftOverMinor ?? 0), 0),
    unpriced: rows.filter((row) => row.priceMinor === null || row.usedMinor === null).map(({ id }) => id),
  };
}

function split(
  rows: readonly ShoppingRow[],
  favors: number,
  amount: (row: ShoppingRow) => number | null,
): CostSplit {
  const minorOf = new Map<CostOf, number>();
  for (const row of rows) {
    const of = COST_OF[row.kind];
    minorOf.set(of, (minorOf.get(of) ?? 0) + (amount(row) ?? 0));
  }
  const totalMinor = [...minorOf.values()].reduce((sum, minor) => sum + minor, 0);
  const perFavorMinor = favors > 0 ? perPiece(totalMinor, favors) : 0;
  const perFavor = shareOut(perFavorMinor, [...minorOf.values()]);
  return {
    totalMinor,
    perFavorMinor,
    shares: [...minorOf].map(([of, minor], i) => ({ of, minor, perFavorMinor: perFavor[i]! })),
  };
}
