import { type AnyRow, readRow } from '../../../shared/tables';
import { keyText, type RowKey, rowAt, type Shelf, ShelfDraft } from '../shelf';
import { contentIsSame, type FieldChange, fieldAt, setFields } from './field-changes';
import { mergeValues } from './merge-values';
import { sameValue } from './same-value';

export type RowChange = RowKey &
  (
    | { readonly do: 'edit'; readonly fields: readonly FieldChange[] }
    | { readonly do: 'add' | 'remove'; readonly row: AnyRow }
  );

/** One thing the maker did, which one undo takes back. `label` says it in their words: 'Width', 'Delete Snow tray'. */
export interface Step {
  readonly label: string;
  readonly changes: readonly RowChange[];
  /** Milliseconds, of the last keystroke in it. */
  readonly at: number;
}

/**
 * The shelf after a step was done or undone, with `changedAt` set on the rows it edited. Only what is still as the step left it changes:
 * what another tab has changed since stays. Null if nothing of the step fits any more: its rows are gone, changed, or would not be readable.
 */
export function takeStep(shelf: Shelf, step: Step, way: 'undo' | 'redo', changedAt: string): Shelf | null {
  const changes = way === 'redo' ? step.changes : step.changes.toReversed();
  const next = new ShelfDraft(shelf);
  let fits = 0;
  for (const change of changes) {
    const row = rowAfter(next, change, way, changedAt);
    if (row === 'unreadable') return null;
    if (row === 'stays') continue;
    next.set(change, row);
    fits++;
  }
  return fits > 0 || changes.length === 0 ? next.done() : null;
}

/** Names of the rows in which something of a step was changed since by somebody else, so that it stays. */
export function changedSince(shelf: Shelf, step: Step, way: 'undo' | 'redo'): readonly string[] {
  return step.changes.flatMap((change) => {
    const here = rowAt(shelf, change);
    if (!here) return [];
    const stands =
      change.do === 'edit'
        ? !layBack(here, change.fields, way).clashes
        : (change.do === 'add') === (way === 'redo') || contentIsSame(here, change.row);
    return stands ? [] : [here.name];
  });
}

/** Whether two steps are the same act: undone, done again and kept, a step stays itself. */
export const isSameStep = (a: Step, b: Step): boolean =>
  a.at === b.at && a.label === b.label && a.changes.map(keyText).join() === b.changes.map(keyText).join();

/** What it takes to be without a step that added or removed rows, whatever has happened since: what is so already is left out. */
export function changesBack(shelf: Shelf, step: Step): RowChange[] {
  return step.changes.toReversed().flatMap((change): RowChange[] => {
    if (change.do === 'edit') return [];
    const here = rowAt(shelf, change);
    if (change.do === 'remove') return here ? [] : [{ ...change, do: 'add' }];
    // As it stands now, so that work done on it since lies in the bin with it.
    return here ? [{ ...change, do: 'remove', row: here }] : [];
  });
}

/** The row as a change leaves it, null where it takes it off the shelf. */
function rowAfter(
  shelf: Pick<ShelfDraft, 'get'>,
  change: RowChange,
  way: 'undo' | 'redo',
  changedAt: string,
): AnyRow | null | 'stays' | 'unreadable' {
  const here = shelf.get(change);
  if (change.do === 'edit') {
    if (!here) return 'stays';
    const { fields, moved } = layBack(here, change.fields, way);
    return moved || change.fields.length === 0 ? readOr(change, { ...fields, changedAt }) : 'stays';
  }
  const adds = (change.do === 'add') === (way === 'redo');
  if (adds) return here ? 'stays' : readOr(change, change.row);
  return here && contentIsSame(here, change.row) ? null : 'stays';
}

/** Fields of a row after a change was done or undone; `moved`: some were; `clashes`: some were changed since, and stay. */
function layBack(row: AnyRow, changes: readonly FieldChange[], way: 'undo' | 'redo') {
  let fields: Readonly<Record<string, unknown>> = row;
  let [moved, clashes] = [false, false];
  for (const change of changes) {
    const [from, to] = way === 'undo' ? [change.after, change.before] : [change.before, change.after];
    const is = fieldAt(fields, change.at);
    const merged = mergeValues(from, to, is);
    clashes ||= merged.clashes;
    if (sameValue(merged.value, is)) continue;
    fields = setFields(fields as unknown as AnyRow, [{ ...change, after: merged.value }], 'after');
    moved = true;
  }
  return { fields, moved, clashes };
}

/** Nothing gets onto the shelf that could not be read back from storage. */
function readOr(key: RowKey, raw: unknown): AnyRow | 'unreadable' {
  const reading = readRow(key.table, raw);
  return reading.ok ? reading.row : 'unreadable';
}
