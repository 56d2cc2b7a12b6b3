import { fewConvexParts, type Ring } from '../../plane';
import type { Lie } from './outline';
import { type OverlapRows, overlapRows, overlapsAt } from './overlap-rows';

/** Where one outline lies: which of its lies, and the column and row of its box's lower left corner. */
export interface Place {
  readonly lie: number;
  readonly column: number;
  readonly row: number;
}

/** Columns and rows where a lie stays on a sheet. */
export interface LieRoom {
  readonly columns: number;
  readonly rows: number;
}

/** The same outlines on one grid: all ways to lie of all kinds of part in one list, with the tables of where they overlap. */
export class NestGrid {
  readonly lies: readonly Lie[];
  /** Indices into `lies` for every kind of part. */
  readonly ofKind: readonly (readonly number[])[];
  readonly step: number;
  private readonly gap: number;
  private readonly pieces: readonly (readonly Ring[])[];
  private readonly tables: (OverlapRows | undefined)[] = [];

  constructor(kinds: readonly (readonly Lie[])[], step: number, gap: number) {
    this.step = step;
    this.gap = gap;
    this.lies = kinds.flat();
    this.pieces = this.lies.map(({ ring }) => fewConvexParts(ring));
    let next = 0;
    this.ofKind = kinds.map((lies) => lies.map(() => next++));
  }

  table(fixed: number, moved: number): OverlapRows {
    const at = fixed * this.lies.length + moved;
    this.tables[at] ??= overlapRows(this.pieces[fixed]!, this.pieces[moved]!, this.step, this.gap);
    return this.tables[at];
  }

  overlap(a: Place, b: Place): boolean {
    return overlapsAt(this.table(a.lie, b.lie), b.column - a.column, b.row - a.row);
  }

  /** Columns and rows where a lie stays on a sheet of this size. */
  room(lie: number, across: number, up: number): LieRoom {
    const { across: wide, up: high } = this.lies[lie]!;
    const along = (space: number) => (space < 0 ? 0 : Math.floor(space / this.step) + 1);
    return { columns: along(across - wide), rows: along(up - high) };
  }
}
