import { mixWithin, type PatternList } from './case-program';
import type { Effort } from './effort';

/**
 * A row that every whole plan keeps: parts weighed by `times / over`, each sheet's weight rounded up, add up to at least the demands' weight
 * rounded up. Source: Chvátal, Discrete Math. 4 (1973) 305-337 (rank 1); Belov & Scheithauer, EJOR 171 (2006) 85-106.
 */
export interface RoundingRow {
  readonly times: readonly number[];
  readonly over: number;
}

/** Points for each part and for each rounding row that no choice of patterns on so few sheets can hold. */
export interface RoundedPoints {
  readonly points: readonly number[];
  readonly rows: readonly (RoundingRow & { readonly points: number })[];
}

const ROUNDS = 60; // Times that rows are added before it is let be. source: our own, measured
const AT_ONCE = 4; // Rows added at a time. source: our own, measured
const TRIES = 60; // Random weights that the search for rows starts from. source: our own, measured
const OVERS = [2, 3, 4] as const; // Halves, thirds and quarters closed every order of the study.
const SCALE = 1e9; // Points for one sheet; with rows, sums stay below 2^53 up to 100,000 sheets.

/** Whether rounding rows show that the demands need more than `most` sheets of these patterns; null: they do not, or effort ran out. */
export function closeByRounding(
  demands: readonly number[],
  list: PatternList,
  most: number,
  effort: Effort,
  sway: () => number,
): RoundedPoints | null {
  const pool = new Set<number>();
  const rows: RoundingRow[] = [];
  for (let round = 0; round < ROUNDS && !effort.isSpent(); round++) {
    const mixture = mixWithin({ left: demands, fixed: 0, caps: new Map(), rows }, list, pool, effort);
    if (!mixture.settled) return null;
    if (mixture.sheets > most + 1e-6) return roundedPoints(mixture, rows, demands, list, most);
    const found = brokenRows(mixture.uses, demands, list, effort, sway);
    if (found.length === 0) return null;
    rows.push(...found);
  }
  return null;
}

/** Weight of a content by a row, rounded up. */
export const roundedWeight = ({ times, over }: RoundingRow, copies: (item: number) => number): number => {
  let sum = 0;
  for (let item = 0; item < times.length; item++) if (times[item]! > 0) sum += times[item]! * copies(item);
  return Math.ceil(sum / over);
};

interface Use {
  readonly pattern: number;
  readonly sheets: number;
}

/** Rows that this mixture breaks most: from random weights, one weight after another is set to what breaks most. */
function brokenRows(
  uses: readonly Use[],
  demands: readonly number[],
  list: PatternList,
  effort: Effort,
  sway: () => number,
): RoundingRow[] {
  const { items } = list;
  const found = new Map<string, { readonly row: RoundingRow; readonly broken: number }>();
  for (const over of OVERS)
    for (let start = 0; start < TRIES && !effort.isSpent(); start++) {
      const times = demands.map(() => (sway() < 0.5 ? 0 : Math.floor(sway() * over)));
      const brokenBy = (): number => {
        const row = { times, over };
        let broken = roundedWeight(row, (item) => demands[item]!);
        for (const { pattern, sheets } of uses)
          broken -= sheets * roundedWeight(row, (item) => list.counts[pattern * items + item]!);
        return broken;
      };
      let best = brokenBy();
      for (let better = true; better; ) {
        better = false;
        for (let item = 0; item < items; item++) {
          let keep = times[item]!;
          for (let other = 0; other < over; other++) {
            times[item] = other;
            const broken = brokenBy();
            if (broken <= best + 1e-9) continue;
            best = broken;
            keep = other;
            better = true;
          }
          times[item] = keep;
        }
        effort.spend(items * over * (uses.length + 1) * items);
      }
      if (best > 1e-4)
        found.set(`${over} ${times.join()}`, { row: { times: [...times], over }, broken: best });
    }
  return [...found.values()]
    .sort((a, b) => b.broken - a.broken)
    .slice(0, AT_ONCE)
    .map(({ row }) => row);
}

/** The prices in whole points, or null if rounding takes too much. */
function roundedPoints(
  { prices, rowPrices }: { readonly prices: readonly number[]; readonly rowPrices: readonly number[] },
  rows: readonly RoundingRow[],
  demands: readonly number[],
  list: PatternList,
  most: number,
): RoundedPoints | null {
  const whole = (price: number): number => Math.floor(price * SCALE + 1e-3);
  const points = prices.map(whole);
  const priced = rows
    .map((row, at) => ({ ...row, points: whole(rowPrices[at]!) }))
    .filter((row) => row.points > 0);
  const worth = (copies: (item: number) => number): number =>
    points.reduce((sum, each, item) => sum + each * copies(item), 0) +
    priced.reduce((sum, row) => sum + row.points * roundedWeight(row, copies), 0);
  let full = 0;
  for (let pattern = 0; pattern < list.size; pattern++)
    full = Math.max(
      full,
      worth((item) => Math.min(list.counts[pattern * list.items + item]!, demands[item]!)),
    );
  return worth((item) => demands[item]!) > full * most ? { points, rows: priced } : null;
}
