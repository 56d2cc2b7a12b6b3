import type { Recipe, Tool } from '../../../shared/workbook';
import { type BoxCard, boxCards } from '../../core/bench';
import { benchToolOf } from '../../core/plan';
import type { Ruler } from '../../core/units';
import { boxOfRecipe, countStops } from './box-result';

export interface BenchResult {
  /** Findings that must be mended before a card makes sense. */
  readonly stops: number;
  readonly cards: readonly BoxCard[];
}

/** The cards of a recipe on the maker's tool. */
export function benchOfRecipe(recipe: Recipe, tool: Tool | undefined, ruler: Ruler): BenchResult | null {
  const box = boxOfRecipe(recipe, tool);
  if (!box) return null;
  const bench = { ...benchToolOf(tool), ...(tool ? {} : { unit: ruler.unit, finestMark: ruler.finest }) };
  return { stops: countStops(box), cards: boxCards(box.net, bench, { faceUp: recipe.faceUp }) };
}
