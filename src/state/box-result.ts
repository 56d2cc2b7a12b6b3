import type { Recipe, Tool } from '../../shared/workbook';
import { checkBox, type Finding } from '../core/checks';
import type { BoxNet } from '../core/net';
import { benchToolOf, netOfRecipe } from '../core/plan';
import { type BoxStyle, styleById } from '../core/styles';

/** What a recipe comes to: its style, its nets, and everything a maker should know about it. */
export interface BoxResult {
  readonly style: BoxStyle;
  readonly net: BoxNet;
  /** Worst first. */
  readonly findings: readonly Finding[];
}

/** Rows are never changed in place, so a result is as good as the rows it was made from. */
const results = new WeakMap<Recipe, { readonly tool: Tool | undefined; readonly result: BoxResult | null }>();

/** Null if the style is not known here. `tool`: whose marks and reach the findings speak of. */
export function boxOfRecipe(recipe: Recipe, tool: Tool | undefined): BoxResult | null {
  const known = results.get(recipe);
  if (known && known.tool === tool) return known.result;
  const style = styleById(recipe.styleId);
  const net = netOfRecipe(recipe);
  const result =
    style && net ? { style, net, findings: checkBox(style, net, tool && benchToolOf(tool)) } : null;
  results.set(recipe, { tool, result });
  return result;
}

/** How many of its findings keep the box from being folded as asked. */
export const countStops = ({ findings }: BoxResult): number =>
  findings.filter(({ severity }) => severity === 'stop').length;
