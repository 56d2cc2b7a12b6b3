import type { KeptNotes, NoteChange } from '../../storage/port';
import type { WorkbookData } from '../workbook-state';
import { smallHistory } from './kept-history';
import { type KeptBackup, NO_KEPT_BACKUP, readBackupNote, readSettings } from './notes';

type Beside = Pick<WorkbookData, 'settings' | 'history'> & { readonly backup: KeptBackup };

/**
 * What is kept beside the rows: settings, the last copy, the undo list. Each is written on its own and only where it was changed in this
 * tab, so that no tab writes its own idea of the others over them.
 */
export class NotesHere {
  readonly #settings: () => WorkbookData['settings'];
  readonly #history: () => WorkbookData['history'];
  /** As storage had them last, as far as this tab knows. */
  #stored: Beside | null = null;
  backup: KeptBackup = NO_KEPT_BACKUP;

  constructor(state: () => WorkbookData) {
    this.#settings = () => state().settings;
    this.#history = () => state().history;
  }

  /** What is on the page now came from storage just so. */
  start(backup: KeptBackup): void {
    this.backup = backup;
    this.#stored = this.#now();
  }

  /** What of it is not kept; `kept` hears that it is. */
  departing(): { readonly changes: readonly NoteChange[]; readonly kept: () => void } {
    const now = this.#now();
    const { settings, history, backup } = this.#stored ?? now;
    const changes: NoteChange[] = [];
    if (now.settings !== settings)
      changes.push({ id: 'settings', value: now.settings, ...(this.#stored && { before: settings }) });
    if (now.history !== history) changes.push({ id: 'history', value: smallHistory(now.history) });
    if (now.backup !== backup) changes.push({ id: 'backup', value: now.backup });
    const kept = () => {
      this.#stored = now;
    };
    return { changes, kept };
  }

  /** Settings as another tab left them, with those on top that were changed here and are not kept yet; the newer of two copies. */
  hear({ notes }: KeptNotes): WorkbookData['settings'] {
    const { settings: before } = this.#stored ?? this.#now();
    const mine = Object.entries(this.#settings()).filter(
      ([name, value]) => value !== before[name as keyof typeof before],
    );
    const theirs = readSettings(notes['settings'], this.#settings());
    const settings = mine.length === 0 ? theirs : { ...theirs, ...Object.fromEntries(mine) };
    const backup = readBackupNote(notes['backup']);
    const mineIsNewer = this.backup.generation > backup.generation;
    if (!mineIsNewer) this.backup = backup;
    this.#stored = {
      history: this.#stored?.history ?? this.#history(),
      settings: mine.length === 0 ? settings : theirs,
      backup: mineIsNewer ? (this.#stored?.backup ?? backup) : backup,
    };
    return settings;
  }

  #now(): Beside {
    return { settings: this.#settings(), history: this.#history(), backup: this.backup };
  }
}
