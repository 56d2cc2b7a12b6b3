import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { WorkbookStore } from '../../src/state/workbook-store';
import type { WorkbookStorage } from '../../src/storage/port';
import { recordFault } from '../setup/fault-record';
import { recipeRow } from '../storage/sample-rows';
import { letRun, openTab, World } from './open-tab';

beforeEach(() => void vi.useFakeTimers({ now: Date.UTC(2026, 0, 17, 9) }));
afterEach(() => void vi.useRealTimers());

async function withEvent(tabs: number) {
  const world = new World();
  const first = await openTab(world, 't0');
  const recipe = first.getState().createRecipe({ name: 'Seed box', styleId: 'tray' });
  const event = first.getState().createEvent({ name: 'Market' });
  if (!recipe.ok || !event.ok) throw new Error('refused');
  await letRun(300);
  const stores = [first];
  for (let n = 1; n < tabs; n++) stores.push(await openTab(world, `t${n}`));
  return { world, stores, recipe: recipe.id, event: event.id };
}

const addLine = (store: WorkbookStore, event: string, id: string, recipeId: string, count: number) =>
  store.getState().edit('events', event, `Line ${id}`, (was) => ({
    ...was,
    lines: [...was.lines, { id, recipeId, dressingId: null, paperId: null, count }],
  }));
const linesOf = (store: WorkbookStore, event: string) =>
  (store.getState().rows.events.get(event)?.lines ?? []).map(({ id, count }) => `${id} ${count}`);

test('undo in one tab leaves the line that another added since', async (context) => {
  const { world, stores, recipe, event } = await withEvent(2);
  const [a, b] = stores as [WorkbookStore, WorkbookStore];
  addLine(a, event, 'seed', recipe, 40);
  await letRun(1300);
  a.getState().edit('events', event, 'Count', (was) => ({
    ...was,
    lines: was.lines.map((line) => ({ ...line, count: 41 })),
  }));
  await letRun(1300);
  addLine(b, event, 'bean', recipe, 77);
  await letRun(1300);
  a.getState().undo();
  await letRun(600);
  const kept = linesOf(await openTab(world, 'next'), event);
  expect(kept).toEqual(['seed 40', 'bean 77']);
  a.getState().redo();
  await letRun(600);
  expect(linesOf(b, event)).toEqual(['seed 41', 'bean 77']);
  const lost = ['bean 77'].filter((line) => !kept.includes(line)).length;
  recordFault(context, { fault: 'undo after another tab went on', tries: 1, lost, goal: 0 });
});

test('undo of what another tab changed since leaves it, and says so', async () => {
  const { stores, recipe } = await withEvent(2);
  const [a, b] = stores as [WorkbookStore, WorkbookStore];
  const width = (store: WorkbookStore, mm: number) =>
    store
      .getState()
      .edit('recipes', recipe, 'Width', (was) => ({ ...was, sizesMm: { ...was.sizesMm, width: mm } }));
  width(a, 50);
  await letRun(1300);
  width(b, 60);
  await letRun(1300);
  a.getState().undo();
  await letRun(600);
  expect(b.getState().rows.recipes.get(recipe)?.sizesMm).toEqual({ width: 60 });
  expect(a.getState().notices.map(({ code, about }) => [code, about])).toEqual([
    ['changedSince', 'Seed box'],
  ]);
});

test('undo of a box just made leaves it where another tab has worked on it', async () => {
  const { stores } = await withEvent(2);
  const [a, b] = stores as [WorkbookStore, WorkbookStore];
  const made = a.getState().createRecipe({ name: 'Snow tray', styleId: 'tray' });
  await letRun(300);
  const id = made.ok ? made.id : '';
  b.getState().edit('recipes', id, 'Notes', (was) => ({ ...was, notes: 'cut twice' }));
  await letRun(300);
  a.getState().undo();
  await letRun(600);
  expect(b.getState().rows.recipes.get(id)?.notes).toBe('cut twice');
});

test('five tabs on five fields of one recipe, and of one event, end as one of each with all five', async (context) => {
  const { world, stores, recipe, event } = await withEvent(5);
  const edits: ((store: WorkbookStore) => unknown)[] = [
    ({ getState }) => getState().edit('recipes', recipe, 'Name', (was) => ({ ...was, name: 'Bean box' })),
    ({ getState }) => getState().edit('recipes', recipe, 'Notes', (was) => ({ ...was, notes: 'slowly' })),
    ({ getState }) => getState().edit('recipes', recipe, 'Grain', (was) => ({ ...was, grain: 'free' })),
    ({ getState }) => getState().edit('recipes', recipe, 'Card', (was) => ({ ...was, caliperUm: 420 })),
    ({ getState }) =>
      getState().edit('recipes', recipe, 'Width', (was) => ({
        ...was,
        sizesMm: { ...was.sizesMm, width: 70 },
      })),
  ];
  for (const [n, store] of stores.entries()) {
    edits[n]?.(store);
    addLine(store, event, `line-${n}`, recipe, 10 + n);
  }
  await letRun(3000);
  const { rows } = (await openTab(world, 'next')).getState();
  expect([...rows.recipes.values()]).toMatchObject([
    { name: 'Bean box', notes: 'slowly', grain: 'free', caliperUm: 420, sizesMm: { width: 70 } },
  ]);
  expect([...rows.events.values()].map(({ lines }) => lines.map(({ id }) => id).sort())).toEqual([
    stores.map((_, n) => `line-${n}`),
  ]);
  for (const store of stores) expect(store.getState().notices).toEqual([]);
  const copies = rows.recipes.size + rows.events.size - 2;
  recordFault(context, { fault: 'five tabs on five fields of one thing', tries: 10, lost: copies, goal: 0 });
});

test('a style chosen in one tab and a size typed in another are no one box', async () => {
  const { stores, recipe } = await withEvent(2);
  const [a, b] = stores as [WorkbookStore, WorkbookStore];
  a.getState().edit('recipes', recipe, 'Style', (was) => ({ ...was, styleId: 'sleeve-drawer', sizesMm: {} }));
  b.getState().edit('recipes', recipe, 'Width', (was) => ({ ...was, sizesMm: { width: 70 } }));
  await letRun(600);
  expect([...a.getState().rows.recipes.values()].map(({ styleId, sizesMm }) => [styleId, sizesMm])).toEqual([
    ['sleeve-drawer', {}],
    ['tray', { width: 70 }],
  ]);
});

test('five thousand rows that another tab kept are taken in one read and shown at once', async (context) => {
  const world = new World();
  const one = await openTab(world, 'one');
  let reads = 0;
  const two = await openTab(world, 'two', (storage: WorkbookStorage) => ({
    ...storage,
    readRows: (keys) => {
      reads++;
      return storage.readRows(keys);
    },
  }));
  const shelves = new Set<unknown>();
  two.subscribe(({ rows }) => shelves.add(rows));
  const rows = Array.from({ length: 5000 }, (_, n) => recipeRow(`r${n}`));
  one.getState().importPlanned(
    {
      rows: rows.map((row) => ({ table: 'recipes', fate: 'new', name: row.name, differs: null, row })),
      counts: { new: 5000, same: 0, differs: 0 },
    },
    'Restore',
  );
  await letRun(600);
  expect(two.getState().rows.recipes.size).toBe(5000);
  expect([reads, shelves.size]).toEqual([1, 1]);
  const missing = 5000 - two.getState().rows.recipes.size;
  recordFault(context, {
    fault: 'a large restore seen from another tab',
    tries: 5000,
    lost: missing,
    goal: 0,
  });
});

test('a second tab on an empty shelf knows that something was made in the first, told of it or not', async (context) => {
  const world = new World();
  const one = await openTab(world, 'one');
  const two = await openTab(world, 'two');
  const deaf = await openTab(world, 'deaf', (storage) => ({ ...storage, watch: () => () => undefined }));
  expect(await two.getState().isStillFresh()).toBe(true);
  one.getState().createRecipe({ name: 'Snow tray', styleId: 'tray' });
  await letRun(300);
  const fresh = [
    two.getState().fresh,
    await two.getState().isStillFresh(),
    await deaf.getState().isStillFresh(),
  ];
  const lost = fresh.filter(Boolean).length;
  recordFault(context, { fault: 'the example put on a shelf in use', tries: 3, lost, goal: 0 });
});
