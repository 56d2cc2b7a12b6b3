import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { netOfRecipe } from '../../src/core/plan';
import { ownStyleId, readOwnStyle } from '../../src/core/style-file/own-style';
import { styleById } from '../../src/core/styles';
import { followStyles, letStylesGo, styleReader } from '../../src/state/own-styles';
import type { WorkbookStore } from '../../src/state/workbook-store';
import { openTab, World } from './open-tab';

beforeEach(() => void vi.useFakeTimers({ now: Date.UTC(2026, 0, 17, 9) }));
afterEach(() => void vi.useRealTimers());

const file = readFileSync('tests/fixtures/own-styles/deep-tray.json', 'utf8');
const called = (name: string) =>
  JSON.stringify(JSON.parse(file.replace('"Deep tray"', JSON.stringify(name))));
const isKnown = (text: string) => styleById(ownStyleId(text)) !== undefined;

/** A tab that follows its boxes, as the app does, with what reads styles fetched. */
async function follow(): Promise<WorkbookStore> {
  await styleReader();
  const store = await openTab(new World(), 'one');
  followStyles(store);
  return store;
}

const make = (store: WorkbookStore, text: string): string => {
  const made = store
    .getState()
    .createRecipe({ name: 'Snow tray', styleId: ownStyleId(text), ownStyle: text, sizesMm: { width: 100 } });
  if (!made.ok) throw new Error('no box was made');
  return made.id;
};
const restyle = (store: WorkbookStore, id: string, text: string) =>
  store
    .getState()
    .edit('recipes', id, 'Style', (row) => ({ ...row, styleId: ownStyleId(text), ownStyle: text }));
const canBeLaid = (store: WorkbookStore, id: string) => {
  const row = store.getState().rows.recipes.get(id);
  return row !== undefined && netOfRecipe(row) !== null;
};

test('a style goes with its last box, and is there in the same breath when the box comes back', async () => {
  const store = await follow();
  const text = called('Snow drift');
  const [one, other] = [make(store, text), make(store, text)];
  expect(isKnown(text)).toBe(true);
  store.getState().remove({ table: 'recipes', id: one });
  expect(isKnown(text)).toBe(true);
  store.getState().remove({ table: 'recipes', id: other });
  expect(isKnown(text)).toBe(false);
  store.getState().undo();
  expect(isKnown(text)).toBe(true);
  expect(canBeLaid(store, other)).toBe(true);
});

test('of a style that is being drawn only the newest stays, through undo and redo', async () => {
  const store = await follow();
  const texts = ['First frost', 'Second frost', 'Third frost'].map(called);
  const [first = '', second = '', third = ''] = texts;
  const id = make(store, first);
  restyle(store, id, second);
  // two changes within a second are one step
  vi.advanceTimersByTime(2000);
  restyle(store, id, third);
  expect(texts.map(isKnown)).toEqual([false, false, true]);
  store.getState().undo();
  expect(texts.map(isKnown)).toEqual([false, true, false]);
  expect(canBeLaid(store, id)).toBe(true);
  store.getState().redo();
  expect(texts.map(isKnown)).toEqual([false, false, true]);
  expect(canBeLaid(store, id)).toBe(true);
});

test('a style that was looked at goes again, unless a box was made of it', async () => {
  const store = await follow();
  const [looked, taken] = [called('Looked at'), called('Taken')];
  for (const text of [looked, taken]) expect(readOwnStyle(text).ok).toBe(true);
  make(store, taken);
  letStylesGo([looked, taken], store.getState().rows.recipes.values());
  expect([looked, taken].map(isKnown)).toEqual([false, true]);
});
