import { perPiece, shareOut } from './money';
import type { CostSplit, EventCost, ShoppingRow } from './types';

/** What an event costs to buy and to use up, split by kind; `favors` are those ordered, who pay for the spares. */
export function planCost(rows: readonly ShoppingRow[], favors: number, currency: string): EventCost {
  return {
    currency,
    favors,
    buying: split(rows, favors, ({ priceMinor }) => priceMinor),
    using: split(rows, favors, ({ usedMinor }) => usedMinor),
    unpriced: rows
      .filter(({ priceMinor, usedMinor }) => priceMinor === null || usedMinor === null)
      .map(({ id }) => id),
  };
}

function split(
  rows: readonly ShoppingRow[],
  favors: number,
  amount: (row: ShoppingRow) => number | null,
): CostSplit {
  const kinds = [...new Set(rows.map(({ kind }) => kind))];
  const minor = kinds.map((kind) =>
    rows.filter((row) => row.kind === kind).reduce((sum, row) => sum + (amount(row) ?? 0), 0),
  );
  const totalMinor = minor.reduce((sum, each) => sum + each, 0);
  const perFavorMinor = favors > 0 ? perPiece(totalMinor, favors) : 0;
  const perFavor = shareOut(perFavorMinor, minor);
  return {
    totalMinor,
    perFavorMinor,
    shares: kinds.map((of, i) => ({ of, minor: minor[i]!, perFavorMinor: perFavor[i]! })),
  };
}
