import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { nextStep } from '../../src/state/keeping/history';
import { openMemory } from '../../src/storage/memory';
import type { StorageEvent, WorkbookStorage } from '../../src/storage/port';
import { recordFault } from '../setup/fault-record';
import { paperRow, photoRow, recipeRow } from '../storage/sample-rows';
import { letRun, newTab, openTab, World } from './open-tab';

beforeEach(() => void vi.useFakeTimers({ now: Date.UTC(2026, 0, 17, 9) }));
afterEach(() => void vi.useRealTimers());

const names = (store: Awaited<ReturnType<typeof openTab>>) =>
  [...store.getState().rows.recipes.values()].map(({ name }) => name);
const codes = (store: Awaited<ReturnType<typeof openTab>>) =>
  store.getState().notices.map(({ code }) => code);

async function withRecipes(...given: string[]) {
  const world = new World();
  const store = await openTab(world, 'first');
  const ids = given.map((name) => {
    const made = store.getState().createRecipe({ name, styleId: 'tray' });
    if (!made.ok) throw new Error('refused');
    return made.id;
  });
  await letRun(300);
  return { world, store, ids };
}

describe('a tab that closes within the pause before a save', () => {
  test.each([0, 1, 100, 249])('%i ms after the last keystroke loses nothing of it', async (pause) => {
    const { world, store, ids } = await withRecipes('Snow');
    const rename = (name: string) =>
      store.getState().edit('recipes', ids[0] ?? '', 'Name', (row) => ({ ...row, name }));
    rename('Snow t');
    rename('Snow tray');
    await letRun(pause);
    world.kill('first');
    const next = await openTab(world, 'next');
    expect(names(next)).toEqual(['Snow tray']);
    expect(codes(next)).toEqual(['draftRestored']);
    await letRun(300);
    expect(next.getState().save).toEqual({ state: 'saved' });
    expect(world.drafts.size).toBe(0);
    expect(codes(await openTab(world, 'last'))).toEqual([]);
  });

  test('while the write was under way is not met by a copy of itself', async () => {
    const { world, store, ids } = await withRecipes('Snow');
    const rename = (name: string) =>
      store.getState().edit('recipes', ids[0] ?? '', 'Name', (row) => ({ ...row, name }));
    rename('Snow t');
    void store.getState().keepNow();
    rename('Snow tray');
    world.kill('first');
    await letRun(10);
    const next = await openTab(world, 'next');
    expect(names(next)).toEqual(['Snow tray']);
  });

  test('having deleted a recipe leaves it deleted, and in the bin', async () => {
    const { world, store, ids } = await withRecipes('Snow', 'Rain');
    store.getState().remove({ table: 'recipes', id: ids[0] ?? '' });
    world.kill('first');
    const next = await openTab(world, 'next');
    expect(names(next)).toEqual(['Rain']);
    const bin = await next.getState().listBin();
    expect(bin.ok && bin.value.map(({ row }) => row.name)).toEqual(['Snow']);
  });

  test('leaves a draft that today cannot read where it is, for a version that can', async () => {
    const { world } = await withRecipes('Snow');
    const row = { ...recipeRow('x'), pleats: 4 };
    world.drafts.set('old', {
      at: '',
      sent: [],
      changes: [{ table: 'recipes', id: 'x', row, deleted: false, basedOn: null }],
    });
    const next = await openTab(world, 'next');
    expect(names(next)).toEqual(['Snow']);
    expect(world.drafts.has('old')).toBe(true);
  });

  test('twice, with two drafts of one recipe, keeps both', async () => {
    const { world, store, ids } = await withRecipes('Snow');
    const other = await openTab(world, 'other');
    store.getState().edit('recipes', ids[0] ?? '', 'Name', (row) => ({ ...row, name: 'Snow tray' }));
    other.getState().edit('recipes', ids[0] ?? '', 'Name', (row) => ({ ...row, name: 'Snow box' }));
    world.kill('first');
    world.kill('other');
    expect(names(await openTab(world, 'next')).sort()).toEqual(['Snow box', 'Snow tray']);
  });
});

describe('what is found at the start', () => {
  test('settings, and the undo list of the visit before', async () => {
    const { world, store } = await withRecipes('Snow', 'Rain');
    store.getState().changeSettings({ unit: 'mm', theme: 'dark' });
    await letRun(300);
    const next = await openTab(world, 'next');
    expect(next.getState().settings).toMatchObject({ unit: 'mm', theme: 'dark' });
    expect(nextStep(next.getState().history, 'undo')?.label).toBe('New box');
    next.getState().undo();
    expect(names(next)).toEqual(['Snow']);
    next.getState().redo();
    expect(names(next).sort()).toEqual(['Rain', 'Snow']);
  });

  test('fifty steps of undo outlive a reload', async () => {
    const { world, store, ids } = await withRecipes('Snow');
    for (let n = 1; n <= 70; n++) {
      store.getState().edit('recipes', ids[0] ?? '', 'Name', (row) => ({ ...row, name: `Name ${n}` }));
      await letRun(1100);
    }
    const next = await openTab(world, 'next');
    for (let n = 0; n < 60; n++) next.getState().undo();
    expect(names(next)).toEqual(['Name 20']);
  });

  test('forty photos in the undo list cost the next keystroke nothing', async (context) => {
    const { world, store, ids } = await withRecipes('Snow');
    const { id: _id, rev: _rev, createdAt: _made, changedAt: _at, ...photo } = photoRow('p');
    const lettersWritten = () => JSON.stringify(world.disk.contents.notes.get('history')).length;
    let [most, heavy] = [0, 0];
    for (let n = 0; n < 40; n++) {
      store
        .getState()
        .createTogether('Photo', [
          { table: 'photos', content: () => ({ ...photo, jpeg: 'A'.repeat(200_000) }) },
        ]);
      await letRun(1100);
      store.getState().edit('recipes', ids[0] ?? '', 'Name', (row) => ({ ...row, name: `Snow ${n}` }));
      await letRun(1100);
      most = Math.max(most, lettersWritten());
      if (lettersWritten() > 100_000) heavy++;
    }
    recordFault(context, {
      fault: 'a keystroke that writes photos of the undo list anew',
      tries: 40,
      lost: heavy,
      goal: 0,
    });
    expect(most).toBeGreaterThan(50);
    // What was just typed can be taken back after a reload all the same.
    const next = await openTab(world, 'next');
    next.getState().undo();
    expect(names(next)).toEqual(['Snow 38']);
  });

  test('an undo list that no longer fits is let go of, and so is one that is scribble', async () => {
    for (const history of [
      { done: 'x' },
      7,
      {
        done: [{ label: 'Name', at: 0, changes: [{ table: 'recipes', id: 'gone', do: 'edit', fields: [] }] }],
        undone: [],
      },
    ]) {
      const { world } = await withRecipes('Snow');
      world.disk.contents.notes.set('history', { id: 'history', value: history });
      expect((await openTab(world, 'next')).getState().history).toEqual({ done: [], undone: [] });
    }
  });

  test('settings that cannot be read are the first settings again', async () => {
    const { world } = await withRecipes('Snow');
    world.disk.contents.notes.set('settings', { id: 'settings', value: { unit: 'furlong' } });
    expect((await openTab(world, 'next')).getState().settings.unit).toBe('in');
  });

  test('rows that are missing are asked about before anything else, and once', async () => {
    const { world, ids } = await withRecipes('Snow', 'Rain');
    world.disk.contents.recipes.delete(ids[0] ?? '');
    const next = await openTab(world, 'next');
    expect(next.getState().phase).toMatchObject({
      phase: 'lossFound',
      loss: { expected: { rows: 2 }, found: { rows: 1 } },
    });
    await next.getState().acceptLoss();
    expect(next.getState().phase).toEqual({ phase: 'ready' });
    expect((await openTab(world, 'last')).getState().phase).toEqual({ phase: 'ready' });
  });

  test('a row that cannot be read is set aside, and saving goes on around it', async () => {
    const { world, ids } = await withRecipes('Snow', 'Rain');
    const bad = { ...recipeRow(ids[0] ?? ''), rev: 1, caliperUm: 'thick' };
    world.disk.contents.recipes.set(bad.id, bad);
    const next = await openTab(world, 'next');
    expect(names(next)).toEqual(['Rain']);
    expect(next.getState().quarantined.map(({ raw }) => raw)).toEqual([bad]);
    next.getState().createRecipe({ name: 'Fog', styleId: 'tray' });
    await letRun(300);
    expect(next.getState().save).toEqual({ state: 'saved' });
    expect(world.disk.contents.recipes.get(bad.id)).toEqual(bad);
  });

  test('what has lain in the bin for more than thirty days of use is gone, what has not is not', async () => {
    const { world, store, ids } = await withRecipes('Snow', 'Rain');
    const opened = async (days: number) => {
      for (let day = 0; day < days; day++) {
        await letRun(86_400_000);
        await openTab(world, `day-${Date.now()}`);
      }
    };
    store.getState().remove({ table: 'recipes', id: ids[0] ?? '' });
    await opened(20);
    store.getState().remove({ table: 'recipes', id: ids[1] ?? '' });
    await opened(11);
    const bin = await (await openTab(world, 'next')).getState().listBin();
    expect(bin.ok && bin.value.map(({ row }) => row.name)).toEqual(['Rain']);
  });

  test.for([
    ['ahead while she deletes nothing', 0, 40],
    ['in 2020 while she deletes', -2300, 0],
    ['ahead for a year of starts', 0, 365],
  ] as const)('a clock that stood %s empties no bin', async ([, wrongAtDelete, wrongAfter], context) => {
    const { world, store, ids } = await withRecipes('Snow');
    const now = Date.now();
    const at = async (days: number, tab: string) => {
      vi.setSystemTime(now + days * 86_400_000);
      return openTab(world, tab);
    };
    await at(wrongAtDelete, 'wrong');
    store.getState().remove({ table: 'recipes', id: ids[0] ?? '' });
    await letRun(300);
    await at(wrongAfter, 'far');
    await at(wrongAfter + 1, 'farther');
    const bin = await (await at(1, 'right')).getState().listBin();
    const left = bin.ok ? bin.value.map(({ row }) => row.name) : [];
    recordFault(context, {
      fault: 'the bin emptied by a wrong clock',
      tries: 1,
      lost: left.includes('Snow') ? 0 : 1,
      goal: 0,
    });
    expect(left).toEqual(['Snow']);
  });
});

describe('where there is no storage', () => {
  const fault = (kind: 'absent' | 'newer' | 'broken', salvaged?: Record<string, unknown[]>) => ({
    openStorage: () =>
      Promise.resolve({
        ok: false,
        fault: { kind, detail: 'as told', ...(salvaged && { salvaged }) },
      } as const),
  });

  test('work goes on in memory, and says for as long that nothing outlives the tab', async () => {
    const store = await openTab(new World(), 'a', undefined, fault('absent'));
    await letRun(0);
    expect(store.getState()).toMatchObject({ phase: { phase: 'ready' }, keeps: 'memory' });
    store.getState().createRecipe({ name: 'Snow', styleId: 'tray' });
    await letRun(300);
    expect(store.getState()).toMatchObject({ save: { state: 'saved' }, keeps: 'memory' });
  });

  test('that this app may write to, what can be read is on the shelf to look at and to export', async () => {
    const rows = { recipes: [recipeRow('a'), { id: 'b', pleats: 4 }], papers: [paperRow('p')], photos: [] };
    const store = await openTab(new World(), 'a', undefined, fault('newer', rows));
    expect(store.getState().phase).toMatchObject({ phase: 'stopped', fault: { kind: 'newer' } });
    expect(names(store)).toEqual(['Recipe a']);
    expect(store.getState().quarantined.map(({ id }) => id)).toEqual(['b']);
    expect(store.getState().exportFile({ kind: 'everything' })?.papers).toHaveLength(1);
  });

  test('because it is broken, she may carry on in memory', async () => {
    const store = await openTab(new World(), 'a', undefined, fault('broken'));
    expect(store.getState().phase).toMatchObject({ phase: 'stopped' });
    store.getState().carryOnInMemory();
    await letRun(0);
    expect(store.getState()).toMatchObject({ phase: { phase: 'ready' }, keeps: 'memory' });
  });

  test('that can be written to, what could be read of it stays at hand while she carries on', async () => {
    const rows = { recipes: [recipeRow('a'), { id: 'b', pleats: 4 }], notes: [{ id: 'settings', value: 1 }] };
    const store = await openTab(new World(), 'a', undefined, fault('broken', rows));
    store.getState().carryOnInMemory();
    await letRun(0);
    expect(store.getState()).toMatchObject({ phase: { phase: 'ready' }, keeps: 'memory', salvaged: rows });
    expect(names(store)).toEqual(['Recipe a']);
    expect(store.getState().quarantined.map(({ id }) => id)).toEqual(['b']);
    store.getState().edit('recipes', 'a', 'Name', (row) => ({ ...row, name: 'Snow' }));
    await letRun(300);
    expect(store.getState().save).toEqual({ state: 'saved' });
  });

  test('because another tab must close first, the page says so and goes on by itself', async () => {
    const opening = new EventTarget();
    const store = newTab(new World(), 'a', undefined, {
      openStorage: async (onBlocked) => {
        onBlocked();
        await new Promise((resolve) => opening.addEventListener('free', resolve));
        return { ok: true, value: openMemory() };
      },
    });
    expect(store.getState().phase).toEqual({ phase: 'opening' });
    void store.getState().boot();
    expect(store.getState().phase).toEqual({ phase: 'blocked' });
    opening.dispatchEvent(new Event('free'));
    await letRun(0);
    expect(store.getState().phase).toEqual({ phase: 'ready' });
  });

  test('nothing is called saved that is not', async () => {
    const store = await openTab(new World(), 'a', undefined, fault('newer'));
    expect(store.getState().save).toEqual({ state: 'not-saved', why: 'newer' });
    store.getState().createRecipe({ name: 'Snow', styleId: 'tray' });
    await letRun(10_000);
    expect(store.getState().save).toEqual({ state: 'not-saved', why: 'newer' });
  });
});

test('when a newer version takes the database over, work stops and the page says why', async () => {
  let tell: (event: StorageEvent) => void = () => undefined;
  const store = await openTab(new World(), 'a', (storage: WorkbookStorage) => ({
    ...storage,
    watch: (listener) => {
      tell = listener;
      return storage.watch(listener);
    },
  }));
  tell({ event: 'fault', fault: { kind: 'stale', detail: 'as told' } });
  expect(store.getState()).toMatchObject({
    phase: { phase: 'stopped', fault: { kind: 'stale' } },
    save: { state: 'not-saved', why: 'stale' },
  });
});

describe('a copy outside the browser', () => {
  test('is asked for after twenty saves, once, and not again after one was made', async () => {
    const { world, store, ids } = await withRecipes('Snow');
    for (let n = 1; n < 30; n++) {
      store.getState().edit('recipes', ids[0] ?? '', 'Name', (row) => ({ ...row, name: `Name ${n}` }));
      await letRun(1100);
    }
    expect(codes(store)).toEqual(['backupDue']);
    store.getState().noteBackup();
    await letRun(300);
    const { at, savesSince } = (await openTab(world, 'next')).getState().backup;
    expect([at?.slice(0, 13), savesSince]).toEqual(['2026-01-17T09', 0]);
  });

  test('is asked for a week after the last one, if anything was saved since', async () => {
    const { store, ids } = await withRecipes('Snow');
    store.getState().noteBackup();
    await letRun(7 * 86_400_000 - 5000);
    store.getState().edit('recipes', ids[0] ?? '', 'Name', (row) => ({ ...row, name: 'Sleet' }));
    await letRun(300);
    expect(codes(store)).toEqual([]);
    await letRun(6000);
    store.getState().edit('recipes', ids[0] ?? '', 'Name', (row) => ({ ...row, name: 'Hail' }));
    await letRun(300);
    expect(codes(store)).toEqual(['backupDue']);
  });
});

test('everything can be forgotten, and is', async () => {
  const { world, store } = await withRecipes('Snow');
  store.getState().changeSettings({ unit: 'mm' });
  await letRun(300);
  expect((await store.getState().eraseEverything()).ok).toBe(true);
  expect(store.getState()).toMatchObject({
    phase: { phase: 'ready' },
    settings: { unit: 'in' },
    history: { done: [] },
    // What she cleared herself is not filled with the example again.
    fresh: false,
  });
  expect(world.drafts.size).toBe(0);
  expect(names(store)).toEqual([]);
  const next = await openTab(world, 'next');
  expect(names(next)).toEqual([]);
  expect(next.getState().phase).toEqual({ phase: 'ready' });
});

test('everything means what is kept beside the workbook too, and what stayed there is said', async () => {
  const eraseBeside = vi.fn(() => Promise.resolve());
  const store = await openTab(new World(), 'a', undefined, { eraseBeside });
  expect((await store.getState().eraseEverything()).ok).toBe(true);
  expect(eraseBeside).toHaveBeenCalledOnce();
  const stuck = { eraseBeside: () => Promise.reject(new Error('blocked')) };
  const other = await openTab(new World(), 'b', undefined, stuck);
  expect(await other.getState().eraseEverything()).toMatchObject({ ok: false });
});

test('where the code of the database does not come, that is said, and work in memory is offered', async (context) => {
  const store = newTab(new World(), 'a', undefined, {
    openStorage: () => Promise.reject(new TypeError('Failed to fetch dynamically imported module')),
  });
  const escaped = await store
    .getState()
    .boot()
    .then(() => null, String);
  const told = { phase: store.getState().phase, save: store.getState().save };
  recordFault(context, {
    fault: 'the database’s code is not fetched: “Saved” beside an empty page',
    tries: 1,
    lost: escaped === null && told.save.state === 'not-saved' ? 0 : 1,
    goal: 0,
  });
  expect(told).toMatchObject({
    phase: { phase: 'stopped', fault: { kind: 'unfetched' } },
    save: { state: 'not-saved', why: 'unfetched' },
  });
  store.getState().carryOnInMemory();
  await letRun(10);
  expect(store.getState()).toMatchObject({ phase: { phase: 'ready' }, keeps: 'memory' });
});
