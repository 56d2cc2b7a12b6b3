import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { WorkbookStore } from '../../src/state/workbook-store';
import type { WorkbookStorage } from '../../src/storage/port';
import { SEED } from '../seed';
import { recordFault } from '../setup/fault-record';
import { readOne } from '../storage/read-one';
import { letRun, openTab, World } from './open-tab';

beforeEach(() => void vi.useFakeTimers({ now: Date.UTC(2026, 0, 17, 9) }));
afterEach(() => void vi.useRealTimers());

const recipesOf = (store: WorkbookStore) => [...store.getState().rows.recipes.values()];

/** Writes a word of its own into the notes of a recipe: nothing is taken away, so whatever is missing at the end was lost. */
const jot = (store: WorkbookStore, id: string, word: string) =>
  store.getState().edit('recipes', id, 'Notes', (row) => ({ ...row, notes: `${row.notes} ${word}` }));

async function twoTabs(world = new World(), wrap?: (storage: WorkbookStorage) => WorkbookStorage) {
  const one = await openTab(world, 'one', wrap);
  const made = one.getState().createRecipe({ name: 'Snow tray', styleId: 'tray' });
  if (!made.ok) throw new Error('refused');
  await letRun(300);
  const two = await openTab(world, 'two', wrap);
  return { world, one, two, id: made.id };
}

describe('two tabs', () => {
  test('on one recipe see what the other kept', async () => {
    const { one, two, id } = await twoTabs();
    jot(one, id, 'first');
    await letRun(300);
    expect(two.getState().rows.recipes.get(id)?.notes).toBe(' first');
    jot(two, id, 'second');
    await letRun(300);
    expect(one.getState().rows.recipes.get(id)?.notes).toBe(' first second');
    expect(recipesOf(one)).toHaveLength(1);
  });

  test('that change it at the same moment keep both states, and say so in the tab that came second', async () => {
    const { one, two, id } = await twoTabs();
    jot(one, id, 'mine');
    jot(two, id, 'yours');
    await letRun(600);
    for (const store of [one, two])
      expect(
        recipesOf(store)
          .map(({ notes }) => notes)
          .sort(),
      ).toEqual([' mine', ' yours']);
    const notices = [one, two].flatMap((store) => store.getState().notices);
    expect(notices.map(({ code }) => code)).toEqual(['keptBoth']);
  });

  test('undo in the second goes on in the copy that is its own', async () => {
    const { one, two, id } = await twoTabs();
    jot(one, id, 'mine');
    jot(two, id, 'yours');
    await letRun(600);
    two.getState().undo();
    await letRun(600);
    expect(
      recipesOf(one)
        .map(({ notes }) => notes)
        .sort(),
    ).toEqual(['', ' mine']);
  });

  test('one deletes what the other changes: it stays', async () => {
    const { one, two, id } = await twoTabs();
    one.getState().remove({ table: 'recipes', id });
    jot(two, id, 'still wanted');
    await letRun(600);
    for (const store of [one, two])
      expect(recipesOf(store).map(({ notes }) => notes)).toEqual([' still wanted']);
    const codes = [one, two].flatMap((store) => store.getState().notices.map(({ code }) => code)).sort();
    expect(codes).toEqual(['cameBack', 'deleted']);
  });

  test('one changes what the other then deletes: it stays too', async () => {
    const { one, two, id } = await twoTabs();
    jot(two, id, 'still wanted');
    await letRun(100);
    one.getState().remove({ table: 'recipes', id });
    await letRun(600);
    for (const store of [one, two])
      expect(recipesOf(store).map(({ notes }) => notes)).toEqual([' still wanted']);
    expect(one.getState().notices.map(({ code }) => code)).toEqual(['deleted', 'stayed']);
  });

  test('the same word typed into both is one recipe, not two', async () => {
    const { one, two, id } = await twoTabs();
    jot(one, id, 'same');
    jot(two, id, 'same');
    await letRun(600);
    expect(recipesOf(one).map(({ notes }) => notes)).toEqual([' same']);
  });
});

type Act = {
  readonly tab: 0 | 1;
  readonly what: 'jot' | 'wait' | 'crash' | 'remove';
  readonly pause: number;
};
const anyAct: fc.Arbitrary<Act> = fc.record({
  tab: fc.constantFrom(0, 1),
  what: fc.oneof(
    { weight: 10, arbitrary: fc.constant('jot' as const) },
    { weight: 2, arbitrary: fc.constantFrom('wait' as const, 'crash' as const, 'remove' as const) },
  ),
  pause: fc.constantFrom(0, 1, 40, 249, 250, 251, 260, 700, 2500),
});

/** Plays one history in two tabs and gives the words that can no longer be found: on the shelf, in the bin, or among a row's earlier states. */
async function lostWords(
  acts: readonly Act[],
  wrap?: (storage: WorkbookStorage) => WorkbookStorage,
): Promise<string[]> {
  const { world, one, two, id } = await twoTabs(new World(), wrap);
  const tabs = [
    { name: 'one', store: one },
    { name: 'two', store: two },
  ];
  let words = 0;
  for (const [number, { tab, what, pause }] of acts.entries()) {
    const { name, store } = tabs[tab] ?? { name: 'one', store: one };
    const rows = recipesOf(store);
    const row = rows[words % Math.max(1, rows.length)];
    if (what === 'jot' && row) jot(store, row.id, `w${words++};`);
    else if (what === 'remove') store.getState().remove({ table: 'recipes', id: row?.id ?? id });
    else if (what === 'crash') {
      world.kill(name);
      const heir = `${name}-${number}`;
      tabs[tab] = { name: heir, store: await openTab(world, heir, wrap) };
    }
    await letRun(pause);
  }
  await letRun(10_000);
  const { contents } = world.disk;
  const everywhere = JSON.stringify([
    ...contents.recipes.values(),
    ...contents.bin.values(),
    ...contents.snapshots.values(),
  ]);
  return Array.from({ length: words }, (_, n) => `w${n};`).filter((word) => !everywhere.includes(` ${word}`));
}

const anyHistory = fc.array(anyAct, { minLength: 4, maxLength: 24 });

test('a thousand random histories of two tabs lose not one word', { timeout: 120_000 }, async ({ task }) => {
  let tries = 0;
  let lost = 0;
  await fc.assert(
    fc.asyncProperty(anyHistory, async (acts) => {
      const words = await lostWords(acts);
      tries++;
      lost += words.length;
      expect(words).toEqual([]);
    }),
    { seed: SEED, numRuns: 1000 },
  );
  recordFault(
    { task },
    { fault: 'two tabs edit, delete and crash on the same recipes', tries, lost, goal: 0 },
  );
});

/** A storage as it must not be: whoever comes last is right. */
const carelessStorage = (storage: WorkbookStorage): WorkbookStorage => ({
  ...storage,
  async write(changes, ...rest) {
    const careless = [];
    for (const change of changes) {
      const stored = await readOne(storage, change.table, change.id);
      const rev = typeof stored === 'string' ? null : stored.rev;
      careless.push({ ...change, basedOn: rev });
    }
    return storage.write(careless, ...rest);
  },
});

test('a storage that does not compare revisions is found out by the same histories', async () => {
  const histories = fc.sample(anyHistory, { seed: SEED, numRuns: 60 });
  let lost = 0;
  for (const acts of histories) lost += (await lostWords(acts, carelessStorage)).length;
  expect(lost).toBeGreaterThan(5);
});
