import { type AnyRow, readRow } from '../../../shared/tables';
import { keyText, type RowKey, rowAt, type Shelf, withRow } from '../shelf';
import { type FieldChange, setFields } from './field-changes';

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
 * The shelf after a step was done or undone, with `changedAt` set on the rows it edited. Null if the step no longer fits:
 * its row is gone, or would not be readable.
 */
export function takeStep(shelf: Shelf, step: Step, way: 'undo' | 'redo', changedAt: string): Shelf | null {
  const changes = way === 'redo' ? step.changes : step.changes.toReversed();
  let next: Shelf | null = shelf;
  for (const change of changes) next = next && takeChange(next, change, way, changedAt);
  return next;
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
