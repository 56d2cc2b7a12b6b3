import { readWorkbook } from '../../shared/read-workbook';
import type { Recipe, WorkbookFile } from '../../shared/workbook';
import { suggestName } from './nearest-name';
import { refuse, refuseInFile } from './refuse';
import type { Desk, DeskRefusal } from './verb';

/** A saved workbook, or null with the reasons added to `refused`. */
export function readWorkbookFile(path: string, desk: Desk, refused: DeskRefusal[]): WorkbookFile | null {
  const text = desk.read(path);
  if (typeof text !== 'string') {
    refused.push(text);
    return null;
  }
  const reading = readWorkbook(text);
  if (reading.ok) return reading.file;
  refused.push(...reading.refusals.map((refusal) => refuseInFile(path, refusal)));
  return null;
}

/** The recipe of this id in a saved workbook; without an id, its only one. Null with the reasons added to `refused`. */
export function readRecipe(
  path: string,
  id: string | undefined,
  desk: Desk,
  refused: DeskRefusal[],
): Recipe | null {
  const file = readWorkbookFile(path, desk, refused);
  if (!file) return null;
  const [only] = file.recipes;
  if (id === undefined && only && file.recipes.length === 1) return only;
  const ids = file.recipes.map((recipe) => recipe.id);
  const named = file.recipes.find((recipe) => recipe.id === id);
  if (named) return named;
  if (ids.length === 0)
    refused.push(refuse('no-recipe', path, 'none', 'a recipe', `${path} holds no recipe.`));
  else if (id === undefined) {
    const says = `${path} holds ${ids.length} recipes. Name one: --recipe and one of ${ids.join(', ')}.`;
    refused.push(refuse('which-recipe', '--recipe', '', ids.join(', '), says));
  } else {
    const says = `${path} holds no recipe “${id}”. ${suggestName(id, ids)}`;
    refused.push(refuse('unknown-recipe', '--recipe', id, ids.join(', '), says));
  }
  return null;
}
