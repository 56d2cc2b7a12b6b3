import { type AnyRow, readRow } from '../../shared/tables';
import { type FieldChange, setFields } from './field-changes';
import { type RowKey, rowAt, type Shelf, withRow } from './shelf';

export type RowChange = RowKey &
  (
    | { readonly do: 'edit'; readonly fields: readonly FieldChange[] }
    | { readonly do: 'add' | 'remove'; readonly row: AnyRow }
  );

/** One thing the maker did, which one undo takes back. `label` says it in her words: 'Width', 'Delete Snow tray'. */
export interface Step {
  readonly label: string;
  readonly changes: readonly RowChange[];
  /** Milliseconds, of the last keystroke in it. */
  readonly at: number;
}

/**
 * The shelf after a step was done or undone, with `changedAt` set on the rows it edited. Null if the step no longer fits:
 * its row is gone, or would not be readable.
 */
export function takeStep(shelf: Shelf, step: Step, way: 'undo' | 'redo', changedAt: string): Shelf | null {
  const changes = way === 'redo' ? step.changes : step.changes.toReversed();
  let next: Shelf | null = shelf;
  for (const change of changes) next = next && takeChange(next, change, way, changedAt);
  return next;
}

function takeChange(shelf: Shelf, change: RowChange, way: 'undo' | 'redo', changedAt: string): Shelf | null {
  const here = rowAt(shelf, change);
  if (change.do === 'edit') {
    if (!here) return null;
    return withReadRow(shelf, change, {
      ...setFields(here, change.fields, way === 'redo' ? 'after' : 'before'),
      changedAt,
    });
  }
  const adds = (change.do === 'add') === (way === 'redo');
  if (adds === (here !== null)) return null;
  return adds ? withReadRow(shelf, change, change.row) : withRow(shelf, change, null);
}

/** Nothing gets onto the shelf that could not be read back from storage. */
function withReadRow(shelf: Shelf, key: RowKey, raw: unknown): Shelf | null {
  const reading = readRow(key.table, raw);
  return reading.ok ? withRow(shelf, key, reading.row) : null;
}
