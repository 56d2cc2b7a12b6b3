import type { Paper, RollSupply } from '../../../shared/workbook';
import { proportionUp } from './money';
import { cheapestPacks, type Pack } from './packs';
import { type Reason, reason } from './reason';
import type { PlannedLine, PlannedPaper, PlannedRolls, ShoppingRow } from './types';

/** A paper's row: sheets in the cupboard first, then the cheapest packs. */
export function shopForPaper(
  planned: PlannedPaper,
  paper: Paper,
  lines: readonly PlannedLine[],
): ShoppingRow {
  const packs = paper.packs.map(({ sheets, priceMinor }) => ({ units: sheets, priceMinor }));
  const why = [
    ...countReasons(lines.filter(({ lineId }) => planned.parts.some((part) => part.lineId === lineId))),
    ...planned.parts.map(({ name, count, across, up }) =>
      reason('{name}: {count} of {across} × {up}', {
        name,
        count,
        across: { length: across },
        up: { length: up },
      }),
    ),
    planned.plan.proven
      ? reason('Sheets to cut: {sheets}; no plan uses fewer', { sheets: planned.plan.sheets })
      : reason('Sheets to cut: {sheets}; any plan uses at least {bound}', {
          sheets: planned.plan.sheets,
          bound: planned.plan.lowerBound,
        }),
  ];
  const row = {
    id: paper.id,
    kind: 'paper',
    name: paper.name,
    unit: 'sheet',
    need: planned.plan.sheets,
  } as const;
  return buy({ ...row, onHand: paper.onHandSheets, why }, packs, cheapestWorth(row.need, packs));
}

/** A row of tape or ribbon: whole rolls in the drawer first, then rolls at their price. */
export function shopForRolls(
  planned: PlannedRolls,
  supply: RollSupply,
  lines: readonly PlannedLine[],
): ShoppingRow {
  const { rolls, perBox, total, rollLength } = planned;
  const why = [
    ...countReasons(lines),
    reason('Up to {perBox} a box, {total} in all', { perBox: { length: perBox }, total: { length: total } }),
    ...rolls.fills.map(({ rolls: count, pieces, left }) =>
      reason('Rolls: {count} of {roll}, each cut into {pieces} pieces with {left} over', {
        count,
        roll: { length: rollLength },
        pieces: pieces.reduce((sum, piece) => sum + piece.count, 0),
        left: { length: left },
      }),
    ),
  ];
  const row = {
    id: supply.id,
    kind: planned.kind,
    name: supply.name,
    unit: 'roll',
    need: rolls.rolls,
  } as const;
  const used = proportionUp(supply.priceMinor, total, rollLength);
  return buy(
    { ...row, onHand: supply.onHandRolls, why },
    [{ units: 1, priceMinor: supply.priceMinor }],
    used,
  );
}

const countReasons = (lines: readonly PlannedLine[]): Reason[] =>
  lines.map(({ name, ordered, spares, making }) =>
    reason('{name}: {ordered} ordered + {spares} spare = {making}', { name, ordered, spares, making }),
  );

type Wanted = Pick<ShoppingRow, 'id' | 'kind' | 'name' | 'unit' | 'need' | 'onHand' | 'why'>;

function buy(wanted: Wanted, sold: readonly Pack[], usedMinor: number | null): ShoppingRow {
  const { need, onHand } = wanted;
  const short = Math.max(0, need - onHand);
  const purchase = cheapestPacks(short, sold);
  const packs = purchase?.packs.map(({ pack, count }) => ({ ...pack, count })) ?? [];
  const bought = purchase?.units ?? 0;
  return {
    ...wanted,
    short,
    packs,
    bought,
    leftOver: Math.max(0, onHand + bought - need),
    priceMinor: purchase?.priceMinor ?? null,
    usedMinor,
    why: [
      ...wanted.why,
      reason('{need} needed − {onHand} on hand = {short} to buy', { need, onHand, short }),
      ...packs.map(({ count, units, priceMinor }) =>
        reason('{count} × pack of {units} at {price}', { count, units, price: { minor: priceMinor } }),
      ),
    ],
  };
}

/** What so many units are worth at the price of the pack that is cheapest a unit; null when nothing is sold. */
function cheapestWorth(units: number, sold: readonly Pack[]): number | null {
  const worths = sold
    .filter((pack) => pack.units > 0)
    .map((pack) => proportionUp(pack.priceMinor, units, pack.units));
  return worths.length > 0 ? Math.min(...worths) : null;
}
