import { vi } from 'vitest';
import type { WorkbookPorts } from '../../src/state/ports';
import { createWorkbookStore, type WorkbookStore } from '../../src/state/workbook-store';
import { MemoryDisk, openMemory } from '../../src/storage/memory';
import type { Draft, Journal, WorkbookStorage } from '../../src/storage/port';

/** What several tabs share: a disk, and a place for their journals. Tabs can be killed between two keystrokes. */
export class World {
  readonly disk = new MemoryDisk();
  readonly drafts = new Map<string, Draft>();
  readonly #living = new Set<string>();
  ids = 0;

  /** The tab is gone, with whatever it had not kept; a write under way may still arrive, its answer never does. */
  kill(tab: string): void {
    this.#living.delete(tab);
  }

  journalOf(tab: string): Journal {
    this.#living.add(tab);
    const ifLiving = (act: () => void) => {
      if (this.#living.has(tab)) act();
    };
    return {
      write: (draft) => {
        ifLiving(() => this.drafts.set(tab, structuredClone(draft)));
        return true;
      },
      clear: () => ifLiving(() => this.drafts.delete(tab)),
      leftBehind: () =>
        Promise.resolve(
          [...this.drafts]
            .filter(([name]) => !this.#living.has(name))
            .map(([name, draft]) => ({
              tab: name,
              draft,
              drop: () => void this.drafts.delete(name),
              leave: () => undefined,
            })),
        ),
      tab,
      tabs: () => [...this.drafts.keys()],
    };
  }

  storageOf(tab: string): WorkbookStorage {
    const storage = openMemory(this.disk);
    const isDead = () => !this.#living.has(tab);
    return {
      ...storage,
      watch: (listener) => storage.watch((event) => (isDead() ? undefined : listener(event))),
      async write(...args) {
        if (isDead()) return never();
        const answer = await storage.write(...args);
        return isDead() ? never() : answer;
      },
    };
  }
}

const never = () => new Promise<never>(() => undefined);

type Wrap = (storage: WorkbookStorage) => WorkbookStorage;

/** A tab of the app, not booted yet: memory for a database, counted ids, and the (faked) clock. */
export const newTab = (
  world: World,
  tab = 'a',
  wrap: Wrap = (storage) => storage,
  ports: Partial<WorkbookPorts> = {},
): WorkbookStore =>
  createWorkbookStore({
    openStorage: () => Promise.resolve({ ok: true, value: wrap(world.storageOf(tab)) }),
    openMemory: () => openMemory(),
    journal: world.journalOf(tab),
    now: () => Date.now(),
    newId: () => `${tab}-${++world.ids}`,
    askToPersist: () => Promise.resolve(null),
    ...ports,
  });

export async function openTab(...given: Parameters<typeof newTab>): Promise<WorkbookStore> {
  const store = newTab(...given);
  await store.getState().boot();
  return store;
}

/** Lets the clock run and everything that waits for it finish. */
export const letRun = (milliseconds: number) => vi.advanceTimersByTimeAsync(milliseconds);
