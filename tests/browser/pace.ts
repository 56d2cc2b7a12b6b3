import type { Page } from '@playwright/test';

/** What `round` takes on two cores of a rented server with nothing beside it. Source: measured 2026-11-30, mean of 200 rounds; means of fifty were 28 to 36. */
const QUIET_MS = 31;
const ROUNDS = 12;

/**
 * How many times longer a page's work takes here and now than on a quiet machine: 1 or more. The same sorting, grouping and string
 * work is timed on the page's own thread, by the clock on the wall, so that other work on the machine counts as it does for the page.
 */
export async function slowness(page: Page): Promise<number> {
  const took = await page.evaluate(async (rounds) => {
    const round = () => {
      const groups = new Map<string, number[]>();
      for (let n = 0; n < 200_000; n++) {
        const key = `k${(n * 7919) % 613}`;
        const group = groups.get(key);
        if (group) group.push((n * 104_729) % 9973);
        else groups.set(key, [n]);
      }
      let sum = 0;
      for (const group of groups.values()) sum += group.toSorted((a, b) => a - b)[3] ?? 0;
      return sum;
    };
    let spent = 0;
    for (let n = 0; n < rounds; n++) {
      const start = performance.now();
      round();
      spent += performance.now() - start;
      await new Promise((resolve) => setTimeout(resolve));
    }
    return spent / rounds;
  }, ROUNDS);
  return Math.max(1, took / QUIET_MS);
}
