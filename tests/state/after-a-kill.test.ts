import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { WorkbookStore } from '../../src/state/workbook-store';
import { openMemory } from '../../src/storage/memory';
import type { Draft, WorkbookStorage } from '../../src/storage/port';
import { recordFault } from '../setup/fault-record';
import { photoRow, recipeRow } from '../storage/sample-rows';
import { letRun, openTab, World } from './open-tab';

beforeEach(() => void vi.useFakeTimers({ now: Date.UTC(2026, 0, 17, 9) }));
afterEach(() => void vi.useRealTimers());

const width = (store: WorkbookStore, id: string, mm: number) =>
  store
    .getState()
    .edit('recipes', id, 'Width', (was) => ({ ...was, sizesMm: { ...was.sizesMm, width: mm } }));
const codes = (store: WorkbookStore) => store.getState().notices.map(({ code }) => code);

test('a journal that reached the disk late leaves no copy of an older state, and no word of work that was kept', async (context) => {
  const TRIES = 40;
  let lost = 0;
  for (let round = 0; round < TRIES; round++) {
    const world = new World();
    const typing = await openTab(world, 'typing');
    const made = typing.getState().createRecipe({ name: 'My open-top box', styleId: 'open-top' });
    const id = made.ok ? made.id : '';
    const drafts: Draft[] = [];
    let acknowledged = 0;
    for (let key = 0; key < 30; key++) {
      width(typing, id, 40 + key);
      const draft = world.drafts.get('typing');
      if (draft) drafts.push(structuredClone(draft));
      await letRun([20, 90, 400, 130][(key + round) % 4] ?? 0);
      if (typing.getState().save.state === 'saved') acknowledged = 40 + key;
    }
    world.kill('typing');
    // What the disk holds of the journal is some keystrokes old; so is a journal that was emptied.
    const stale = drafts[drafts.length - 1 - (round % 12)];
    if (stale) world.drafts.set('typing', stale);
    const next = await openTab(world, 'next');
    await letRun(600);
    const recipes = [...next.getState().rows.recipes.values()];
    const untrue = recipes.length !== 1 || (recipes[0]?.sizesMm['width'] ?? 0) < acknowledged;
    const told = codes(next).includes('keptBoth');
    const kept = (stale?.number ?? 0) < (drafts.at(-1)?.number ?? 0) && acknowledged === 69;
    if (untrue || told || (kept && codes(next).includes('draftRestored'))) lost++;
  }
  recordFault(context, {
    fault: 'killed while typing, with a journal that is behind',
    tries: TRIES,
    lost,
    goal: 0,
  });
});

test('killed after a large import was kept, nothing is said to have been lost', async (context) => {
  const world = new World();
  const one = await openTab(world, 'one');
  const rows = Array.from({ length: 500 }, (_, n) => recipeRow(`r${n}`));
  one.getState().importPlanned(
    {
      rows: rows.map((row) => ({ table: 'recipes', fate: 'new', name: row.name, differs: null, row })),
      counts: { new: 500, same: 0, differs: 0 },
    },
    'Restore',
  );
  const draft = structuredClone(world.drafts.get('one'));
  await letRun(600);
  world.kill('one');
  if (draft) world.drafts.set('one', draft);
  const next = await openTab(world, 'next');
  expect(next.getState().rows.recipes.size).toBe(500);
  const lost = codes(next).length;
  recordFault(context, { fault: 'killed after a large import was kept', tries: 1, lost, goal: 0 });
});

test('a draft in one field and what another tab kept in another since are one recipe', async () => {
  const world = new World();
  const one = await openTab(world, 'one');
  const made = one.getState().createRecipe({ name: 'Snow', styleId: 'tray' });
  const id = made.ok ? made.id : '';
  await letRun(300);
  const two = await openTab(world, 'two');
  width(one, id, 70);
  world.kill('one');
  two.getState().edit('recipes', id, 'Notes', (was) => ({ ...was, notes: 'slowly' }));
  await letRun(300);
  const next = await openTab(world, 'next');
  await letRun(300);
  expect([...next.getState().rows.recipes.values()]).toMatchObject([
    { notes: 'slowly', sizesMm: { width: 70 } },
  ]);
});

/** A disk with room for so many letters: what would need more is refused, what needs none is not. */
function smallDisk(storage: WorkbookStorage, world: World, letters: number): WorkbookStorage {
  const size = () =>
    JSON.stringify(Object.values(world.disk.contents).map((store) => [...store.values()])).length;
  return {
    ...storage,
    write(changes, at, notes) {
      const kept = changes.filter(({ forGood }) => !forGood);
      if (kept.length === 0 || size() + JSON.stringify([kept, notes]).length <= letters)
        return storage.write(changes, at, notes);
      return Promise.resolve({ ok: false, fault: { kind: 'full', detail: 'as planned' } });
    },
  };
}

test('a full disk is freed from inside the app', async (context) => {
  const world = new World();
  const photo = 'A'.repeat(40_000);
  const store = await openTab(world, 'one', (storage) => smallDisk(storage, world, 300_000));
  const { createTogether, keeping } = store.getState();
  const add = (n: number) => {
    const {
      id: _id,
      rev: _rev,
      createdAt: _made,
      changedAt: _at,
      ...content
    } = photoRow(`p${n}`, { jpeg: photo });
    const made = createTogether('Photo', [{ table: 'photos', content: () => content }]);
    return made.ok ? (made.ids[0] ?? '') : '';
  };
  const ids = [];
  for (let n = 0; n < 7; n++) {
    ids.push(add(n));
    await letRun(1500);
  }
  expect(store.getState().save).toEqual({ state: 'saved' });
  for (let n = 7; n < 9; n++) {
    ids.push(add(n));
    await letRun(1500);
  }
  expect(store.getState().save).toEqual({ state: 'not-saved', why: 'full' });
  for (const id of ids.slice(0, 4)) store.getState().remove({ table: 'photos', id });
  await letRun(6000);
  expect(store.getState().save).toEqual({ state: 'not-saved', why: 'full' });
  await (await keeping()).freeRoom(true);
  await letRun(6000);
  expect(store.getState().save).toEqual({ state: 'saved' });
  const next = await openTab(world, 'next');
  const missing = ids.slice(4).filter((id) => !next.getState().rows.photos.has(id)).length;
  recordFault(context, { fault: 'a full disk that is to be freed', tries: 4, lost: missing, goal: 0 });
});

test('a database that is busy at the start is waited for, with the count of what is read, and never drawn as an empty shelf', async (context) => {
  const world = new World();
  const first = await openTab(world, 'first');
  for (const name of ['Snow', 'Rain']) first.getState().createRecipe({ name, styleId: 'tray' });
  await letRun(300);
  let asked = 0;
  const phases: string[] = [];
  const slow = (storage: WorkbookStorage): WorkbookStorage => ({
    ...storage,
    async load(progress) {
      progress?.(1, 2);
      await new Promise((resolve) => setTimeout(resolve, 9000));
      return storage.load(progress);
    },
  });
  const opening = openTab(world, 'slow', undefined, {
    openStorage: () =>
      Promise.resolve(
        asked++ < 3
          ? { ok: false, fault: { kind: 'slow', detail: 'as planned' } }
          : { ok: true, value: slow(openMemory(world.disk)) },
      ),
  });
  let store: WorkbookStore | null = null;
  void opening.then((opened) => {
    store = opened;
    opened.subscribe(({ phase }) => phases.push(phase.phase));
  });
  await letRun(30_000);
  const opened = await opening;
  expect(store).toBe(opened);
  const { rows, phase, fresh } = opened.getState();
  expect([rows.recipes.size, phase.phase, fresh]).toEqual([2, 'ready', false]);
  recordFault(context, {
    fault: 'a database that is busy at the start',
    tries: 1,
    lost: 2 - rows.recipes.size,
    goal: 0,
  });
});

test('rows that a page keeps while it goes are there on the page that comes', async (context) => {
  const TRIES = 20;
  let lost = 0;
  for (let round = 0; round < TRIES; round++) {
    const world = new World();
    const going = await openTab(world, 'going');
    const made = going.getState().createRecipe({ name: 'Snow', styleId: 'open-top' });
    const id = made.ok ? made.id : '';
    await letRun(600);
    width(going, id, 60 + round);
    // The going page lives until its save has arrived and its draft is cleared; only then does it let go of its draft.
    const journal = world.journalOf('coming');
    const leftBehind = async () => {
      await going.getState().keepNow();
      world.kill('going');
      return journal.leftBehind();
    };
    const told = round % 2 === 0;
    const deaf = (storage: WorkbookStorage) => ({ ...storage, watch: () => () => undefined });
    const wrap = told ? undefined : deaf;
    const coming = await openTab(world, 'coming', wrap, { journal: { ...journal, leftBehind } });
    await letRun(100);
    if (coming.getState().rows.recipes.get(id)?.sizesMm['width'] !== 60 + round) lost++;
  }
  recordFault(context, { fault: 'kept by a page while it goes', tries: TRIES, lost, goal: 0 });
});
