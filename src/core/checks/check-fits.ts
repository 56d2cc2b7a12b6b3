import type { BoxNet } from '../net/types';
import { evaluateForm, formOf } from '../styles/language/linear-form';
import type { BoxStyle, FitSpec } from '../styles/language/types';
import { type Ticks, ticks } from '../units/ticks';
import type { Finding } from './finding';

/** A fit at the sizes of a box. */
export interface MeasuredFit {
  readonly fit: FitSpec;
  /** Left between the faces of the card when every mark is true; below 0 it jams. */
  readonly clear: Ticks;
  readonly ease: Ticks;
  /** How far each mark may be off, all of them the wrong way, before it jams; below 0 it does anyway. */
  readonly eachMark: Ticks;
}

/** Every fit of a style at the sizes of a box, the one with the least play for each mark first. */
export function measureFits(style: BoxStyle, box: BoxNet): MeasuredFit[] {
  const lengthOf = (text: string): Ticks => evaluateForm(formOf(text), box.values);
  return (style.fits ?? [])
    .map((fit) => {
      const clear = ticks(lengthOf(fit.room) - lengthOf(fit.body) - lengthOf(fit.card));
      return { fit, clear, ease: lengthOf(fit.ease), eachMark: ticks(Math.floor(clear / fit.marks)) };
    })
    .sort((a, b) => a.eachMark - b.eachMark);
}

/** Rounding of quantities to ticks may take one from each end. */
const ROUNDING = ticks(4);

/** Fits that jam, or that have less ease than they want. Where a style has no such fit, nothing slides or drops in. */
export const checkFits = (style: BoxStyle, box: BoxNet): Finding[] =>
  measureFits(style, box)
    .filter(({ clear, ease }) => clear < ease - ROUNDING)
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
