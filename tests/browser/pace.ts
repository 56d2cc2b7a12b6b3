import type { Page } from '@playwright/test';
import { QUIET_MS, sortingRound } from '../sorting-round';

const ROUNDS = 12;

/**
 * How many times longer a page's work takes here and now than on a quiet machine: 1 or more. The same sorting, grouping and string
 * work is timed on the page's own thread, by the clock on the wall, so that other work on the machine counts as it does for the page.
 */
export async function slowness(page: Page): Promise<number> {
  const took = await page.evaluate<number>(`(${String(meanOf)})(${String(sortingRound)}, ${ROUNDS})`);
  return Math.max(1, took / QUIET_MS);
}

/** The mean of so many rounds in milliseconds; runs in the page. */
async function meanOf(round: () => number, rounds: number): Promise<number> {
  let spent = 0;
  for (let n = 0; n < rounds; n++) {
    const start = performance.now();
    round();
    spent += performance.now() - start;
    await new Promise((resolve) => setTimeout(resolve));
  }
  return spent / rounds;
}
