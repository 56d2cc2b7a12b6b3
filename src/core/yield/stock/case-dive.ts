import { type CaseMixture, mixWithin, type PatternList } from './case-program';
import type { Effort } from './effort';

/** Sheets of each pattern of a list. */
export type CaseUses = ReadonlyMap<number, number>;

/**
 * A plan on at most `most` sheets out of mixtures: whole sheets are fixed, then one of a large fraction, then what is left is mixed again, with
 * copies beyond the need worth nothing. `sway` in 0..1 chooses among large fractions; `hold` is how often a sheet or two
 * of the first whole ones are left open. Null: this time it did not come out.
 */
export function diveCases(
  demands: readonly number[],
  start: CaseMixture,
  list: PatternList,
  most: number,
  pool: Set<number>,
  effort: Effort,
  sway: () => number,
  hold: number,
): CaseUses | null {
  const used = new Map<number, number>();
  let left = [...demands];
  let fixed = 0;
  let mixture = start;
  let first = true;
  const fix = (pattern: number, sheets: number): void => {
    used.set(pattern, (used.get(pattern) ?? 0) + sheets);
    fixed += sheets;
    left = left.map((count, item) => Math.max(0, count - sheets * list.counts[pattern * list.items + item]!));
  };
  for (;;) {
    if (!mixture.settled || fixed + Math.ceil(mixture.sheets - 1e-6) > most) return null;
    let largest = -1;
    let next = -1;
    for (const { pattern, sheets } of mixture.uses) {
      const whole = Math.floor(sheets + 1e-6);
      const part = (sheets - whole) * (0.6 + 0.4 * sway());
      const kept = first && sway() < hold ? Math.floor(sway() * 3) : 0;
      if (whole > kept) fix(pattern, whole - kept);
      if (part <= largest || sheets - whole < 1e-6) continue;
      largest = part;
      next = pattern;
    }
    if (left.every((count) => count === 0)) return used;
    first = false;
    if (next >= 0) fix(next, 1);
    if (left.every((count) => count === 0)) return fixed <= most ? used : null;
    if (fixed >= most || effort.isSpent()) return null;
    mixture = mixWithin({ left, fixed, caps: new Map() }, list, pool, effort);
  }
}
