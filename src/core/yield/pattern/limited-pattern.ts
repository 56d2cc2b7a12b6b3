import type { CellItem, CuttingGrid } from './cutting-grid';
import { joinPieces, keepWanted, type Pattern, type PatternTree, patternOf } from './pattern';

/**
 * A good pattern that takes no more of an item than is `wanted`: dynamic programming that carries one content a cell, copies beyond the
 * demand worth nothing. A heuristic, since the best content for one cell may leave too little for another. Free stages only.
 */
export class LimitedPatterns {
  private readonly grid: CuttingGrid;
  private readonly rows: number;
  private readonly columns: number;
  private readonly kinds: number;
  private readonly worth: Float64Array;
  private readonly content: Uint16Array;
  /** How a cell got its content: 0 nothing, > 0 item + 1, < 0 cut: -1 - 2·pair, one less if level. */
  private readonly how: Int32Array;
  /** The cell whose content this is: itself, or a smaller one. */
  private readonly origin: Int32Array;

  constructor(grid: CuttingGrid) {
    this.grid = grid;
    this.columns = grid.across.points.length;
    this.rows = grid.up.points.length;
    this.kinds = grid.problem.items.length;
    this.worth = new Float64Array(this.columns * this.rows);
    this.content = new Uint16Array(this.columns * this.rows * this.kinds);
    this.how = new Int32Array(this.columns * this.rows);
    this.origin = new Int32Array(this.columns * this.rows);
  }

  /** Steps that one search takes. */
  get work(): number {
    const { across, up } = this.grid;
    return 2 * (across.first.length * this.rows + up.first.length * this.columns) + this.content.length;
  }

  /** The pattern found for these values and wants. */
  find(values: ArrayLike<number>, wanted: readonly number[]): Pattern {
    const { rows, columns, worth } = this;
    // What an empty cell holds is never read, since a cut that leaves one is no better than the smaller piece.
    worth.fill(0);
    this.how.fill(0);
    for (let at = 0; at < this.origin.length; at++) this.origin[at] = at;
    for (const [index, { lie, column, row }] of this.grid.items.entries()) {
      const at = column * rows + row;
      const value = values[lie.item]!;
      if (wanted[lie.item]! <= 0 || value <= worth[at]!) continue;
      worth[at] = value;
      this.content.fill(0, at * this.kinds, (at + 1) * this.kinds);
      this.content[at * this.kinds + lie.item] = 1;
      this.how[at] = index + 1;
    }
    for (let i = 1; i < columns; i++) for (let j = 1; j < rows; j++) this.fillCell(i, j, values, wanted);
    return patternOf(keepWanted(this.read(columns * rows - 1), wanted), this.kinds);
  }

  private fillCell(i: number, j: number, values: ArrayLike<number>, wanted: readonly number[]): void {
    const { rows, worth } = this;
    const { across, up } = this.grid;
    const at = i * rows + j;
    if (worth[at - rows]! > worth[at]!) this.inherit(at, at - rows);
    if (worth[at - 1]! > worth[at]!) this.inherit(at, at - 1);
    const lastAcross = j < this.grid.shortRows ? across.from[i + 1]! : 0;
    for (let cut = across.from[i]!; cut < lastAcross; cut++) {
      const first = across.first[cut]! * rows + j;
      const second = across.rest[cut]! * rows + j;
      if (worth[first]! + worth[second]! > worth[at]!) this.tryCut(at, first, second, -1 - 2 * cut, values, wanted); // biome-ignore format: one line
    }
    const lastUp = i < this.grid.shortColumns ? up.from[j + 1]! : 0;
    for (let cut = up.from[j]!; cut < lastUp; cut++) {
      const first = at - j + up.first[cut]!;
      const second = at - j + up.rest[cut]!;
      if (worth[first]! + worth[second]! > worth[at]!) this.tryCut(at, first, second, -2 - 2 * cut, values, wanted); // biome-ignore format: one line
    }
  }

  private inherit(at: number, from: number): void {
    this.worth[at] = this.worth[from]!;
    this.origin[at] = this.origin[from]!;
  }

  private tryCut(
    at: number,
    first: number,
    second: number,
    how: number,
    values: ArrayLike<number>,
    wanted: readonly number[],
  ): void {
    const { worth, content, kinds, origin } = this;
    let both = worth[first]! + worth[second]!;
    const best = worth[at]!;
    const [a, b, to] = [origin[first]! * kinds, origin[second]! * kinds, at * kinds];
    for (let kind = 0; kind < kinds; kind++) {
      const over = content[a + kind]! + content[b + kind]! - wanted[kind]!;
      if (over > 0) {
        both -= over * values[kind]!;
        if (both <= best + 1e-12) return;
      }
    }
    worth[at] = both;
    this.how[at] = how;
    this.origin[at] = at;
    for (let kind = 0; kind < kinds; kind++) {
      const sum = content[a + kind]! + content[b + kind]!;
      content[to + kind] = Math.min(sum, wanted[kind]!);
    }
  }

  private read(cell: number): PatternTree | null {
    const { rows, grid } = this;
    const at = this.origin[cell]!;
    const code = this.how[at]!;
    if (code === 0) return null;
    if (code > 0) {
      const { lie } = grid.items[code - 1] as CellItem;
      return { kind: 'item', item: lie.item, turned: lie.turned };
    }
    const upright = (-1 - code) % 2 === 0;
    const cut = (-1 - code) >> 1;
    const [i, j] = [Math.floor(at / rows), at % rows];
    const first = upright ? grid.across.first[cut]! * rows + j : i * rows + grid.up.first[cut]!;
    const second = upright ? grid.across.rest[cut]! * rows + j : i * rows + grid.up.rest[cut]!;
    return joinPieces(upright, this.read(first), this.read(second));
  }
}
