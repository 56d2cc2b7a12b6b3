import type { CuttingTool, SheetPaper, SheetPart } from '../types';

/** A way to lie of a part that has points: its size with one kerf added. */
interface Shape {
  readonly across: number;
  readonly up: number;
  readonly points: number;
}

/**
 * The most points that edge-to-edge cuts get out of one sheet, exactly: a plain search from the whole sheet down, remembering every size of
 * piece met. Works from the parts and the paper themselves and shares no line with the solver. Points are whole and their sums stay
 * below 2^53. Stopped before it is through, it answers infinity: then nothing follows. Source: Gilmore & Gomory, Oper. Res. 14 (1966) 1045-1074.
 */
export function mostPoints(
  points: Readonly<Record<string, number>>,
  parts: readonly SheetPart[],
  paper: SheetPaper,
  tool: CuttingTool,
  shouldStop: () => boolean = () => false,
): number {
  const shapes = shapesOf(points, parts, paper, tool.kerf);
  const { left, right, near, far } = paper.squaring;
  const across = paper.across - left - right + tool.kerf;
  const up = paper.up - near - far + tool.kerf;
  const fitting = shapes.filter((shape) => shape.across <= across && shape.up <= up);
  if (fitting.length === 0) return 0;
  const reach = tool.longestCut === null ? Number.POSITIVE_INFINITY : tool.longestCut + tool.kerf;
  const limited = reach < Math.max(across, up);
  const widths = sizesAlong(fitting.map((shape) => shape.across), across, limited); // biome-ignore format: one line
  const heights = sizesAlong(fitting.map((shape) => shape.up), up, limited); // biome-ignore format: one line
  const search: Search = {
    shapes: fitting,
    widths,
    heights,
    reach,
    shouldStop,
    single: singles(fitting, widths, heights, reach),
  };
  if (tool.stages === 'free') return last(sweep(search, true, true, search.single));
  let [upright, level] = [search.single, search.single];
  for (let stage = 0; stage < tool.stages; stage++)
    [upright, level] = [sweep(search, true, false, level), sweep(search, false, true, upright)];
  if (shouldStop()) return Number.POSITIVE_INFINITY;
  return Math.max(last(upright), last(level));
}

function shapesOf(
  points: Readonly<Record<string, number>>,
  parts: readonly SheetPart[],
  paper: SheetPaper,
  kerf: number,
): Shape[] {
  // biome-ignore format: one line
  return parts.flatMap((part) => {
    const worth = points[part.id] ?? 0;
    if (!Number.isSafeInteger(worth) || worth < 0) throw new RangeError(`points of ${part.id}: ${worth}`);
    if (worth === 0) return [];
    const straight = { across: part.across + kerf, up: part.up + kerf, points: worth };
    const turned = { across: part.up + kerf, up: part.across + kerf, points: worth };
    if (part.grain === 'free' || paper.grain === 'none') return [straight, turned];
    return [part.grain === paper.grain ? straight : turned];
  });
}

interface Search {
  readonly shapes: readonly Shape[];
  readonly widths: readonly number[];
  readonly heights: readonly number[];
  readonly reach: number;
  readonly shouldStop: () => boolean;
  /** Points of each size used for one part alone. */
  readonly single: readonly Float64Array[];
}

const last = (table: readonly Float64Array[]): number => table.at(-1)?.at(-1) ?? 0;

/** Largest of ascending `sizes` that is at most `length`, as an index; `sizes` starts with 0. */
function roundDown(sizes: readonly number[], length: number): number {
  let [low, high] = [0, sizes.length];
  while (high - low > 1) {
    const middle = (low + high) >>> 1;
    if (sizes[middle]! <= length) low = middle;
    else high = middle;
  }
  return low;
}

/**
 * Sizes worth looking at: sums of part sizes, and of those only what remains, rounded down to a sum, when a sum is taken off the span. With a
 * limited tool every sum and the span itself: a piece rounded down may be one that it can cut where the larger one was not.
 */
function sizesAlong(lengths: readonly number[], span: number, limited: boolean): number[] {
  const sums = new Set([0]);
  for (const length of new Set(lengths))
    for (const sum of sums) if (sum + length <= span) sums.add(sum + length);
  const ascending = [...sums].sort((a, b) => a - b);
  if (limited) return sums.has(span) ? ascending : [...ascending, span];
  const remaining = ascending.map((sum) => ascending[roundDown(ascending, span - sum)]!);
  return [...new Set([0, ...remaining])].sort((a, b) => a - b);
}

/** Trimming a piece to one shape: each cut within reach, in one order or the other. */
function canTrim(width: number, height: number, shape: Shape, reach: number): boolean {
  const upright = shape.across < width;
  const level = shape.up < height;
  const uprightFirst = !(upright && height > reach) && !(level && shape.across > reach);
  const levelFirst = !(level && width > reach) && !(upright && shape.up > reach);
  return uprightFirst || levelFirst;
}

/** Shape by shape over the sizes it fits, since there may be hundreds of thousands. */
function singles(
  shapes: readonly Shape[],
  widths: readonly number[],
  heights: readonly number[],
  reach: number,
): Float64Array[] {
  const table = widths.map(() => new Float64Array(heights.length));
  for (const shape of shapes) {
    const from = firstAtLeast(heights, shape.up);
    for (let i = firstAtLeast(widths, shape.across); i < widths.length; i++) {
      const column = table[i]!;
      for (let j = from; j < heights.length; j++)
        if (column[j]! < shape.points && canTrim(widths[i]!, heights[j]!, shape, reach))
          column[j] = shape.points;
    }
  }
  return table;
}

/** Place of the first of ascending `sizes` that is no less than `length`. */
function firstAtLeast(sizes: readonly number[], length: number): number {
  const below = roundDown(sizes, length);
  return sizes[below]! >= length ? below : below + 1;
}

/** Best points of every size when cuts of the given directions may be made before the pieces are used as in `below`. */
function sweep(
  search: Search,
  upright: boolean,
  level: boolean,
  below: readonly Float64Array[],
): Float64Array[] {
  const { widths, heights, reach } = search;
  const table: Float64Array[] = [];
  // Of two pieces the smaller comes first, with no waste of its own: whoever made the cut between them can make one that trims it. A first
  // piece of nothing is a trim.
  // What remains of each height beside each first piece, worked out once.
  const remains = level ? heights.map((height) => Int32Array.from(heights.filter((first, k) => k > 0 && 2 * first <= height), (first) => roundDown(heights, height - first))) : []; // biome-ignore format: one line
  for (const [i, width] of widths.entries()) {
    if (search.shouldStop()) return [Float64Array.of(Number.POSITIVE_INFINITY)];
    const column = Float64Array.from(below[i]!);
    table.push(column);
    if (upright) {
      for (let first = 0; 2 * widths[first]! <= width; first++) {
        const one = table[first]!;
        const other = table[first === 0 ? Math.max(0, i - 1) : roundDown(widths, width - widths[first]!)]!;
        for (let j = 1; j < heights.length && heights[j]! <= reach; j++)
          column[j] = Math.max(column[j]!, one[j]! + other[j]!);
      }
    }
    if (!level || width > reach) continue;
    for (const [j, others] of remains.entries()) {
      let most = Math.max(column[j]!, column[Math.max(0, j - 1)]!);
      for (let at = 0; at < others.length; at++)
        most = Math.max(most, column[at + 1]! + column[others[at]!]!);
      column[j] = most;
    }
  }
  return table;
}
