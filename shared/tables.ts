import './jitless';
import { type Refusal, refusalsOf } from './refusals';
import {
  type FavorEvent,
  favorEvent,
  type Paper,
  paper,
  type Recipe,
  recipe,
  type Supply,
  supply,
  type Tool,
  tool,
} from './workbook';

/** The five tables of a workbook, in the order a file lists them. */
export const TABLES = ['recipes', 'events', 'papers', 'supplies', 'tools'] as const;
export type TableName = (typeof TABLES)[number];

/** What one row of each table is. */
export interface Rows {
  recipes: Recipe;
  events: FavorEvent;
  papers: Paper;
  supplies: Supply;
  tools: Tool;
}
export type AnyRow = Rows[TableName];

const ROW_SCHEMAS = { recipes: recipe, events: favorEvent, papers: paper, supplies: supply, tools: tool };

export type RowReading<Row> =
  | { readonly ok: true; readonly row: Row }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** One row of a table from foreign data: strict, text cleaned. Used on stored rows, imported rows and before anything is kept. */
export function readRow<T extends TableName>(table: T, raw: unknown): RowReading<Rows[T]> {
  const reading = ROW_SCHEMAS[table].safeParse(raw);
  return reading.success
    ? { ok: true, row: reading.data as Rows[T] }
    : { ok: false, refusals: refusalsOf(reading.error.issues, raw) };
}
