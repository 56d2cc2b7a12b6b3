import { afterEach, beforeEach, test, vi } from 'vitest';
import type { WorkbookStorage } from '../../src/storage/port';
import { recordFault } from '../setup/fault-record';
import { letRun, newTab, World } from './open-tab';

beforeEach(() => void vi.useFakeTimers({ now: Date.UTC(2026, 0, 17, 9) }));
afterEach(() => void vi.useRealTimers());

/** A disk that takes this long for each write; what it has not written when the page goes is not written. */
const slowly =
  (milliseconds: number) =>
  (storage: WorkbookStorage): WorkbookStorage => ({
    ...storage,
    write: async (...given) => {
      await new Promise((resolve) => setTimeout(resolve, milliseconds));
      return storage.write(...given);
    },
  });

const WORD = 'Paper snow for the long table';
const SLOW_MS = [0, 40, 300, 2000];
/** How long the page lives after its last letter. */
const LIVES_MS = [0, 30, 260, 700, 2100];

test('loaded again and again in the middle of typing, on a disk that lags behind, each page begins with what the last one showed', async (context) => {
  let [tries, lost] = [0, 0];
  for (const slow of SLOW_MS)
    for (const lives of LIVES_MS) {
      const world = new World();
      const first = newTab(world, 'page-0');
      await first.getState().boot();
      const made = first.getState().createRecipe({ name: 'P', styleId: 'tray' });
      const id = made.ok ? made.id : '';
      await letRun(1000);
      world.kill('page-0');
      let typed = 'P';
      for (let load = 1; load <= 6; load++) {
        const tab = `page-${load}`;
        const page = newTab(world, tab, slowly(slow));
        // As it is first drawn: a page is drawn once what happens in one breath is over.
        let shown: string | undefined;
        page.subscribe(({ phase }) => {
          if (phase.phase === 'ready')
            queueMicrotask(() => {
              shown ??= page.getState().rows.recipes.get(id)?.name;
            });
        });
        void page.getState().boot();
        await letRun(20);
        await letRun(0);
        const now = page.getState().rows.recipes.get(id)?.name;
        tries++;
        if (shown !== typed || now !== typed) lost++;
        for (let letter = 0; letter < 4; letter++) {
          typed = WORD.slice(0, typed.length + 1);
          const name = typed;
          page.getState().edit('recipes', id, 'Name', (row) => ({ ...row, name }));
          await letRun(25);
        }
        await letRun(lives);
        world.kill(tab);
      }
      const last = newTab(world, 'last');
      await last.getState().boot();
      await letRun(10_000);
      // One box, and no ghost of an older state beside it.
      const names = [...last.getState().rows.recipes.values()].map(({ name }) => name);
      tries++;
      if (names.join() !== typed) lost++;
    }
  recordFault(context, { fault: 'loaded again and again on a disk that lags behind', tries, lost, goal: 0 });
});
