import type { TestContext } from 'vitest';

/** What one check of one box style came to; the test run prints all of them in one table. */
export interface StyleRecord {
  readonly style: string;
  readonly check: string;
  /** Sizes (or, for limits, limits) that were tried. */
  readonly tried: number;
  /** The worst that was found over all of them, as it is printed: `2e-14 mm`. */
  readonly worst: string;
}

declare module 'vitest' {
  interface TaskMeta {
    style?: StyleRecord;
  }
}

/** Notes what a check of a style came to, for the table. Judging it is the test's own business. */
export function recordStyle({ task }: Pick<TestContext, 'task'>, record: StyleRecord): void {
  task.meta.style = record;
}

/** A residual as it is printed: two figures, and `0` for none at all. */
export const residual = (worst: number, unit = ''): string =>
  worst === 0 ? '0' : `${Number(worst.toPrecision(2))}${unit === '' ? '' : ` ${unit}`}`;
