import { type Ticks, ticks } from '../units';
import type { EasyRow } from './easy-marks';

/** What a row costs, for one sentence: its hardest mark, the paper of one box, and how loose the thing lies. */
export interface RowCost {
  /** Place of the hardest mark in the row of marks: 0 whole inch or 10 mm, 1 half inch or 5 mm, … */
  readonly hardest: number;
  /** Boxes a sheet where the box is cut from one piece; null where it has several, or fits none. */
  readonly boxesPerSheet: number | null;
  readonly sheetsPerBox: number | null;
  /** Most that any side has beyond the need. */
  readonly loose: Ticks;
}

export function costOfRow(row: EasyRow, need: readonly [Ticks, Ticks, Ticks]): RowCost {
  const { sheetsPerBox, inside, marks } = row;
  const boxes = sheetsPerBox === null ? 0 : Math.round(1 / sheetsPerBox);
  const isWhole = sheetsPerBox !== null && boxes > 0 && Math.abs(boxes * sheetsPerBox - 1) < 1e-9;
  return {
    hardest: marks.reduce((most, { roughness }) => Math.max(most, roughness), 0),
    boxesPerSheet: isWhole ? boxes : null,
    sheetsPerBox,
    loose: ticks(inside.reduce((most, side, axis) => Math.max(most, side - (need[axis] ?? 0)), 0)),
  };
}
