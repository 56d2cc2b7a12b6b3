import { countOnSheet } from '../../yield/count-on-sheet';
import { Effort } from '../../yield/stock/effort';
import { swayFrom } from '../../yield/stock/sway';
import { type Clock, cutFrom, cutWhole, fillPurchase } from './fill-purchase';
import { PurchaseSearch } from './least-purchase';
import { type FractionalMix, keyOf, MixProgram, partsOn } from './mix-program';
import { tellAllCards } from './mix-row';
import { stepsOf } from './price-list';
import type { MixCut, MixLot, MixOrder, MixPlan, MixProof, MixRow } from './types';
import { solveWholeMix, type WholeSolver } from './whole-program';

export interface MixOptions {
  readonly seconds?: number;
  /** Milliseconds from any clock; without one, tries are counted. */
  readonly now?: (() => number) | undefined;
  readonly shouldStop?: (() => boolean) | undefined;
  /** Solves programs in whole numbers; without one, dives have to do. */
  readonly solveWhole?: WholeSolver | undefined;
  /** From how many cards the boxes with a choice may come all told, and each lot by itself. */
  readonly mostCards?: number | null;
  readonly perLot?: number | null;
  /** A plan that is there already; it is bettered or kept. */
  readonly known?: MixPlan | null;
  readonly onProgress?: ((plan: MixPlan) => void) | undefined;
}

/** What a search came to: a plan, or none, and why none costs less than `proof.boundMinor`. */
export interface MixFound {
  readonly plan: MixPlan | null;
  readonly proof: MixProof;
}

const TRIES = 6; // Dives into one purchase. source: our own, measured
const PURCHASES = 60; // Purchases that are tried to be filled one after another. source: our own
const MOST_ROWS = 40;
/** Patterns taken in beside those of the linear program: from what share of the best one, and how many a format. source: our own, measured */
const ROOMS = [
  [0.8, 60],
  [0.4, 150],
  [0, 400],
] as const;
const WHOLE_SECONDS = 1; // One answer of the general solver. source: our own
const LEAST_SECONDS = 0.02; // Less than this is not worth writing the program down.

/** Whether a part fits some sheet of a card that is on hand or on sale. */
export const fits = ({ formats, tool }: MixOrder, part: MixLot['parts'][number], card: string): boolean =>
  formats.some((format) => format.card === card && (format.packs.length > 0 || format.sheet.onHand > 0) && countOnSheet(part, format.sheet, tool).count > 0); // biome-ignore format: one row

export const boundOf = ({ priceMinor }: Pick<MixPlan, 'priceMinor'>, proof: MixProof) => {
  const boundMinor = Math.min(proof.boundMinor, priceMinor);
  return { boundMinor, proven: boundMinor === priceMinor, proof: { ...proof, boundMinor } };
};

/** The search among purchases: the least that any can cost, and plans that fill them, each better than the one before. */
export class MixSearch {
  private readonly order: MixOrder;
  private readonly asked: MixOrder;
  /** Plans that cost as much are of no use. */
  private readonly upTo: number;
  private readonly options: MixOptions;
  private readonly clock: Clock;
  /** Seconds left by the clock; without one, as many as anyone asks for. */
  private readonly left: () => number;
  private readonly program: MixProgram;
  private readonly rows: MixRow[] = [];
  private readonly sway = swayFrom(1);
  private best: { readonly cuts: readonly MixCut[]; readonly priceMinor: number } | null = null;
  private bound = 0;
  private solved = 0;
  private widened = 0;

  /** `order` holds for every lot the cards alone that hold a whole box; `asked` is as it came. */
  constructor(order: MixOrder, asked: MixOrder, options: MixOptions, upTo: number) {
    this.upTo = upTo;
    this.order = order;
    this.asked = asked;
    this.options = options;
    const { now, shouldStop, seconds = 4 } = options;
    const end = now ? now() + seconds * 1000 : 0;
    this.clock = { now, isOver: () => (shouldStop?.() ?? false) || (now !== undefined && now() > end) };
    this.left = () => (now ? Math.max(0, (end - now()) / 1000) : Number.POSITIVE_INFINITY);
    this.program = new MixProgram(order);
  }

  run(): MixFound {
    const { order, clock, program } = this;
    if (this.options.known) this.best = this.options.known;
    this.tryCardsAlone();
    const prices = new Map(order.lots.map((lot) => [lot.id, this.shortPrice(lot)]));
    const root = program.solve(order, order.formats.map(({ sheet, packs }) => ({ free: sheet.onHand, price: unitPrice(packs) })), (lot) => 4 * prices.get(lot.id)!, clock.isOver); // biome-ignore format: one row
    const limit = this.best?.priceMinor ?? this.upToOr(2 * [...prices.values()].reduce((sum, price, at) => sum + price * order.lots[at]!.boxes, 0) + 1); // biome-ignore format: one row
    const search = new PurchaseSearch(order, limit, this.mostSheets());
    const addRow = (row: MixRow): void => {
      this.rows.push(row);
      search.addRow(row);
    };
    addRow(program.rowOf(root.priceOf));
    const worth = (lot: MixLot): number => Math.max(1e-6, ...lot.cards.map((card) => lot.parts.reduce((sum, { id, count }) => sum + count * root.priceOf(id, card), 0))); // biome-ignore format: one row
    const failed: number[][] = [];
    while (failed.length < PURCHASES) {
      const { atLeast, purchase } = search.cheapest(Math.min(limit, this.best?.priceMinor ?? limit), failed);
      if (failed.length === 0) this.bound = atLeast;
      if (purchase === null || clock.isOver()) break;
      const sheets = order.formats.map(({ sheet }, at) => sheet.onHand + purchase.sheets[at]!);
      const terms = sheets.map((free) => ({ free, price: null }));
      const fractional = program.solve(order, terms, worth, clock.isOver);
      if (fractional.short > 1e-4 && this.rows.length < MOST_ROWS) {
        const row = program.rowOf(fractional.priceOf);
        addRow(row);
        if (!search.holds(purchase.sheets)) continue;
      }
      if (this.tryWhole()) continue;
      const filled = this.fill(fractional, sheets);
      const wider = ROOMS[this.widened];
      if (filled === null && wider !== undefined) {
        const [share, room] = wider;
        this.widened++;
        program.takeIn(fractional.short > 1e-4 ? fractional.priceOf : root.priceOf, share, room, new Effort({ seconds: Math.min(0.1, this.left()), now: clock.now })); // biome-ignore format: one row
        continue;
      }
      if (filled === null) failed.push([...purchase.sheets]);
      else this.keep(filled);
    }
    return { plan: this.plan(), proof: this.proof() };
  }

  /** All patterns met so far, in whole numbers, by a general solver where there is one; whether it found anything better. */
  private tryWhole(): boolean {
    const { order, program, clock, options } = this;
    if (options.solveWhole === undefined || this.solved === program.patterns.length) return false;
    const seconds = Math.min(WHOLE_SECONDS, this.left());
    if (seconds < LEAST_SECONDS) return false;
    const before = this.best?.priceMinor;
    const limits = { below: before ?? Number.POSITIVE_INFINITY, target: this.bound, seconds };
    const whole = solveWholeMix(order, program.patterns, limits, options.solveWhole);
    if (whole !== null) this.keep(cutWhole(order, whole, clock));
    const better = this.best?.priceMinor !== before;
    // The same patterns are asked about again only where they gave something better: it may not have been the last word.
    if (!better) this.solved = program.patterns.length;
    return better;
  }

  private fill(fractional: FractionalMix, sheets: readonly number[]): MixCut[] | null {
    for (let i = 0; i < TRIES && !this.clock.isOver(); i++) {
      const filled = fillPurchase(this.order, this.program, fractional, sheets, this.clock, this.sway);
      if (filled !== null) return filled;
    }
    return null;
  }

  /** Every card that all lots share, and for every lot the card it is cheapest on by itself. */
  private tryCardsAlone(): void {
    const { lots, formats } = this.order;
    const cards = [...new Set(formats.map(({ card }) => card))];
    for (const card of cards) {
      if (!lots.every(({ cards }) => cards.length === 1 || cards.includes(card))) continue;
      this.tryLots(lots.map((lot) => (lot.cards.length === 1 ? lot : { ...lot, cards: [card] })));
    }
    if (this.best === null) this.tryLots(lots.map((lot) => ({ ...lot, cards: [lot.cards.reduce((a, b) => (this.priceOn(lot, b) < this.priceOn(lot, a) ? b : a))] }))); // biome-ignore format: one row
  }

  /** Lots of one card each, from whole sheets. */
  private tryLots(lots: readonly MixLot[]): void {
    const { order, clock } = this;
    const whole = order.formats.map((format, at) => ({ format, at })).filter(({ format }) => format.sheet.id === format.card); // biome-ignore format: one row
    const pieces = order.formats.map(() => new Map<string, number>());
    for (const { format, at } of whole)
      for (const { id, count } of partsOn({ ...order, lots }, format.card)) pieces[at]!.set(id, count);
    this.keep(cutFrom({ ...order, lots }, pieces, order.formats.map(() => Number.POSITIVE_INFINITY), clock)); // biome-ignore format: one row
  }

  private keep(cuts: readonly MixCut[] | null): void {
    if (cuts === null) return;
    const priceMinor = cuts.reduce((sum, { purchase }) => sum + purchase.priceMinor, 0);
    if (priceMinor >= (this.best?.priceMinor ?? Number.POSITIVE_INFINITY)) return;
    this.best = { cuts, priceMinor };
    const plan = this.plan();
    if (plan !== null) this.options.onProgress?.(plan);
  }

  private upToOr = (guess: number): number => (Number.isFinite(this.upTo) ? this.upTo : guess);

  private proof(): MixProof {
    const { rows, asked, order } = this;
    const told = rows.map((row) => tellAllCards(row, asked, order, (part, card) => fits(asked, part, card)));
    return { boundMinor: this.bound, choices: [{ cards: null, rows: told }] };
  }

  private plan(): MixPlan | null {
    const { best, order } = this;
    if (best === null) return null;
    const plan = { shares: sharesOf(order, best.cuts), ...best };
    return { ...plan, ...boundOf(best, this.proof()) };
  }

  /** Price of a box cut from sheets of its own, on the card where it is cheapest. */
  private shortPrice = (lot: MixLot): number => Math.min(...lot.cards.map((card) => this.priceOn(lot, card)));

  private priceOn({ parts }: MixLot, card: string): number {
    const { formats, tool } = this.order;
    const whole = formats.filter((format) => format.card === card && format.packs.length > 0);
    return parts.reduce((sum, part) => {
      const each = whole.map(({ sheet, packs }) => unitPrice(packs)! / Math.max(1e-3, countOnSheet(part, sheet, tool).count)); // biome-ignore format: one row
      return sum + part.count * Math.min(1e6, ...each);
    }, 0);
  }

  /** More sheets of one format than all parts would take one by one. */
  private mostSheets(): number {
    const { lots } = this.order;
    return Math.min(20_000, lots.reduce((sum, { boxes, parts }) => sum + boxes * parts.reduce((each, { count }) => each + count, 0), 0)); // biome-ignore format: one row
  }
}

/** What a sheet costs where most are had for the money; null: none are sold. */
const unitPrice = (packs: MixOrder['formats'][number]['packs']): number | null => {
  const each = packs.filter(({ units }) => units > 0).flatMap(stepsOf).map(({ units, price }) => price / units); // biome-ignore format: one row
  return each.length === 0 ? null : Math.min(...each);
};

/** Boxes by lot and card, counted from the pieces: each part of a lot says the same. */
function sharesOf({ lots, formats }: MixOrder, cuts: readonly MixCut[]): MixPlan['shares'] {
  const pieces = new Map<string, number>();
  for (const { format, parts } of cuts) {
    const { card } = formats.find(({ sheet }) => sheet.id === format)!;
    for (const { id, count } of parts) pieces.set(keyOf(id, card), (pieces.get(keyOf(id, card)) ?? 0) + count); // biome-ignore format: one row
  }
  return lots.flatMap(({ id, parts, cards }) =>
    cards.flatMap((card) => {
      const boxes = Math.floor(Math.min(...parts.map((part) => (pieces.get(keyOf(part.id, card)) ?? 0) / part.count))); // biome-ignore format: one row
      return boxes > 0 ? [{ lot: id, card, boxes }] : [];
    }),
  );
}
