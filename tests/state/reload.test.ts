import fc from 'fast-check';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { SEED } from '../seed';
import { recordFault } from '../setup/fault-record';
import { letRun, openTab, World } from './open-tab';

beforeEach(() => void vi.useFakeTimers({ now: Date.UTC(2026, 0, 17, 9) }));
afterEach(() => void vi.useRealTimers());

const TRIES = 100;
const TEXT = 'Paper snow for the long table';

/** Types some letters at random speed, is closed at a random moment, and is opened again: how many letters are missing, and how many recipes there are. */
async function closeWhileTyping(
  pauses: readonly number[],
  last: number,
): Promise<{ missing: number; recipes: number }> {
  const world = new World();
  const tab = await openTab(world, 'first');
  const made = tab.getState().createRecipe({ name: 'P', styleId: 'tray' });
  let typed = 1;
  for (const pause of pauses) {
    typed++;
    tab
      .getState()
      .edit('recipes', made.ok ? made.id : '', 'Name', (row) => ({ ...row, name: TEXT.slice(0, typed) }));
    await letRun(pause);
  }
  await letRun(last);
  world.kill('first');
  const recipes = [...(await openTab(world, 'next')).getState().rows.recipes.values()];
  return { missing: typed - (recipes[0]?.name.length ?? 0), recipes: recipes.length };
}

test('a page closed while she types loses not more than one letter, a hundred times out of a hundred', async ({
  task,
}) => {
  const anyTyping = fc.tuple(
    fc.array(fc.integer({ min: 0, max: 400 }), { minLength: 1, maxLength: TEXT.length - 1 }),
    fc.nat({ max: 260 }),
  );
  let lost = 0;
  for (const [pauses, last] of fc.sample(anyTyping, { seed: SEED, numRuns: TRIES })) {
    const { missing, recipes } = await closeWhileTyping(pauses, last);
    if (missing > 1) lost++;
    expect(recipes).toBe(1);
  }
  recordFault(
    { task },
    { fault: 'a page closed within the pause before a save', tries: TRIES, lost, goal: 0 },
  );
});
