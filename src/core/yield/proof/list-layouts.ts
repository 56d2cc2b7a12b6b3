import type { PartGroup } from './group-parts';

/** Contents of one sheet by group. */
export type Content = readonly number[];

const TOO_MANY = 20_000; // Contents of one size of piece; beyond this the checker gives up, and the bound with it.

/** Contents are asked for at least so many of these points by group. */
export interface Asked {
  readonly points: readonly number[];
  readonly least: number;
}

/** A sheet and the longest cut of the tool, one kerf added to each. One side at least is within reach; without `reach`, any length is. */
export interface ReachedSheet {
  readonly across: number;
  readonly up: number;
  readonly reach?: number;
}

/**
 * The grid of sizes of piece that matter, and the ways to cut each in two. A piece taller than the reach has no upright cuts: it is as wide
 * as the sheet, and a level cut takes a lower piece off it. A piece wider than the reach likewise.
 */
interface Pieces {
  readonly columns: number;
  readonly rows: number;
  /** Rows (columns) of pieces that the tool can cut upright (level). */
  readonly lowRows: number;
  readonly narrowColumns: number;
  readonly acrossCuts: readonly Cuts[];
  readonly upCuts: readonly Cuts[];
  readonly singles: readonly { readonly group: number; readonly column: number; readonly row: number }[];
}

/** Pairs of places, one after another. */
type Cuts = Int32Array;
const NO_CUTS: Cuts = new Int32Array(0);

/**
 * Every content that meets all that is asked and that edge-to-edge cuts get out of one sheet, copies beyond what is wanted not counted,
 * leaving out what is part of another; null: too many, or stopped. From the whole sheet down it is worked out what each size of piece must
 * hold at least, then from the smallest up what it can hold. Points are never below 0. Shares no line with the solver.
 */
export function listLayouts(
  groups: readonly PartGroup[],
  sheet: ReachedSheet,
  asked: readonly Asked[],
  shouldStop: () => boolean = () => false,
): Content[] | null {
  const pieces = layPieces(groups, sheet);
  const needs = asked.map((one) => askOfPieces(one, pieces));
  const { columns, rows, singles } = pieces;
  const held: (Content[] | undefined)[] = [];
  for (let i = 1; i < columns; i++)
    for (let j = 1; j < rows; j++) {
      const at = i * rows + j;
      if (needs.some(({ need, best }) => need[at]! > best[at]!)) continue;
      if (shouldStop()) return null;
      const floors = asked.map(({ points }, k) => ({ points, least: needs[k]!.need[at]! }));
      const gather = new Contents(groups, floors);
      for (const { group, column, row } of singles)
        if (column <= i && row <= j) gather.add(groups.map((_, other) => (other === group ? 1 : 0)));
      const [across, up] = cutsAt(pieces, i, j);
      for (let cut = 0; cut < across.length; cut += 2)
        gather.join(held[across[cut]! * rows + j], held[across[cut + 1]! * rows + j]);
      for (let cut = 0; cut < up.length; cut += 2)
        gather.join(held[i * rows + up[cut]!], held[i * rows + up[cut + 1]!]);
      for (const trimmed of trimsAt(pieces, i, j)) gather.join(held[trimmed]);
      const contents = gather.largest();
      if (contents === null) return null;
      held[at] = contents;
    }
  return held[columns * rows - 1] ?? [];
}

/** The most of these points by group that one sheet holds if nothing is scarce. */
export function mostOfSheet(
  groups: readonly PartGroup[],
  sheet: ReachedSheet,
  points: readonly number[],
): number {
  return bestOfPieces(points, layPieces(groups, sheet)).at(-1) ?? 0;
}

function layPieces(
  groups: readonly PartGroup[],
  { across: width, up: height, reach = Number.POSITIVE_INFINITY }: ReachedSheet,
): Pieces {
  const lies = groups
    .flatMap((group, at) => group.lies.map((lie) => ({ ...lie, group: at })))
    // Too long to be cut free along that side: only a part that is as wide as the sheet needs no such cut.
    .filter(({ across, up }) => (up <= reach || across === width) && (across <= reach || up === height));
  const widths = lengthsOf(lies.map(({ across }) => across), width, reach); // biome-ignore format: one line
  const heights = lengthsOf(lies.map(({ up }) => up), height, reach); // biome-ignore format: one line
  return {
    columns: widths.length,
    rows: heights.length,
    lowRows: heights.filter((length) => length <= reach).length,
    narrowColumns: widths.filter((length) => length <= reach).length,
    acrossCuts: widths.map((length) => cutsOf(widths, length)),
    upCuts: heights.map((length) => cutsOf(heights, length)),
    singles: lies
      .filter(({ across, up }) => across <= width && up <= height)
      .map(({ group, across, up }) => ({
        group,
        column: firstHolding(widths, across),
        row: firstHolding(heights, up),
      }))
      .filter(({ column, row }) => column < widths.length && row < heights.length),
  };
}

/** The cuts that the tool can make of a piece: upright ones, level ones. */
const cutsAt = (
  { acrossCuts, upCuts, lowRows, narrowColumns }: Pieces,
  column: number,
  row: number,
): readonly [Cuts, Cuts] => [
  row < lowRows ? acrossCuts[column]! : NO_CUTS,
  column < narrowColumns ? upCuts[row]! : NO_CUTS,
];

/** Pieces within reach that a piece beyond it can be trimmed to, by one cut that the tool can make. */
function trimsAt({ rows, lowRows, narrowColumns }: Pieces, column: number, row: number): number[] {
  if (row >= lowRows && column < narrowColumns) return [column * rows + lowRows - 1];
  if (column >= narrowColumns && row < lowRows) return [(narrowColumns - 1) * rows + row];
  return [];
}

/** The most of these points that each piece can hold if nothing is scarce. */
function bestOfPieces(
  points: readonly number[],
  { columns, rows, lowRows, narrowColumns, acrossCuts, upCuts, singles }: Pieces,
): Float64Array {
  const best = new Float64Array(columns * rows);
  for (const { group, column, row } of singles)
    best[column * rows + row] = Math.max(best[column * rows + row]!, points[group]!);
  for (let i = 1; i < columns; i++) {
    const [here, before] = [i * rows, (i - 1) * rows];
    for (let j = 1; j < rows; j++) best[here + j] = Math.max(best[here + j]!, best[before + j]!);
    const across = acrossCuts[i]!;
    for (let cut = 0; cut < across.length; cut += 2) {
      const [a, b] = [across[cut]! * rows, across[cut + 1]! * rows];
      for (let j = 1; j < lowRows; j++) best[here + j] = Math.max(best[here + j]!, best[a + j]! + best[b + j]!); // biome-ignore format: one line
    }
    for (let j = 1; j < rows; j++) {
      let most = Math.max(best[here + j]!, best[here + j - 1]!);
      const up = i < narrowColumns ? upCuts[j]! : NO_CUTS;
      for (let cut = 0; cut < up.length; cut += 2)
        most = Math.max(most, best[here + up[cut]!]! + best[here + up[cut + 1]!]!);
      best[here + j] = most;
    }
  }
  return best;
}

/** That, and the least that each piece must hold for the sheet to hold what is asked. */
function askOfPieces(
  { points, least }: Asked,
  pieces: Pieces,
): { readonly best: Float64Array; readonly need: Float64Array } {
  const { columns, rows } = pieces;
  const best = bestOfPieces(points, pieces);
  const need = new Float64Array(columns * rows).fill(Number.POSITIVE_INFINITY);
  need[need.length - 1] = least;
  const ask = (at: number, other: number, wanted: number): void => {
    need[at] = Math.min(need[at]!, wanted - best[other]!);
    need[other] = Math.min(need[other]!, wanted - best[at]!);
  };
  for (let i = columns - 1; i > 0; i--)
    for (let j = rows - 1; j > 0; j--) {
      const wanted = need[i * rows + j]!;
      if (wanted > best[i * rows + j]!) continue;
      const [across, up] = cutsAt(pieces, i, j);
      for (let cut = 0; cut < across.length; cut += 2)
        ask(across[cut]! * rows + j, across[cut + 1]! * rows + j, wanted);
      for (let cut = 0; cut < up.length; cut += 2) ask(i * rows + up[cut]!, i * rows + up[cut + 1]!, wanted);
      for (const trimmed of trimsAt(pieces, i, j)) need[trimmed] = Math.min(need[trimmed]!, wanted);
    }
  return { best, need };
}

/** Contents of one size of piece as they are met. */
class Contents {
  private readonly met = new Map<string, Content>();
  private readonly groups: readonly PartGroup[];
  private readonly floors: readonly Asked[];

  constructor(groups: readonly PartGroup[], floors: readonly Asked[]) {
    this.groups = groups;
    this.floors = floors;
  }

  add(content: Content): void {
    if (this.met.size > TOO_MANY || !this.floors.every((floor) => reaches(content, floor))) return;
    this.met.set(content.join(), content);
  }

  join(first: readonly Content[] = [], second: readonly Content[] = []): void {
    for (const a of first) this.add(a);
    for (const b of second) this.add(b);
    const theirs = this.floors.map(({ points }) => second.map((b) => pointsIn(b, points)));
    for (const a of first) {
      if (this.met.size > TOO_MANY) return;
      // Copies that are too many only take points away, so what falls short uncapped need not be put together.
      const lacks = this.floors.map(({ points, least }) => least - pointsIn(a, points));
      for (const [at, b] of second.entries())
        if (lacks.every((lack, k) => theirs[k]![at]! >= lack))
          this.add(this.groups.map(({ count }, i) => Math.min(count, a[i]! + b[i]!)));
    }
  }

  /** Without those that are part of another; null if there are too many. */
  largest(): Content[] | null {
    if (this.met.size > TOO_MANY) return null;
    const sizeOf = (content: Content): number => content.reduce((sum, count) => sum + count, 0);
    const kept: Content[] = [];
    const big = [...this.met.values()].map((content) => ({ content, size: sizeOf(content) }));
    for (const { content } of big.sort((a, b) => b.size - a.size))
      if (!kept.some((other) => content.every((count, i) => count <= other[i]!))) kept.push(content);
    return kept;
  }
}

const reaches = (content: Content, { points, least }: Asked): boolean => pointsIn(content, points) >= least;

function pointsIn(content: Content, points: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < content.length; i++) sum += content[i]! * points[i]!;
  return sum;
}

/** Sums of lengths that matter: what remains, rounded down to a sum, when a sum is taken off the span, or off the tool's reach. */
function lengthsOf(lengths: readonly number[], span: number, reach: number): number[] {
  const sums = new Set([0]);
  for (const length of new Set(lengths))
    for (const sum of sums) if (sum + length <= span) sums.add(sum + length);
  const ascending = [...sums].sort((a, b) => a - b);
  const remaining = [span, Math.min(span, reach)].flatMap((from) =>
    ascending.filter((sum) => sum <= from).map((sum) => ascending[lastWithin(ascending, from - sum)]!),
  );
  return [...new Set([0, ...remaining])].sort((a, b) => a - b);
}

const lastWithin = (lengths: readonly number[], limit: number): number => {
  let [low, high] = [0, lengths.length];
  while (high - low > 1) {
    const middle = (low + high) >>> 1;
    if (lengths[middle]! <= limit) low = middle;
    else high = middle;
  }
  return low;
};

/** Place of the shortest length that holds `size`; beyond the end if none does. */
const firstHolding = (lengths: readonly number[], size: number): number => {
  const found = lengths.findIndex((length) => length >= size);
  return found < 0 ? lengths.length : found;
};

/** Ways to cut a length in two, each half rounded down, the smaller first. */
function cutsOf(lengths: readonly number[], length: number): Cuts {
  const pairs: number[] = [];
  for (let at = 1; at < lengths.length && 2 * lengths[at]! <= length; at++)
    pairs.push(at, lastWithin(lengths, length - lengths[at]!));
  return Int32Array.from(pairs);
}
