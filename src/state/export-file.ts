import type { Rows } from '../../shared/tables';
import type { WorkbookFile } from '../../shared/workbook';
import { workbookOf } from '../../shared/write-workbook';
import { rowsOf, type Shelf } from './shelf';

export type ExportWhat =
  | { readonly kind: 'recipe' | 'event'; readonly id: string }
  | { readonly kind: 'everything' };

/** A recipe or an event with all it needs from the shelf, or everything; null if it is not there. */
export function fileOf(shelf: Shelf, what: ExportWhat): WorkbookFile | null {
  if (what.kind === 'everything') return workbookOf('everything', rowsOf(shelf));
  if (what.kind === 'recipe') {
    const recipe = shelf.recipes.get(what.id);
    return recipe
      ? workbookOf('recipe', { recipes: [recipe], papers: found(shelf.papers, papersOf([recipe])) })
      : null;
  }
  const event = shelf.events.get(what.id);
  if (!event) return null;
  const recipes = found(
    shelf.recipes,
    event.lines.map((line) => line.recipeId),
  );
  return workbookOf('event', {
    events: [event],
    recipes,
    papers: found(shelf.papers, [...papersOf(recipes), ...event.lines.map((line) => line.paperId)]),
    supplies: found(shelf.supplies, [event.tapeId]),
  });
}

const papersOf = (recipes: readonly Rows['recipes'][]): (string | null)[] =>
  recipes.flatMap((recipe) => [
    recipe.paperId,
    ...recipe.dressings.flatMap(({ pieces }) => pieces.map((piece) => piece.paperId)),
  ]);

/** The rows with these ids, each once; ids that are null or not there are passed over. */
const found = <Row>(rows: ReadonlyMap<string, Row>, ids: readonly (string | null)[]): Row[] =>
  [...new Set(ids)].flatMap((id) => (id === null ? [] : (rows.get(id) ?? [])));
