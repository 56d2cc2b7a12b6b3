import type { Pattern } from '../pattern/pattern';

/** How often each pattern is cut: what every step of the solver hands on. */
export interface PatternUse {
  readonly pattern: Pattern;
  readonly sheets: number;
}

export const sheetsOf = (uses: readonly PatternUse[]): number =>
  uses.reduce((sum, use) => sum + use.sheets, 0);

/** What is still wanted after these sheets; never below 0. */
export function stillWanted(wanted: readonly number[], uses: readonly PatternUse[]): number[] {
  return wanted.map((count, item) =>
    Math.max(
      0,
      uses.reduce((left, { pattern, sheets }) => left - sheets * (pattern.counts[item] ?? 0), count),
    ),
  );
}
