import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { workbookOf } from '../../shared/write-workbook';
import type { WorkbookStore } from '../../src/state/workbook-store';
import { paperRow } from '../storage/sample-rows';
import { faultyStorage } from './faulty-storage';
import { letRun, openTab, World } from './open-tab';

beforeEach(() => void vi.useFakeTimers({ now: Date.UTC(2026, 0, 17, 9) }));
afterEach(() => void vi.useRealTimers());

async function openFaulty(world = new World()) {
  const handles: ReturnType<typeof faultyStorage>[] = [];
  const store = await openTab(world, 'a', (storage) => {
    const handle = faultyStorage(storage);
    handles.push(handle);
    return handle.faulty;
  });
  const [handle] = handles;
  if (!handle) throw new Error('not opened');
  return { store, plan: handle.plan, writes: handle.writes, world };
}

async function withRecipe(store: WorkbookStore) {
  const made = store.getState().createRecipe({ name: 'Snow tray', styleId: 'tray' });
  if (!made.ok) throw new Error('refused');
  await letRun(300);
  return made.id;
}
const type = (store: WorkbookStore, id: string, name: string) =>
  store.getState().edit('recipes', id, 'Name', (row) => ({ ...row, name }));
const save = (store: WorkbookStore) => store.getState().save;

describe('a keystroke', () => {
  test('is kept within 300 ms of the last one, in one write', async () => {
    const { store, writes } = await openFaulty();
    const id = await withRecipe(store);
    writes.length = 0;
    for (const name of ['S', 'Sn', 'Sno', 'Snow']) {
      type(store, id, name);
      expect(save(store)).toEqual({ state: 'saving' });
      await letRun(100);
    }
    expect(writes).toEqual([]);
    await letRun(200);
    expect(writes).toHaveLength(1);
    expect(save(store)).toEqual({ state: 'saved' });
  });

  test('is kept within two seconds and a bit, however long she types without a pause', async () => {
    const { store, writes } = await openFaulty();
    const id = await withRecipe(store);
    writes.length = 0;
    for (let n = 0; n < 60; n++) {
      type(store, id, `Name ${n}`);
      await letRun(100);
    }
    expect(writes.length).toBeGreaterThanOrEqual(2);
    const gaps = writes.slice(1).map((at, index) => at - (writes[index] ?? 0));
    expect(Math.max(...gaps)).toBeLessThanOrEqual(2300);
  });

  test('is never called kept before the storage said so', async () => {
    const { store, plan } = await openFaulty();
    const id = await withRecipe(store);
    const seen: string[] = [];
    store.subscribe((state) => seen.push(state.save.state));
    plan.push('full');
    type(store, id, 'Snow');
    await letRun(1000);
    expect(seen.slice(seen.indexOf('saving'))).not.toContain('saved');
    expect(save(store)).toEqual({ state: 'not-saved', why: 'full' });
  });

  test('set with the clock turned back an hour is kept all the same', async () => {
    const { store, world } = await openFaulty();
    const id = await withRecipe(store);
    vi.setSystemTime(Date.now() - 3_600_000);
    type(store, id, 'Before');
    vi.setSystemTime(Date.now() + 48 * 3_600_000);
    type(store, id, 'After');
    await letRun(300);
    const again = await openTab(world, 'b');
    expect(again.getState().rows.recipes.get(id)).toMatchObject({ name: 'After', rev: 2 });
  });
});

describe('a save that fails', () => {
  test('is tried again, and again with the next keystroke, and says so until it is kept', async () => {
    const { store, plan, world } = await openFaulty();
    const id = await withRecipe(store);
    plan.push('full', 'full');
    type(store, id, 'Snow');
    await letRun(300);
    expect(save(store)).toEqual({ state: 'not-saved', why: 'full' });
    type(store, id, 'Snow tray two');
    expect(save(store)).toEqual({ state: 'not-saved', why: 'full' });
    await letRun(300);
    expect(save(store)).toEqual({ state: 'not-saved', why: 'full' });
    expect(world.drafts.get('a')?.changes).toMatchObject([{ row: { name: 'Snow tray two' } }]);
    await letRun(5000);
    expect(save(store)).toEqual({ state: 'saved' });
    expect(world.drafts.size).toBe(0);
  });

  test('but was kept without an answer does not make a second copy', async () => {
    const { store, plan, world } = await openFaulty();
    const id = await withRecipe(store);
    plan.push('late');
    type(store, id, 'Snow');
    await letRun(300);
    type(store, id, 'Snow again');
    await letRun(300);
    expect(save(store)).toEqual({ state: 'saved' });
    const again = await openTab(world, 'b');
    expect([...again.getState().rows.recipes.values()].map(({ name }) => name)).toEqual(['Snow again']);
    expect(store.getState().notices).toEqual([]);
  });

  test('because a newer version took the database over stops all saving; the work waits in the journal', async () => {
    const { store, plan, writes, world } = await openFaulty();
    const id = await withRecipe(store);
    plan.push('stale');
    type(store, id, 'Snow');
    await letRun(300);
    writes.length = 0;
    await letRun(60_000);
    type(store, id, 'Snow, later');
    await letRun(60_000);
    expect(writes).toEqual([]);
    expect(store.getState().phase).toMatchObject({ phase: 'stopped', fault: { kind: 'stale' } });
    expect(world.drafts.get('a')?.changes).toMatchObject([{ row: { name: 'Snow, later' } }]);
  });
});

test('a recipe made and deleted again before it was ever kept lies in the bin all the same', async () => {
  const { store } = await openFaulty();
  const made = store.getState().createRecipe({ name: 'Snow tray', styleId: 'tray' });
  store.getState().remove({ table: 'recipes', id: made.ok ? made.id : '' });
  await letRun(300);
  const bin = await store.getState().listBin();
  expect(bin.ok && bin.value.map(({ row }) => row.name)).toEqual(['Snow tray']);
});

test('the browser is asked to keep our storage at the first real save, and only once', async () => {
  let asked = 0;
  const askToPersist = () => {
    asked++;
    return Promise.resolve(true);
  };
  const store = await openTab(new World(), 'a', undefined, { askToPersist });
  store.getState().changeSettings({ unit: 'mm' });
  await letRun(300);
  expect(asked).toBe(0);
  // The example that opens by itself is none of hers.
  const { planImport, placeExample } = store.getState();
  placeExample(planImport(workbookOf('everything', { papers: [paperRow('p')] })));
  await letRun(300);
  expect(asked).toBe(0);
  const id = await withRecipe(store);
  type(store, id, 'Snow');
  await letRun(300);
  expect(asked).toBe(1);
  expect(store.getState().persisted).toBe(true);
});
