import { evaluateForm, formOf } from '../styles/language/linear-form';
import type { BoxStyle, Chosen, FitSpec } from '../styles/language/types';
import { isGiven } from '../styles/shapes/choices';
import { type Ticks, ticks } from '../units/ticks';

/** A fit at the sizes of a box. */
export interface MeasuredFit {
  readonly fit: FitSpec;
  /** Left between the faces of the card when every mark is true; below 0 it jams. */
  readonly clear: Ticks;
  readonly ease: Ticks;
  /** How far each mark may be off, all of them the wrong way, before it jams; below 0 it does anyway. */
  readonly eachMark: Ticks;
}

/** Every fit of a style that these choices have, at these lengths, the one with the least play for each mark first. */
export function fitsOf(
  { fits = [] }: BoxStyle,
  lengths: Readonly<Record<string, Ticks>>,
  options: Chosen,
): readonly MeasuredFit[] {
  const lengthOf = (text: string): Ticks => evaluateForm(formOf(text), lengths);
  return fits
    .filter(({ given }) => isGiven(given, options))
    .map((fit) => {
      const clear = ticks(lengthOf(fit.room) - lengthOf(fit.body) - lengthOf(fit.card));
      return { fit, clear, ease: lengthOf(fit.ease), eachMark: ticks(Math.floor(clear / fit.marks)) };
    })
    .sort((a, b) => a.eachMark - b.eachMark);
}
