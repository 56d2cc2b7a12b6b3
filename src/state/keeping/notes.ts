import { FIRST_SETTINGS, type Settings, settings } from '../../../shared/settings';
import { type Refusal, refusalsOf } from '../../core/rows/refusals';

/** When everything was last put in a file and where, and how often something was kept since, in whatever tab. */
export interface BackupNote {
  readonly at: string | null;
  readonly savesSince: number;
  readonly where?: BackupPlace | undefined;
}

/** Handed to the browser as a download of this name, or written into the folder of this name. */
export interface BackupPlace {
  readonly how: 'download' | 'folder';
  readonly name: string;
}

/** The last copy as the database notes it: `generation` is how often rows had been kept when it was taken, `rows` how many it holds. */
export interface KeptBackup extends Omit<BackupNote, 'savesSince'> {
  readonly generation: number;
  readonly rows?: number | undefined;
}

export const NO_BACKUP: BackupNote = { at: null, savesSince: 0 };
export const NO_KEPT_BACKUP: KeptBackup = { at: null, generation: 0 };

/** The last copy as it stands once rows have been kept `generation` times; a copy of more than that is one of another database. */
export const backupSince = ({ at, where, generation: then }: KeptBackup, generation: number): BackupNote => ({
  at,
  savesSince: then > generation ? generation : generation - then,
  ...(where && { where }),
});

/** Settings from what a page asks for. */
export function checkSettings(
  raw: Settings,
): { readonly settings: Settings } | { readonly refusals: readonly Refusal[] } {
  const reading = settings.safeParse(raw);
  return reading.success ? { settings: reading.data } : { refusals: refusalsOf(reading.error.issues, raw) };
}

/** Settings from storage; the first settings where they cannot be read, since they are quickly set again. */
export function readSettings(raw: unknown, first = FIRST_SETTINGS): Settings {
  const reading = settings.safeParse(raw);
  return reading.success ? reading.data : first;
}

export function readBackupNote(raw: unknown): KeptBackup {
  if (typeof raw !== 'object' || raw === null) return NO_KEPT_BACKUP;
  const { at, generation, where, rows } = raw as Partial<Record<keyof KeptBackup, unknown>>;
  if (typeof at !== 'string' || !Number.isFinite(Date.parse(at))) return NO_KEPT_BACKUP;
  return {
    at,
    generation: isCount(generation) ? generation : 0,
    ...(isPlace(where) && { where }),
    ...(isCount(rows) && { rows }),
  };
}

const isCount = (raw: unknown): raw is number => Number.isSafeInteger(raw) && (raw as number) >= 0;

function isPlace(raw: unknown): raw is BackupPlace {
  if (typeof raw !== 'object' || raw === null) return false;
  const { how, name } = raw as Partial<Record<keyof BackupPlace, unknown>>;
  return (how === 'download' || how === 'folder') && typeof name === 'string';
}

const OVERDUE_DAYS = 7;
const OVERDUE_SAVES = 20;
const DAY_MS = 86_400_000;

/**
 * Whether it is time to say that a copy outside the browser is due: after 20 saves, or a week with any. A copy of a day to come was made
 * while the clock was wrong, and counts by its distance. Source: our own.
 */
export function backupIsDue({ at, savesSince }: BackupNote, now: number): boolean {
  if (savesSince >= OVERDUE_SAVES) return true;
  return at !== null && savesSince > 0 && Math.abs(now - Date.parse(at)) >= OVERDUE_DAYS * DAY_MS;
}
