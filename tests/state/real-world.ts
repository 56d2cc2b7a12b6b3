import 'fake-indexeddb/auto';
import { createWorkbookStore, type WorkbookStore } from '../../src/state/workbook-store';
import { openMemory } from '../../src/storage/memory';
import type { Draft, Journal, WorkbookStorage } from '../../src/storage/port';
import { newName, openOrThrow } from '../storage/dexie-place';
import { LocalMap } from '../storage/local-map';

const never = () => new Promise<never>(() => undefined);

/** Lets so many turns of the event loop pass, in which the database works. */
export async function turns(count: number): Promise<void> {
  for (let turn = 0; turn < count; turn++) await new Promise((resolve) => setImmediate(resolve));
}

/** What several tabs share in a browser: one database, as the app opens it, and a place for their journals. */
export class RealWorld {
  readonly #name = newName();
  readonly #outside = new LocalMap();
  readonly #drafts = new Map<string, Draft[]>();
  readonly #living = new Map<string, WorkbookStorage>();
  #ids = 0;

  /** The tab is gone; its journal may be `late` writes behind what the tab had written into it. */
  kill(tab: string, late: number): void {
    this.#living.get(tab)?.close();
    this.#living.delete(tab);
    const drafts = this.#drafts.get(tab) ?? [];
    this.#drafts.set(tab, drafts.slice(0, Math.max(0, drafts.length - late)));
  }

  async open(tab: string, wrap = (storage: WorkbookStorage) => storage): Promise<WorkbookStore> {
    const storage = await openOrThrow({ name: this.#name, outside: this.#outside });
    this.#living.set(tab, storage);
    const isDead = () => this.#living.get(tab) !== storage;
    const store = createWorkbookStore({
      openStorage: () =>
        Promise.resolve({
          ok: true,
          value: wrap({
            ...storage,
            watch: (listener) => storage.watch((event) => (isDead() ? undefined : listener(event))),
            async write(...args) {
              if (isDead()) return never();
              const answer = await storage.write(...args);
              return isDead() ? never() : answer;
            },
          }),
        }),
      openMemory: () => openMemory(),
      journal: this.#journalOf(tab),
      now: () => Date.now(),
      newId: () => `${tab}-${++this.#ids}`,
      askToPersist: () => Promise.resolve(null),
    });
    await store.getState().boot();
    return store;
  }

  closeAll(): void {
    for (const tab of this.#living.keys()) this.kill(tab, 0);
  }

  /** Remembers every state of itself, so that it can be put back to an earlier one. */
  #journalOf(tab: string): Journal {
    const drafts: Draft[] = [];
    this.#drafts.set(tab, drafts);
    const EMPTY: Draft = { changes: [], sent: [], at: '' };
    const ifLiving = (draft: Draft) => {
      if (this.#living.has(tab)) drafts.push(structuredClone(draft));
      return true;
    };
    return {
      write: ifLiving,
      clear: () => void ifLiving(EMPTY),
      leftBehind: () =>
        Promise.resolve(
          [...this.#drafts].flatMap(([name, states]) => {
            const draft = states.at(-1);
            if (this.#living.has(name) || !draft || draft.changes.length === 0) return [];
            const drop = () => void this.#drafts.delete(name);
            return [{ tab: name, draft, drop, leave: () => undefined }];
          }),
        ),
      tab,
      tabs: () => [...this.#drafts.keys()],
    };
  }
}
