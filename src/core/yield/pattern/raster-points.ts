/**
 * Sums of the given sizes, each used any number of times, up to `span`; ascending, 0 first. Every guillotine pattern can be pushed into a
 * corner until its cuts lie on these. Source: Christofides & Whitlock, Oper. Res. 25 (1977) 30-44 (normal patterns).
 */
export function normalPoints(sizes: readonly number[], span: number): Int32Array {
  const reached = new Uint8Array(span + 1);
  reached[0] = 1;
  let found = 1;
  for (const size of new Set(sizes)) {
    for (let at = size; at <= span; at++)
      if (reached[at - size] === 1 && reached[at] === 0) {
        reached[at] = 1;
        found++;
      }
  }
  const points = new Int32Array(found);
  for (let at = 0, next = 0; at <= span; at++) if (reached[at] === 1) points[next++] = at;
  return points;
}

/** Index of the last point not beyond `at`; points ascend from 0, `at` ≥ 0. */
function pointAtOrBelow(points: Int32Array, at: number): number {
  let low = 0;
  let high = points.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (points[middle]! <= at) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Index of the first point at or beyond `at`, or `points.length`. */
export const pointAtOrAbove = (points: Int32Array, at: number): number => {
  const below = pointAtOrBelow(points, at);
  return points[below]! >= at ? below : below + 1;
};

/**
 * The few normal points that matter: those left over, rounded down, when another is taken off the span. A piece may be widened to the next
 * of them without loss. Source: Scheithauer & Terno, EJOR 88 (1996) (raster points; from memory), argument in README.md.
 */
export function rasterPoints(normal: Int32Array, span: number, reach = span): Int32Array {
  const kept = new Set<number>([0]);
  // A piece within the tool's reach may be widened as far as the reach and no further, so what is left of the reach counts as well.
  for (const from of new Set([span, Math.min(span, reach)]))
    for (const point of normal) if (point <= from) kept.add(normal[pointAtOrBelow(normal, from - point)]!);
  return Int32Array.from(kept).sort();
}
