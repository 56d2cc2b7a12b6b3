import type { FavorEvent, Recipe, Tool } from '../../../shared/workbook';
import { type BoxCard, boxCards } from '../../core/bench';
import { benchToolOf } from '../../core/plan';
import type { Ruler } from '../../core/units';
import { boxOfRecipe, countStops } from './box-result';

export interface BenchResult {
  /** Findings that must be mended before a card makes sense. */
  readonly stops: number;
  readonly cards: readonly BoxCard[];
}

/** The cards of a recipe on the maker's tool. Where every event that makes it names its tape or liquid glue, hot glue is not warned of. */
export function benchOfRecipe(
  recipe: Recipe,
  tool: Tool | undefined,
  ruler: Ruler,
  events: Iterable<FavorEvent> = [],
): BenchResult | null {
  const box = boxOfRecipe(recipe, tool);
  if (!box) return null;
  const bench = { ...benchToolOf(tool), ...(tool ? {} : { unit: ruler.unit, finestMark: ruler.finest }) };
  const cards = boxCards(box.net, bench, { faceUp: recipe.faceUp });
  return {
    stops: countStops(box),
    cards: holdsByChoice(recipe.id, events) ? cards.map(withoutHotGlue) : cards,
  };
}

/** Whether the maker has said what holds the joints wherever this box is made. */
function holdsByChoice(recipeId: string, events: Iterable<FavorEvent>): boolean {
  const making = [...events].filter(({ lines }) => lines.some((line) => line.recipeId === recipeId));
  return making.length > 0 && making.every(({ tapeId, glueId }) => (tapeId ?? glueId ?? null) !== null);
}

const withoutHotGlue = ({ steps, ...card }: BoxCard): BoxCard => ({
  ...card,
  steps: steps.map((step) => ({ ...step, cautions: step.cautions.filter((code) => code !== 'hot-glue') })),
});
