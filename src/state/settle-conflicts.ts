import type { AnyRow } from '../../shared/tables';
import type { Conflict } from '../storage/port';
import { contentIsSame } from './field-changes';
import { type RowKey, rowAt, type Shelf, withRow } from './shelf';

/** What became of a row that was changed here and elsewhere: in every case both states of it live on. */
export interface Settlement {
  /**
   * `same`: both say the same. `theirs`: deleted here, changed elsewhere, so it stays. `came-back`: deleted elsewhere, changed here, so it
   * stays. `gone`: deleted in both. `both`: theirs under the old id, ours under the id of `copy`.
   */
  readonly kind: 'same' | 'theirs' | 'came-back' | 'gone' | 'both';
  readonly key: RowKey;
  /** The stored revision of `key` from now on; null where nothing is stored. */
  readonly rev: number | null;
  readonly copy: RowKey | null;
}

/** The shelf with one conflict settled, and how. */
export function settleConflict(
  shelf: Shelf,
  { table, id, theirs }: Pick<Conflict, 'table' | 'id' | 'theirs'>,
  newId: () => string,
): readonly [Shelf, Settlement] {
  const key = { table, id };
  const mine = rowAt(shelf, key);
  if (theirs === 'gone') return [shelf, { kind: mine ? 'came-back' : 'gone', key, rev: null, copy: null }];
  const stored = theirs === 'unreadable' ? null : theirs;
  const rev = stored?.rev ?? null;
  const settled = withRow(shelf, key, stored);
  if (!mine) return [settled, { kind: stored ? 'theirs' : 'gone', key, rev, copy: null }];
  if (stored && contentIsSame(mine, stored)) return [settled, { kind: 'same', key, rev, copy: null }];
  const copy = { table, id: newId() };
  return [withRow(settled, copy, renamed(mine, copy.id)), { kind: 'both', key, rev, copy }];
}

const renamed = (row: AnyRow, id: string): AnyRow => ({ ...row, id });
