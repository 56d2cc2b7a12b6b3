import { checkPlan } from '../../yield/proof/check-plan';
import { mostPoints } from '../../yield/proof/most-points';
import type { SheetPart } from '../../yield/types';
import type { MixFormat, MixLot, MixOrder, MixPlan, MixRow } from './types';

/**
 * Everything wrong with a mix, as words for a developer; empty: its sheets can be cut, are on hand or bought for the price it says, and give
 * every box from one of its cards; and no mix costs less than its bound. Written from the contract: it shares no line with the search.
 */
export function checkMix(
  plan: MixPlan,
  order: MixOrder,
  mostCards: number | null = null,
  shouldStop: () => boolean = () => false,
): string[] {
  const faults = [...checkCuts(plan, order), ...checkBoxes(plan, order, mostCards)];
  const paid = plan.cuts.reduce((sum, cut) => sum + priceOf(cut.purchase.packs), 0);
  if (paid !== plan.priceMinor) faults.push(`the packs cost ${paid}, the plan says ${plan.priceMinor}`);
  if (plan.boundMinor > plan.priceMinor) faults.push('the bound is above the price');
  if (plan.proven !== (plan.boundMinor === plan.priceMinor))
    faults.push('"proven" does not follow from the bound');
  if (plan.boundMinor !== plan.proof.boundMinor) faults.push('the proof is of another bound');
  return [...faults, ...checkMixBound(plan, order, mostCards, shouldStop)];
}

function checkCuts({ cuts }: MixPlan, { formats, tool }: MixOrder): string[] {
  return cuts.flatMap(({ format, parts, plan, purchase }) => {
    const its = formats.find(({ sheet }) => sheet.id === format);
    if (its === undefined) return [`unknown format ${format}`];
    const faults = checkPlan(plan, parts, its.sheet, tool).map((fault) => `${format}: ${fault}`);
    if (plan.unplaced.length > 0) faults.push(`${format}: parts left out`);
    for (const { pack, count } of purchase.packs)
      if (count < 0 || !its.packs.some((sold) => sold.units === pack.units && sold.priceMinor === pack.priceMinor && sold.offer?.buy === pack.offer?.buy && sold.offer?.free === pack.offer?.free)) faults.push(`${format}: a pack that is not sold`); // biome-ignore format: one row
    const bought = purchase.packs.reduce((sum, { pack, count }) => sum + pack.units * count, 0);
    if (plan.sheets > its.sheet.onHand + bought)
      faults.push(`${format}: ${plan.sheets} sheets of ${its.sheet.onHand} on hand and ${bought} bought`);
    return faults;
  });
}

/** What packs cost at the till: an offer gives `free` more for every `buy` paid for. */
function priceOf(packs: MixPlan['cuts'][number]['purchase']['packs']): number {
  let sum = 0;
  for (const { pack, count } of packs) {
    const round = pack.offer ? pack.offer.buy + pack.offer.free : 1;
    for (let nth = 0; nth < count; nth++)
      if (!pack.offer || nth % round < pack.offer.buy) sum += pack.priceMinor;
  }
  return sum;
}

function checkBoxes({ cuts, shares }: MixPlan, order: MixOrder, mostCards: number | null): string[] {
  const faults: string[] = [];
  for (const { id, boxes, parts, cards } of order.lots) {
    const its = shares.filter(({ lot }) => lot === id);
    if (its.some(({ card }) => !cards.includes(card))) faults.push(`${id} comes from a card it may not`);
    const shared = its.reduce((sum, share) => sum + share.boxes, 0);
    if (shared !== boxes) faults.push(`${shared} of ${boxes} boxes of ${id}`);
    for (const share of its)
      for (const part of parts) {
        const pieces = cuts
          .filter(({ format }) => order.formats.some(({ sheet, card }) => sheet.id === format && card === share.card)) // biome-ignore format: one row
          .reduce((sum, cut) => sum + piecesLike(cut.parts, part), 0);
        if (pieces < share.boxes * part.count) faults.push(`${pieces} ${part.id} from ${share.card}`);
      }
  }
  const chosen = cardsOfChoice(order);
  const used = new Set(shares.flatMap(({ card }) => (chosen.includes(card) ? [card] : [])));
  if (mostCards !== null && used.size > mostCards) faults.push(`${used.size} cards, asked for ${mostCards}`);
  return faults;
}

const piecesLike = (parts: readonly SheetPart[], { id, across, up, grain }: SheetPart): number =>
  parts
    .filter((part) => part.id === id && part.across === across && part.up === up && part.grain === grain)
    .reduce((sum, { count }) => sum + count, 0);

/** Cards that a lot with a choice may take; a lot with one card alone counts for none. */
const cardsOfChoice = ({ lots }: MixOrder): string[] => [
  ...new Set(lots.flatMap(({ cards }) => (cards.length > 1 ? cards : []))),
];

/** Whether any mix costs at least `boundMinor`; what is wrong, or nothing. */
export function checkMixBound(
  { proof }: Pick<MixPlan, 'proof'>,
  order: MixOrder,
  mostCards: number | null = null,
  shouldStop: () => boolean = () => false,
): string[] {
  if (proof.boundMinor <= 0) return [];
  const choice = cardsOfChoice(order);
  const sets = mostCards === null ? [choice] : subsets(choice, Math.min(mostCards, choice.length));
  return sets.flatMap((cards) => {
    const key = [...cards].sort().join();
    const its = proof.choices.find((each) => each.cards !== null && [...each.cards].sort().join() === key) ?? proof.choices.find((each) => each.cards === null); // biome-ignore format: one row
    if (its === undefined) return [`no proof for ${key}`];
    const lots = order.lots.map((lot) =>
      lot.cards.length > 1 ? { ...lot, cards: lot.cards.filter((card) => cards.includes(card)) } : lot,
    );
    if (lots.some((lot) => lot.cards.length === 0)) return [];
    const formats = order.formats.filter(({ card }) => lots.some((lot) => lot.cards.includes(card)));
    const needs = its.rows.map((row) => needOf(row, { ...order, lots, formats }, shouldStop));
    const wrong = needs.find((need) => typeof need === 'string');
    if (typeof wrong === 'string') return [wrong];
    // No sheet is cut without a piece on it, so more sheets than pieces are never used.
    const pieces = lots.reduce((sum, { boxes, parts }) => sum + boxes * parts.reduce((each, { count }) => each + count, 0), 0); // biome-ignore format: one row
    const cheaper = buysCheaper(formats, needs as Need[], proof.boundMinor, pieces);
    return cheaper ? [`a purchase below ${proof.boundMinor} is not ruled out`] : [];
  });
}

const subsets = (cards: readonly string[], size: number): string[][] =>
  size === 0
    ? [[]]
    : cards.flatMap((card, at) => subsets(cards.slice(at + 1), size - 1).map((rest) => [card, ...rest]));

interface Need {
  /** Points that what is bought must hold. */
  readonly points: bigint;
  readonly most: ReadonlyMap<string, bigint>;
}

/** A row counted again: the most points of every format by the exact search of the sheet proofs. */
function needOf(row: MixRow, { lots, formats, tool }: MixOrder, shouldStop: () => boolean): Need | string {
  const pointsOf = (id: string, card: string): number => row.points[card]?.[id] ?? 0;
  const boxPoints = ({ parts, cards }: MixLot): bigint =>
    cards
      .map((card) => parts.reduce((sum, { id, count }) => sum + BigInt(pointsOf(id, card)) * BigInt(count), 0n)) // biome-ignore format: one row
      .sort((a, b) => (a < b ? -1 : 1))[0] ?? 0n;
  let points = lots.reduce((sum, lot) => sum + BigInt(lot.boxes) * boxPoints(lot), 0n);
  const most = new Map<string, bigint>();
  for (const { card, sheet } of formats) {
    const parts = lots
      .filter(({ cards }) => cards.includes(card))
      .flatMap((lot) => lot.parts.map((part) => ({ ...part, count: part.count * lot.boxes })));
    const points_ = Object.fromEntries(parts.map(({ id }) => [id, pointsOf(id, card)]));
    const held = mostPoints(points_, parts, sheet, tool, shouldStop);
    if (!Number.isFinite(held)) return 'the points on a sheet were not counted in time';
    if (held > (row.most[sheet.id] ?? 0))
      return `a sheet of ${sheet.id} can hold ${held} points, the proof says ${row.most[sheet.id] ?? 0}`;
    most.set(sheet.id, BigInt(held));
    points -= BigInt(sheet.onHand) * BigInt(held);
  }
  return { points, most };
}

const MOST_LOOKS = 2_000_000; // Purchases looked at before the proof is let go.

/** Whether some purchase for less than `limit` holds what every row needs; also if it cannot be told. */
function buysCheaper(
  formats: readonly MixFormat[],
  needs: readonly Need[],
  limit: number,
  pieces: number,
): boolean {
  if (limit <= 0) return false;
  const rows = needs.map(({ points, most }) => ({ points, each: formats.map(({ sheet }) => most.get(sheet.id) ?? 0n) })); // biome-ignore format: one row
  const ahead = rows.map(({ each }) => mostAhead(formats, each, limit));
  let looks = 0;
  const visit = (at: number, spent: number, left: readonly bigint[]): boolean => {
    if (++looks > MOST_LOOKS) return true;
    if (left.some((points, row) => points > 0n && ahead[row]!(at, limit - 1 - spent) < Number(points))) return false; // biome-ignore format: one row
    if (at === formats.length) return true;
    for (const { sheets, price } of purchases(formats[at]!, limit - spent)) {
      const after = left.map(
        (points, row) => points - BigInt(Math.min(sheets, pieces)) * rows[row]!.each[at]!,
      );
      if (visit(at + 1, spent + price, after)) return true;
    }
    return false;
  };
  return visit(0, 0, rows.map(({ points }) => points)); // biome-ignore format: one row
}

const known = new WeakMap<MixFormat, Map<number, { readonly sheets: number; readonly price: number }[]>>();

/** For every amount below `limit` that can be spent on a format: the most sheets it buys. */
function purchases(
  format: MixFormat,
  limit: number,
): readonly { readonly sheets: number; readonly price: number }[] {
  const its = known.get(format) ?? new Map<number, { sheets: number; price: number }[]>();
  known.set(format, its);
  const before = its.get(limit);
  if (before !== undefined) return before;
  const most = new Int32Array(Math.max(1, limit)).fill(-1);
  most[0] = 0;
  for (const { units, priceMinor, offer } of format.packs) {
    const ways = [[units, priceMinor], ...(offer ? [[units * (offer.buy + offer.free), priceMinor * offer.buy]] : [])]; // biome-ignore format: one row
    for (const [sheets = 0, price = 0] of ways)
      for (let spent = Math.max(1, price); spent < most.length; spent++)
        if (most[spent - price]! >= 0) most[spent] = Math.max(most[spent]!, most[spent - price]! + sheets);
  }
  const found: { sheets: number; price: number }[] = [];
  for (const [price, sheets] of most.entries())
    if (sheets >= 0 && sheets > (found.at(-1)?.sheets ?? -1)) found.push({ sheets, price });
  its.set(limit, found);
  return found;
}

/** The most points that formats from one on buy for an amount: a sum over all packs, amounts in grains rounded down in the buyer's favour. */
function mostAhead(
  formats: readonly MixFormat[],
  each: readonly bigint[],
  limit: number,
): (at: number, money: number) => number {
  const grain = Math.max(1, Math.ceil(limit / 10_000));
  const grains = Math.ceil(limit / grain) + 1;
  const tables: Float64Array[] = [new Float64Array(grains)];
  for (let at = formats.length - 1; at >= 0; at--) {
    const table = tables[0]!.slice();
    for (const { units, priceMinor, offer } of formats[at]!.packs)
      for (const round of offer
        ? [
            [1, 1],
            [offer.buy, offer.buy + offer.free],
          ]
        : [[1, 1]]) {
        // biome-ignore format: one row
        const cost = Math.floor((priceMinor * round[0]!) / grain);
        const gain = units * round[1]! * Number(each[at]!);
        if (gain === 0) continue;
        if (cost === 0) table.fill(Number.POSITIVE_INFINITY);
        for (let spent = cost; spent < grains; spent++) if (table[spent - cost]! + gain > table[spent]!) table[spent] = table[spent - cost]! + gain; // biome-ignore format: one row
      }
    tables.unshift(table);
  }
  return (at, money) => (money < 0 ? -1 : tables[at]![Math.min(grains - 1, Math.floor(money / grain))]!);
}
