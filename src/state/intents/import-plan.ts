import type { AnyRow, TableName } from '../../../shared/tables';
import type { WorkbookFile } from '../../../shared/workbook';
import { compareRows, contentIsSame } from '../keeping/field-changes';
import { keyText, rowAt, type Shelf } from '../shelf';
import { pointElsewhere } from './references';

/**
 * What reading a file in would do with one of its rows. `new`: comes in as it is. `same`: is here already. `differs`: here is another state
 * of it, which stays; the file's comes in beside it under an id of its own, and where both have one name, with its day behind it.
 */
export interface ImportRow {
  readonly table: TableName;
  readonly fate: 'new' | 'same' | 'differs';
  readonly name: string;
  /** The fields in which it differs from what is here; null where it does not. */
  readonly differs: readonly string[] | null;
  /** As it will stand on the shelf, its references pointing at what came with it. */
  readonly row: AnyRow;
}

/** Shown before anything is read in; nothing that is here is ever replaced. */
export interface ImportPlan {
  readonly rows: readonly ImportRow[];
  readonly counts: Readonly<Record<ImportRow['fate'], number>>;
}

/** What is pointed to comes before what points to it. */
const ORDER = [
  'papers',
  'supplies',
  'tools',
  'recipes',
  'photos',
  'events',
] as const satisfies readonly TableName[];

/** Compares a file with the shelf. `taken`: ids that are in use without being on the shelf, as `table/id`. */
export function planImport(
  file: WorkbookFile,
  shelf: Shelf,
  newId: () => string,
  taken: ReadonlySet<string> = new Set(),
): ImportPlan {
  const renamed = new Map<string, string>();
  const point = (table: TableName, id: string) => renamed.get(keyText({ table, id })) ?? id;
  const counts = { new: 0, same: 0, differs: 0 };

  const rows = ORDER.flatMap((table) => {
    const twinOf = findTwins(shelf, table);
    return file[table].map((raw: AnyRow): ImportRow => {
      const key = { table, id: raw.id };
      const pointed = pointElsewhere(raw, point);
      const here = rowAt(shelf, key);
      const row = here && !contentIsSame(here, pointed) ? ofItsDay(table, pointed, here) : pointed;
      const twin =
        here && row === pointed && contentIsSame(here, row) ? here : (twinOf(pointed) ?? twinOf(row));
      const fate = twin ? 'same' : here ? 'differs' : 'new';
      if (twin) renamed.set(keyText(key), twin.id);
      else if (here || taken.has(keyText(key))) renamed.set(keyText(key), newId());
      counts[fate]++;
      const differs =
        here && fate === 'differs' ? [...new Set(compareRows(here, pointed).map(({ at }) => at[0]))] : null;
      return { table, fate, name: pointed.name, differs, row: { ...row, id: point(table, raw.id), rev: 0 } };
    });
  });
  return { rows, counts };
}

/** Longest name of a row; see `name` of its fields. */
const MOST_LETTERS = 200;

/** A row that will stand beside one of the same name says of which day it is, so that the two are told apart. A photo's name is printed as it is. */
function ofItsDay(table: TableName, row: AnyRow, here: AnyRow): AnyRow {
  if (table === 'photos' || row.name !== here.name) return row;
  const day = ` (${row.changedAt.slice(0, 10)})`;
  const name = row.name.slice(0, MOST_LETTERS - day.length).replace(/[\uD800-\uDBFF]$/, '');
  return { ...row, name: `${name}${day}` };
}

/** Finds a row that says the same under another id, as an earlier reading of the same file leaves one. */
function findTwins(shelf: Shelf, table: TableName): (row: AnyRow) => AnyRow | null {
  const madeAt = new Map<string, AnyRow[]>();
  for (const row of shelf[table].values())
    madeAt.set(row.createdAt, [...(madeAt.get(row.createdAt) ?? []), row]);
  return (row) => madeAt.get(row.createdAt)?.find((candidate) => contentIsSame(candidate, row)) ?? null;
}
