import type { FolderDoor, FolderHandle, FolderTrouble } from '../state/ports';

/** What only some browsers have, and no type library lists. */
interface PickingWindow {
  showDirectoryPicker?: (options: {
    readonly id: string;
    readonly mode: 'readwrite';
  }) => Promise<AskedFolder>;
}
interface AskedFolder extends FileSystemDirectoryHandle {
  queryPermission(wish: { readonly mode: 'readwrite' }): Promise<PermissionState>;
  requestPermission(wish: { readonly mode: 'readwrite' }): Promise<PermissionState>;
}

const READ_AND_WRITE = { mode: 'readwrite' } as const;

/** The way into the maker's folders through the browser; null where it has none. */
export function browserFolder(): FolderDoor | null {
  const { showDirectoryPicker } = window as unknown as PickingWindow;
  if (!showDirectoryPicker) return null;
  return {
    async pick() {
      try {
        const handle = await showDirectoryPicker.call(window, { id: 'crease-and-count', ...READ_AND_WRITE });
        return { handle, name: handle.name };
      } catch {
        // They closed the dialog, or the browser keeps this folder from every page.
        return null;
      }
    },

    async mayWrite(handle, ask) {
      const folder = asFolder(handle);
      try {
        const state = await folder.queryPermission(READ_AND_WRITE);
        if (state === 'granted' || !ask) return state === 'granted';
        return (await folder.requestPermission(READ_AND_WRITE)) === 'granted';
      } catch {
        return false;
      }
    },

    async list(handle) {
      try {
        const names: string[] = [];
        for await (const name of asFolder(handle).keys()) names.push(name);
        return names;
      } catch {
        return null;
      }
    },

    async read(handle, name) {
      try {
        const file = await (await asFolder(handle).getFileHandle(name)).getFile();
        return await file.text();
      } catch {
        return null;
      }
    },

    async drop(handle, name) {
      // It may be gone already, or held open by another program.
      await asFolder(handle)
        .removeEntry(name)
        .catch(() => undefined);
    },

    async write(handle, name, text) {
      try {
        const file = await asFolder(handle).getFileHandle(name, { create: true });
        // What is written takes the file's place only when it is closed: a crash leaves the old one.
        const stream = await file.createWritable();
        await stream.write(text);
        await stream.close();
        return null;
      } catch (error) {
        return TROUBLES[error instanceof DOMException ? error.name : ''] ?? 'failed';
      }
    },
  };
}

const TROUBLES: Readonly<Record<string, FolderTrouble>> = {
  NotAllowedError: 'forbidden',
  NotFoundError: 'gone',
  QuotaExceededError: 'full',
};

/** A handle comes from `pick` or from the database, where only `pick` put it. */
const asFolder = (handle: FolderHandle) => handle as AskedFolder;
