import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Recipe } from '../../shared/workbook';
import { netOfRecipe } from '../../src/core/plan';
import { bringOwnStyle, ownStyleId } from '../../src/core/style-file/own-style';
import { stylesAtHand } from '../../src/state/results/styles-at-hand';
import type { WorkbookStore } from '../../src/state/workbook-store';
import { device, meet } from './devices';
import { letRun, openTab, World } from './open-tab';

beforeEach(() => void vi.useFakeTimers({ now: Date.UTC(2026, 0, 17, 9) }));
afterEach(() => void vi.useRealTimers());

const file = readFileSync('tests/fixtures/own-styles/deep-tray.json', 'utf8');
const called = (name: string) =>
  JSON.stringify(JSON.parse(file.replace('"Deep tray"', JSON.stringify(name))));

const recipesOf = (store: WorkbookStore): readonly Recipe[] => [...store.getState().rows.recipes.values()];

/** Gives a box a style of the maker’s own, as the page does. */
const restyle = (store: WorkbookStore, id: string, text: string) =>
  store.getState().edit('recipes', id, 'Style', (row) => ({
    ...row,
    styleId: ownStyleId(text),
    ownStyle: text,
    options: {},
  }));
const rename = (store: WorkbookStore, id: string, name: string) =>
  store.getState().edit('recipes', id, 'Name', (row) => ({ ...row, name }));
const widen = (store: WorkbookStore, id: string, width: number) =>
  store.getState().edit('recipes', id, 'Width', (row) => ({ ...row, sizesMm: { ...row.sizesMm, width } }));

/** The names of the styles that these boxes are made in, each of which has to be the style of its own text. */
function stylesOf(store: WorkbookStore): readonly string[] {
  return recipesOf(store)
    .map((recipe) => {
      const { styleId, ownStyle } = recipe;
      if (ownStyle === undefined) return styleId;
      expect(styleId).toBe(ownStyleId(ownStyle));
      const style = bringOwnStyle(ownStyle);
      // The box can still be laid.
      expect(netOfRecipe(recipe)?.pieces).toHaveLength(1);
      return style?.name ?? 'unread';
    })
    .toSorted();
}

/** Two places where one shelf is changed: each without hearing of the other, and then both hear of both. */
interface Pair {
  readonly one: WorkbookStore;
  readonly two: WorkbookStore;
  readonly id: string;
  readonly meet: () => Promise<void>;
  readonly apart: (one: () => void, two: () => void) => Promise<void>;
}

async function twoTabs(): Promise<Pair> {
  const world = new World();
  const one = await openTab(world, 'one');
  const made = one.getState().createRecipe({ name: 'Snow tray', styleId: 'tray', sizesMm: { width: 100 } });
  if (!made.ok) throw new Error('refused');
  await letRun(300);
  const two = await openTab(world, 'two');
  const meet = async () => {
    await letRun(600);
  };
  const apart = async (first: () => void, second: () => void) => {
    first();
    second();
    await meet();
  };
  return { one, two, id: made.id, meet, apart };
}

async function twoDevices(): Promise<Pair> {
  const [a, b] = [await device('a'), await device('b')];
  const made = a.store
    .getState()
    .createRecipe({ name: 'Snow tray', styleId: 'tray', sizesMm: { width: 100 } });
  if (!made.ok) throw new Error('refused');
  await meet(a, b);
  // The second hears of the first before it tells what it did itself, as a device does that was offline.
  const apart = async (first: () => void, second: () => void) => {
    first();
    await letRun(600);
    second();
    b.exchange.hearFrom(a.exchange);
    await meet(a, b);
  };
  return { one: a.store, two: b.store, id: made.id, meet: () => meet(a, b), apart };
}

describe.each([
  ['two tabs', twoTabs],
  ['two devices', twoDevices],
])('%s that change a style of the maker’s own apart', (_, open) => {
  test('keep both styles, each in a box of its own', async () => {
    const { one, two, id, apart } = await open();
    await apart(
      () => restyle(one, id, called('Mine')),
      () => restyle(two, id, called('Yours')),
    );
    for (const store of [one, two]) expect(stylesOf(store)).toEqual(['Mine', 'Yours']);
  });

  test('keep both where both had the same style before', async () => {
    const { one, two, id, meet: together, apart } = await open();
    restyle(one, id, called('Shared'));
    await together();
    await apart(
      () => restyle(one, id, called('Mine')),
      () => restyle(two, id, called('Yours')),
    );
    for (const store of [one, two]) expect(stylesOf(store)).toEqual(['Mine', 'Yours']);
  });

  test('keep both where one leaves it for a style of ours', async () => {
    const { one, two, id, meet: together, apart } = await open();
    restyle(one, id, called('Shared'));
    await together();
    await apart(
      () => restyle(one, id, called('Mine')),
      () =>
        two.getState().edit('recipes', id, 'Style', ({ ownStyle: _style, ...row }) => ({
          ...row,
          styleId: 'wallet',
        })),
    );
    for (const store of [one, two]) expect(stylesOf(store)).toEqual(['Mine', 'wallet']);
  });

  test('lay a new name and a new style together', async () => {
    const { one, two, id, apart } = await open();
    await apart(
      () => restyle(one, id, called('Mine')),
      () => rename(two, id, 'Frost tray'),
    );
    for (const store of [one, two]) {
      expect(stylesOf(store)).toEqual(['Mine']);
      expect(recipesOf(store).map(({ name }) => name)).toEqual(['Frost tray']);
    }
  });

  test('lose neither a new style nor a new size', async () => {
    const { one, two, id, apart } = await open();
    await apart(
      () => restyle(one, id, called('Mine')),
      () => widen(two, id, 120),
    );
    for (const store of [one, two]) {
      expect(stylesOf(store)).toContain('Mine');
      expect(recipesOf(store).map(({ sizesMm }) => sizesMm['width'])).toContain(120);
    }
  });
});

test('styles at hand: ours, then each of hers once, the same answer while only names and sizes change', () => {
  const [mine, yours] = [called('Mine'), called('Yours')];
  const [one, other] = [bringOwnStyle(mine), bringOwnStyle(yours)];
  const row = (text: string) => ({ styleId: ownStyleId(text), ownStyle: text });
  const found = stylesAtHand([row(mine), { styleId: 'tray' }, row(yours), row(mine)]);
  expect(found.own).toEqual([one, other]);
  expect(found.styles.slice(-2)).toEqual([one, other]);
  expect(found.texts).toEqual([mine, yours]);
  expect(found.kept(ownStyleId(yours))).toEqual({ ownStyle: yours });
  expect(found.kept('tray')).toEqual({});
  expect(stylesAtHand([row(mine), row(yours)])).toBe(found);
  // What nobody can read, or what is called by another text, is no style.
  const none = [row('{}'), { ...row(mine), styleId: 'own-another' }, { ...row(mine), styleId: 'tray' }];
  expect(stylesAtHand(none).own).toEqual([]);
});
