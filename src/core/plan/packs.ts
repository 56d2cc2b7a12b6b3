/** So many units (sheets, rolls, pieces) sold together, at a price in minor units of money. */
export interface Pack {
  readonly units: number;
  readonly priceMinor: number;
}

export interface Purchase {
  readonly packs: readonly { readonly pack: Pack; readonly count: number }[];
  readonly units: number;
  readonly priceMinor: number;
  /** Units beyond the need. */
  readonly left: number;
}

/**
 * The cheapest packs that hold at least `need` units; among equally cheap ones the fewest packs, then the least left over.
 * Exact, by dynamic programming over the need. Null when nothing is sold, or nothing of it holds anything.
 */
export function cheapestPacks(need: number, packs: readonly Pack[]): Purchase | null {
  const sold = packs.filter(({ units }) => units > 0);
  if (need <= 0) return { packs: [], units: 0, priceMinor: 0, left: 0 };
  if (sold.length === 0) return null;

  const price = new Float64Array(need + 1);
  const packCount = new Float64Array(need + 1);
  const unitCount = new Float64Array(need + 1);
  const lastPack = new Int32Array(need + 1);
  for (let wanted = 1; wanted <= need; wanted++) {
    price[wanted] = Number.POSITIVE_INFINITY;
    for (const [index, { units, priceMinor }] of sold.entries()) {
      const before = Math.max(0, wanted - units);
      const difference =
        price[before]! + priceMinor - price[wanted]! ||
        packCount[before]! + 1 - packCount[wanted]! ||
        unitCount[before]! + units - unitCount[wanted]!;
      if (difference >= 0) continue;
      price[wanted] = price[before]! + priceMinor;
      packCount[wanted] = packCount[before]! + 1;
      unitCount[wanted] = unitCount[before]! + units;
      lastPack[wanted] = index;
    }
  }

  const counts = sold.map(() => 0);
  for (let wanted = need; wanted > 0; wanted -= sold[lastPack[wanted]!]!.units)
    counts[lastPack[wanted]!]! += 1;
  const units = unitCount[need]!;
  return {
    packs: sold.map((pack, index) => ({ pack, count: counts[index]! })).filter(({ count }) => count > 0),
    units,
    priceMinor: price[need]!,
    left: units - need,
  };
}
