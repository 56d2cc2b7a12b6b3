import { openDexie } from './dexie';
import { openLocalJournal } from './local-journal';
import { openMemory } from './memory';
import type { Journal, Result, WorkbookStorage } from './port';

/** What this browser has to keep a workbook in; every part of it may be missing or forbidden. */
export interface BrowserStorage {
  openStorage(onBlocked: () => void): Promise<Result<WorkbookStorage>>;
  openMemory(): WorkbookStorage;
  readonly journal: Journal;
  askToPersist(): Promise<boolean | null>;
}

/** `tab`: an id of this tab alone. */
export function browserStorage(tab: string): BrowserStorage {
  const local = localStore();
  return {
    openStorage: (onBlocked) => openDexie({ outside: local, onBlocked }),
    openMemory: () => openMemory(),
    journal: local ? openLocalJournal(local, navigator.locks ?? null, tab) : NO_JOURNAL,
    async askToPersist() {
      try {
        return (await navigator.storage?.persist?.()) ?? null;
      } catch {
        return null;
      }
    },
  };
}

const NO_JOURNAL: Journal = {
  write: () => false,
  clear: () => undefined,
  leftBehind: () => Promise.resolve([]),
};

/** Local storage, if this browser lets us write to it. */
function localStore(): Storage | null {
  try {
    localStorage.setItem('crease-and-count.probe', '1');
    localStorage.removeItem('crease-and-count.probe');
    return localStorage;
  } catch {
    return null;
  }
}
