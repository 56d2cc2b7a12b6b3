import { type AnyRow, readRow } from '../../../shared/tables';
import type { Snapshot } from '../../storage/port';
import { type RowKey, rowAt, type Shelf } from '../shelf';
import { nameOfRaw } from './as-it-is';
import { compareRows } from './field-changes';

/** One earlier state of a row, as far as it can be looked at. */
export interface EarlierState {
  readonly snapshot: Snapshot;
  /** Null: today's schema cannot read it, so it can be kept as a file but not brought back. */
  readonly row: AnyRow | null;
  /** The fields in which it differs from the row on the shelf; null where there is none. */
  readonly differs: readonly string[] | null;
}

/** A row with its earlier states, newest first. */
export interface EarlierRow extends RowKey {
  /** As it is called now, or was last. */
  readonly name: string;
  readonly onShelf: boolean;
  readonly states: readonly EarlierState[];
}

/** Earlier states by row; rows whose newest state is newer come first. `snapshots` are newest first. */
export function earlierRows(snapshots: readonly Snapshot[], shelf: Shelf): readonly EarlierRow[] {
  const byRow = new Map<string, Snapshot[]>();
  for (const snapshot of snapshots) byRow.set(snapshot.of, [...(byRow.get(snapshot.of) ?? []), snapshot]);
  return [...byRow.values()].flatMap((states): EarlierRow[] => {
    const [newest] = states;
    if (!newest) return [];
    const key = keyOf(newest);
    const here = rowAt(shelf, key);
    return [
      {
        ...key,
        name: here?.name ?? nameOfRaw(newest.row, key.id),
        onShelf: here !== null,
        states: states.map((snapshot) => earlierState(snapshot, here)),
      },
    ];
  });
}

function earlierState(snapshot: Snapshot, here: AnyRow | null): EarlierState {
  const reading = readRow(snapshot.table, snapshot.row);
  if (!reading.ok) return { snapshot, row: null, differs: null };
  const differs = here ? [...new Set(compareRows(reading.row, here).map(({ at }) => at[0]))] : null;
  return { snapshot, row: reading.row, differs };
}

const keyOf = ({ table, of }: Snapshot): RowKey => ({ table, id: of.slice(table.length + 1) });
