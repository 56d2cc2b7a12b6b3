import type { BoxStyle, Chosen, Pieces } from '../language/types';

/** A style's pieces as built with these choices. */
export const piecesOf = (style: BoxStyle, chosen: Chosen = {}): Pieces =>
  typeof style.pieces === 'function' ? style.pieces({ ...defaultChoices(style), ...chosen }) : style.pieces;

/** The first choice of every option. */
export const defaultChoices = (style: BoxStyle): Chosen =>
  Object.fromEntries(
    Object.entries(style.options ?? {}).map(([id, { choices }]) => [id, choices[0]?.id ?? '']),
  );

/** Every combination of a style's options; add-ons stay as `held` has them, else away. */
export function everyChoice(style: BoxStyle, held: Chosen = {}): readonly Chosen[] {
  let all: Chosen[] = [{}];
  for (const [id, { choices, addOn }] of Object.entries(style.options ?? {})) {
    const ids = addOn ? [held[id] ?? choices[0]?.id ?? ''] : choices.map((choice) => choice.id);
    all = all.flatMap((chosen) => ids.map((choice) => ({ ...chosen, [id]: choice })));
  }
  return all;
}

/** Each add-on of a style in each of its places, all else at its default. */
export const everyAddOn = (style: BoxStyle): readonly Chosen[] =>
  Object.entries(style.options ?? {}).flatMap(([option, { choices, addOn }]) =>
    addOn ? choices.slice(1).map(({ id }) => ({ ...defaultChoices(style), [option]: id })) : [],
  );

/** Is this asked, chosen as it is? What is given in no way is always asked. */
export const isGiven = (given: readonly Chosen[] | undefined, chosen: Chosen): boolean =>
  given === undefined ||
  given.some((way) => Object.entries(way).every(([option, id]) => chosen[option] === id));
