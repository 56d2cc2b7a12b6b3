import { type AllRows, type AnyRow, type Rows, TABLES, type TableName } from '../../shared/tables';

/** Every row of the workbook by id. Never changed in place: a new shelf shares what did not change. */
export type Shelf = { readonly [T in TableName]: ReadonlyMap<string, Rows[T]> };

export interface RowKey {
  readonly table: TableName;
  readonly id: string;
}
export const keyText = ({ table, id }: RowKey): string => `${table}/${id}`;

export const EMPTY_SHELF: Shelf = shelfOf({
  recipes: [],
  events: [],
  papers: [],
  supplies: [],
  tools: [],
  photos: [],
});

export function shelfOf(rows: AllRows): Shelf {
  return Object.fromEntries(
    TABLES.map((table) => [table, new Map(rows[table].map((row: AnyRow) => [row.id, row]))]),
  ) as unknown as Shelf;
}

export const rowsOf = (shelf: Shelf): { [T in TableName]: Rows[T][] } =>
  Object.fromEntries(TABLES.map((table) => [table, [...shelf[table].values()]])) as never;

export const rowAt = (shelf: Shelf, { table, id }: RowKey): AnyRow | null => shelf[table].get(id) ?? null;

/** The shelf with one row put in its place, or taken off (`row: null`). */
export function withRow(shelf: Shelf, { table, id }: RowKey, row: AnyRow | null): Shelf {
  const rows = new Map<string, AnyRow>(shelf[table]);
  if (row) rows.set(id, row);
  else rows.delete(id);
  return { ...shelf, [table]: rows };
}

/** A shelf in the making: many rows put in their places, each table copied once. */
export class ShelfDraft {
  readonly #shelf: Shelf;
  readonly #changed = new Map<TableName, Map<string, AnyRow>>();

  constructor(shelf: Shelf) {
    this.#shelf = shelf;
  }

  get = ({ table, id }: RowKey): AnyRow | null =>
    (this.#changed.get(table) ?? this.#shelf[table]).get(id) ?? null;

  set({ table, id }: RowKey, row: AnyRow | null): void {
    const rows = this.#changed.get(table) ?? new Map<string, AnyRow>(this.#shelf[table]);
    this.#changed.set(table, rows);
    if (row) rows.set(id, row);
    else rows.delete(id);
  }

  done(): Shelf {
    return this.#changed.size === 0 ? this.#shelf : { ...this.#shelf, ...Object.fromEntries(this.#changed) };
  }
}

/** What is the maker’s of a table, and `kept`, which a row of the maker’s may still name: nothing of the example counts in anything of the maker’s. */
export const ownOf = <Row extends { readonly id: string; readonly example?: true | undefined }>(
  rows: ReadonlyMap<string, Row>,
  kept?: string | null,
): readonly Row[] => [...rows.values()].filter(({ id, example }) => !example || id === kept);
