import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readWorkbook } from '../../shared/read-workbook';
import type { WorkbookStore } from '../../src/state/workbook-store';
import { openTab, World } from './open-tab';

const EVENT = 'seed-swap-supper';
const RECIPE = 'seed-box';

function placeDemo(store: WorkbookStore): void {
  const reading = readWorkbook(readFileSync('demo-data/seed-swap-supper.json', 'utf8'));
  if (!reading.ok) throw new Error('the demo is refused');
  const { planImport, placeExample } = store.getState();
  placeExample(planImport(reading.file));
}

const rename = (store: WorkbookStore, name: string) =>
  store.getState().edit('recipes', RECIPE, 'Name', (recipe) => ({ ...recipe, name }));
const recipeOf = (store: WorkbookStore) => store.getState().rows.recipes.get(RECIPE);
const said = (store: WorkbookStore) => store.getState().notices.map(({ code }) => code);

test('the example stays as it is, says so once, and leaves nothing to undo', async () => {
  const store = await openTab(new World());
  expect(store.getState().fresh).toBe(true);
  placeDemo(store);
  const before = recipeOf(store);
  expect(store.getState()).toMatchObject({ fresh: false, history: { done: [] } });
  expect(rename(store, 'Mine')).toEqual([]);
  rename(store, 'Mine again');
  const { editTogether } = store.getState();
  editTogether('Both', [{ table: 'recipes', id: RECIPE, change: (recipe) => ({ ...recipe, notes: 'x' }) }]);
  expect(recipeOf(store)).toBe(before);
  expect(said(store)).toEqual(['exampleStays']);
});

test('made hers, all of it can be changed; one undo makes it the example again', async () => {
  const store = await openTab(new World());
  placeDemo(store);
  rename(store, 'Refused');
  store.getState().makeMine();
  expect(said(store)).toEqual([]);
  const { recipes, events } = store.getState().rows;
  expect([...recipes.values(), ...events.values()].filter(({ example }) => example)).toEqual([]);
  rename(store, 'Mine');
  expect(recipeOf(store)?.name).toBe('Mine');
  store.getState().undo();
  store.getState().undo();
  expect(recipeOf(store)?.example).toBe(true);
});

test('a copy of it, and a file of it, are anybody’s own; a backup keeps what it was', async () => {
  const store = await openTab(new World());
  placeDemo(store);
  const { duplicate, exportFile } = store.getState();
  const copy = duplicate({ table: 'recipes', id: RECIPE }, 'Copy');
  expect(copy.ok && store.getState().rows.recipes.get(copy.id)?.example).toBeUndefined();
  const sent = exportFile({ kind: 'event', id: EVENT });
  expect([...(sent?.recipes ?? []), ...(sent?.events ?? [])].filter(({ example }) => example)).toEqual([]);
  const backup = exportFile({ kind: 'everything' });
  expect(backup?.events.filter(({ example }) => example)).toHaveLength(1);
});

test('its stock is marked as its own, and becomes hers only with all of it', async () => {
  const store = await openTab(new World());
  placeDemo(store);
  const stock = () => {
    const { papers, supplies, tools } = store.getState().rows;
    return [...papers.values(), ...supplies.values(), ...tools.values()];
  };
  expect(stock().length).toBeGreaterThan(3);
  expect(stock().every(({ example }) => example)).toBe(true);
  const sent = store.getState().exportFile({ kind: 'event', id: EVENT });
  expect(sent?.papers.some(({ example }) => example)).toBe(false);
  store.getState().makeMine();
  expect(stock().some(({ example }) => example)).toBe(false);
});

test('a browser that kept something before, or lost it, is not fresh', async () => {
  const world = new World();
  const first = await openTab(world, 'a');
  placeDemo(first);
  await first.getState().keepNow();
  for (const id of [...first.getState().rows.recipes.keys()])
    first.getState().remove({ table: 'recipes', id });
  first.getState().remove({ table: 'events', id: EVENT });
  await first.getState().keepNow();
  expect((await openTab(world, 'b')).getState().fresh).toBe(false);
});
