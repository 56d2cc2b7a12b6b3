import { fitsOf, type MeasuredFit } from '../net/lay-fits';
import type { BoxNet } from '../net/types';
import type { BoxStyle } from '../styles/language/types';
import { inches, type Ticks, ticks, toMm } from '../units/ticks';
import type { Finding } from './finding';

/** Every fit of a style at the sizes of a box, the one with the least play for each mark first. */
export const measureFits = (style: BoxStyle, box: BoxNet): readonly MeasuredFit[] =>
  fitsOf(style, box.values, box.options);

/** Rounding of quantities to ticks may take one from each end. */
const ROUNDING = ticks(4);

/** Fits that jam, or that have less ease than they want, but for those a limit speaks of. Where a style has no such fit, nothing slides or drops in. */
export const checkFits = (style: BoxStyle, box: BoxNet): Finding[] =>
  measureFits(style, box)
    .filter(({ fit, clear, ease }) => fit.saidBy === undefined && clear < ease - ROUNDING)
    .map(({ fit, clear, ease }) => {
      const jams = clear < 0;
      const facts = { fit: fit.what, clear: ticks(Math.abs(clear)), ease };
      return {
        code: jams ? 'fit-jams' : 'fit-tight',
        severity: jams ? 'stop' : 'warn',
        where: fit.what,
        facts,
        says: jams
          ? 'Jams: {fit}. In card this thick it is {clear} too large.'
          : 'Tight: {fit}. In card this thick {clear} is clear, and {ease} is wanted.',
        remedy: 'Give it more ease, or take thinner card.',
      };
    });

/** Marks with more play than this need no more care than any other. source: our choice */
const EASY = inches(0, 1, 16);

/** How many of the fits with the least play are named. */
const NAMED = 2;

/**
 * The one or two marks that must be truest: how far each may be off, what keeps them alike, and how many boxes in a hundred close when every
 * mark is off by up to `offBy` either way.
 */
export function truestMarks(style: BoxStyle, box: BoxNet, offBy: Ticks): Finding[] {
  const fits = measureFits(style, box);
  const share = Math.floor(100 * closingShare(fits, offBy));
  return fits
    .filter(({ eachMark }) => eachMark >= 0 && eachMark < EASY)
    .slice(0, NAMED)
    .map(
      ({ fit, eachMark }): Finding => ({
        code: 'truest-marks',
        severity: 'note',
        where: fit.what,
        facts: { marks: fit.truest, fit: fit.what, each: eachMark, offBy, share: { count: share } },
        says: 'Truest marks: {marks} ({fit}). Each may be off by {each}. With every mark off by up to {offBy}, {share} of 100 close.',
        remedy: fit.saves,
      }),
    );
}

/** The share of boxes whose fits all close when each mark is off by up to `offBy` either way, all alike likely: fits share no marks, so their shares multiply. */
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
