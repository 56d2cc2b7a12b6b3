import { vi } from 'vitest';
import type { WorkbookPorts } from '../../src/state/ports';
import { createWorkbookStore } from '../../src/state/workbook-store';
import { MemoryDisk, openMemory } from '../../src/storage/memory';
import type { Draft, Journal, WorkbookStorage } from '../../src/storage/port';

/** A journal that several tabs share, as they share the browser's local storage; `die` makes a tab's entry work left behind. */
export class SharedJournal {
  readonly entries = new Map<string, Draft>();
  readonly living = new Set<string>();

  openFor(tab: string): Journal {
    this.living.add(tab);
    return {
      write: (draft) => {
        this.entries.set(tab, structuredClone(draft));
        return true;
      },
      clear: () => void this.entries.delete(tab),
      leftBehind: async () =>
        [...this.entries]
          .filter(([name]) => !this.living.has(name))
          .map(([name, draft]) => ({ draft, drop: () => void this.entries.delete(name) })),
    };
  }
}

export interface World {
  readonly disk: MemoryDisk;
  readonly journal: SharedJournal;
  ids: number;
}
export const newWorld = (): World => ({ disk: new MemoryDisk(), journal: new SharedJournal(), ids: 0 });

/** A tab of the app in a world of its own: memory for a database, counted ids, and the (faked) clock. */
export async function openTab(
  world: World,
  tab = 'a',
  wrap = (storage: WorkbookStorage) => storage,
  ports: Partial<WorkbookPorts> = {},
) {
  const store = createWorkbookStore({
    openStorage: async () => ({ ok: true, value: wrap(openMemory(world.disk)) }),
    openMemory: () => openMemory(),
    journal: world.journal.openFor(tab),
    now: () => Date.now(),
    newId: () => `${tab}-${++world.ids}`,
    askToPersist: () => Promise.resolve(null),
    ...ports,
  });
  await store.getState().boot();
  return store;
}

/** Lets the clock run and everything that waits for it finish. */
export const letRun = (milliseconds: number) => vi.advanceTimersByTimeAsync(milliseconds);
