import { fewConvexParts, type Ring } from '../../plane';
import type { Lie } from './outline';
import { type OverlapRows, overlapRows, overlapsAt } from './overlap-rows';

/** Where one outline lies: which of its lies, and the column and row of its box's lower left corner. */
export interface Place {
  readonly lie: number;
  readonly column: number;
  readonly row: number;
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
  room(lie: number, across: number, up: number): { readonly columns: number; readonly rows: number } {
    const { across: wide, up: high } = this.lies[lie]!;
    const along = (space: number) => (space < 0 ? 0 : Math.floor(space / this.step) + 1);
    return { columns: along(across - wide), rows: along(up - high) };
  }
}

export interface SeparateLimits {
  readonly moves: number;
  /** True to give up now; asked every few moves. */
  readonly stop: () => boolean;
  /** From 0 to 1, seeded. */
  readonly random: () => number;
}

/**
 * Tries to lay these parts on a sheet so that none overlap: again and again one that does is moved to where it overlaps least, and overlaps that
 * will not go away count more each time. Null: not found within the limits. Source: guided local search for packing, Voudouris & Tsang 1999;
 * Egeblad, Nielsen, Odgaard, EJOR 183 (2007) (from memory); the tables by rows are our own.
 */
export function separate(
  grid: NestGrid,
  kindOf: readonly number[],
  start: readonly (Place | null)[],
  sheet: { readonly across: number; readonly up: number },
  limits: SeparateLimits,
): readonly Place[] | null {
  const count = kindOf.length;
  const weights = new Int32Array(count * count).fill(1);
  const hits = new Uint8Array(count * count);
  const hitCount = new Int32Array(count);
  const places: Place[] = [];
  const rooms = grid.lies.map((_, lie) => grid.room(lie, sheet.across, sheet.up));
  const sums = new Int32Array(Math.max(1, ...rooms.map(({ columns, rows }) => (columns + 1) * rows)));
  const fits = (place: Place | null): place is Place =>
    place !== null && place.column < rooms[place.lie]!.columns && place.row < rooms[place.lie]!.rows;
  const draw = (below: number) => Math.min(below - 1, Math.floor(limits.random() * below));

  for (const [at, kind] of kindOf.entries()) {
    const lies = grid.ofKind[kind]!.filter((lie) => rooms[lie]!.columns > 0 && rooms[lie]!.rows > 0);
    if (lies.length === 0) return null;
    const known = start[at] ?? null;
    const lie = lies[draw(lies.length)]!;
    places.push(
      fits(known) ? known : { lie, column: draw(rooms[lie]!.columns), row: draw(rooms[lie]!.rows) },
    );
  }
  const note = (a: number, b: number, hit: number) => {
    const change = hit - hits[a * count + b]!;
    if (change === 0) return;
    hits[a * count + b] = hit;
    hits[b * count + a] = hit;
    hitCount[a]! += change;
    hitCount[b]! += change;
  };
  const meet = (part: number) => {
    for (let other = 0; other < count; other++)
      if (other !== part) note(part, other, grid.overlap(places[part]!, places[other]!) ? 1 : 0);
  };
  for (let part = 0; part < count; part++) meet(part);

  /** From column `at` on, the line of this row rises by `change` more a column; what begins left of the sheet is carried to its first column. */
  const bend = (base: number, at: number, columns: number, change: number) => {
    if (at >= columns) return;
    sums[base + Math.max(0, at)]! += change;
    if (at < 0) sums[base + columns]! -= change * at;
  };

  /** The place where this part overlaps least; one of the equals, by lot. */
  const leastPlace = (part: number): Place => {
    let [least, seen, best] = [Number.POSITIVE_INFINITY, 0, places[part]!];
    for (const lie of grid.ofKind[kindOf[part]!]!) {
      const { columns, rows } = rooms[lie]!;
      if (columns === 0 || rows === 0) continue;
      const stride = columns + 1;
      sums.fill(0, 0, stride * rows);
      for (let other = 0; other < count; other++) {
        if (other === part) continue;
        const { lie: fixed, column, row } = places[other]!;
        const { from, runs } = grid.table(fixed, lie);
        const weight = weights[part * count + other]!;
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
            bend(base, first, columns, weight);
            bend(base, first + top, columns, -weight);
            bend(base, last - top + 2, columns, -weight);
            bend(base, last + 2, columns, weight);
          }
        }
      }
      for (let row = 0; row < rows; row++) {
        const base = row * stride;
        let sum = sums[base + columns]!;
        let slope = 0;
        for (let column = 0; column < columns; column++) {
          slope += sums[base + column]!;
          sum += slope;
          if (sum > least) continue;
          if (sum < least) [least, seen] = [sum, 0];
          seen++;
          if (limits.random() * seen < 1) best = { lie, column, row };
        }
      }
    }
    return best;
  };

  for (let move = 0; move < limits.moves; move++) {
    if ((move & 7) === 0 && limits.stop()) return null;
    let colliding = 0;
    for (let part = 0; part < count; part++) if (hitCount[part]! > 0) colliding++;
    if (colliding === 0) return places;
    let pick = draw(colliding);
    let part = 0;
    for (; part < count; part++) if (hitCount[part]! > 0 && pick-- === 0) break;
    places[part] = leastPlace(part);
    meet(part);
    for (let other = 0; other < count; other++)
      if (hits[part * count + other] === 1) {
        weights[part * count + other]! += 1;
        weights[other * count + part]! += 1;
      }
  }
  return null;
}
