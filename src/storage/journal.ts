import { TABLES } from '../../shared/tables';
import type { Change, Draft, Journal, LeftBehind } from './port';
import { randomId } from './random-id';

type LocalStore = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;
type Locks = Pick<LockManager, 'request'>;

export interface JournalPlace {
  readonly locks?: Locks | null;
  readonly tab?: string;
  /** What stays with a tab when its page is loaded again. */
  readonly session?: Pick<Storage, 'getItem' | 'setItem'> | null;
  /** Whether this page was loaded again in its tab. */
  readonly loadedAgain?: boolean;
}

const PREFIX = 'crease-and-count.draft.';
const TAB = 'crease-and-count.tab';

/** Not every browser has locks, whatever its types say. */
const browserLocks = (): Locks | null => ('locks' in navigator ? navigator.locks : null);

/** Keeps nothing: for a browser that lets us write nowhere. */
export const NO_JOURNAL: Journal = {
  write: () => false,
  clear: () => undefined,
  tab: '',
  leftBehind: () => Promise.resolve([]),
  tabs: () => [],
};

/** How long a page waits for the one that stood in its tab before to let go of its draft. Source: our own. */
const OLD_PAGE_MS = 1000;
/** The same, where the page was loaded again: the old one is surely going, however busy the machine is. Source: our own. */
const RELOADED_MS = 15_000;

/**
 * The journal in the browser's local storage, which is written before the page can go away. One entry a tab; a tab holds a lock
 * on its entry for as long as it lives, so that an entry without a holder is work left behind.
 */
export function browserJournal(
  store: LocalStore | null,
  { locks = browserLocks(), tab = randomId(), session = null, loadedAgain = false }: JournalPlace = {},
): Journal {
  if (!store) return NO_JOURNAL;
  const mine = PREFIX + tab;
  // The page that stood in this tab before it was loaded again.
  const before = session?.getItem(TAB) ?? null;
  session?.setItem(TAB, tab);
  void locks?.request(mine, () => new Promise<never>(() => undefined));

  return {
    write(draft) {
      try {
        store.setItem(mine, JSON.stringify(draft));
        return true;
      } catch {
        // No room: the entry of the keystroke before stays, and the save itself is under way.
        return false;
      }
    },
    clear: () => store.removeItem(mine),

    tab,
    tabs: () => namesIn(store).map((name) => name.slice(PREFIX.length)),

    async leftBehind() {
      const found: LeftBehind[] = [];
      for (const name of namesIn(store)) {
        if (name === mine) continue;
        const isBefore = before !== null && name === PREFIX + before;
        const letGo = await hold(locks, name, isBefore ? (loadedAgain ? RELOADED_MS : OLD_PAGE_MS) : 0);
        if (!letGo) continue;
        // Another tab may have taken it and dropped it while this one asked.
        const draft = readDraft(store.getItem(name));
        if (!draft) {
          letGo();
          continue;
        }
        const drop = () => {
          store.removeItem(name);
          letGo();
        };
        found.push({ tab: name.slice(PREFIX.length), draft, drop, leave: letGo });
      }
      return found;
    },
  };
}

const namesIn = (store: LocalStore): string[] =>
  Array.from({ length: store.length }, (_, index) => store.key(index) ?? '').filter((name) =>
    name.startsWith(PREFIX),
  );

/**
 * Takes hold of a tab's entry, so that no other takes it too; null while that tab lives. Gives what lets go of it again. Waits
 * up to `waitMs`, since the page that was here before this one may still be going. Where the browser has no locks every other entry counts as left
 * behind: taken twice, never lost.
 */
function hold(locks: Locks | null, name: string, waitMs: number): Promise<(() => void) | null> {
  if (!locks) return Promise.resolve(() => undefined);
  return new Promise((resolve) => {
    const take = (lock: Lock | null) => {
      if (!lock) {
        resolve(null);
        return null;
      }
      return new Promise<void>((letGo) => resolve(letGo));
    };
    const how = waitMs > 0 ? { signal: AbortSignal.timeout(waitMs) } : { ifAvailable: true };
    void Promise.resolve(locks.request(name, how, take)).catch(() => resolve(null));
  });
}

/** A draft from stored text; rows in it are read by their schemas when they are taken over. */
function readDraft(text: string | null): Draft | null {
  try {
    const draft: unknown = JSON.parse(text ?? '');
    return isDraft(draft) ? draft : null;
  } catch {
    return null;
  }
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

const isDraft = (value: unknown): value is Draft =>
  isObject(value) &&
  typeof value['at'] === 'string' &&
  areChanges(value['changes']) &&
  areChanges(value['sent']) &&
  (value['number'] === undefined || typeof value['number'] === 'number');

const areChanges = (value: unknown): boolean => Array.isArray(value) && value.every(isChange);

const isChange = (value: unknown): value is Change =>
  isObject(value) &&
  TABLES.some((table) => table === value['table']) &&
  typeof value['id'] === 'string' &&
  isObject(value['row']) &&
  typeof value['deleted'] === 'boolean' &&
  (value['basedOn'] === null || typeof value['basedOn'] === 'number');
