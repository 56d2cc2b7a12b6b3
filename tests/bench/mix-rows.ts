import { cheapestMix } from '../../src/core/plan/mix/cheapest-mix';
import { checkMix } from '../../src/core/plan/mix/check-mix';
import type { MixOrder } from '../../src/core/plan/mix/types';
import { leastByTrying } from '../core/plan/mix-by-trying';
import { loadWholeSolver } from '../general-solver';
import { mixOrders, tinyOrders } from './mix-orders';

const SECONDS = 1.9; // source: two are allowed for each order; the rest is for the check
const CHECK_FAULT = 'the checker of mixes objects';

const faultOf = (plan: ReturnType<typeof cheapestMix>, order: MixOrder): void => {
  const faults = plan === null ? [] : checkMix(plan, order);
  if (faults.length > 0) throw new Error(`${CHECK_FAULT}: ${faults.join('; ')}`);
};

/** Fifty orders over ten papers: how far the price may be from the least, and what a mix saves over the best single paper. */
export async function mixRow(count: number): Promise<string[]> {
  const solveWhole = await loadWholeSolver();
  const now = () => process.cpuUsage().user / 1000;
  const options = { seconds: SECONDS, now, solveWhole };
  const found = mixOrders(301, count).map((order) => {
    const one = cheapestMix(order, { ...options, mostCards: 1 });
    const two = cheapestMix(order, { ...options, mostCards: 2, known: one });
    const start = now();
    const answer = cheapestMix(order, { ...options, known: two });
    const ms = now() - start;
    faultOf(answer, order);
    return { plan: answer!, ms, one: one?.priceMinor ?? Number.POSITIVE_INFINITY, two: two?.priceMinor ?? Number.POSITIVE_INFINITY }; // biome-ignore format: one row
  });
  const share = (part: number, whole: number): number =>
    whole === 0 || !Number.isFinite(whole) ? 0 : part / whole;
  const mean = (of: (row: (typeof found)[number]) => number): string => ((100 * found.reduce((sum, row) => sum + of(row), 0)) / found.length).toFixed(2); // biome-ignore format: one row
  const sorted = found.map(({ ms }) => ms).sort((a, b) => a - b);
  return [
    `  proven ${found.filter(({ plan }) => plan.proven).length}/${found.length}, mean gap to the bound ${mean(({ plan }) => share(plan.priceMinor - plan.boundMinor, plan.priceMinor))} %, most ${Math.max(...found.map(({ plan }) => 100 * share(plan.priceMinor - plan.boundMinor, plan.priceMinor))).toFixed(1)} %`, // biome-ignore format: one row
    `  saved over the best single paper ${mean(({ plan, one }) => share(one - plan.priceMinor, one))} % in the mean, by two papers ${mean(({ one, two }) => share(one - two, one))} %; no single paper does ${found.filter(({ one }) => !Number.isFinite(one)).length}`, // biome-ignore format: one row
    `  ms of the processor, median / p95 / most ${[0.5, 0.95, 1].map((at) => sorted[Math.min(sorted.length - 1, Math.floor(at * sorted.length))]!.toFixed(0)).join(' / ')}`, // biome-ignore format: one row
  ];
}

/** Tiny orders, against every way to share them out. */
export async function tinyMixRow(count: number): Promise<string[]> {
  const solveWhole = await loadWholeSolver();
  let same = 0;
  let proven = 0;
  for (const order of tinyOrders(302, count)) {
    const plan = cheapestMix(order, { solveWhole });
    faultOf(plan, order);
    const least = leastByTrying(order);
    if ((plan?.priceMinor ?? Number.POSITIVE_INFINITY) === least) same++;
    if (plan?.proven || (plan === null && least === Number.POSITIVE_INFINITY)) proven++;
  }
  return [`  as cheap as the best of every way to share out ${same}/${count}, proven ${proven}/${count}`];
}
