import type { Supply } from './workbook';

/** A supply as it is, but for how much of it is on hand. */
export function withoutStock(supply: Supply): Supply {
  if (supply.kind === 'glue') return { ...supply, onHandBottles: 0 };
  return 'packs' in supply ? { ...supply, onHandPieces: 0 } : { ...supply, onHandRolls: 0 };
}

/** A supply without what it costs; a price of nothing is one that is not known. */
export function withoutPrices(supply: Supply): Supply {
  if (supply.kind === 'glue') return { ...supply, priceMinor: 0 };
  if ('packs' in supply) return { ...supply, packs: [] };
  const { offer: _, ...roll } = supply;
  return { ...roll, priceMinor: 0 };
}
