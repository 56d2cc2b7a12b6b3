import { withAddOns } from './add-ons/with-add-ons';
import type { BoxStyle, Len } from './types';

export { defaultChoices, everyAddOn, everyChoice, piecesOf } from './choices';

/** Takes a style's declaration in and builds its add-ons into it. Its names and forms are checked when it is first laid (`checkOnce`). */
export const defineStyle = <const S extends BoxStyle>(style: S): S & BoxStyle =>
  withAddOns(style) as S & BoxStyle;

/** What promises call the pieces glued to one another. */
export const WHOLE = 'whole';

/** A taper as [start, end] along the parent's edge. */
export const bothEnds = (taper: Len | readonly [Len, Len] | undefined): readonly Len[] =>
  taper === undefined ? [] : typeof taper === 'string' ? [taper, taper] : taper;
