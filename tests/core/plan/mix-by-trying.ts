import { cheapestPacks } from '../../../src/core/plan/buying/packs';
import type { MixOrder } from '../../../src/core/plan/mix/types';
import { planSheets } from '../../../src/core/yield';

/**
 * The least money for an order whose cards come in one size each, by trying every way to share its boxes out: for each share the sheets of every
 * card by the proven solver, then the cheapest packs. Infinite where no way can be cut.
 */
export function leastByTrying({ lots, formats, tool }: MixOrder): number {
  const known = new Map<string, number>();
  const priceOf = (card: string, boxes: readonly number[]): number => {
    const key = `${card} ${boxes.join()}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const { sheet, packs } = formats.find((format) => format.card === card)!;
    const parts = lots.flatMap((lot, at) =>
      lot.parts.map((part) => ({ ...part, count: part.count * boxes[at]! })),
    );
    const plan = planSheets(parts, sheet, tool);
    if (!plan.proven && plan.unplaced.length === 0) throw new Error('a tiny plan without its proof');
    const short = Math.max(0, plan.sheets - sheet.onHand);
    const price = plan.unplaced.length > 0 ? Number.POSITIVE_INFINITY : (cheapestPacks(short, packs)?.priceMinor ?? Number.POSITIVE_INFINITY); // biome-ignore format: one row
    known.set(key, price);
    return price;
  };
  const cards = formats.map(({ card }) => card);
  const tryLots = (at: number, shares: ReadonlyMap<string, readonly number[]>): number => {
    const lot = lots[at];
    if (lot === undefined) return cards.reduce((sum, card) => sum + priceOf(card, shares.get(card)!), 0);
    return Math.min(
      ...splits(lot.boxes, lot.cards.length).map(
        (split) =>
        tryLots(at + 1, new Map(cards.map((card) => [card, [...shares.get(card)!, split[lot.cards.indexOf(card)] ?? 0]]))), // biome-ignore format: one row
      ),
    );
  };
  return tryLots(0, new Map(cards.map((card) => [card, []])));
}

const splits = (count: number, among: number): number[][] =>
  among === 1
    ? [[count]]
    : Array.from({ length: count + 1 }, (_, first) => splits(count - first, among - 1).map((rest) => [first, ...rest])).flat(); // biome-ignore format: one row
