import { type FolderDoor, type FolderHandle, type FolderTrouble, isoTime } from '../ports';
import type { Workshop } from '../workshop';
import { type BackupPart, partName } from './backup-parts';
import { newStamp, outlived } from './folder-files';
import { backupOf } from './whole-backup';

/** The folder that gets a copy of everything by itself, as the page shows it. */
export interface BackupFolder {
  /** As the folder is called. */
  readonly name: string;
  readonly lastAt: string | null;
  readonly lastFile: string | null;
  /** How many rows the last one holds. */
  readonly rows: number;
  /** Why the last copy is not there, or the next cannot be written; null: all is well. */
  readonly trouble: FolderTrouble | null;
}

/** A copy is written this long after the last save. Source: our own; typing on should not write everything at every word. */
export const FOLDER_WAIT_MS = 20_000;
/** After trouble that may pass. Source: our own. */
const TRY_AGAIN_MS = 300_000;

const NOTE = 'folder';

/** A copy with a smaller share of the rows of the last one is not written unasked. Source: our own. */
const LEAST_SHARE = 0.8;

/**
 * Copies of everything in a folder of the maker's own, written by themselves some seconds after each save: by one tab at a time, out of the
 * database, each under a name of its own and read back; the last ones stay. Nothing is written while rows are missing or there are none,
 * nor, without asking, far fewer than last time.
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
    const { handle: _, ...known } = kept;
    this.#show({ ...known, trouble: allowed ? null : 'forbidden' });
    this.#listen();
    if (this.#shop.state.backup.savesSince > 0) this.#writeIn(FOLDER_WAIT_MS);
  }

  /** Lets the maker pick a folder and writes a first copy there. */
  async pick(): Promise<void> {
    const picked = await (await this.#openDoor())?.pick();
    if (!picked) return;
    this.#handle = picked.handle;
    this.#show({ name: picked.name, lastAt: null, lastFile: null, rows: 0, trouble: null });
    this.#listen();
    await this.#keepNote({ ...this.#shop.state.folder, handle: picked.handle });
    await this.allow();
  }

  /** Asks once more to be let in, and writes if so. */
  async allow(): Promise<void> {
    if (this.#handle && (await this.#door?.mayWrite(this.#handle, true))) await this.writeNow();
    else this.#trouble('forbidden');
  }

  /** Writes a copy now; `anyway`: also where it holds far less than the last one. */
  writeNow(anyway = false): Promise<void> {
    clearTimeout(this.#timer);
    const alone = this.#shop.ports.alone ?? ((_name, work) => work());
    this.#running ??= alone(NOTE, () => this.#write(anyway)).finally(() => {
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

  async #write(anyway: boolean): Promise<void> {
    const { phase, salvaged } = this.#shop.state;
    const [handle, door] = [this.#handle, this.#door];
    if (!handle || !door || phase.phase !== 'ready' || salvaged) return;
    if (!(await door.mayWrite(handle, false))) {
      this.#trouble('forbidden');
      return;
    }
    const at = this.#shop.ports.now();
    const backup = await backupOf(this.#shop);
    clearTimeout(this.#timer);
    if (!backup.ok || backup.holds !== 'everything' || backup.rows === 0) return;
    // Another tab may have written since this one looked.
    const kept = await this.#shop.storage?.readNotes();
    const last = kept?.ok ? readNote(kept.value.notes[NOTE]) : null;
    if (!anyway && last && backup.rows < last.rows * LEAST_SHARE) {
      this.#trouble('fewer');
      return;
    }
    const files = await putThere(door, handle, at, backup.parts);
    if ('trouble' in files) {
      this.#trouble(files.trouble);
      return;
    }
    const { folder } = this.#shop.state;
    // Forgotten, or another was picked, while this was written.
    if (!folder || handle !== this.#handle) return;
    this.#show({
      name: folder.name,
      lastAt: isoTime(at),
      lastFile: files.last,
      rows: backup.rows,
      trouble: null,
    });
    this.#shop.noteBackup({ how: 'folder', name: folder.name }, backup);
    await this.#keepNote({ ...this.#shop.state.folder, handle });
    // Saved again while this was written: what is there is not the newest.
    if (this.#shop.state.backup.savesSince > 0) this.#writeIn(FOLDER_WAIT_MS);
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
    // What she must answer is not asked again by itself; the next save does.
    if (trouble !== 'forbidden' && trouble !== 'fewer') this.#writeIn(TRY_AGAIN_MS);
  }

  #show(folder: BackupFolder): void {
    this.#shop.set({ folder });
  }

  async #keepNote(note: object | null): Promise<void> {
    await this.#shop.storage?.write([], isoTime(this.#shop.ports.now()), [{ id: NOTE, value: note }]);
  }
}

/** Writes a copy beside the others and reads it back; then takes away what it outlives. The name of its last file, or why it is not there. */
async function putThere(
  door: FolderDoor,
  handle: FolderHandle,
  at: number,
  parts: readonly BackupPart[],
): Promise<{ readonly last: string } | { readonly trouble: FolderTrouble }> {
  const stamp = newStamp(at, (await door.list(handle)) ?? []);
  let last = '';
  for (const part of parts) {
    last = `${partName(stamp, part)}.json`;
    const trouble = await door.write(handle, last, part.text);
    if (trouble) return { trouble };
    if ((await door.read(handle, last)) !== part.text) {
      await door.drop(handle, last);
      return { trouble: 'failed' };
    }
  }
  for (const name of outlived((await door.list(handle)) ?? [])) await door.drop(handle, name);
  return { last };
}

/** The note of an earlier visit; null if it is none. The browser's own handle is taken as it is. */
function readNote(raw: unknown): (Omit<BackupFolder, 'trouble'> & { readonly handle: FolderHandle }) | null {
  if (typeof raw !== 'object' || raw === null) return null;
  const { handle, name, lastAt, lastFile, rows } = raw as Readonly<Record<string, unknown>>;
  if (typeof handle !== 'object' || handle === null || typeof name !== 'string') return null;
  const text = (value: unknown) => (typeof value === 'string' ? value : null);
  const count = typeof rows === 'number' && rows >= 0 ? rows : 0;
  return { handle, name, lastAt: text(lastAt), lastFile: text(lastFile), rows: count };
}
