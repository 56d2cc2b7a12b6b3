/** Rows of cells, each a set of bits: bit 0 is the leftmost. */
type Cells = readonly number[];

/**
 * The most copies of a shape of unit cells that lie on a sheet of cells, in any of the given turns: every way is tried, cell by cell from the
 * near left corner. Of two ways that leave the same cells to fill, only the one with more copies is followed. At most 30 cells across.
 * Shares nothing with the search that it checks.
 */
export function mostCopies(turns: readonly Cells[], across: number, up: number): number {
  interface Turned {
    readonly rows: Cells;
    readonly wide: number;
    readonly first: number;
    readonly size: number;
  }
  const shapes = turns.map((rows): Turned => {
    const wide = Math.max(...rows.map((row) => 32 - Math.clz32(row)));
    const first = 31 - Math.clz32(rows[0]! & -rows[0]!);
    return { rows, wide, first, size: rows.reduce((sum, row) => sum + bits(row), 0) };
  });
  const size = shapes[0]!.size;
  const depth = Math.max(...shapes.map(({ rows }) => rows.length));
  const full = 2 ** across - 1;
  // Row by row: states are the cells already taken in this row and the next ones, with the most copies so far.
  let states = new Map<string, { window: number[]; copies: number; waste: number }>();
  const start = new Array<number>(depth).fill(0);
  states.set(start.join(), { window: start, copies: 0, waste: 0 });
  let best = 0;
  for (let y = 0; y < up; y++) {
    const next: typeof states = new Map();
    for (const { window, copies, waste } of states.values()) {
      const visit = (taken: readonly number[], from: number, more: number, lost: number): void => {
        best = Math.max(best, more);
        // Not even all cells ahead would give more than what is known.
        const ahead = (up - y) * across - taken.reduce((sum, row) => sum + bits(row), 0) - (lost - waste);
        if (more + Math.floor(ahead / size) <= best) return;
        let x = from;
        while (x < across && ((taken[0]! >> x) & 1) === 1) x++;
        if (x === across) {
          const rest = [...taken.slice(1), 0];
          const key = rest.join();
          const known = next.get(key);
          if (known === undefined || known.copies < more)
            next.set(key, { window: rest, copies: more, waste: 0 });
          return;
        }
        for (const { rows, wide, first } of shapes) {
          const left = x - first;
          if (left < 0 || left + wide > across || y + rows.length > up) continue;
          if (rows.some((row, at) => ((row << left) & taken[at]! & full) !== 0)) continue;
          visit(taken.map((row, at) => row | ((rows[at] ?? 0) << left)), x + 1, more + 1, lost); // biome-ignore format: one line
        }
        visit(taken, x + 1, more, lost + 1);
      };
      visit(window, 0, copies, waste);
    }
    states = next;
  }
  return best;
}

function bits(row: number): number {
  let count = 0;
  for (let left = row; left !== 0; left &= left - 1) count++;
  return count;
}
