import { planSheets } from '../../yield/plan-sheets';
import type { SheetPart } from '../../yield/types';
import { cheapestPacks } from '../buying/packs';
import {
  type FractionalMix,
  isByPiece,
  keyOf,
  type MixPattern,
  type MixProgram,
  partsOn,
} from './mix-program';
import type { MixCut, MixLot, MixOrder } from './types';
import type { WholeMix } from './whole-program';

/** Pieces of every part that are cut from each format, in the order of the formats. */
type PiecesByFormat = readonly ReadonlyMap<string, number>[];

/** How long one format may be planned for, of the time there is. source: our own */
const SECONDS = 0.25;

export interface Clock {
  readonly isOver: () => boolean;
  readonly now?: (() => number) | undefined;
}

/** Tries to cut an order from so many sheets of each format, those on hand counted in: whole sheets instead of fractions. Null: it did not come out this time. */
export function fillPurchase(
  order: MixOrder,
  program: MixProgram,
  fractional: FractionalMix,
  sheets: readonly number[],
  clock: Clock,
  sway: () => number,
): MixCut[] | null {
  const lots = order.lots.flatMap((lot) => (isByPiece(lot) ? [lot] : shareOut(lot, fractional, sway)));
  const pieces = dive(lots, program, sheets, clock, sway);
  return pieces && cutFrom({ ...order, lots }, pieces, sheets, clock);
}

/** The boxes of a lot as whole boxes from each of its cards, near the fractions; chance decides who gets what is over. */
function shareOut(lot: MixLot, { shares }: FractionalMix, sway: () => number): MixLot[] {
  const exact = lot.cards.map((card) => shares.get(keyOf(lot.id, card)) ?? 0);
  const boxes = exact.map((share) => Math.floor(share + 1e-3));
  let over = lot.boxes - boxes.reduce((sum, count) => sum + count, 0);
  const order = exact
    .map((share, at) => ({ at, rank: share - Math.floor(share + 1e-3) + (share > 1e-3 ? 0.5 * sway() : -1) }))
    .sort((a, b) => b.rank - a.rank);
  for (let turn = 0; over > 0; turn++, over--) boxes[order[turn % order.length]!.at]!++;
  for (let turn = 0; over < 0; turn++) {
    const { at } = order[turn % order.length]!;
    if (boxes[at]! === 0) continue;
    boxes[at]!--;
    over++;
  }
  return lot.cards.flatMap((card, at) =>
    boxes[at]! > 0 ? { ...lot, boxes: boxes[at]!, cards: [card] } : [],
  );
}

/** Takes whole sheets out of the fractions, solves for the rest, and so on to the last. */
function dive(
  lots: readonly MixLot[],
  program: MixProgram,
  sheets: readonly number[],
  { isOver }: Clock,
  sway: () => number,
): PiecesByFormat | null {
  const left = [...sheets];
  const pieces = sheets.map(() => new Map<string, number>());
  const still = new Still(lots);
  const take = ({ format, counts }: MixPattern): void => {
    left[format]!--;
    const { card } = program.formats[format]!;
    for (const [part, count] of counts)
      for (let copy = 0; copy < count; copy++) {
        // What is cut beyond the need may be another part of the same size.
        const given = still.needs(part, card)
          ? part
          : program.standIns(format, part).find((other) => still.needs(other, card));
        if (given === undefined) continue;
        still.give(given, card);
        const held = pieces[format]!;
        held.set(given, (held.get(given) ?? 0) + 1);
      }
  };
  while (still.isOpen()) {
    if (isOver()) return null;
    const terms = left.map((free) => ({ free, price: null }));
    const { uses, short } = program.solve({ lots }, terms, () => 1, isOver, still.cut);
    if (short > 1e-3) return null;
    const open = uses.filter(({ pattern }) => left[pattern.format]! > 0);
    const whole = open.filter((use) => use.sheets >= 1 - 1e-4);
    for (const use of whole)
      for (let times = Math.floor(use.sheets + 1e-4); times > 0 && left[use.pattern.format]! > 0; times--)
        take(use.pattern);
    if (whole.length > 0) continue;
    const [first] = open.map((use) => ({ ...use, rank: use.sheets + 0.4 * sway() })).sort((a, b) => b.rank - a.rank); // biome-ignore format: one row
    if (first === undefined) return null;
    take(first.pattern);
  }
  return pieces;
}

/** What of every lot is still to be cut. */
class Still {
  /** Pieces by part and card that are there. */
  readonly cut = new Map<string, number>();
  private readonly open = new Map<string, { count: number }>();

  constructor(lots: readonly MixLot[]) {
    for (const { boxes, parts, cards } of lots)
      for (const { id, count } of parts) {
        const left = { count: boxes * count };
        for (const card of cards) this.open.set(keyOf(id, card), left);
      }
  }

  needs = (part: string, card: string): boolean => (this.open.get(keyOf(part, card))?.count ?? 0) > 0;

  give(part: string, card: string): void {
    const key = keyOf(part, card);
    this.open.get(key)!.count--;
    this.cut.set(key, (this.cut.get(key) ?? 0) + 1);
  }

  isOpen = (): boolean => [...this.open.values()].some(({ count }) => count > 0);
}

/** A choice in whole numbers, laid on its sheets. */
export function cutWhole(order: MixOrder, { uses, shares }: WholeMix, clock: Clock): MixCut[] | null {
  const lots = order.lots.flatMap((lot) => {
    if (isByPiece(lot)) return [lot];
    let left = lot.boxes;
    return lot.cards.flatMap((card): MixLot[] => {
      const boxes = Math.min(left, shares.get(keyOf(lot.id, card)) ?? 0);
      left -= boxes;
      return boxes > 0 ? [{ ...lot, boxes, cards: [card] }] : [];
    });
  });
  if (lots.reduce((sum, { boxes }) => sum + boxes, 0) < order.lots.reduce((sum, { boxes }) => sum + boxes, 0)) return null; // biome-ignore format: one row
  const pieces = order.formats.map(() => new Map<string, number>());
  const sheets = order.formats.map(() => 0);
  for (const { pattern, sheets: times } of uses) {
    sheets[pattern.format]! += times;
    const held = pieces[pattern.format]!;
    for (const [part, count] of pattern.counts) held.set(part, (held.get(part) ?? 0) + count * times);
  }
  return cutFrom({ ...order, lots }, pieces, sheets, clock);
}

/** Only what is wanted, planned format by format; null where a format takes more sheets than there are. Offcuts are filled first. */
export function cutFrom(
  { lots, formats, tool }: MixOrder,
  pieces: PiecesByFormat,
  sheets: readonly number[],
  { isOver, now }: Clock,
): MixCut[] | null {
  const wanted = new Map<MixLot, Map<string, number>>(
    lots.map((lot) => [lot, new Map(lot.parts.map(({ id, count }) => [id, count * lot.boxes]))]),
  );
  const offcutsFirst = [...formats.keys()].sort((a, b) => Number(formats[a]!.packs.length > 0) - Number(formats[b]!.packs.length > 0)); // biome-ignore format: one row
  const cuts: MixCut[] = [];
  for (const at of offcutsFirst) {
    const { card, sheet, packs } = formats[at]!;
    const parts = partsOn({ lots, formats, tool }, card).flatMap((part): SheetPart[] => {
      const lot = lots.find(({ cards, parts }) => cards.includes(card) && parts.some(({ id }) => id === part.id))!; // biome-ignore format: one row
      const still = wanted.get(lot)!;
      const count = Math.min(pieces[at]!.get(part.id) ?? 0, still.get(part.id)!);
      still.set(part.id, still.get(part.id)! - count);
      return count > 0 ? [{ ...part, count }] : [];
    });
    if (parts.length === 0) continue;
    let enough = false;
    const plan = planSheets(parts, sheet, tool, {
      seconds: SECONDS,
      shouldStop: () => enough || isOver(),
      now,
      onProgress: (better) => {
        enough = better.sheets <= sheets[at]!;
      },
    });
    if (plan.sheets > sheets[at]! || plan.unplaced.length > 0) return null;
    const purchase = cheapestPacks(Math.max(0, plan.sheets - sheet.onHand), packs);
    if (purchase === null) return null;
    cuts.push({ format: sheet.id, onHand: sheet.onHand, parts, plan, purchase });
  }
  return [...wanted.values()].every((still) => [...still.values()].every((count) => count === 0)) ? cuts : null; // biome-ignore format: one row
}
