import { closeOfHundred } from '../net/closing-share';
import { fitsOf, type MeasuredFit } from '../net/lay-fits';
import type { BoxNet } from '../net/types';
import type { BoxStyle } from '../styles/language/types';
import { inches, type Ticks, ticks } from '../units/ticks';
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
  const share = closeOfHundred(fits, offBy);
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
