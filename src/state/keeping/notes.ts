import { FIRST_SETTINGS, type Settings, settings } from '../../../shared/settings';
import { type Refusal, refusalsOf } from '../../core/rows/refusals';

/** When everything was last put in a file and where, and how often something was kept since. */
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

export const NO_BACKUP: BackupNote = { at: null, savesSince: 0 };

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

export function readBackupNote(raw: unknown): BackupNote {
  if (typeof raw !== 'object' || raw === null) return NO_BACKUP;
  const { at, savesSince, where } = raw as Partial<Record<keyof BackupNote, unknown>>;
  const known = typeof at === 'string' && Number.isFinite(Date.parse(at));
  return {
    at: known ? at : null,
    savesSince: typeof savesSince === 'number' && savesSince >= 0 ? savesSince : 0,
    ...(isPlace(where) && { where }),
  };
}

function isPlace(raw: unknown): raw is BackupPlace {
  if (typeof raw !== 'object' || raw === null) return false;
  const { how, name } = raw as Partial<Record<keyof BackupPlace, unknown>>;
  return (how === 'download' || how === 'folder') && typeof name === 'string';
}

const OVERDUE_DAYS = 7;
const OVERDUE_SAVES = 20;
const DAY_MS = 86_400_000;

/** Whether it is time to say that a copy outside the browser is due: after 20 saves, or a week with any. Source: our own. */
export function backupIsDue({ at, savesSince }: BackupNote, now: number): boolean {
  if (savesSince >= OVERDUE_SAVES) return true;
  return at !== null && savesSince > 0 && now - Date.parse(at) >= OVERDUE_DAYS * DAY_MS;
}
