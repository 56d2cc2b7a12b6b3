import type { GlueSupply, Paper, PieceSupply, RollSupply } from '../../rows';
import { type Reason, reason } from '../../units/reason';
import type { PlannedGlue, PlannedLine, PlannedPaper, PlannedPieces, PlannedRolls } from '../event/types';
import type { Pack } from './packs';
import type { ShoppingRow } from './shopping';

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
  readonly weighs?: ShoppingRow['weighs'];
  readonly why: readonly Reason[];
}

export const shortOf = ({ need, onHand }: Pick<ShoppingNeed, 'need' | 'onHand'>): number =>
  Math.max(0, need - onHand);

/** A paper's row: its sheets, with every line and part they are for, and `spoiled` more that went wrong while cutting. */
export function needPaper(
  planned: PlannedPaper,
  paper: Paper,
  lines: readonly PlannedLine[],
  spoiled = 0,
): ShoppingNeed {
  const { sheets, lowerBound, proven } = planned.plan;
  const its = lines.filter(({ lineId }) => planned.parts.some((part) => part.lineId === lineId));
  return {
    id: paper.id,
    kind: 'paper',
    name: paper.name,
    unit: 'sheet',
    need: sheets + spoiled,
    onHand: paper.onHandSheets,
    sold: paper.packs.map(({ sheets: units, priceMinor, offer }) => ({ units, priceMinor, offer })),
    used: { over: sheets + spoiled, under: 1 },
    weighs: { gsm: paper.gsm, caliperUm: paper.caliperUm },
    why: [
      ...its.map(countReason),
      ...planned.parts.map(({ name, count, across, up }) =>
        reason('{name}: {count} of {across} × {up}', {
          name: { text: name },
          count,
          across: { length: across },
          up: { length: up },
        }),
      ),
      proven
        ? reason('Sheets to cut: {sheets}; no plan uses fewer', { sheets })
        : reason('Sheets to cut: {sheets}; any plan uses at least {lowerBound}', { sheets, lowerBound }),
      ...(spoiled > 0 ? [reason('Sheets lost to mistakes: {spoiled}', { spoiled })] : []),
    ],
  };
}

/** A row of tape, ribbon or twine: whole rolls, with how each roll is cut up. */
export function needRolls(
  planned: PlannedRolls,
  supply: RollSupply,
  lines: readonly PlannedLine[],
): ShoppingNeed {
  const { rolls, perBox, total, rollLength, usable } = planned;
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
      reason('Up to {perBox} per box, {total} in all', {
        perBox: { length: perBox },
        total: { length: total },
      }),
      ...(usable < rollLength
        ? [
            reason('Waste of {percent}% leaves {usable} of each roll', {
              percent: supply.wastePercent ?? 0,
              usable: { length: usable },
            }),
          ]
        : []),
      ...rolls.fills.map(({ rolls: count, pieces, left }) =>
        reason('Rolls: {count} of {roll}; pieces per roll: {pieces}, leftover: {left}', {
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
    reason('Glue: {grams} g on all joints, {bottleGrams} g per bottle', {
      grams: planned.grams,
      bottleGrams: glue.bottleGrams,
    }),
  ],
});

export function countReason({ name, ordered, spares, practice, making, perKit }: PlannedLine): Reason {
  const facts = {
    name: { text: name },
    ordered,
    spares,
    practice,
    making,
    perKit: perKit ?? 0,
    kits: ordered / (perKit ?? 1),
  };
  const order = reason(perKit === null ? '{ordered} needed' : '{kits} kits × {perKit}', facts);
  return reason(
    practice > 0
      ? '{name}: {order} + {spares} spares + {practice} for practice = {making}'
      : '{name}: {order} + {spares} spares = {making}',
    { ...facts, order },
  );
}
