import { weightWays } from '../../shared/catalogue';
import { lengthWords } from '../core/draw/strokes/length-text';
import {
  type EventPlan,
  type OrderSum,
  printMoney,
  type ShoppingRow,
  sayReason,
  type Wording,
} from '../core/plan';
import type { Ruler } from '../core/units';
import { type Fact, type Reason, reason } from '../core/units/reason';

interface ListReader {
  readonly plan: Pick<EventPlan, 'cost'>;
  readonly locale: string;
  readonly say?: NonNullable<Wording['say']>;
  readonly ruler?: Ruler;
}

/** How the reader of a list writes what it says. */
export const wordingOf = ({ plan, ruler, locale, say }: ListReader): Wording => ({
  money: (minor) => printMoney(minor, plan.cost.currency, locale),
  length: (length) => (ruler === undefined ? `${length}` : lengthWords(length, ruler)),
  ...(say && { say }),
});

/** Said in place of every sum while a part of the event is missing from the list. */
export const NOT_WHOLE = reason('Part of this event isn’t planned yet, so there is no total.', {});

/** From the goods to what is paid. */
export function whyTill(till: OrderSum): Reason {
  const steps = [
    reason('goods {sum}', { sum: { minor: till.subtotalMinor } }),
    ...(till.discountMinor > 0
      ? [
          reason('{percent} % discount −{sum}', {
            percent: till.discountPercent,
            sum: { minor: till.discountMinor },
          }),
        ]
      : []),
    ...(till.shippingMinor > 0 ? [reason('shipping {sum}', { sum: { minor: till.shippingMinor } })] : []),
    ...(till.taxMinor > 0 ? [reason('tax {sum}', { sum: { minor: till.taxMinor } })] : []),
  ];
  return reason('That is {steps}.', { steps: afterCommas(steps) });
}

const afterCommas = ([first, ...others]: readonly Reason[]): Fact =>
  others.reduce<Fact>((before, next) => ({ says: '{before}, {next}', facts: { before, next } }), first ?? '');

/** What to say at the counter, where one shop counts pounds and another grams or points. */
export function askForWeight(weighs: NonNullable<ShoppingRow['weighs']>): Reason {
  const { soldExactly, ...ways } = weightWays(weighs);
  const facts = { ...ways, mm: { text: ways.mm } };
  return soldExactly
    ? reason('Ask for {pounds} lb {grade}: {gsm} g/m², {mm} mm or {points} pt thick.', facts)
    : reason('Ask for about {pounds} lb {grade}: {gsm} g/m², {mm} mm or {points} pt thick.', facts);
}

/** `3 packs of 10 sheets at 4.50, 1 pack of 25 sheets at 9.00`; or what is needed when nothing is bought. */
export function buyWords({ packs, short, need, unit }: ShoppingRow, wording: Wording): string {
  const counted = (count: number) => reason(COUNTED[unit][count === 1 ? 0 : 1], { count });
  const bought = packs.map(({ units, priceMinor, count, free }) => {
    const packed = { count, units: counted(units) };
    const what =
      units === 1
        ? counted(count)
        : reason(count === 1 ? '{count} pack of {units}' : '{count} packs of {units}', packed);
    return reason(free > 0 ? '{what} at {price}, {free} of them free' : '{what} at {price}', {
      what,
      price: { minor: priceMinor },
      free,
    });
  });
  const said = (): Fact => {
    if (short === 0) return reason('{need}, all on hand', { need: counted(need) });
    if (packs.length === 0) return reason('{short}, however they are sold', { short: counted(short) });
    return afterCommas(bought);
  };
  return sayReason({ says: '{bought}', facts: { bought: said() } }, wording);
}

const COUNTED: Readonly<Record<ShoppingRow['unit'], readonly [one: string, many: string]>> = {
  sheet: ['{count} sheet', '{count} sheets'],
  roll: ['{count} roll', '{count} rolls'],
  piece: ['{count} piece', '{count} pieces'],
  bottle: ['{count} bottle', '{count} bottles'],
};
