import { withAddOns } from '../add-ons/with-add-ons';
import type { BoxStyle, Len } from './types';

export { defaultChoices, everyChoice, piecesOf } from '../shapes/choices';

/** Declared, and not laid yet. */
export const UNCHECKED = new WeakSet<BoxStyle>();

const DECLARATIONS = new WeakMap<BoxStyle, BoxStyle>();

/** A style as it was declared, before its add-ons were built into it. */
export const declarationOf = (style: BoxStyle): BoxStyle => DECLARATIONS.get(style) ?? style;

/** Takes a style's declaration in and builds its add-ons into it. Its names and forms are checked when it is first laid (`checkOnce`). */
export function defineStyle<const S extends BoxStyle>(style: S): S & BoxStyle {
  const declared = withAddOns(style) as S & BoxStyle;
  UNCHECKED.add(declared);
  DECLARATIONS.set(declared, style);
  return declared;
}

/** What promises call the pieces glued to one another. */
export const WHOLE = 'whole';

/** A taper as [start, end] along the parent's edge. */
export const bothEnds = (taper: Len | readonly [Len, Len] | undefined): readonly Len[] =>
  taper === undefined ? [] : typeof taper === 'string' ? [taper, taper] : taper;
