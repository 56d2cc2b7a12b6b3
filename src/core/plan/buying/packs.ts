import type { Offer } from '../../rows';

/** So many units (sheets, rolls, pieces) sold together, at a price in minor units of money. */
export interface Pack {
  readonly units: number;
  readonly priceMinor: number;
  readonly offer?: Offer | undefined;
}

interface PackCount {
  readonly pack: Pack;
  /** Packs carried home, and how many of them an offer gives free. */
  readonly count: number;
  readonly free: number;
}

export interface Purchase {
  readonly packs: readonly PackCount[];
  readonly units: number;
  readonly priceMinor: number;
  /** Units beyond the need. */
  readonly left: number;
}

/** Packs an offer gives free among so many: for every `buy` paid for, up to `free` more. */
export function freePacks(count: number, { offer }: Pack): number {
  if (!offer) return 0;
  const group = offer.buy + offer.free;
  return Math.floor(count / group) * offer.free + Math.max(0, (count % group) - offer.buy);
}

/** A purchase from counts of each pack on sale. */
export function purchaseOf(need: number, counts: readonly (readonly [Pack, number])[]): Purchase {
  const packs = counts
    .filter(([, count]) => count > 0)
    .map(([pack, count]) => ({ pack, count, free: freePacks(count, pack) }));
  const units = packs.reduce((sum, { pack, count }) => sum + pack.units * count, 0);
  const priceMinor = packs.reduce((sum, { pack, count, free }) => sum + pack.priceMinor * (count - free), 0);
  return { packs, units, priceMinor, left: units - need };
}

/** One step of buying: a pack, or as many as an offer gives together. */
interface Step {
  readonly index: number;
  readonly packs: number;
  readonly units: number;
  readonly price: number;
}

const stepsOf = ({ units, priceMinor, offer }: Pack, index: number): Step[] => {
  const single = { index, packs: 1, units, price: priceMinor };
  if (!offer) return [single];
  const packs = offer.buy + offer.free;
  return [single, { index, packs, units: units * packs, price: priceMinor * offer.buy }];
};

/**
 * The cheapest packs that hold at least `need` units; among equally cheap ones the fewest packs, then the least left over.
 * What an offer gives free is always taken. Exact, by dynamic programming over the need. Null when nothing is sold.
 */
export function cheapestPacks(need: number, sold: readonly Pack[]): Purchase | null {
  if (need <= 0) return purchaseOf(0, []);
  const steps = sold.flatMap((pack, index) => (pack.units > 0 ? stepsOf(pack, index) : []));
  if (steps.length === 0) return null;

  const price = new Float64Array(need + 1);
  const packs = new Float64Array(need + 1);
  const units = new Float64Array(need + 1);
  const lastStep: Step[] = [];
  for (let wanted = 1; wanted <= need; wanted++) {
    price[wanted] = Number.POSITIVE_INFINITY;
    for (const step of steps) {
      const before = Math.max(0, wanted - step.units);
      const difference =
        price[before]! + step.price - price[wanted]! ||
        packs[before]! + step.packs - packs[wanted]! ||
        units[before]! + step.units - units[wanted]!;
      if (difference >= 0) continue;
      price[wanted] = price[before]! + step.price;
      packs[wanted] = packs[before]! + step.packs;
      units[wanted] = units[before]! + step.units;
      lastStep[wanted] = step;
    }
  }

  const counts = sold.map(() => 0);
  for (let wanted = need; wanted > 0; wanted -= lastStep[wanted]!.units)
    counts[lastStep[wanted]!.index]! += lastStep[wanted]!.packs;
  return purchaseOf(
    need,
    sold.map((pack, index) => [pack, counts[index]!]),
  );
}
