import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { readWorkbook } from '../../shared/read-workbook';
import { firstEvent, firstRecipe } from '../../src/state/intents/first-rows';
import type { WorkbookStore } from '../../src/state/workbook-store';
import type { WorkbookStorage } from '../../src/storage/port';
import { recordFault } from '../setup/fault-record';
import { faultyStorage } from './faulty-storage';
import { letRun, openTab, World } from './open-tab';

beforeEach(() => void vi.useFakeTimers({ now: Date.UTC(2026, 0, 17, 9) }));
afterEach(() => void vi.useRealTimers());

const make = (store: WorkbookStore, name: string) => {
  const made = store.getState().createRecipe({ name, styleId: 'tray' });
  if (!made.ok) throw new Error('refused');
  return made.id;
};

/** Takes a backup in this tab; the names of the recipes in it. */
async function backup(store: WorkbookStore) {
  const texts: string[] = [];
  const { backup: give } = await store.getState().keeping();
  const told = await give((_name, text) => texts.push(text));
  const names = texts.flatMap((text) => {
    const reading = readWorkbook(text);
    return reading.ok ? reading.file.recipes.map(({ name }) => name) : [];
  });
  return { told, names: names.sort() };
}

/** A tab that is never told what others keep: as one that lags behind a large restore. */
const deaf = (storage: WorkbookStorage): WorkbookStorage => ({ ...storage, watch: () => () => undefined });

test('a backup taken in a tab that lags behind holds what every tab kept', async (context) => {
  const world = new World();
  const one = await openTab(world, 'one');
  const late = await openTab(world, 'late', deaf);
  for (let n = 0; n < 30; n++) make(one, `Box ${n}`);
  make(late, 'Mine, just now');
  await letRun(300);
  const { told, names } = await backup(late);
  expect(told).toEqual({ code: 'backupMade', about: '1' });
  recordFault(context, {
    fault: 'a backup taken in a tab that lags behind',
    tries: 31,
    lost: 31 - names.length,
    goal: 0,
  });
});

test('one taken on a full disk holds what could not be kept as well', async () => {
  const world = new World();
  const one = await openTab(world, 'one');
  make(one, 'Kept');
  await letRun(300);
  let { plan }: Partial<ReturnType<typeof faultyStorage>> = {};
  const full = await openTab(world, 'full', (storage) => {
    const faults = faultyStorage(storage);
    plan = faults.plan;
    return faults.faulty;
  });
  plan?.push('full', 'full', 'full');
  make(full, 'Not kept');
  await letRun(300);
  expect((await backup(full)).names).toEqual(['Kept', 'Not kept']);
});

test('one taken where the database does not answer says what it holds, and is not noted as the last copy', async () => {
  const store = await openTab(new World(), 'one', (storage) => {
    let loads = 0;
    const lost = { ok: false, fault: { kind: 'lost', detail: 'as planned' } } as const;
    return { ...storage, load: () => (loads++ === 0 ? storage.load() : Promise.resolve(lost)) };
  });
  make(store, 'Snow');
  await letRun(300);
  expect(await backup(store)).toEqual({ told: { code: 'backupOfTab', about: '1' }, names: ['Snow'] });
  expect(store.getState().backup.at).toBeNull();
});

test('one taken where rows are missing says how many, and is not noted as the last copy', async () => {
  const world = new World();
  const store = await openTab(world, 'one');
  const gone = make(store, 'Snow');
  make(store, 'Rain');
  await letRun(300);
  world.disk.contents.recipes.delete(gone);
  expect(await backup(store)).toEqual({ told: { code: 'backupOfRest', about: '1' }, names: ['Rain'] });
  expect(store.getState().backup.at).toBeNull();
});

test('the last copy is known in every tab, with what every tab kept since', async (context) => {
  const world = new World();
  const one = await openTab(world, 'one');
  const two = await openTab(world, 'two');
  const id = make(one, 'Snow');
  await letRun(300);
  const untrue: string[] = [];
  const check = (store: WorkbookStore, savesSince: number, where: string) => {
    const { backup: said } = store.getState();
    if (said.at === null || said.savesSince !== savesSince)
      untrue.push(`${where}: ${said.at} ${said.savesSince}`);
  };
  await backup(one);
  await letRun(300);
  check(two, 0, 'told');
  for (let n = 0; n < 12; n++) {
    two.getState().edit('recipes', id, 'Notes', (row) => ({ ...row, notes: `${n}` }));
    await letRun(1300);
  }
  check(one, 12, 'saves of another tab');
  one.getState().edit('recipes', id, 'Notes', (row) => ({ ...row, notes: 'mine' }));
  await letRun(300);
  check(two, 13, 'saves of this tab');
  check(await openTab(world, 'next'), 13, 'after a reload');
  await backup(two);
  await letRun(300);
  one.getState().edit('recipes', id, 'Notes', (row) => ({ ...row, notes: 'again' }));
  await letRun(300);
  check(await openTab(world, 'last'), 1, 'a copy made in the other tab');
  expect(untrue).toEqual([]);
  recordFault(context, {
    fault: 'the last copy as two tabs tell it',
    tries: 5,
    lost: untrue.length,
    goal: 0,
  });
});

test('settings chosen in two tabs stay chosen', async (context) => {
  const world = new World();
  const one = await openTab(world, 'one');
  const two = await openTab(world, 'two');
  one.getState().changeSettings({ unit: 'mm' });
  await letRun(300);
  expect(two.getState().settings.unit).toBe('mm');
  make(two, 'Snow');
  await letRun(300);
  two.getState().changeSettings({ theme: 'dark' });
  one.getState().changeSettings({ currency: 'EUR' });
  await letRun(600);
  const { settings } = (await openTab(world, 'next')).getState();
  const want = { unit: 'mm', theme: 'dark', currency: 'EUR' } as const;
  const names = Object.keys(want) as (keyof typeof want)[];
  const lost = names.filter((name) => settings[name] !== want[name]);
  expect(lost).toEqual([]);
  recordFault(context, { fault: 'settings chosen in two tabs', tries: 3, lost: lost.length, goal: 0 });
});

test('a copy dated years ahead by a wrong clock does not put off the next for ever', async (context) => {
  const world = new World();
  vi.setSystemTime(Date.UTC(2028, 0, 1));
  const one = await openTab(world, 'one');
  const id = make(one, 'Snow');
  await letRun(300);
  await backup(one);
  await letRun(300);
  vi.setSystemTime(Date.UTC(2026, 0, 17, 9));
  const two = await openTab(world, 'two');
  two.getState().edit('recipes', id, 'Name', (row) => ({ ...row, name: 'Sleet' }));
  await letRun(300);
  const told = two.getState().notices.filter(({ code }) => code === 'backupDue').length;
  recordFault(context, { fault: 'a copy of a day to come', tries: 1, lost: 1 - told, goal: 0 });
});

test('a file that could not be read in again is not made, and the reason is told', async () => {
  const store = await openTab(new World(), 'one');
  const { createTogether, keeping } = store.getState();
  const nets = Array.from({ length: 6 }, (_, n) => ({
    table: 'recipes' as const,
    content: () => ({
      ...firstRecipe({ name: `Net ${n}`, styleId: 'own-net' }, 'mm'),
      ownNet: 'x'.repeat(950_000),
    }),
  }));
  const made = createTogether('Nets', [
    ...nets,
    {
      table: 'events',
      content: (ids) => ({
        ...firstEvent({ name: 'Market', currency: 'USD' }),
        lines: ids.map((recipeId, n) => ({
          id: `l${n}`,
          recipeId,
          dressingId: null,
          paperId: null,
          count: 1,
        })),
      }),
    },
  ]);
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  const files: string[] = [];
  const { saveFile } = await keeping();
  await saveFile({ kind: 'event', id: made.ids.at(-1) ?? '' }, 'Market', (name) => files.push(name));
  expect(files).toEqual([]);
  expect(store.getState().notices.map(({ code }) => code)).toEqual(['fileNotWritten']);
});
