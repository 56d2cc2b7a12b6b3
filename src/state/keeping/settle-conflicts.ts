import type { AnyRow } from '../../../shared/tables';
import type { Change, Conflict } from '../../storage/port';
import { keyText, type RowKey } from '../shelf';
import { contentIsSame } from './field-changes';

/**
 * What becomes of a row that was changed here and elsewhere: every state of it lives on.
 * - `goOn`: ours is kept on top of what is stored (`rev`), since that says the same, is what we sent ourselves, or is gone.
 * - `drop`: nothing is left to keep; both say the same.
 * - `copy`: theirs stays under its id; ours is kept under a new one, in the bin if it was deleted here.
 */
export interface Settlement {
  readonly way: 'goOn' | 'drop' | 'copy';
  /** What to tell the maker, if anything. */
  readonly notice: 'keptBoth' | 'cameBack' | 'stayed' | null;
  /** The stored revision from now on; null where nothing is stored. */
  readonly rev: number | null;
  /** What stands on the shelf under the old id from now on; only with `copy`. */
  readonly theirs: AnyRow | null;
}

/** How to settle a conflict. `sent`: what we sent and heard no answer to, so that it may be what is stored. */
export function settleConflict(mine: Change, { theirs }: Conflict, sent: readonly Change[]): Settlement {
  if (theirs === 'gone')
    return { way: 'goOn', notice: mine.deleted ? null : 'cameBack', rev: null, theirs: null };
  const copy = { way: 'copy', notice: mine.deleted ? 'stayed' : 'keptBoth' } as const;
  if (theirs === 'unreadable') return { ...copy, rev: null, theirs: null };
  const { rev } = theirs;
  const isSame = contentIsSame(mine.row, theirs);
  if (isSame && !mine.deleted) return { way: 'drop', notice: null, rev, theirs: null };
  if (isSame || isOurs(mine, theirs, sent)) return { way: 'goOn', notice: null, rev, theirs: null };
  return { ...copy, rev, theirs };
}

const isOurs = (mine: RowKey, theirs: AnyRow, sent: readonly Change[]): boolean =>
  sent.some(
    (change) => keyText(change) === keyText(mine) && !change.deleted && contentIsSame(change.row, theirs),
  );
