import type { Pattern } from '../pattern/pattern';
import type { Effort } from './effort';
import { type PatternUse, sheetsOf, stillWanted } from './pattern-plan';
import type { FindPattern } from './sequential-plan';

/**
 * The same order on no more sheets with fewer layouts to set up, if that is found: one or two layouts are tried out of `patterns` in full,
 * beyond that layouts are joined as long as it goes. What is found is never worse; fewest is certain only up to two, and among `patterns`.
 */
export function fewerLayouts(
  wanted: readonly number[],
  uses: readonly PatternUse[],
  patterns: readonly Pattern[],
  find: FindPattern,
  effort: Effort,
): readonly PatternUse[] {
  const most = sheetsOf(uses);
  if (uses.length > 1) {
    const one = withOne(wanted, patterns, most);
    if (one !== null) return [one];
  }
  if (uses.length > 2) {
    const two = withTwo(wanted, patterns, most, effort);
    if (two !== null) return two;
  }
  return uses.length > 2 ? joinLayouts(wanted, uses, patterns, find, effort) : uses;
}

/** How often a pattern must be cut for these wants; infinite if it lacks one of them. */
const timesFor = (wanted: readonly number[], { counts }: Pattern): number =>
  wanted.reduce((most, count, item) => Math.max(most, count === 0 ? 0 : Math.ceil(count / counts[item]!)), 0);

function withOne(wanted: readonly number[], patterns: readonly Pattern[], most: number): PatternUse | null {
  let best: PatternUse | null = null;
  for (const pattern of patterns) {
    const sheets = timesFor(wanted, pattern);
    if (sheets <= most && sheets < (best?.sheets ?? Number.POSITIVE_INFINITY)) best = { pattern, sheets };
  }
  return best;
}

/** Two patterns that do it on at most `most` sheets: for each pair the best split, which a search by halves finds since need only falls. */
function withTwo(
  wanted: readonly number[],
  patterns: readonly Pattern[],
  most: number,
  effort: Effort,
): PatternUse[] | null {
  for (const [at, one] of patterns.entries())
    for (const other of patterns.slice(at + 1)) {
      if (effort.isSpent()) return null;
      effort.spend(4 * wanted.length);
      const together = wanted.every(
        (count, item) => count === 0 || one.counts[item]! + other.counts[item]! > 0,
      );
      if (!together) continue;
      effort.spend(40 * wanted.length);
      const sheets = splitBetween(wanted, one, other, most);
      if (sheets !== null)
        return [
          { pattern: one, sheets },
          { pattern: other, sheets: most - sheets },
        ];
    }
  return null;
}

/** Sheets of `one` out of `most` such that `other` does the rest, or null: what each item asks is a range, and ranges meet or do not. */
function splitBetween(
  wanted: readonly number[],
  { counts: one }: Pattern,
  { counts: other }: Pattern,
  most: number,
): number | null {
  let [low, high] = [1, most - 1];
  for (const [item, count] of wanted.entries()) {
    // x of one and most - x of other: x · (one - other) ≥ count - most · other.
    const slope = one[item]! - other[item]!;
    const need = count - most * other[item]!;
    if (slope === 0 && need > 0) return null;
    if (slope > 0) low = Math.max(low, Math.ceil(need / slope));
    if (slope < 0) high = Math.min(high, Math.floor(need / slope));
  }
  return low <= high ? low : null;
}

/** Joins two layouts into one, again and again: what only they cut must fit one sheet as many times as both are cut. */
function joinLayouts(
  wanted: readonly number[],
  uses: readonly PatternUse[],
  patterns: readonly Pattern[],
  find: FindPattern,
  effort: Effort,
): readonly PatternUse[] {
  let now = [...uses].sort((a, b) => a.sheets - b.sheets);
  for (let joined = true; joined; ) {
    joined = false;
    for (let i = 0; i < now.length && !joined; i++)
      for (let j = i + 1; j < now.length && !joined; j++) {
        if (effort.isSpent()) return now;
        const others = now.filter((_, at) => at !== i && at !== j);
        const use = oneForTwo(stillWanted(wanted, others), now[i]!.sheets + now[j]!.sheets, patterns, find);
        effort.spend(patterns.length * wanted.length);
        if (use === null) continue;
        now = [...others, use].sort((a, b) => a.sheets - b.sheets);
        joined = true;
      }
  }
  return now;
}

function oneForTwo(
  left: readonly number[],
  most: number,
  patterns: readonly Pattern[],
  find: FindPattern,
): PatternUse | null {
  const known = withOne(left, patterns, most);
  if (known !== null) return known;
  const each = left.map((count) => Math.ceil(count / most));
  const pattern = find(each.map((count) => (count > 0 ? 1 : 0)), each); // biome-ignore format: one line
  return pattern.counts.every((count, item) => count >= each[item]!) ? { pattern, sheets: most } : null;
}
