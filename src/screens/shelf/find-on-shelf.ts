import type { FavorEvent, Recipe } from '../../../shared/workbook';
import { styleById } from '../../core/styles';
import type { Say } from '../../ui/words/spoken';

/** What is looked through for a box: its name, style, contents, and what its dressings and their labels are called. */
export const textOfRecipe = ({ name, styleId, contents, dressings }: Recipe, say: Say): string =>
  plain(
    [
      name,
      say(styleById(styleId)?.name ?? ''),
      ...(contents?.items ?? []).map((item) => item.name),
      ...dressings.flatMap((dressing) =>
        [dressing, ...dressing.pieces, ...(dressing.ties ?? []), ...(dressing.counted ?? [])].map(
          (part) => part.name,
        ),
      ),
    ].join('\n'),
  );

/** What is looked through for an event: its name, its date as it is shown, and what its boxes are called. */
export const textOfEvent = (
  { name, date, lines }: FavorEvent,
  recipes: ReadonlyMap<string, Recipe>,
  onDate: (date: string) => string,
): string =>
  plain(
    [
      name,
      date === null ? '' : onDate(date),
      ...lines.map(({ recipeId }) => recipes.get(recipeId)?.name ?? ''),
    ].join('\n'),
  );

/** The rows whose text (at the same place in `texts`) holds every word that was typed, in any order; accents and case do not count. */
export function holding<Row>(rows: readonly Row[], texts: readonly string[], typed: string): readonly Row[] {
  const wanted = plain(typed).split(/\s+/).filter(Boolean);
  if (wanted.length === 0) return rows;
  return rows.filter((_, at) => wanted.every((word) => texts[at]?.includes(word)));
}

/** Newest first; of the same moment, by id, so that the order is the same after a reload. */
export const newestFirst = <Row extends { readonly id: string; readonly changedAt: string }>(
  rows: ReadonlyMap<string, Row>,
): readonly Row[] =>
  [...rows.values()].sort((a, b) => compare(b.changedAt, a.changedAt) || compare(a.id, b.id));

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
