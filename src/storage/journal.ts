import { TABLES } from '../../shared/tables';
import type { Change, Draft, Journal } from './port';
import { randomId } from './random-id';

type LocalStore = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;
type Locks = Pick<LockManager, 'request'>;

const PREFIX = 'crease-and-count.draft.';

/** Not every browser has locks, whatever its types say. */
const browserLocks = (): Locks | null => ('locks' in navigator ? navigator.locks : null);

/** Keeps nothing: for a browser that lets us write nowhere. */
const NO_JOURNAL: Journal = {
  write: () => false,
  clear: () => undefined,
  leftBehind: () => Promise.resolve([]),
};

/**
 * The journal in the browser's local storage, which is written before the page can go away. One entry a tab; a tab holds a lock
 * on its entry for as long as it lives, so that an entry without a holder is work left behind.
 */
export function browserJournal(
  store: LocalStore | null,
  locks: Locks | null = browserLocks(),
  tab: string = randomId(),
): Journal {
  if (!store) return NO_JOURNAL;
  const mine = PREFIX + tab;
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

    async leftBehind() {
      const names = Array.from({ length: store.length }, (_, index) => store.key(index) ?? '');
      const found = [];
      for (const name of names) {
        if (!name.startsWith(PREFIX) || name === mine || (await isHeld(locks, name))) continue;
        const draft = readDraft(store.getItem(name));
        if (draft) found.push({ draft, drop: () => store.removeItem(name) });
      }
      return found;
    },
  };
}

/** Whether the tab of this entry lives. Where the browser has no locks every other entry counts as left behind: taken twice, never lost. */
const isHeld = async (locks: Locks | null, name: string): Promise<boolean> =>
  locks ? locks.request(name, { ifAvailable: true }, (lock) => Promise.resolve(lock === null)) : false;

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
  areChanges(value['sent']);

const areChanges = (value: unknown): boolean => Array.isArray(value) && value.every(isChange);

const isChange = (value: unknown): value is Change =>
  isObject(value) &&
  TABLES.some((table) => table === value['table']) &&
  typeof value['id'] === 'string' &&
  isObject(value['row']) &&
  typeof value['deleted'] === 'boolean' &&
  (value['basedOn'] === null || typeof value['basedOn'] === 'number');
