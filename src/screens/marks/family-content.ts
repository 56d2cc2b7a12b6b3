import type { Recipe } from '../../../shared/workbook';
import type { EasyRow } from '../../core/fit';
import type { Ticks } from '../../core/units';
import { markMmOf, sizesMmOf } from './marks-edits';

type RecipeContent = Omit<Recipe, 'id' | 'rev' | 'createdAt' | 'changedAt'>;

/** Names as they were typed, each once: a second of the same, or one that the shelf has, gets a number. */
export function distinctNames(names: readonly string[], taken: ReadonlySet<string>): string[] {
  const given = new Set(taken);
  return names.map((typed) => {
    const name = typed.trim();
    let distinct = name;
    for (let n = 2; given.has(distinct); n++) distinct = `${name} ${n}`;
    given.add(distinct);
    return distinct;
  });
}

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
    sizesMm: sizesMmOf(row),
    options: { ...recipe.options, ...row.options },
    ...markMmOf(finest),
  };
}
