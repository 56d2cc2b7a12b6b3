import type { LieRoom, NestGrid, Place } from './nest-grid';

/** Finds where one part overlaps the others least, by weight. */
export class LeastOverlap {
  private readonly grid: NestGrid;
  private readonly rooms: readonly LieRoom[];
  private readonly random: () => number;
  /** For each place of one lie how its overlap bends from column to column: a slope is summed up twice to be read. */
  private readonly sums: Int32Array;

  constructor(grid: NestGrid, rooms: readonly LieRoom[], random: () => number) {
    this.grid = grid;
    this.rooms = rooms;
    this.random = random;
    this.sums = new Int32Array(Math.max(1, ...rooms.map(({ columns, rows }) => (columns + 1) * rows)));
  }

  /** The place of part `part`, of this kind, where it overlaps least; one of the equals, by lot. `weights`: of every pair of parts, row by row. */
  placeOf(part: number, kind: number, places: readonly Place[], weights: Int32Array): Place {
    let [least, seen, best] = [Number.POSITIVE_INFINITY, 0, places[part]!];
    for (const lie of this.grid.ofKind[kind]!) {
      const { columns, rows } = this.rooms[lie]!;
      if (columns === 0 || rows === 0) continue;
      this.addUp(part, lie, places, weights);
      for (let row = 0; row < rows; row++) {
        const base = row * (columns + 1);
        let sum = this.sums[base + columns]!;
        let slope = 0;
        for (let column = 0; column < columns; column++) {
          slope += this.sums[base + column]!;
          sum += slope;
          if (sum > least) continue;
          if (sum < least) [least, seen] = [sum, 0];
          seen++;
          if (this.random() * seen < 1) best = { lie, column, row };
        }
      }
    }
    return best;
  }

  /** Notes for one lie of a part how deep it overlaps the others everywhere. */
  private addUp(part: number, lie: number, places: readonly Place[], weights: Int32Array): void {
    const { columns, rows } = this.rooms[lie]!;
    const stride = columns + 1;
    this.sums.fill(0, 0, stride * rows);
    for (let other = 0; other < places.length; other++) {
      if (other === part) continue;
      const { lie: fixed, column, row } = places[other]!;
      const { from, runs } = this.grid.table(fixed, lie);
      const weight = weights[part * places.length + other]!;
      const bottom = row + from;
      for (let line = Math.max(0, -bottom); line < runs.length && bottom + line < rows; line++) {
        const run = runs[line]!;
        const base = (bottom + line) * stride;
        const rise = Math.min(line + 1, runs.length - line);
        for (let at = 0; at < run.length; at += 2) {
          const first = column + run[at]!;
          const last = column + run[at + 1]!;
          if (last < 0 || first >= columns) continue;
          // How deep: the fewest steps that lead out of the run, or up or down out of the table. Kept as bends of a line.
          const top = Math.min(rise, (last - first + 2) >> 1);
          this.bend(base, first, columns, weight);
          this.bend(base, first + top, columns, -weight);
          this.bend(base, last - top + 2, columns, -weight);
          this.bend(base, last + 2, columns, weight);
        }
      }
    }
  }

  /** From column `at` on, the line of this row rises by `change` more a column; what begins left of the sheet is carried to its first column. */
  private bend(base: number, at: number, columns: number, change: number): void {
    if (at >= columns) return;
    this.sums[base + Math.max(0, at)]! += change;
    if (at < 0) this.sums[base + columns]! -= change * at;
  }
}
