import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { readWorkbook } from '../../shared/read-workbook';
import { workbookOf, writeWorkbook } from '../../shared/write-workbook';
import type { WorkbookStore } from '../../src/state/workbook-store';
import { eventRow, paperRow, recipeRow } from '../storage/sample-rows';
import { faultyStorage } from './faulty-storage';
import { letRun, openTab, World } from './open-tab';

beforeEach(() => void vi.useFakeTimers({ now: Date.UTC(2026, 0, 17, 9) }));
afterEach(() => void vi.useRealTimers());

const recipesOf = (store: WorkbookStore) => [...store.getState().rows.recipes.values()];
const need = <Value>(value: Value | null | undefined): Value => {
  if (value == null) throw new Error('nothing there');
  return value;
};

async function withRecipe(name = 'Snow tray', world = new World()) {
  const store = await openTab(world);
  const made = store.getState().createRecipe({ name, styleId: 'tray' });
  if (!made.ok) throw new Error('refused');
  await letRun(300);
  return { world, store, id: made.id, key: { table: 'recipes', id: made.id } as const };
}

describe('a maker at her shelf', () => {
  test('finds tomorrow what she made today', async () => {
    const { world, store } = await withRecipe();
    expect(store.getState().save).toEqual({ state: 'saved' });
    const [recipe] = recipesOf(await openTab(world, 'b'));
    expect(recipe).toMatchObject({
      name: 'Snow tray',
      styleId: 'tray',
      rev: 1,
      createdAt: '2026-01-17T09:00:00.000Z',
    });
  });

  test('is told why a size cannot be kept, and her recipe stays as it was', async () => {
    const { store, id } = await withRecipe();
    const before = store.getState().rows;
    const refusals = store
      .getState()
      .edit('recipes', id, 'Width', (row) => ({ ...row, sizesMm: { width: 3000 } }));
    expect(refusals).toEqual([
      { code: 'too-big', path: 'sizesMm.width', found: '3000', expected: 'at most 2000' },
    ]);
    expect(store.getState().rows).toBe(before);
    expect(store.getState().changeSettings({ currency: 'dollars' })).toMatchObject([
      { code: 'bad-spelling' },
    ]);
    expect(store.getState().settings.currency).toBe('USD');
    expect(store.getState().createEvent({ name: '' })).toMatchObject({
      ok: false,
      refusals: [{ code: 'empty' }],
    });
    expect(store.getState().edit('papers', 'nowhere', 'Name', (row) => row)).toHaveLength(1);
  });

  test('who changes nothing makes no step and no save', async () => {
    const { store, id } = await withRecipe();
    const before = store.getState();
    store.getState().edit('recipes', id, 'Name', (row) => ({ ...row, sizesMm: { ...row.sizesMm } }));
    expect(store.getState()).toBe(before);
  });

  test('makes an event in her own currency, with spares to change', async () => {
    const { store } = await withRecipe();
    store.getState().changeSettings({ currency: 'EUR' });
    const made = store.getState().createEvent({ name: 'Wedding' });
    const event = made.ok ? store.getState().rows.events.get(made.id) : null;
    expect(event).toMatchObject({
      name: 'Wedding',
      currency: 'EUR',
      lines: [],
      spares: { percent: 10, atLeast: 0 },
    });
  });

  test('copies a recipe with everything in it, under a name of its own', async () => {
    const { store, key, id } = await withRecipe();
    store.getState().edit('recipes', id, 'Width', (row) => ({ ...row, sizesMm: { width: 88.9 } }));
    vi.setSystemTime(Date.now() + 60_000);
    const copied = store.getState().duplicate(key, 'Snow tray, taller');
    const copy = need(copied.ok ? store.getState().rows.recipes.get(copied.id) : null);
    expect(copy).toMatchObject({ name: 'Snow tray, taller', sizesMm: { width: 88.9 }, rev: 0 });
    expect(copy.createdAt > need(store.getState().rows.recipes.get(id)).createdAt).toBe(true);
    expect(store.getState().duplicate({ table: 'recipes', id: 'nowhere' }, 'x').ok).toBe(false);
  });

  test('copies its photos as well, says so, and takes all of it back in one step', async () => {
    const { store, key, id } = await withRecipe();
    const photo = { name: 'Front', recipeId: id, widthPx: 4, heightPx: 3, jpeg: 'AAAA' };
    expect(store.getState().createTogether('Photo', [{ table: 'photos', content: () => photo }]).ok).toBe(
      true,
    );
    const copied = store.getState().duplicate(key, 'Snow tray, taller');
    const photosOf = (recipeId: string) =>
      [...store.getState().rows.photos.values()].filter((row) => row.recipeId === recipeId);
    expect(photosOf(copied.ok ? copied.id : '')).toMatchObject([{ name: 'Front', jpeg: 'AAAA' }]);
    const notice = need(store.getState().notices.find(({ code }) => code === 'copied'));
    expect(notice.about).toBe(need(store.getState().rows.recipes.get(id)).name);
    store.getState().takeBack(notice.key);
    expect(copied.ok && store.getState().rows.recipes.has(copied.id)).toBe(false);
    expect(store.getState().rows.photos.size).toBe(1);
  });

  test('sees a save leave every row the object it was, so that nothing made from it is made again', async () => {
    const { store, id } = await withRecipe();
    store.getState().edit('recipes', id, 'Name', (row) => ({ ...row, name: 'Sleet' }));
    const rows = store.getState().rows;
    await letRun(300);
    expect(store.getState().save).toEqual({ state: 'saved' });
    expect(store.getState().rows).toBe(rows);
  });
});

describe('what was deleted', () => {
  test('comes back by undo, also after it was kept', async () => {
    const { world, store, key } = await withRecipe();
    store.getState().remove(key);
    expect(recipesOf(store)).toEqual([]);
    expect(store.getState().notices).toMatchObject([{ code: 'deleted', about: 'Snow tray' }]);
    await letRun(300);
    store.getState().undo();
    await letRun(300);
    expect(recipesOf(await openTab(world, 'b')).map(({ name }) => name)).toEqual(['Snow tray']);
    const bin = await store.getState().listBin();
    expect(bin).toEqual({ ok: true, value: [] });
  });

  test('comes back from the bin, once; a notice can be dismissed', async () => {
    const { store, key } = await withRecipe();
    store.getState().remove(key);
    store.getState().dismiss(need(store.getState().notices[0]).key);
    expect(store.getState().notices).toEqual([]);
    await letRun(300);
    const bin = await store.getState().listBin();
    const [binned] = bin.ok ? bin.value : [];
    expect(store.getState().restoreFromBin(need(binned))).toEqual([]);
    store.getState().restoreFromBin(need(binned));
    await letRun(300);
    expect(recipesOf(store)).toHaveLength(1);
    expect(await store.getState().listBin()).toEqual({ ok: true, value: [] });
  });
});

describe('an earlier state of a recipe', () => {
  test('can be gone back to, and away from again', async () => {
    const { store, key, id } = await withRecipe();
    const rename = async (name: string) => {
      store.getState().edit('recipes', id, 'Name', (row) => ({ ...row, name }));
      await letRun(6 * 60_000);
    };
    await rename('Sleet tray');
    await rename('Hail tray');
    const earlier = await store.getState().listSnapshots(key);
    const names = earlier.ok ? earlier.value.map(({ row }) => (row as { name: string }).name) : [];
    expect(names).toEqual(['Sleet tray', 'Snow tray']);
    store.getState().restoreSnapshot(need(earlier.ok ? earlier.value[1] : null));
    expect(recipesOf(store).map(({ name }) => name)).toEqual(['Snow tray']);
    store.getState().undo();
    expect(recipesOf(store).map(({ name }) => name)).toEqual(['Hail tray']);
  });

  test('that today cannot read is not put in its place', async () => {
    const { store, key, id } = await withRecipe();
    const of = `recipes/${id}`;
    const snapshot = {
      id: `${of}@0`,
      of,
      table: 'recipes',
      rev: 0,
      takenAt: '',
      row: { id, pleats: 4 },
    } as const;
    expect(store.getState().restoreSnapshot(snapshot).length).toBeGreaterThan(0);
    expect(store.getState().rows.recipes.get(key.id)?.name).toBe('Snow tray');
  });
});

describe('typing that a field took back by its own undo', () => {
  const name = (store: WorkbookStore, id: string, text: string) =>
    store.getState().edit('recipes', id, 'Name', (row) => ({ ...row, name: text }));

  test('is no step, though it was slow; what stood before it is undone next', async () => {
    const { store, id } = await withRecipe();
    for (const text of ['Snow tra', 'Snow', 'Snowdrop', 'Snow tray']) {
      await letRun(2000);
      name(store, id, text);
    }
    store.getState().typedBack();
    expect(store.getState().history.done.map(({ label }) => label)).toEqual(['New box']);
  });

  test('leaves steps alone that were not made just now, or do not cancel', async () => {
    const { store, id } = await withRecipe();
    for (const text of ['Snow', 'Snow tray', 'Tray']) {
      await letRun(2000);
      name(store, id, text);
    }
    store.getState().typedBack();
    expect(store.getState().history.done).toHaveLength(4);
    store.getState().undo();
    await letRun(2000);
    store.getState().typedBack();
    expect(store.getState().history.done).toHaveLength(3);
  });
});

describe('the undo of a notice', () => {
  const notice = (store: WorkbookStore, code: string) =>
    need(store.getState().notices.find((one) => one.code === code));

  test('is plain undo while nothing came after, and goes with its step', async () => {
    const { store, key } = await withRecipe();
    store.getState().remove(key);
    store.getState().takeBack(notice(store, 'deleted').key);
    expect(store.getState()).toMatchObject({ notices: [], history: { undone: [{ label: 'Delete' }] } });
    store.getState().remove(key);
    store.getState().undo();
    expect(store.getState().notices).toEqual([]);
    expect(recipesOf(store)).toHaveLength(1);
  });

  test('brings back what it names, and leaves newer work alone', async () => {
    const { world, store, key } = await withRecipe();
    const other = store.getState().createRecipe({ name: 'Bean pillow', styleId: 'pillow-pack' });
    store.getState().remove(key);
    const id = other.ok ? other.id : '';
    store.getState().edit('recipes', id, 'Name', (row) => ({ ...row, name: 'Pea pillow' }));
    store.getState().takeBack(notice(store, 'deleted').key);
    const names = () =>
      recipesOf(store)
        .map(({ name }) => name)
        .sort();
    expect(names()).toEqual(['Pea pillow', 'Snow tray']);
    store.getState().undo();
    expect(names()).toEqual(['Pea pillow']);
    store.getState().redo();
    await letRun(300);
    expect(recipesOf(await openTab(world, 'b'))).toHaveLength(2);
    expect(await store.getState().listBin()).toEqual({ ok: true, value: [] });
  });

  test('takes out all that was read in and nothing else, with the work done on it since', async () => {
    const { store, id } = await withRecipe();
    const file = workbookOf('event', {
      recipes: [recipeRow('r', { paperId: 'p' })],
      papers: [paperRow('p')],
      events: [eventRow('e')],
    });
    store.getState().importPlanned(store.getState().planImport(file), 'Take it in');
    store.getState().edit('recipes', 'r', 'Name', (row) => ({ ...row, name: 'Changed since' }));
    store.getState().edit('recipes', id, 'Name', (row) => ({ ...row, name: 'Hers' }));
    store.getState().takeBack(notice(store, 'imported').key);
    expect(recipesOf(store).map(({ name }) => name)).toEqual(['Hers']);
    expect(store.getState().rows.papers.size + store.getState().rows.events.size).toBe(0);
    store.getState().undo();
    expect(store.getState().rows.recipes.get('r')?.name).toBe('Changed since');
  });

  test('does nothing to what has come back by another way', async () => {
    const { store, key } = await withRecipe();
    store.getState().remove(key);
    await letRun(300);
    const bin = await store.getState().listBin();
    store.getState().restoreFromBin(need(bin.ok ? bin.value[0] : null));
    const before = store.getState().rows;
    store.getState().takeBack(notice(store, 'deleted').key);
    expect(store.getState().rows).toBe(before);
    expect(store.getState().notices).toEqual([]);
  });
});

describe('a file', () => {
  const file = workbookOf('event', {
    recipes: [recipeRow('r', { paperId: 'p' })],
    papers: [paperRow('p')],
    events: [
      eventRow('e', { lines: [{ id: '1', recipeId: 'r', dressingId: null, paperId: null, count: 40 }] }),
    ],
  });

  test('is shown before it is read in, is read in as one step, and is kept in one write', async () => {
    const { world, store } = await withRecipe();
    const plan = store.getState().planImport(file);
    expect(plan.counts).toEqual({ new: 3, same: 0, differs: 0 });
    expect(recipesOf(store)).toHaveLength(1);
    store.getState().importPlanned(plan, 'Take it in');
    expect(store.getState().notices).toMatchObject([{ code: 'imported', about: '3' }]);
    await letRun(10);
    expect(store.getState().save).toEqual({ state: 'saved' });
    expect(recipesOf(await openTab(world, 'b'))).toHaveLength(2);
    store.getState().undo();
    expect([
      recipesOf(store).length,
      store.getState().rows.papers.size,
      store.getState().rows.events.size,
    ]).toEqual([1, 0, 0]);
  });

  test('whose write fails is in storage not at all, and stays on the shelf with the warning', async () => {
    const world = new World();
    let plan: ReturnType<typeof faultyStorage>['plan'] = [];
    const store = await openTab(world, 'a', (storage) => {
      const handle = faultyStorage(storage);
      plan = handle.plan;
      return handle.faulty;
    });
    plan.push('full');
    store.getState().importPlanned(store.getState().planImport(file), 'Take it in');
    await letRun(10);
    expect(store.getState().save).toEqual({ state: 'not-saved', why: 'full' });
    expect([world.disk.contents.recipes.size, world.disk.contents.papers.size]).toEqual([0, 0]);
    expect(recipesOf(store)).toHaveLength(1);
    await letRun(5000);
    expect(store.getState().save).toEqual({ state: 'saved' });
    expect([world.disk.contents.recipes.size, world.disk.contents.papers.size]).toEqual([1, 1]);
  });

  test('of everything, written and read in elsewhere, is everything', async () => {
    const { store } = await withRecipe();
    store.getState().importPlanned(store.getState().planImport(file), 'Take it in');
    const text = writeWorkbook(need(store.getState().exportFile({ kind: 'everything' })));
    const reading = readWorkbook(text);
    const other = await openTab(new World(), 'other');
    if (!reading.ok) throw new Error('refused');
    other.getState().importPlanned(other.getState().planImport(reading.file), 'Take it in');
    const again = need(other.getState().exportFile({ kind: 'everything' }));
    const timeless = (given: typeof again) =>
      JSON.stringify(given).replace(/"(changedAt":"[^"]*"|rev":\d+)/g, '');
    expect(timeless(again)).toBe(timeless(reading.file));
    other.getState().importPlanned(other.getState().planImport(reading.file), 'Take it in');
    expect(recipesOf(other)).toHaveLength(2);
  });
});
