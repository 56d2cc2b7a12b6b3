import type { WorkbookPorts } from '../state/ports';
import { browserJournal } from '../storage/journal';
import { randomId } from '../storage/random-id';
import { settingsFor } from './first-settings';

/** The browser as the workbook sees it. The database and its code are fetched while the frame is already drawn. */
export function browserPorts(): WorkbookPorts {
  const store = localStorageOrNone();
  return {
    async openStorage(onBlocked) {
      const { openDexie } = await import('../storage/dexie');
      return openDexie({ outside: store, onBlocked });
    },
    openMemory: async () => (await import('../storage/memory')).openMemory(),
    journal: browserJournal(store),
    firstSettings: settingsFor(navigator.language),
    now: () => Date.now(),
    newId: randomId,
    askToPersist: async () => ('storage' in navigator ? navigator.storage.persist() : null),
    storageFacts: async () => (await import('./browser-facts')).storageFacts(),
    folderDoor: async () => (await import('./browser-folder')).browserFolder(),
  };
}

/** A browser may refuse even to look at local storage. */
function localStorageOrNone(): Storage | null {
  try {
    return window.localStorage;
  } catch {
    return null;
  }
}
