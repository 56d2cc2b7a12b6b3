import { type AnyRow, readRow } from '../../../shared/tables';
import type { Change, Conflict } from '../../storage/port';
import { keyText, type RowKey } from '../shelf';
import { compareRows, contentIsSame } from './field-changes';
import { mergeValues } from './merge-values';

/**
 * What becomes of a row that was changed here and elsewhere: every state of it lives on.
 * - `goOn`: ours is kept on top of what is stored (`rev`), since that says the same, is what we sent ourselves, or is gone.
 * - `merge`: the two changed different things; one row with both is kept on top of what is stored.
 * - `drop`: nothing is left to keep; both say the same.
 * - `copy`: theirs stays under its id; ours is kept under a new one, in the bin if it was deleted here.
 */
export interface Settlement {
  readonly way: 'goOn' | 'merge' | 'drop' | 'copy';
  /** What to tell the maker, if anything. */
  readonly notice: 'keptBoth' | 'cameBack' | 'stayed' | null;
  /** The stored row from now on; null where nothing is stored. */
  readonly theirs: AnyRow | null;
  /** What stands on the shelf under the old id from now on; only with `merge`. */
  readonly merged?: AnyRow;
}

/**
 * How to settle a conflict. `base`: the stored row as this tab last saw it, which both sides began from; null if it never did. `sent`: what
 * we sent and heard no answer to, so that it may be what is stored.
 */
export function settleConflict(
  mine: Change,
  { theirs }: Conflict,
  base: AnyRow | null,
  sent: readonly Change[],
): Settlement {
  if (theirs === 'gone') return { way: 'goOn', notice: mine.deleted ? null : 'cameBack', theirs: null };
  const copy = { way: 'copy', notice: mine.deleted ? 'stayed' : 'keptBoth' } as const;
  if (theirs === 'unreadable') return { ...copy, theirs: null };
  const isSame = contentIsSame(mine.row, theirs);
  if (isSame && !mine.deleted) return { way: 'drop', notice: null, theirs };
  if (isSame || isOurs(mine, theirs, sent)) return { way: 'goOn', notice: null, theirs };
  const merged = mine.deleted ? null : mergeRows(mine, base, theirs);
  return merged ? { way: 'merge', notice: null, theirs, merged } : { ...copy, theirs };
}

/** Fields of a recipe that only go with a style of their own: sizes of one style say nothing to another. */
const OF_STYLE = ['sizesMm', 'options', 'styleId', 'ownNet', 'ownStyle'];

/** One row with what both sides changed; null where both changed the same thing, or the two do not go together. */
function mergeRows(mine: Change, base: AnyRow | null, theirs: AnyRow): AnyRow | null {
  if (!base) return null;
  const style = [compareRows(base, mine.row), compareRows(base, theirs)].map((fields) =>
    fields.map(({ at }) => at[0]).filter((field) => OF_STYLE.includes(field)),
  );
  const changesStyle = style.flat().some((field) => field === 'styleId' || field === 'ownNet');
  if (changesStyle && style.every(({ length }) => length > 0)) return null;
  const { rev: _base, changedAt: _then, ...was } = base;
  const { rev: _mine, changedAt, ...is } = mine.row;
  const { rev, changedAt: theirsAt, ...their } = theirs;
  const { value, clashes } = mergeValues(was, is, their);
  if (clashes) return null;
  const reading = readRow(mine.table, {
    ...(value as object),
    rev,
    changedAt: [changedAt, theirsAt].sort()[1],
  });
  return reading.ok ? reading.row : null;
}

const isOurs = (mine: RowKey, theirs: AnyRow, sent: readonly Change[]): boolean =>
  sent.some(
    (change) => keyText(change) === keyText(mine) && !change.deleted && contentIsSame(change.row, theirs),
  );
