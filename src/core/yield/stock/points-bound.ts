import { fillTable, type ValueTable } from '../pattern/best-pattern';

/** Points for each item in whole numbers, the most that one sheet holds, and the sheets that follow. */
export interface PointsBound {
  readonly points: readonly number[];
  readonly most: number;
  readonly sheets: number;
}

/** Sheets that these points call for: all of them over the most on one sheet, rounded up; exact. */
function sheetsForPoints(points: readonly number[], demands: readonly number[], most: number): number {
  if (most <= 0) return 0;
  const total = points.reduce((sum, point, item) => sum + BigInt(point) * BigInt(demands[item]!), 0n);
  return Number((total + BigInt(most) - 1n) / BigInt(most));
}

/** Roughest first, since small numbers are easier to look at; the last keeps every sum below 2^53. */
const SCALES = [6, 12, 60, 120, 1000, 1e4, 1e6, 1e8, 1e11];

/** Turns prices of the linear program into the simplest points that show as many sheets as the prices allow. */
export function simplestPoints(
  prices: readonly number[],
  demands: readonly number[],
  table: ValueTable,
  aim: number,
): PointsBound {
  let best: PointsBound = { points: prices.map(() => 0), most: 0, sheets: 0 };
  for (const scale of SCALES) {
    const points = prices.map((price) => Math.floor(price * scale + 1e-7));
    const most = fillTable(table, points);
    const sheets = sheetsForPoints(points, demands, most);
    if (sheets > best.sheets) best = { points, most, sheets };
    if (best.sheets >= aim) break;
  }
  return best;
}
