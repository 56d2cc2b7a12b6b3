import { mmOfTicks } from '../../../shared/lengths';
import type { Recipe } from '../../../shared/workbook';
import type { EasyRow } from '../../core/fit';
import { type Ticks, USUAL_FINEST } from '../../core/units';

type RecipeContent = Omit<Recipe, 'id' | 'rev' | 'createdAt' | 'changedAt'>;

/** A recipe of its own from one member of a family: the same box, card, dressing and notes; other sizes, and nothing said yet of what goes inside. */
export function contentOfMember(recipe: Recipe, row: EasyRow, name: string, finest: Ticks): RecipeContent {
  const {
    id: _,
    rev: __,
    createdAt: ___,
    changedAt: ____,
    contents: _____,
    markMm: ______,
    ...same
  } = recipe;
  return {
    ...same,
    name,
    sizesMm: Object.fromEntries(
      Object.entries(row.sizes).flatMap(([symbol, size]) => (size > 0 ? [[symbol, mmOfTicks(size)]] : [])),
    ),
    options: { ...recipe.options, ...row.options },
    ...(finest === USUAL_FINEST.in ? {} : { markMm: mmOfTicks(finest) }),
  };
}
