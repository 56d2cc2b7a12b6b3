import { type Ticks, toMm } from '../units/ticks';
import type { MeasuredFit } from './lay-fits';

/** Whole boxes of a hundred that close, rounded down but for the rounding of the computer: the number that is shown. */
export const closeOfHundred = (fits: readonly MeasuredFit[], offBy: Ticks): number =>
  Math.floor(100 * closingShare(fits, offBy) + 1e-9);

/** The share of boxes whose fits all close when each mark is off by up to `offBy` either way, all alike likely. Shares multiply as if no two fits shared a mark; where two share one that tightens both, a few more close. */
export const closingShare = (fits: readonly MeasuredFit[], offBy: Ticks): number =>
  fits.reduce((share, { clear, fit }) => share * shareOfFit(toMm(clear), fit.marks, toMm(offBy)), 1);

/** The sum of so many even errors stays below what is clear: Irwin 1927, Hall 1927. */
function shareOfFit(clearMm: number, marks: number, offByMm: number): number {
  if (offByMm <= 0) return clearMm >= 0 ? 1 : 0;
  const at = Math.max(0, Math.min(marks, (clearMm / offByMm + marks) / 2));
  let [sum, chosen, factorial] = [0, 1, 1];
  for (let k = 0; k <= Math.floor(at); k++) {
    sum += (k % 2 === 0 ? 1 : -1) * chosen * (at - k) ** marks;
    chosen = (chosen * (marks - k)) / (k + 1);
  }
  for (let k = 2; k <= marks; k++) factorial *= k;
  return Math.max(0, Math.min(1, sum / factorial));
}
