import type { Refusal } from '../../core/rows/refusals';
import { rowsOf, shelfOf, withRow } from '../shelf';
import type { Notice } from '../workbook-state';
import type { Workshop } from '../workshop';
import { type BackupPart, backupParts, partName } from './backup-parts';
import { dayOf } from './day-of';

/** Puts one file where the maker keeps files. */
export type HandOver = (name: string, text: string) => void;

/** What became of a file the maker asked for: what to tell, and what about. */
export type Told = Pick<Notice, 'code' | 'about'>;

/**
 * - `everything`: all rows that are kept, and what was typed since.
 * - `rest`: fewer rows are kept than were counted (`missing`); it holds those that are there.
 * - `tab`: the database does not answer; it holds what this tab shows.
 */
export type Backup =
  | {
      readonly ok: true;
      readonly holds: 'everything' | 'rest' | 'tab';
      readonly parts: readonly BackupPart[];
      readonly rows: number;
      readonly missing: number;
      readonly generation: number;
    }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/**
 * A backup of everything, read out of the database in one go, since a tab may not have heard of all that others kept; with what is typed
 * here and could not be kept. Every file of it was read back.
 */
export async function backupOf(shop: Workshop): Promise<Backup> {
  await shop.saver.keepNow();
  const loaded = shop.state.phase.phase === 'stopped' ? null : await shop.storage?.load();
  if (!loaded?.ok) {
    const written = await backupParts(rowsOf(shop.state.rows));
    return written.ok ? { ...written, holds: 'tab', missing: 0, generation: 0 } : written;
  }
  const { rows, loss, generation } = loaded.value;
  let shelf = shelfOf(rows);
  for (const change of shop.saver.unsaved())
    shelf = withRow(shelf, change, change.deleted ? null : change.row);
  const written = await backupParts(rowsOf(shelf));
  if (!written.ok) return written;
  const missing = loss ? Math.max(1, loss.expected.rows - loss.found.rows) : 0;
  return { ...written, holds: loss ? 'rest' : 'everything', missing, generation };
}

/** Hands a backup of everything over, notes it as the last copy if it is whole, and says what became of it. */
export async function handBackup(shop: Workshop, hand: HandOver): Promise<Told> {
  const backup = await backupOf(shop);
  if (!backup.ok) return { code: 'fileNotWritten', about: placeOf(backup.refusals) };
  const { parts, rows, generation, missing, holds } = backup;
  const day = dayOf(shop.ports.now());
  for (const part of parts) hand(partName(day, part), part.text);
  if (holds === 'tab') return { code: 'backupOfTab', about: `${rows}` };
  if (holds === 'rest') return { code: 'backupOfRest', about: `${missing}` };
  const name = `${partName(day, parts[0] ?? { number: 1, of: 1 })}.json`;
  shop.noteBackup({ how: 'download', name }, { generation, rows });
  return { code: 'backupMade', about: `${parts.length}` };
}

/** What a file was refused for, in the words of the refusal itself. */
export const placeOf = ([refusal]: readonly Refusal[]): string =>
  refusal ? [refusal.path, `${refusal.found}; ${refusal.expected}`].filter(Boolean).join(': ') : '';
