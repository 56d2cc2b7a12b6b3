import type { GlueSupply, Paper, PieceSupply, RollSupply, Supply } from '../../../shared/workbook';
import { proportionUp } from './money';
import { freePacks, type Pack, type Purchase } from './packs';
import { type Reason, reason } from './reason';
import type { PlannedGlue, PlannedLine, PlannedPaper, PlannedPieces, PlannedRolls } from './types';

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
  /** The working, line by line. */
  readonly why: readonly Reason[];
}

/** A row before it is decided which packs are bought. */
export interface ShoppingNeed {
  readonly id: string;
  readonly kind: ShoppingRow['kind'];
  readonly name: string;
  readonly unit: ShoppingRow['unit'];
  readonly need: number;
  readonly onHand: number;
  readonly sold: readonly Pack[];
  /** The amount used up, in parts of a unit: over / under units. */
  readonly used: { readonly over: number; readonly under: number };
  readonly why: readonly Reason[];
}

export const shortOf = ({ need, onHand }: Pick<ShoppingNeed, 'need' | 'onHand'>): number =>
  Math.max(0, need - onHand);

/** A paper's row: its sheets, with every line and part they are for. */
export function needPaper(planned: PlannedPaper, paper: Paper, lines: readonly PlannedLine[]): ShoppingNeed {
  const { sheets, lowerBound, proven } = planned.plan;
  const its = lines.filter(({ lineId }) => planned.parts.some((part) => part.lineId === lineId));
  return {
    id: paper.id,
    kind: 'paper',
    name: paper.name,
    unit: 'sheet',
    need: sheets,
    onHand: paper.onHandSheets,
    sold: paper.packs.map(({ sheets: units, priceMinor, offer }) => ({ units, priceMinor, offer })),
    used: { over: sheets, under: 1 },
    why: [
      ...its.map(countReason),
      ...planned.parts.map(({ name, count, across, up }) =>
        reason('{name}: {count} of {across} × {up}', {
          name,
          count,
          across: { length: across },
          up: { length: up },
        }),
      ),
      proven
        ? reason('Sheets to cut: {sheets}; no plan uses fewer', { sheets })
        : reason('Sheets to cut: {sheets}; any plan uses at least {lowerBound}', { sheets, lowerBound }),
    ],
  };
}

/** A row of tape, ribbon or twine: whole rolls, with how each roll is cut up. */
export function needRolls(
  planned: PlannedRolls,
  supply: RollSupply,
  lines: readonly PlannedLine[],
): ShoppingNeed {
  const { rolls, perBox, total, rollLength } = planned;
  return {
    id: supply.id,
    kind: supply.kind,
    name: supply.name,
    unit: 'roll',
    need: rolls.rolls,
    onHand: supply.onHandRolls,
    sold: [{ units: 1, priceMinor: supply.priceMinor, offer: supply.offer }],
    used: { over: total, under: rollLength },
    why: [
      ...lines.map(countReason),
      reason('Up to {perBox} a box, {total} in all', {
        perBox: { length: perBox },
        total: { length: total },
      }),
      ...rolls.fills.map(({ rolls: count, pieces, left }) =>
        reason('Rolls: {count} of {roll}; pieces to a roll: {pieces}, left of it: {left}', {
          count,
          roll: { length: rollLength },
          pieces: pieces.reduce((sum, piece) => sum + piece.count, 0),
          left: { length: left },
        }),
      ),
    ],
  };
}

/** A row of things counted onto or into the boxes. */
export const needPieces = (
  { need }: PlannedPieces,
  supply: PieceSupply,
  lines: readonly PlannedLine[],
): ShoppingNeed => ({
  id: supply.id,
  kind: supply.kind,
  name: supply.name,
  unit: 'piece',
  need,
  onHand: supply.onHandPieces,
  sold: supply.packs.map(({ pieces: units, priceMinor, offer }) => ({ units, priceMinor, offer })),
  used: { over: need, under: 1 },
  why: [...lines.map(countReason), reason('Pieces: {need} in all', { need })],
});

/** A row of glue: bottles to the gram above. */
export const needGlue = (
  planned: PlannedGlue,
  glue: GlueSupply,
  lines: readonly PlannedLine[],
): ShoppingNeed => ({
  id: glue.id,
  kind: 'glue',
  name: glue.name,
  unit: 'bottle',
  need: planned.bottles,
  onHand: glue.onHandBottles,
  sold: [{ units: 1, priceMinor: glue.priceMinor }],
  used: { over: planned.grams, under: glue.bottleGrams },
  why: [
    ...lines.map(countReason),
    reason('Glue: {grams} g on all joints, {bottleGrams} g to a bottle', {
      grams: planned.grams,
      bottleGrams: glue.bottleGrams,
    }),
  ],
});

function countReason({ name, ordered, spares, practice, making, perKit }: PlannedLine): Reason {
  const facts = {
    name,
    ordered,
    spares,
    practice,
    making,
    perKit: perKit ?? 0,
    kits: ordered / (perKit ?? 1),
  };
  const order = perKit === null ? '{ordered} ordered' : '{kits} kits × {perKit}';
  return reason(
    `{name}: ${order} + {spares} spare${practice > 0 ? ' + {practice} to practise on' : ''} = {making}`,
    facts,
  );
}

/** A row of the list, bought as this purchase says; without one, its price is not known. */
export function writeRow({ sold, used, why, ...row }: ShoppingNeed, purchase: Purchase | null): ShoppingRow {
  const short = shortOf(row);
  const packs = (purchase?.packs ?? []).map(({ pack: { units, priceMinor }, count, free }) => {
    return { units, priceMinor, count, free };
  });
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
    ],
  };
}

const packReason = ({ count, units, priceMinor, free }: BoughtPack): Reason =>
  reason(`{count} × pack of {units} at {price}${free > 0 ? ', {free} of them free' : ''}`, {
    count,
    units,
    free,
    price: { minor: priceMinor },
  });

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
