import '../src/core/rows/jitless';
import { type Refusal, readBy } from '../src/core/rows/refusals';
import {
  type FavorEvent,
  favorEvent,
  type Paper,
  type Photo,
  paper,
  photo,
  type Recipe,
  recipe,
  type Supply,
  supply,
  type Tool,
  tool,
} from './workbook';

/** The tables of a workbook, in the order a file lists them. */
export const TABLES = ['recipes', 'events', 'papers', 'supplies', 'tools', 'photos'] as const;
export type TableName = (typeof TABLES)[number];

/** What one row of each table is. */
export interface Rows {
  recipes: Recipe;
  events: FavorEvent;
  papers: Paper;
  supplies: Supply;
  tools: Tool;
  photos: Photo;
}
export type AnyRow = Rows[TableName];

const ROW_SCHEMAS = {
  recipes: recipe,
  events: favorEvent,
  papers: paper,
  supplies: supply,
  tools: tool,
  photos: photo,
};

export type RowReading<Row> =
  | { readonly ok: true; readonly row: Row }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** One row of a table from foreign data: strict, text cleaned. Used on stored rows, imported rows and before anything is kept. */
export function readRow<T extends TableName>(table: T, raw: unknown): RowReading<Rows[T]> {
  const reading = readBy(ROW_SCHEMAS[table], raw);
  return reading.ok ? { ok: true, row: reading.value as Rows[T] } : reading;
}

export type AllRows = { readonly [T in TableName]: readonly Rows[T][] };

/** A stored row that today's schema cannot read. It is never changed or deleted, only shown and offered as it is. */
export interface Quarantined {
  readonly table: TableName;
  readonly id: string;
  readonly raw: unknown;
  readonly refusals: readonly Refusal[];
}

/** Rows as they were stored, parted into those that today's schema reads and those it does not. */
export function sortRows(stored: Readonly<Record<string, readonly unknown[]>>): {
  readonly rows: AllRows;
  readonly quarantined: readonly Quarantined[];
} {
  const quarantined: Quarantined[] = [];
  const read = <T extends TableName>(table: T): readonly Rows[T][] =>
    (stored[table] ?? []).flatMap((raw): Rows[T][] => {
      const reading = readRow(table, raw);
      if (reading.ok) return [reading.row];
      quarantined.push({ table, id: idOf(raw), raw, refusals: reading.refusals });
      return [];
    });
  const rows = {
    recipes: read('recipes'),
    events: read('events'),
    papers: read('papers'),
    supplies: read('supplies'),
    tools: read('tools'),
    photos: read('photos'),
  };
  return { rows, quarantined };
}

const idOf = (raw: unknown): string =>
  typeof raw === 'object' && raw !== null && 'id' in raw && typeof raw.id === 'string' ? raw.id : '';
