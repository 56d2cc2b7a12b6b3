import { checkMixBound } from './check-mix';
import { partsOn } from './mix-program';
import { boundOf, fits, type MixFound, type MixOptions, MixSearch } from './mix-search';
import type { MixLot, MixOrder, MixPlan, MixProof } from './types';

const MOST_ROUNDS = 4;

/**
 * The cheapest way to cut an order from several papers, what is on hand used first, and the least that any way can cost. `mostCards`: boxes with
 * a choice come from so many cards at most, all told. Null: it cannot be cut from these papers at all, or not from what is on hand and on sale.
 */
export function cheapestMix(order: MixOrder, options: MixOptions = {}): MixPlan | null {
  const { mostCards = null, perLot = null } = options;
  const free = mostCards === null ? searchMix(order, options) : searchChoices(order, mostCards, options);
  if (free.plan === null) return null;
  const plan = perLot === null ? free.plan : withinPerLot(free.plan, order, perLot, options);
  return plan && counted({ ...plan, ...boundOf(plan, free.plan.proof) }, order, mostCards);
}

function searchMix(asked: MixOrder, options: MixOptions, upTo = Number.POSITIVE_INFINITY): MixFound {
  const lots = asked.lots
    .filter(({ boxes }) => boxes > 0)
    .map((lot) => ({ ...lot, cards: lot.cards.filter((card) => lot.parts.every((part) => fits(asked, part, card))) })); // biome-ignore format: one row
  if (lots.some(({ cards }) => cards.length === 0)) return { plan: null, proof: fitsNowhere(asked, upTo) };
  return new MixSearch({ ...asked, lots }, asked, options, upTo).run();
}

/** One row in which a part that fits no sheet of its card is worth a point, and no sheet holds any. */
function fitsNowhere(asked: MixOrder, boundMinor: number): MixProof {
  const points = Object.fromEntries(
    asked.formats.map(({ card }) => [card, Object.fromEntries(partsOn(asked, card).map((part) => [part.id, fits(asked, part, card) ? 0 : 1]))]), // biome-ignore format: one row
  );
  return { boundMinor, choices: [{ cards: null, rows: [{ points, most: {} }] }] };
}

/** Every choice of so many cards, one after the other. */
function searchChoices(order: MixOrder, mostCards: number, options: MixOptions): MixFound {
  const free = [...new Set(order.lots.flatMap(({ cards }) => (cards.length > 1 ? cards : [])))];
  const sets = choose(free, Math.min(mostCards, free.length));
  const { now, seconds = 4 } = options;
  const end = now ? now() + seconds * 1000 : 0;
  let plan: MixPlan | null = options.known ?? null;
  let bound = Number.POSITIVE_INFINITY;
  const choices: MixProof['choices'][number][] = [];
  for (const [at, cards] of sets.entries()) {
    const lots = order.lots.map((lot) => (lot.cards.length > 1 ? { ...lot, cards: lot.cards.filter((card) => cards.includes(card)) } : lot)); // biome-ignore format: one row
    if (lots.some((lot) => lot.cards.length === 0)) continue;
    const left = now ? Math.max(0.05, (end - now()) / 1000 / (sets.length - at)) : seconds;
    const { onProgress: _, known: __, ...quietly } = options;
    const found = searchMix({ ...order, lots }, { ...quietly, seconds: left }, plan?.priceMinor);
    choices.push({ cards, rows: found.proof.choices[0]?.rows ?? [] });
    bound = Math.min(bound, found.proof.boundMinor);
    if (found.plan === null || found.plan.priceMinor >= (plan?.priceMinor ?? Number.POSITIVE_INFINITY)) continue; // biome-ignore format: one row
    plan = found.plan;
    options.onProgress?.(plan);
  }
  const boundMinor = Math.min(bound, plan?.priceMinor ?? bound);
  return { plan: plan && { ...plan, ...boundOf(plan, { boundMinor, choices }) }, proof: { boundMinor, choices } }; // biome-ignore format: one row
}

const choose = <Item>(items: readonly Item[], size: number): Item[][] =>
  size === 0 ? [[]] : items.flatMap((item, at) => choose(items.slice(at + 1), size - 1).map((rest) => [item, ...rest])); // biome-ignore format: one row

/** A plan in which no lot comes from more cards than `perLot`: those it took most from are kept, and what is left is solved again. */
function withinPerLot(free: MixPlan, order: MixOrder, perLot: number, options: MixOptions): MixPlan | null {
  let plan: MixPlan | null = free;
  let lots = order.lots;
  for (let round = 0; round < MOST_ROUNDS && plan !== null; round++) {
    const shares: MixPlan['shares'] = plan.shares;
    const many = lots.filter((lot) => shares.filter((share) => share.lot === lot.id).length > perLot);
    if (many.length === 0) return plan;
    const kept = (lot: MixLot) => [...shares].filter((share) => share.lot === lot.id).sort((a, b) => b.boxes - a.boxes).slice(0, perLot).map(({ card }) => card); // biome-ignore format: one row
    lots = lots.map((lot) => (many.includes(lot) ? { ...lot, cards: kept(lot) } : lot));
    const { onProgress: _, known: __, ...quietly } = options;
    plan = searchMix({ ...order, lots }, quietly).plan;
  }
  return plan;
}

/** No bound leaves here that the checker, which shares nothing with the search, has not counted again. */
function counted(plan: MixPlan, order: MixOrder, mostCards: number | null): MixPlan {
  return checkMixBound(plan, order, mostCards).length === 0 ? plan : { ...plan, ...boundOf(plan, { boundMinor: 0, choices: [] }) }; // biome-ignore format: one row
}
