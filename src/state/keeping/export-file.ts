import type { AnyRow, TableName } from '../../../shared/tables';
import type { WorkbookFile } from '../../../shared/workbook';
import { workbookOf } from '../../../shared/write-workbook';
import { referencesOf } from '../intents/references';
import { EMPTY_SHELF, keyText, type RowKey, rowAt, rowsOf, type Shelf, withRow } from '../shelf';

export type ExportWhat =
  | { readonly kind: 'recipe' | 'event'; readonly id: string }
  | { readonly kind: 'everything' };

const TABLE_OF = { recipe: 'recipes', event: 'events' } as const satisfies Record<string, TableName>;

/** A recipe or an event with all it needs from the shelf, or everything; null if it is not there. */
export function fileOf(shelf: Shelf, what: ExportWhat): WorkbookFile | null {
  if (what.kind === 'everything') return workbookOf('everything', rowsOf(shelf));
  const key = { table: TABLE_OF[what.kind], id: what.id };
  return rowAt(shelf, key) ? workbookOf(what.kind, rowsOf(withAllItNeeds(shelf, key))) : null;
}

/** A shelf with one row and every row it points to, directly or through another; what is not there is passed over. */
function withAllItNeeds(shelf: Shelf, first: RowKey): Shelf {
  let needed = EMPTY_SHELF;
  const seen = new Set<string>();
  const waiting: RowKey[] = [first];
  for (let key = waiting.pop(); key; key = waiting.pop()) {
    const row: AnyRow | null = rowAt(shelf, key);
    if (!row || seen.has(keyText(key))) continue;
    seen.add(keyText(key));
    needed = withRow(needed, key, handedOn(row));
    waiting.push(...referencesOf(row));
    if (key.table === 'recipes') waiting.push(...photosOf(shelf, key.id));
  }
  return needed;
}

/** What is an example here is anybody's own where it is read in; a guest list stays at home unless its owner ticked it. */
function handedOn(row: AnyRow): AnyRow {
  const own = { ...row };
  if ('example' in own) delete own.example;
  if ('guests' in own && !own.shareGuests) delete own.guests;
  return own;
}

const photosOf = (shelf: Shelf, recipeId: string): RowKey[] =>
  [...shelf.photos.values()]
    .filter((photo) => photo.recipeId === recipeId)
    .map(({ id }) => ({ table: 'photos', id }));
