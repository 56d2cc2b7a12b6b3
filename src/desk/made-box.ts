import type { Recipe, Tool } from '../../shared/workbook';
import { type BenchTool, type BoxCard, boxCards, cardTrouble } from '../core/bench';
import { checkBox, checkOwnNet, type Finding } from '../core/checks';
import { type BoxNet, layNet, ownBoxOf, toldBy } from '../core/net';
import { benchToolOf, netOfRecipe, styleOfRecipe } from '../core/plan';
import { ticksOfMm } from '../core/rows/lengths';
import { type LengthUnit, type Ruler, rulerBeside, toMm, USUAL_FINEST } from '../core/units';
import type { AskedBox } from './read-box';

/** A box as it is made at a bench: its net, the tool, and the marks its lengths are printed on. */
export interface MadeBox {
  readonly name: string;
  readonly styleName: string;
  readonly net: BoxNet;
  readonly bench: BenchTool;
  readonly ruler: Ruler;
  readonly recipe: Recipe | null;
}

/** The box that was asked for, at the bench of its file or with a ruler. */
export function makeBox({ style, sizes, chosen, caliperUm, unit, recipe, tool, own }: AskedBox): MadeBox {
  const mark = ticksOfMm(recipe?.markMm ?? toMm(USUAL_FINEST[recipe ? 'in' : unit]));
  const sizing = { sizes, options: chosen, caliperUm, mark };
  const net = (own && ownBoxOf(own.text, caliperUm)) ?? layNet(style, sizing);
  const name = recipe?.name ?? own?.title ?? style.name;
  return { name, styleName: style.name, net, recipe, ...benchFor(tool, unit) };
}

/** The box of a saved recipe, or null if its style is not one of ours. */
export function makeRecipe(recipe: Recipe, tool: Tool | undefined): MadeBox | null {
  const style = styleOfRecipe(recipe);
  const net = netOfRecipe(recipe);
  if (!style || !net) return null;
  return { name: recipe.name, styleName: style.name, net, recipe, ...benchFor(tool, tool?.unit ?? 'in') };
}

/** What the checks say of it; a net of the maker's own is also tried on the virtual bench. */
export function findingsOf({ style, own }: AskedBox, { net, bench, recipe }: MadeBox): Finding[] {
  if (!own) return checkBox(style, net, bench);
  const choices = { faceUp: recipe?.faceUp ?? 'outside' } as const;
  return [
    ...net.pieces.flatMap((piece) => cardTrouble(piece, bench, choices) ?? []),
    ...checkOwnNet(net, toldBy(own.text), bench),
  ];
}

/** The saved tool if it has these units, else its reach with that unit's usual marks. */
export function benchFor(tool: Tool | undefined, unit: LengthUnit): Pick<MadeBox, 'bench' | 'ruler'> {
  const saved = benchToolOf(tool);
  const bench = saved.unit === unit ? saved : { ...saved, unit, finestMark: USUAL_FINEST[unit] };
  return { bench, ruler: rulerBeside(unit, bench.finestMark) };
}

/** The cards of a box at its bench. */
export const cardsOf = ({ net, bench, recipe }: MadeBox): readonly BoxCard[] =>
  boxCards(net, bench, { faceUp: recipe?.faceUp ?? 'outside' });
