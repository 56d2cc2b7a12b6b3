import { type AnyRow, readRow } from '../../../shared/tables';
import type { ComingRow, Exchange } from '../ports';
import { boxOfRecipe, countStops } from '../results/box-result';
import { keyText, type RowKey, rowAt, type Shelf } from '../shelf';
import type { Workshop } from '../workshop';
import { compareRows, type FieldChange, setFields } from './field-changes';
import type { RowChange } from './steps';

/** An exchange that would take away more of the shelf than this at once is stopped. Source: our own, after losses told of by others. */
const MOST_TAKEN_AWAY = 0.2;

/**
 * Joins the shelf to whatever carries rows between two devices: what was kept here is told field by field, and what comes is laid into the
 * rows field by field. A row that would not be readable, or whose box could not be folded any more, does not come in: the maker’s stays as it is
 * until one of the two sides changes so that both go together. Returns a function that ends it.
 */
export function joinExchange(shop: Workshop, exchange: Exchange): () => void {
  /** Each row as both sides last knew it. */
  const agreed = new Map<string, AnyRow>();
  /** What came and could not be laid in. */
  const apart = new Map<string, ComingRow>();

  function tell({ table, id }: RowKey): void {
    const key = keyText({ table, id });
    const [was, is] = [agreed.get(key), rowAt(shop.state.rows, { table, id })];
    const change = changeBetween({ table, id }, was ?? null, is);
    if (!change) return;
    if (is) agreed.set(key, is);
    else agreed.delete(key);
    exchange.tell([change]);
  }

  function layIn(coming: ComingRow): void {
    const key = keyText(coming);
    const here = rowAt(shop.state.rows, coming);
    const was = agreed.get(key) ?? null;
    if (coming.row === null) {
      // Typed on here, and not told yet: it stays, and is told again.
      const stays = here && (!was || compareRows(was, here).length > 0);
      agreed.delete(key);
      apart.delete(key);
      if (stays) tell(coming);
      else if (here) shop.place([{ table: coming.table, id: coming.id, do: 'remove', row: here }]);
      return;
    }
    if (!here && was) return;
    const theirs = readRow(coming.table, coming.row);
    const fields = theirs.ok ? compareRows(was ?? here ?? theirs.row, theirs.row) : null;
    const merged = fields && mergeRow(coming, here, theirs.ok ? theirs.row : null, fields, shop.state.rows);
    if (!theirs.ok || !merged) {
      if (!apart.has(key)) shop.notify('heldApart', here?.name ?? '');
      apart.set(key, coming);
      return;
    }
    apart.delete(key);
    agreed.set(key, theirs.row);
    const change = changeBetween(coming, here, merged);
    if (change) shop.place([change]);
  }

  const leave = () => {
    stopHearing();
    shop.afterKept.delete(tellKept);
  };
  const tellKept = (keys: readonly RowKey[]) => {
    for (const key of keys) tell(key);
    for (const key of keys) {
      const held = apart.get(keyText(key));
      if (held) layIn(exchange.now(held) ?? held);
    }
  };
  const hear = (rows: readonly ComingRow[]) => {
    const taken = rows.filter((row) => row.row === null && rowAt(shop.state.rows, row)).length;
    const all = Object.values(shop.state.rows).reduce((sum, { size }) => sum + size, 0);
    if (taken > 1 && taken > all * MOST_TAKEN_AWAY) {
      leave();
      shop.notify('exchangeStopped', `${taken}`);
      return;
    }
    for (const row of rows) layIn(row);
  };

  const stopHearing = exchange.watch(hear);
  shop.afterKept.add(tellKept);
  hear(exchange.all());
  for (const key of keysOf(shop.state.rows)) if (!apart.has(keyText(key))) tell(key);
  return leave;
}

const keysOf = (shelf: Shelf): RowKey[] =>
  Object.entries(shelf).flatMap(([table, rows]: [string, ReadonlyMap<string, AnyRow>]) =>
    [...rows.keys()].map((id) => ({ table: table as RowKey['table'], id })),
  );

/** What makes one state of a row of the other; null where nothing does. */
function changeBetween(key: RowKey, was: AnyRow | null, is: AnyRow | null): RowChange | null {
  const { table, id } = key;
  if (!was) return is && { table, id, do: 'add', row: is };
  if (!is) return { table, id, do: 'remove', row: was };
  const fields = compareRows(was, is);
  return fields.length > 0 ? { table, id, do: 'edit', fields } : null;
}

/** The row here with the fields that came; null if it could not be read, or stops what could be folded before. */
function mergeRow(
  { table, id }: RowKey,
  here: AnyRow | null,
  theirs: AnyRow | null,
  fields: readonly FieldChange[],
  shelf: Shelf,
): AnyRow | null {
  if (!here) return theirs && { ...theirs, id, rev: 0 };
  const reading = readRow(table, setFields(here, fields, 'after'));
  if (!reading.ok) return null;
  const stops = (row: AnyRow) => {
    const box = table === 'recipes' ? boxOfRecipe(row as never, shelf.tools.values().next().value) : null;
    return box ? countStops(box) : 0;
  };
  return stops(reading.row) > 0 && stops(here) === 0 ? null : reading.row;
}
