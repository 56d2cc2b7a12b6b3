import type { Bought, Paper, Supply } from '../../rows';
import type { ShoppingRow } from './shopping';

/** What the list says to buy of one row, as it is ticked off. */
export const tickOff = ({ id, packs, bought, short }: ShoppingRow): Bought => ({
  of: id,
  packs: packs.reduce((sum, { count }) => sum + count, 0) || short,
  units: bought || short,
  received: false,
});

/** The units in an entry: sheets, rolls, pieces or bottles. */
export const unitsOf = ({ packs, units }: Bought): number => units ?? packs;

/** One row of the list and what was bought of it. */
export interface BoughtRow {
  readonly row: ShoppingRow;
  /** Ticked off and not yet on hand. */
  readonly underway: Bought | null;
  readonly received: readonly Bought[];
  /** Units still to be bought beside what is underway. */
  readonly stillShort: number;
}

/** The list with its ticks. What was put on hand is on hand already, and no longer short. */
export const followShopping = (
  rows: readonly ShoppingRow[],
  bought: readonly Bought[] | undefined,
): BoughtRow[] =>
  rows.map((row) => {
    const mine = (bought ?? []).filter(({ of }) => of === row.id);
    const underway = mine.find(({ received }) => !received) ?? null;
    const received = mine.filter((each) => each.received);
    return {
      row,
      underway,
      received,
      stillShort: Math.max(0, row.short - (underway ? unitsOf(underway) : 0)),
    };
  });

const MOST_ON_HAND = 100_000;
const within = (count: number) => Math.min(MOST_ON_HAND, Math.max(0, count));

/** A paper with so many sheets more on hand. */
export const stockPaper = (paper: Paper, sheets: number): Paper => ({
  ...paper,
  onHandSheets: within(paper.onHandSheets + sheets),
});

/** A supply with so many rolls, pieces or bottles more on hand. */
export function stockSupply(supply: Supply, units: number): Supply {
  if (supply.kind === 'glue') return { ...supply, onHandBottles: within(supply.onHandBottles + units) };
  if ('rollMm' in supply) return { ...supply, onHandRolls: within(supply.onHandRolls + units) };
  return { ...supply, onHandPieces: within(supply.onHandPieces + units) };
}
