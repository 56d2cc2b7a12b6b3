import type { AnyRow, TableName } from '../../../shared/tables';
import type { RowKey } from '../shelf';

/** Fields, wherever they stand in a row, that hold the id of another row; a test finds those that are missing here. */
export const REFERENCES: Readonly<Record<string, TableName>> = {
  recipeId: 'recipes',
  paperId: 'papers',
  offcutOfId: 'papers',
  tapeId: 'supplies',
  glueId: 'supplies',
  toolId: 'tools',
  supplyId: 'supplies',
};

type Named = Readonly<Record<string, unknown>>;
const isNamed = (value: unknown): value is Named =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Every row that this one points to. */
export function referencesOf(row: AnyRow): readonly RowKey[] {
  const found: RowKey[] = [];
  mapReferences(row, (table, id) => {
    found.push({ table, id });
    return id;
  });
  return found;
}

/** The row with every reference replaced by what `point` makes of it. */
export function pointElsewhere<Row extends AnyRow>(
  row: Row,
  point: (table: TableName, id: string) => string,
): Row {
  return mapReferences(row, point) as Row;
}

function mapReferences(value: unknown, point: (table: TableName, id: string) => string): unknown {
  if (Array.isArray(value)) return value.map((item) => mapReferences(item, point));
  if (!isNamed(value)) return value;
  return Object.fromEntries(
    Object.entries(value).map(([field, inner]) => {
      const table = REFERENCES[field];
      return [field, table && typeof inner === 'string' ? point(table, inner) : mapReferences(inner, point)];
    }),
  );
}
