import { paretoBy } from './pareto';
import type { Vec } from './types';

/** A cuboid that may take any of several sizes (a thing's standings, or the arrangements of a group of equal things). */
export interface Block {
  readonly options: readonly Vec[];
}

/** Blocks side by side: which option each took and where its least corner lies, in block order. Millimeters. */
export interface Combination {
  readonly size: Vec;
  readonly exact: boolean;
  readonly placed: readonly { readonly option: number; readonly at: Vec }[];
}

export const EXACT_UP_TO = 4;

/**
 * Every way of putting the blocks together that no other way beats in width, depth and height.
 * Exact (axis-parallel) up to four blocks; beyond that by halving cuts, which can miss the best even for three, so never called exact.
 */
export function combineBlocks(blocks: readonly Block[]): Combination[] {
  if (blocks.length === 0) return [];
  return blocks.length <= EXACT_UP_TO ? combineExactly(blocks) : combineByCuts(blocks);
}

const volume = ([w, d, h]: Vec) => w * d * h;
const tidy = (sizes: Iterable<Combination>): Combination[] =>
  paretoBy([...sizes], ({ size }) => size).sort((a, b) => volume(a.size) - volume(b.size));

/**
 * Two cuboids that do not overlap are apart on some axis. So: give every pair an axis; then each axis alone asks for the shortest line-up
 * in which its own pairs do not overlap, which is the shortest longest path over all orders. All assignments of axes are tried.
 */
function combineExactly(blocks: readonly Block[]): Combination[] {
  const pairs = blocks.flatMap((_, j) => blocks.slice(0, j).map((_, i) => [i, j] as const));
  const orders = permutations(blocks.map((_, i) => i));
  const assignments = product(pairs.map(() => [0, 1, 2]));
  const best = new Map<string, Combination>();
  for (const option of product(blocks.map((block) => block.options.map((_, i) => i)))) {
    const sizes = option.map((chosen, b) => blocks[b]?.options[chosen] ?? ([0, 0, 0] as Vec));
    const lineUps = [0, 1, 2].map((axis) =>
      lineUpsOf(
        sizes.map((size) => size[axis] ?? 0),
        pairs,
        orders,
      ),
    );
    for (const axes of assignments) {
      const chosen = [0, 1, 2].map((axis) => lineUps[axis]?.[maskOf(axes, axis)] ?? EMPTY) as [
        LineUp,
        LineUp,
        LineUp,
      ];
      const size: Vec = [chosen[0].span, chosen[1].span, chosen[2].span];
      const key = size.join(' ');
      if (best.has(key)) continue;
      const placed = option.map((o, b) => ({
        option: o,
        at: [chosen[0].starts[b] ?? 0, chosen[1].starts[b] ?? 0, chosen[2].starts[b] ?? 0] as Vec,
      }));
      best.set(key, { size, exact: true, placed });
    }
  }
  return tidy(best.values());
}

interface LineUp {
  readonly span: number;
  readonly starts: readonly number[];
}
const EMPTY: LineUp = { span: 0, starts: [] };

/** The pairs that are apart on this axis, as bits. */
const maskOf = (axes: readonly number[], axis: number): number =>
  axes.reduce((mask, a, pair) => (a === axis ? mask | (1 << pair) : mask), 0);

/** For every set of pairs (as bits): the shortest line-up of these lengths in which those pairs do not overlap. */
function lineUpsOf(
  lengths: readonly number[],
  pairs: readonly (readonly [number, number])[],
  orders: readonly number[][],
): LineUp[] {
  return Array.from({ length: 1 << pairs.length }, (_, mask) => {
    const apart = pairs.filter((_, pair) => mask & (1 << pair));
    let best: LineUp | null = null;
    for (const order of orders) {
      const starts = lengths.map(() => 0);
      const place = (b: number) => order.indexOf(b);
      for (const b of order)
        for (const [i, j] of apart) {
          if (b !== i && b !== j) continue;
          const other = b === i ? j : i;
          if (place(other) < place(b))
            starts[b] = Math.max(starts[b] ?? 0, (starts[other] ?? 0) + (lengths[other] ?? 0));
        }
      const span = Math.max(...starts.map((start, b) => start + (lengths[b] ?? 0)));
      if (best === null || span < best.span) best = { span, starts };
    }
    return best ?? EMPTY;
  });
}

const widestList = (blocks: number): number => (blocks <= 6 ? 12 : 5); // keeps eight unlike things under a second; part of why this half is never called exact

/** Splits the blocks into two groups by one straight cut, and each group again, keeping a short list for every group. */
function combineByCuts(blocks: readonly Block[]): Combination[] {
  const lists = new Map<number, Combination[]>();
  blocks.forEach((block, b) => {
    const alone = block.options.map(
      (size, option): Combination => ({
        size,
        exact: false,
        placed: blocks.map((_, i) =>
          i === b ? { option, at: [0, 0, 0] as Vec } : { option: -1, at: [0, 0, 0] as Vec },
        ),
      }),
    );
    lists.set(1 << b, tidy(alone).slice(0, widestList(blocks.length)));
  });
  const groups = Array.from({ length: (1 << blocks.length) - 1 }, (_, i) => i + 1).sort(
    (a, b) => bits(a) - bits(b),
  );
  for (const group of groups) {
    if (lists.has(group)) continue;
    const joined: Combination[] = [];
    for (let half = (group - 1) & group; half > 0; half = (half - 1) & group) {
      const rest = group ^ half;
      if (half < rest) continue;
      for (const a of lists.get(half) ?? [])
        for (const b of lists.get(rest) ?? [])
          for (const axis of [0, 1, 2] as const) joined.push(beside(a, b, axis));
    }
    lists.set(group, tidy(smallest(joined)).slice(0, widestList(blocks.length)));
  }
  return lists.get((1 << blocks.length) - 1) ?? [];
}

/** Before the quadratic sieve, keep the first of each size. */
const smallest = (all: readonly Combination[]) => new Map(all.map((c) => [c.size.join(' '), c])).values();

const bits = (mask: number): number => (mask === 0 ? 0 : (mask & 1) + bits(mask >> 1));

function beside(a: Combination, b: Combination, axis: 0 | 1 | 2): Combination {
  const along = (k: 0 | 1 | 2) => (k === axis ? a.size[k] + b.size[k] : Math.max(a.size[k], b.size[k]));
  return {
    size: [along(0), along(1), along(2)],
    exact: false,
    placed: a.placed.map((mine, i) => {
      if (mine.option >= 0) return mine;
      const theirs = b.placed[i] ?? mine;
      const at = theirs.at.map((c, k) => (k === axis ? c + a.size[axis] : c));
      return { option: theirs.option, at: [at[0] ?? 0, at[1] ?? 0, at[2] ?? 0] };
    }),
  };
}

function permutations(of: readonly number[]): number[][] {
  if (of.length <= 1) return [[...of]];
  return of.flatMap((first) => permutations(of.filter((n) => n !== first)).map((rest) => [first, ...rest]));
}

function product(of: readonly (readonly number[])[]): number[][] {
  return of.reduce<number[][]>(
    (rows, choices) => rows.flatMap((row) => choices.map((choice) => [...row, choice])),
    [[]],
  );
}
