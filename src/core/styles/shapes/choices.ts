import type { BoxStyle, Chosen, OptionSpec, Pieces } from '../language/types';

/** A style's pieces as built with these choices. */
export const piecesOf = (style: BoxStyle, chosen: Chosen = {}): Pieces =>
  typeof style.pieces === 'function' ? style.pieces({ ...defaultChoices(style), ...chosen }) : style.pieces;

/** The first choice of every option. */
export const defaultChoices = (style: BoxStyle): Chosen =>
  Object.fromEntries(
    Object.entries(style.options ?? {}).map(([id, { choices }]) => [id, choices[0]?.id ?? '']),
  );

/** Every combination of a style's options; add-ons stay as `held` has them, else away. */
export const everyChoice = (style: BoxStyle, held: Chosen = {}): readonly Chosen[] =>
  combined(style.options, (id, { choices, addOn }) =>
    addOn ? [held[id] ?? choices[0]?.id ?? ''] : choices.map((choice) => choice.id),
  );

/** Every combination of these options, add-ons among them. */
export const everyWay = (options: BoxStyle['options']): readonly Chosen[] =>
  combined(options, (_, { choices }) => choices.map(({ id }) => id));

function combined(
  options: BoxStyle['options'] = {},
  idsOf: (id: string, option: OptionSpec) => readonly string[],
): readonly Chosen[] {
  let all: Chosen[] = [{}];
  for (const [id, option] of Object.entries(options))
    all = all.flatMap((chosen) => idsOf(id, option).map((choice) => ({ ...chosen, [id]: choice })));
  return all;
}

/** Each add-on of a style in each of its places, all else at its default, or as it has to be for this to be asked. */
export const everyAddOn = (style: BoxStyle): readonly Chosen[] =>
  Object.entries(style.options ?? {}).flatMap(([option, { choices, addOn, given }]) =>
    addOn
      ? choices.slice(1).map(({ id }) => ({ ...defaultChoices(style), ...given?.[0], [option]: id }))
      : [],
  );

/** Is this asked, chosen as it is? What is given in no way is always asked. */
export const isGiven = (given: readonly Chosen[] | undefined, chosen: Chosen): boolean =>
  given === undefined ||
  given.some((way) => Object.entries(way).every(([option, id]) => chosen[option] === id));
