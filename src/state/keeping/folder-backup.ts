import { type FolderDoor, type FolderHandle, type FolderTrouble, isoTime } from '../ports';
import type { Workshop } from '../workshop';
import { backupParts, dayOf, partName } from './backup-parts';

/** The folder that gets a copy of everything by itself, as the page shows it. */
export interface BackupFolder {
  /** As the folder is called. */
  readonly name: string;
  readonly lastAt: string | null;
  readonly lastFile: string | null;
  /** Why the last copy is not there, or the next cannot be written; null: all is well. */
  readonly trouble: FolderTrouble | null;
}

/** A copy is written this long after the last save. Source: our own; typing on should not write everything at every word. */
export const FOLDER_WAIT_MS = 20_000;
/** After trouble that may pass. Source: our own. */
const TRY_AGAIN_MS = 300_000;

const NOTE = 'folder';

/**
 * Copies of everything in a folder of the maker's own, written by themselves some seconds after each save: one file a day, so that an
 * earlier day is never written over. Nothing is written while rows are missing, or while there are none.
 */
export class FolderBackup {
  readonly #shop: Workshop;
  #door: FolderDoor | null = null;
  #handle: FolderHandle | null = null;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #running: Promise<void> | null = null;

  constructor(shop: Workshop) {
    this.#shop = shop;
  }

  /** Whether this browser lets a page write into a folder at all. */
  async isThere(): Promise<boolean> {
    return (await this.#openDoor()) !== null;
  }

  /** Goes on with the folder of an earlier visit, from the note it left. */
  async start(note: unknown): Promise<void> {
    const kept = readNote(note);
    const door = await this.#openDoor();
    if (!kept || !door || this.#handle) return;
    this.#handle = kept.handle;
    const allowed = await door.mayWrite(kept.handle, false);
    const { name, lastAt, lastFile } = kept;
    this.#show({ name, lastAt, lastFile, trouble: allowed ? null : 'forbidden' });
    this.#listen();
    if (this.#shop.state.backup.savesSince > 0) this.#writeIn(FOLDER_WAIT_MS);
  }

  /** Lets the maker pick a folder and writes a first copy there. */
  async pick(): Promise<void> {
    const picked = await (await this.#openDoor())?.pick();
    if (!picked) return;
    this.#handle = picked.handle;
    this.#show({ name: picked.name, lastAt: null, lastFile: null, trouble: null });
    this.#listen();
    await this.#keepNote({ ...this.#shop.state.folder, handle: picked.handle });
    await this.allow();
  }

  /** Asks once more to be let in, and writes if so. */
  async allow(): Promise<void> {
    if (this.#handle && (await this.#door?.mayWrite(this.#handle, true))) await this.writeNow();
    else this.#trouble('forbidden');
  }

  /** Writes a copy now. */
  writeNow(): Promise<void> {
    clearTimeout(this.#timer);
    this.#running ??= this.#write().finally(() => {
      this.#running = null;
    });
    return this.#running;
  }

  /** Writes there no more; what lies there stays. */
  async forget(): Promise<void> {
    clearTimeout(this.#timer);
    this.#handle = null;
    this.#shop.set({ folder: null });
    await this.#keepNote(null);
  }

  async #write(): Promise<void> {
    const { rows, phase, salvaged } = this.#shop.state;
    const empty = Object.values(rows).every(({ size }) => size === 0);
    const [handle, door] = [this.#handle, this.#door];
    if (!handle || !door || phase.phase !== 'ready' || salvaged || empty) return;
    if (!(await door.mayWrite(handle, false))) {
      this.#trouble('forbidden');
      return;
    }
    const at = this.#shop.ports.now();
    let lastFile = '';
    for (const part of backupParts(rows)) {
      lastFile = `${partName(dayOf(at), part)}.json`;
      const trouble = await door.write(handle, lastFile, part.text);
      if (trouble) {
        this.#trouble(trouble);
        return;
      }
    }
    const { folder } = this.#shop.state;
    // Forgotten, or another was picked, while this was written.
    if (!folder || handle !== this.#handle) return;
    this.#show({ name: folder.name, lastAt: isoTime(at), lastFile, trouble: null });
    this.#shop.noteBackup({ how: 'folder', name: folder.name });
    await this.#keepNote({ ...this.#shop.state.folder, handle });
    // Saved again while this was written: what is there is not the newest.
    if (this.#shop.state.rows !== rows) this.#writeIn(FOLDER_WAIT_MS);
  }

  async #openDoor(): Promise<FolderDoor | null> {
    this.#door ??= (await this.#shop.ports.folderDoor?.()) ?? null;
    return this.#door;
  }

  #listen(): void {
    this.#shop.afterKept.add(this.#heardOfSave);
  }

  readonly #heardOfSave = () => this.#writeIn(FOLDER_WAIT_MS);

  #writeIn(milliseconds: number): void {
    if (!this.#handle) return;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.writeNow(), milliseconds);
  }

  #trouble(trouble: FolderTrouble): void {
    const { folder } = this.#shop.state;
    if (!folder) return;
    this.#show({ ...folder, trouble });
    if (trouble !== 'forbidden') this.#writeIn(TRY_AGAIN_MS);
  }

  #show(folder: BackupFolder): void {
    this.#shop.set({ folder });
  }

  async #keepNote(note: object | null): Promise<void> {
    await this.#shop.storage?.write([], isoTime(this.#shop.ports.now()), { [NOTE]: note });
  }
}

/** The note of an earlier visit; null if it is none. The browser's own handle is taken as it is. */
function readNote(raw: unknown): (Omit<BackupFolder, 'trouble'> & { readonly handle: FolderHandle }) | null {
  if (typeof raw !== 'object' || raw === null) return null;
  const { handle, name, lastAt, lastFile } = raw as Readonly<Record<string, unknown>>;
  if (typeof handle !== 'object' || handle === null || typeof name !== 'string') return null;
  const text = (value: unknown) => (typeof value === 'string' ? value : null);
  return { handle, name, lastAt: text(lastAt), lastFile: text(lastFile) };
}
