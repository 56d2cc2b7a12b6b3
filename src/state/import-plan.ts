import { type AnyRow, TABLES, type TableName } from '../../shared/tables';
import type { WorkbookFile } from '../../shared/workbook';
import { contentIsSame } from './field-changes';
import { pointElsewhere } from './references';
import { rowAt, type Shelf } from './shelf';

/**
 * What reading a file in would do with one of its rows. `new`: comes in as it is. `same`: is here already. `differs`: here is another state of it,
 * which stays; the file's comes in beside it under an id of its own.
 */
export interface ImportRow {
  readonly table: TableName;
  readonly fate: 'new' | 'same' | 'differs';
  readonly name: string;
  /** As it will stand on the shelf, its references pointing at what came with it. */
  readonly row: AnyRow;
}

/** Shown before anything is read in; nothing that is here is ever replaced. */
export interface ImportPlan {
  readonly rows: readonly ImportRow[];
  readonly counts: Readonly<Record<ImportRow['fate'], number>>;
}

/** Compares a file with the shelf. `taken`: ids that are in use without being on the shelf (bin, quarantine), as `table/id`. */
export function planImport(
  file: WorkbookFile,
  shelf: Shelf,
  newId: () => string,
  taken: ReadonlySet<string> = new Set(),
): ImportPlan {
  const renamed = new Map<string, string>();
  const fates = TABLES.flatMap((table) =>
    file[table].map((row: AnyRow) => {
      const here = rowAt(shelf, { table, id: row.id });
      const text = `${table}/${row.id}`;
      const fate = here ? (contentIsSame(here, row) ? 'same' : 'differs') : 'new';
      if (fate === 'differs' || (fate === 'new' && taken.has(text))) renamed.set(text, newId());
      return { table, row, fate } as const;
    }),
  );
  const point = (table: TableName, id: string) => renamed.get(`${table}/${id}`) ?? id;
  const rows = fates.map(({ table, row, fate }): ImportRow => {
    const id = point(table, row.id);
    return { table, fate, name: row.name, row: { ...pointElsewhere(row, point), id, rev: 0 } };
  });
  const counts = { new: 0, same: 0, differs: 0 };
  for (const { fate } of rows) counts[fate]++;
  return { rows, counts };
}
