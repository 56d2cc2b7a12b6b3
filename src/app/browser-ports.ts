import type { WorkbookPorts } from '../state/ports';
import { DATABASE_NAME } from '../storage/database-name';
import { browserJournal } from '../storage/journal';
import { randomId } from '../storage/random-id';
import { settingsFor } from './first-settings';

/** Where it is noted that the shelf is shared, so that nothing is fetched for it otherwise. */
const SHARED_KEY = 'crease-and-count.shared';

/** The browser as the workbook sees it. The database and its code are fetched while the frame is already drawn. */
export function browserPorts(): WorkbookPorts {
  const store = storageOrNone(() => window.localStorage);
  return {
    async openStorage(onBlocked) {
      const { openDexie } = await import('../storage/dexie');
      return openDexie({ outside: store, onBlocked });
    },
    openMemory: async () => (await import('../storage/memory')).openMemory(),
    journal: browserJournal(store, {
      session: storageOrNone(() => window.sessionStorage),
      loadedAgain: wasLoadedAgain(),
    }),
    traces: async () => (await import('../storage/trace-pictures')).openTraces(() => Date.now()),
    eraseBeside: async () => {
      const { openTraces } = await import('../storage/trace-pictures');
      const { memoryOfVisits } = await import('../exchange/memory-of-visits');
      await openTraces(() => Date.now()).dropAll();
      await memoryOfVisits(DATABASE_NAME).clear();
    },
    firstSettings: settingsFor(navigator.language),
    now: () => Date.now(),
    newId: randomId,
    askToPersist: async () => ('storage' in navigator ? navigator.storage.persist() : null),
    storageFacts: async () => (await import('./browser-facts')).storageFacts(),
    // Not every browser has locks, whatever its types say.
    alone: (name, work) =>
      'locks' in navigator ? navigator.locks.request(`crease-and-count.${name}`, work) : work(),
    sharing: {
      isShared: () => store?.getItem(SHARED_KEY) === 'yes',
      open: async (door) =>
        (await import('./browser-sharing')).openHere(door, (isShared) =>
          isShared ? store?.setItem(SHARED_KEY, 'yes') : store?.removeItem(SHARED_KEY),
        ),
    },
    folderDoor: async () => (await import('./browser-folder')).browserFolder(),
  };
}

/** A browser may refuse even to look at such storage. */
function storageOrNone(look: () => Storage): Storage | null {
  try {
    return look();
  } catch {
    return null;
  }
}

const wasLoadedAgain = (): boolean =>
  performance
    .getEntriesByType('navigation')
    .some((entry) => entry instanceof PerformanceNavigationTiming && entry.type === 'reload');
