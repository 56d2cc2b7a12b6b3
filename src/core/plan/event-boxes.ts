import { ticksOfMm } from '../../../shared/lengths';
import type { Dressing, EventLine, FavorEvent, Recipe } from '../../../shared/workbook';
import { layNet } from '../net/lay-net';
import type { BoxNet } from '../net/types';
import { styleById } from '../styles/registry';
import type { Ticks } from '../units';
import { remark } from './remarks';
import { addSpares, type MakingCount } from './spares';
import type { EventFinding } from './types';

/** One line of an event with all that its boxes are made from. */
export interface EventBox extends MakingCount {
  readonly line: EventLine;
  readonly recipe: Recipe;
  readonly dressing: Dressing | null;
  readonly paperId: string | null;
  readonly net: BoxNet;
}

/** Saved millimetres by symbol as ticks. */
const sizesOf = (recipe: Recipe): Readonly<Record<string, Ticks>> =>
  Object.fromEntries(Object.entries(recipe.sizesMm).map(([symbol, mm]) => [symbol, ticksOfMm(mm)]));

export const netOfRecipe = (recipe: Recipe): BoxNet | null => {
  const style = styleById(recipe.styleId);
  return style
    ? layNet(style, { sizes: sizesOf(recipe), options: recipe.options, caliperUm: recipe.caliperUm })
    : null;
};

/** Every line of the event as boxes, spares counted; lines whose recipe, style or dressing is gone are told of. */
export function boxesOfEvent(
  event: FavorEvent,
  recipes: readonly Recipe[],
): { readonly boxes: readonly EventBox[]; readonly findings: readonly EventFinding[] } {
  const findings: EventFinding[] = [];
  const boxes = event.lines.flatMap((line): EventBox[] => {
    const recipe = recipes.find(({ id }) => id === line.recipeId);
    if (!recipe) {
      findings.push(remark('recipe-missing', line.id, line.recipeId));
      return [];
    }
    const net = netOfRecipe(recipe);
    if (!net) {
      findings.push(remark('style-unknown', line.id, recipe.name));
      return [];
    }
    const dressing = recipe.dressings.find(({ id }) => id === line.dressingId) ?? null;
    if (line.dressingId !== null && !dressing)
      findings.push(remark('dressing-missing', line.id, recipe.name));
    const paperId = line.paperId ?? recipe.paperId;
    return [{ line, recipe, dressing, paperId, net, ...addSpares(line.count, event.spares) }];
  });
  return { boxes, findings };
}
