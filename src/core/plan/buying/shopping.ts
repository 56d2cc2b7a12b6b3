import type { Supply } from '../../rows';
import { type Reason, reason } from '../../units/reason';
import { proportionUp } from './money';
import { cheapestPacks, freePacks, type Pack, type Purchase } from './packs';
import { type ShoppingNeed, shortOf } from './shopping-needs';

export interface BoughtPack {
  readonly units: number;
  readonly priceMinor: number;
  readonly count: number;
  /** Of the count, how many an offer gives free. */
  readonly free: number;
}

/** One line of the shopping list. All counts are in the row's own unit. */
export interface ShoppingRow {
  readonly id: string;
  readonly kind: 'paper' | Supply['kind'];
  readonly name: string;
  readonly unit: 'sheet' | 'roll' | 'piece' | 'bottle';
  readonly need: number;
  readonly onHand: number;
  /** Need less stock, never below zero. */
  readonly short: number;
  readonly packs: readonly BoughtPack[];
  /** What the packs hold; 0 when nothing is bought or nothing is known to be sold. */
  readonly bought: number;
  readonly leftOver: number;
  /** Null: no price is known for what is short. */
  readonly priceMinor: number | null;
  /** What the needed amount is worth, bought or on hand, and what the left-over is; null when no price is known. */
  readonly usedMinor: number | null;
  readonly leftOverMinor: number | null;
  /** Of a paper: what to ask for in a shop. */
  readonly weighs?: { readonly gsm: number; readonly caliperUm: number } | undefined;
  /** The working, line by line. */
  readonly why: readonly Reason[];
}

/**
 * A row of the list, bought as this purchase says; without one, its price is not known. `reaches`: the amount that the whole order was
 * brought up to, said where more is bought than the need.
 */
export function writeRow(
  { sold, used, why, ...row }: ShoppingNeed,
  purchase: Purchase | null,
  reaches: number | null = null,
): ShoppingRow {
  const short = shortOf(row);
  const packs = (purchase?.packs ?? []).map(({ pack: { units, priceMinor }, count, free }) => {
    return { units, priceMinor, count, free };
  });
  const isMore =
    reaches !== null && purchase !== null && purchase.units > (cheapestPacks(short, sold)?.units ?? 0);
  const leftOver = Math.max(0, row.onHand + (purchase?.units ?? 0) - row.need);
  return {
    ...row,
    short,
    packs,
    bought: purchase?.units ?? 0,
    leftOver,
    priceMinor: purchase?.priceMinor ?? null,
    usedMinor: worthOf(used.over, used.under, sold),
    leftOverMinor: worthOf(leftOver, 1, sold),
    why: [
      ...why,
      reason('{need} needed − {onHand} on hand = {short} to buy', {
        need: row.need,
        onHand: row.onHand,
        short,
      }),
      ...packs.map(packReason),
      ...(isMore
        ? [reason('More than needed, so that the order comes to {reaches}', { reaches: { minor: reaches } })]
        : []),
    ],
  };
}

const packReason = ({ count, units, priceMinor, free }: BoughtPack): Reason =>
  reason(
    free > 0
      ? '{count} × pack of {units} at {price}, {free} of them free'
      : '{count} × pack of {units} at {price}',
    {
      count,
      units,
      free,
      price: { minor: priceMinor },
    },
  );

/** What over / under units are worth at the pack that is cheapest a unit, offers taken; null when nothing is sold. */
function worthOf(over: number, under: number, sold: readonly Pack[]): number | null {
  const worths = sold
    .filter((pack) => pack.units > 0)
    .map((pack) => {
      const group = pack.offer ? pack.offer.buy + pack.offer.free : 1;
      const price = pack.priceMinor * (group - freePacks(group, pack));
      return proportionUp(price, over, under * pack.units * group);
    });
  return worths.length > 0 ? Math.min(...worths) : null;
}
