import { type At, boxOf, cornerAt, hullOf, type Ring } from '../../plane';

/** Offsets at which two outlines overlap, row by row of a grid: `runs[row - from]` holds pairs first, last column. */
export interface OverlapRows {
  readonly from: number;
  readonly runs: readonly Int32Array[];
}

/**
 * Where `moved` may not lie: every offset (columns and rows of `step` ticks) that brings its inside over the inside of `fixed`, or nearer than
 * `gap` along the sheet. Whole numbers throughout: insides meet just where the insides of two convex pieces do, and those where the offset lies
 * strictly inside their Minkowski sum. Source: Minkowski sums as no-fit polygons, Burke et al., EJOR 179 (2007) (from memory).
 */
export function overlapRows(
  fixed: readonly Ring[],
  moved: readonly Ring[],
  step: number,
  gap: number,
): OverlapRows {
  const sums = fixed.flatMap((a) => moved.map((b) => sumOf(a, b, gap)));
  const { bottom: low, top: high } = boxOf(sums.flat());
  const from = Math.floor(low / step) + 1;
  const rows: [number, number][][] = [];
  for (let row = from; row * step < high; row++) rows.push([]);
  for (const sum of sums) addRuns(sum, step, from, rows);
  return { from, runs: rows.map(joinRuns) };
}

/** The ring of all a − b, grown by `gap` each way. */
function sumOf(a: Ring, b: Ring, gap: number): Ring {
  const around = gap === 0 ? [[0, 0] as const] : ([[gap, gap], [gap, -gap], [-gap, gap], [-gap, -gap]] as const); // biome-ignore format: one line
  return hullOf(
    a.flatMap(([px, py]) => b.flatMap(([qx, qy]) => around.map(([x, y]): At => [px - qx + x, py - qy + y]))),
  );
}

/** Columns strictly inside the ring, for every row strictly inside. The quotients are far from the limits of a double, so floor is exact. */
function addRuns(ring: Ring, step: number, from: number, rows: [number, number][][]): void {
  const { bottom: low, top: high } = boxOf(ring);
  for (let row = Math.floor(low / step) + 1; row * step < high; row++) {
    const y = row * step;
    let [first, last] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
    for (const [at, [ax, ay]] of ring.entries()) {
      const [bx, by] = cornerAt(ring, at + 1);
      if (ay === by || y < Math.min(ay, by) || y > Math.max(ay, by)) continue;
      const rise = Math.abs(by - ay);
      const over = ax * rise + (bx - ax) * Math.abs(y - ay);
      // Card on the left of a→b: an edge that runs down bounds it on the left, one that runs up on the right.
      if (by < ay) first = Math.max(first, Math.floor(over / (rise * step)) + 1);
      else last = Math.min(last, Math.ceil(over / (rise * step)) - 1);
    }
    if (first <= last) rows[row - from]?.push([first, last]);
  }
}

function joinRuns(runs: readonly [number, number][]): Int32Array {
  const joined: number[] = [];
  for (const [first, last] of [...runs].sort((a, b) => a[0] - b[0])) {
    const end = joined[joined.length - 1];
    if (end !== undefined && first <= end + 1) joined[joined.length - 1] = Math.max(end, last);
    else joined.push(first, last);
  }
  return Int32Array.from(joined);
}

/** Whether the moved outline overlaps the fixed one at this offset. */
export function overlapsAt({ from, runs }: OverlapRows, column: number, row: number): boolean {
  const line = runs[row - from];
  if (line === undefined) return false;
  for (let at = 0; at < line.length; at += 2) if (column >= line[at]! && column <= line[at + 1]!) return true;
  return false;
}
