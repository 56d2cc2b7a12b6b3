import type { Recipe, Tool } from '../../../shared/workbook';
import { cardTrouble } from '../../core/bench';
import { checkBox, checkOwnNet, type Finding } from '../../core/checks';
import { type BoxNet, toldBy } from '../../core/net';
import { benchToolOf, netOfRecipe, styleOfRecipe } from '../../core/plan';
import { type BoxStyle, OWN_NET } from '../../core/styles';

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
  const style = styleOfRecipe(recipe);
  const net = netOfRecipe(recipe);
  const result = style && net ? resultOf(recipe, style, net, tool) : null;
  // A style that is not known yet may be known a moment later.
  if (result) results.set(recipe, { tool, result });
  return result;
}

/** The checks are made when somebody first asks what they say: a net can be drawn before that. */
function resultOf(recipe: Recipe, style: BoxStyle, net: BoxNet, tool: Tool | undefined): BoxResult {
  let findings: readonly Finding[] | null = null;
  return {
    style,
    net,
    get findings() {
      findings ??= findingsOf(recipe, style, net, tool);
      return findings;
    },
  };
}

/** What the checks say; a net of their own is also tried on the virtual bench, which a style's nets are proved on. */
function findingsOf(recipe: Recipe, style: BoxStyle, net: BoxNet, tool: Tool | undefined): Finding[] {
  const bench = benchToolOf(tool);
  if (style.id !== OWN_NET.id || recipe.ownNet === undefined) return checkBox(style, net, tool && bench);
  const troubles = net.pieces.flatMap((piece) => cardTrouble(piece, bench, { faceUp: recipe.faceUp }) ?? []);
  return [...troubles, ...checkOwnNet(net, toldBy(recipe.ownNet), tool && bench, trialOf)];
}

let lastTrial: { readonly key: string; readonly found: readonly Finding[] } | null = null;

/** The slow trial of an own net, kept while only its name and notes change. */
function trialOf(net: BoxNet, made: () => readonly Finding[]): readonly Finding[] {
  const key = JSON.stringify([net.pieces, net.inside, net.caliperUm]);
  lastTrial = lastTrial?.key === key ? lastTrial : { key, found: made() };
  return lastTrial.found;
}

/** How many of its findings keep the box from being folded as asked. */
export const countStops = ({ findings }: BoxResult): number =>
  findings.filter(({ severity }) => severity === 'stop').length;
