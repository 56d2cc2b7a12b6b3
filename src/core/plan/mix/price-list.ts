import type { Pack } from '../buying/packs';

/** What at least n sheets cost, for n from 0 to `most`; infinite where they are not sold. Exact, offers taken. */
export function priceList(packs: readonly Pack[], most: number): Float64Array {
  const steps = packs.filter(({ units }) => units > 0).flatMap(stepsOf);
  const prices = new Float64Array(most + 1).fill(Number.POSITIVE_INFINITY);
  prices[0] = 0;
  for (let sheets = 1; sheets <= most; sheets++)
    for (const { units, price } of steps)
      prices[sheets] = Math.min(prices[sheets]!, prices[Math.max(0, sheets - units)]! + price);
  return prices;
}

/** A way to buy once more: a pack, or as many as an offer gives together. */
export interface BuyingStep {
  readonly units: number;
  readonly price: number;
}

export const stepsOf = ({ units, priceMinor, offer }: Pack): BuyingStep[] => [
  { units, price: priceMinor },
  ...(offer ? [{ units: units * (offer.buy + offer.free), price: priceMinor * offer.buy }] : []),
];
