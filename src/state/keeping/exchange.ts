import { type AnyRow, readRow } from '../../../shared/tables';
import type { ComingRow, Exchange } from '../ports';
import { boxOfRecipe, countStops } from '../results/box-result';
import { keyText, type RowKey, rowAt, type Shelf } from '../shelf';
import type { Workshop } from '../workshop';
import { compareRows, contentIsSame, fieldAt, setFields } from './field-changes';
import { mergeValues } from './merge-values';
import type { RowChange } from './steps';

/** An exchange that would take away more of the shelf than this at once is stopped. Source: our own, after losses told of by others. */
const MOST_TAKEN_AWAY = 0.2;

/** A shelf that is joined to an exchange. */
export interface Joined {
  /** Whether everything that came was laid in and is kept. */
  readonly isSettled: () => boolean;
  readonly leave: () => void;
}

/** What the maker said to an exchange that would take much away; `ask`: nothing yet. */
export type OnMany = 'ask' | 'take' | 'keep';

/**
 * Joins the shelf to whatever carries rows between two devices: what was kept here is told field by field, and what comes is laid into the
 * rows field by field, against what both sides last knew. Where both changed the same field, theirs stays under its id and ours is kept
 * beside it. A row that would not be readable, or whose box could not be folded any more, does not come in: the maker’s stays as it is
 * until one of the two sides changes so that both go together.
 */
export function joinExchange(
  shop: Workshop,
  exchange: Exchange,
  onMany: OnMany = 'ask',
  asks: (deletions: number) => void = () => undefined,
): Joined {
  const { tell, layIn, apart } = rowsBetween(shop, exchange, onMany === 'keep');
  let open = true;
  const isOpen = (): boolean => open;

  const leave = () => {
    open = false;
    stopHearing();
    shop.afterKept.delete(tellKept);
    shop.afterOthersKept.delete(tellKept);
  };
  const tellKept = (keys: readonly RowKey[]) => {
    for (const key of keys) tell(key);
    for (const key of keys) {
      const held = apart.get(keyText(key));
      if (held) layIn(exchange.now(held) ?? held);
    }
  };
  const hear = (rows: readonly ComingRow[]) => {
    if (!open) return;
    const taken = rows.filter((row) => row.row === null && rowAt(shop.state.rows, row)).length;
    const all = Object.values(shop.state.rows).reduce((sum, { size }) => sum + size, 0);
    if (onMany === 'ask' && taken > 1 && taken > all * MOST_TAKEN_AWAY) {
      leave();
      shop.notify('exchangeStopped', `${taken}`);
      asks(taken);
      return;
    }
    for (const row of rows) layIn(row);
  };

  const stopHearing = exchange.watch(hear);
  shop.afterKept.add(tellKept);
  shop.afterOthersKept.add(tellKept);
  const there = exchange.all();
  const named = new Set(there.map(keyText));
  const gone = exchange.agreed().filter((row) => !named.has(keyText(row)));
  hear([...there, ...gone.map(({ table, id }) => ({ table, id, row: null }))]);
  const known = exchange.agreed().filter((row) => named.has(keyText(row)));
  if (isOpen())
    for (const key of [...keysOf(shop.state.rows), ...known]) if (!apart.has(keyText(key))) tell(key);
  return { leave, isSettled: () => open && apart.size === 0 && shop.state.save.state === 'saved' };
}

/** What is told and what is laid in, row by row, between the shelf and an exchange. `keepsOurs`: a row that others took off stays here. */
function rowsBetween(shop: Workshop, exchange: Exchange, keepsOurs: boolean) {
  /** Each row as both sides last knew it. */
  const agreed = new Map<string, AnyRow>();
  /** What came and could not be laid in. */
  const apart = new Map<string, ComingRow>();
  function tell({ table, id }: RowKey): void {
    const key = keyText({ table, id });
    const is = rowAt(shop.state.rows, { table, id });
    // The example is on every device already, and nobody's work.
    if (isExample(is)) return;
    const change = changeBetween({ table, id }, agreed.get(key) ?? null, is);
    if (!change) return;
    if (is) agreed.set(key, is);
    else agreed.delete(key);
    exchange.tell([change]);
  }

  function takeOff(coming: ComingRow, here: AnyRow | null, was: AnyRow | null): void {
    const key = keyText(coming);
    agreed.delete(key);
    apart.delete(key);
    if (!here) return;
    // Typed on here, and not told yet: it stays, and is told again.
    const stays = !was || !contentIsSame(was, here) || keepsOurs;
    if (stays) tell(coming);
    else shop.place([{ table: coming.table, id: coming.id, do: 'remove', row: here }]);
  }

  function layIn(coming: ComingRow): void {
    const key = keyText(coming);
    const here = rowAt(shop.state.rows, coming);
    const was = agreed.get(key) ?? null;
    if (coming.row === null) {
      takeOff(coming, here, was);
      return;
    }
    if (!here && was) return;
    const theirs = readRow(coming.table, coming.row);
    const laid = theirs.ok ? mergeRow(coming, was, here, theirs.row, shop.state.rows) : null;
    if (!theirs.ok || !laid) {
      if (!apart.has(key)) shop.notify('heldApart', here?.name ?? '');
      apart.set(key, coming);
      return;
    }
    apart.delete(key);
    agreed.set(key, theirs.row);
    const change = changeBetween(coming, here, laid.row);
    if (change) shop.place([change]);
    if (laid.beside && here) {
      shop.place([besideOf(shop, coming, here)]);
      shop.notify('keptBoth', here.name);
    }
  }

  for (const { table, id, row } of exchange.agreed()) {
    const reading = readRow(table, row);
    if (reading.ok) agreed.set(keyText({ table, id }), reading.row);
  }
  return { tell, layIn, apart: apart as ReadonlyMap<string, ComingRow> };
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

const isExample = (row: AnyRow | null): boolean => row !== null && 'example' in row && row.example === true;

/** Our state of a row under an id of its own. */
function besideOf(shop: Workshop, { table }: RowKey, here: AnyRow): RowChange {
  const id = shop.ports.newId();
  return { table, id, do: 'add', row: { ...here, id, rev: 0 } };
}

interface Laid {
  readonly row: AnyRow;
  /** Both sides changed the same thing: ours is kept beside it. */
  readonly beside: boolean;
}

/**
 * The row here with the fields that came; null if it could not be read, or stops what could be folded before. A row that both sides had
 * before they ever met has nothing to be measured against: where the two differ, both are kept.
 */
function mergeRow(
  { table, id }: RowKey,
  was: AnyRow | null,
  here: AnyRow | null,
  theirs: AnyRow,
  shelf: Shelf,
): Laid | null {
  if (!here) return { row: { ...theirs, id, rev: 0 }, beside: false };
  if (!was && isExample(theirs)) return { row: here, beside: false };
  let beside = !was && !isExample(here) && !contentIsSame(here, theirs);
  const merged = compareRows(was ?? here, theirs).map((change) => {
    if (!was) return change;
    const { value, clashes } = mergeValues(change.before, fieldAt({ ...here }, change.at), change.after);
    beside ||= clashes;
    return { ...change, after: value };
  });
  const reading = readRow(table, setFields(here, merged, 'after'));
  if (!reading.ok) return null;
  const stops = (row: AnyRow) => {
    const box = table === 'recipes' ? boxOfRecipe(row as never, shelf.tools.values().next().value) : null;
    return box ? countStops(box) : 0;
  };
  return stops(reading.row) > 0 && stops(here) === 0 ? null : { row: reading.row, beside };
}
