import type { BoxStyle, Chosen, ConstraintSpec, OptionSpec, SymbolSpec } from '../language/types';
import { defaultChoices, isGiven } from './choices';

/** The limits of a style that hold for these choices of its options. */
export const limitsFor = (style: BoxStyle, chosen: Chosen): readonly ConstraintSpec[] =>
  style.constraints.filter(({ given }) => isGiven(given, chosen));

/** The lengths that matter with these choices, in the style's order: what a form asks for. */
export function symbolsFor(style: BoxStyle, chosen: Chosen): readonly (readonly [string, SymbolSpec])[] {
  const all = { ...defaultChoices(style), ...chosen };
  return Object.entries(style.symbols).filter(([, { given }]) => isGiven(given, all));
}

/** The options that matter with these choices: the shape of a window only where there is one. */
export function optionsFor(style: BoxStyle, chosen: Chosen): readonly (readonly [string, OptionSpec])[] {
  const all = { ...defaultChoices(style), ...chosen };
  return Object.entries(style.options ?? {}).filter(([, { given }]) => isGiven(given, all));
}
