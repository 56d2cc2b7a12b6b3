import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { readWorkbook } from '../../shared/read-workbook';
import { FOLDER_WAIT_MS } from '../../src/state/keeping/folder-backup';
import type { WorkbookStorage } from '../../src/storage/port';
import { recordFault } from '../setup/fault-record';
import { FolderDouble } from './folder-double';
import { letRun, openTab, World } from './open-tab';

beforeEach(() => void vi.useFakeTimers({ now: Date.UTC(2026, 10, 26, 12) }));
afterEach(() => void vi.useRealTimers());

const DAY_MS = 86_400_000;
const TODAY = /^crease-and-count-2026-11-26-\d{6}(-\d)?\.json$/;

async function withFolder(door: FolderDouble | null = new FolderDouble(), world = new World(), tab = 'a') {
  const store = await openTab(world, tab, undefined, { folderDoor: () => Promise.resolve(door) });
  const { folder } = await store.getState().keeping();
  const make = (name: string) => store.getState().createRecipe({ name, styleId: 'tray' });
  return { world, store, folder, door: door ?? new FolderDouble(), make };
}
const namesIn = (text: string | undefined) => {
  const reading = readWorkbook(text ?? '');
  return reading.ok ? reading.file.recipes.map(({ name }) => name).sort() : reading.refusals;
};

describe('a folder that gets a copy by itself', () => {
  test('has a first copy at once, which says so, and another some seconds after every save', async () => {
    const { store, folder, door, make } = await withFolder();
    make('Snow');
    await letRun(300);
    await folder.pick();
    expect(namesIn(door.newest)).toEqual(['Snow']);
    expect(store.getState().folder).toEqual({
      name: 'Boxes',
      lastAt: '2026-11-26T12:00:00.300Z',
      lastFile: expect.stringMatching(TODAY) as string,
      rows: 1,
      trouble: null,
    });
    expect(store.getState().backup).toMatchObject({
      savesSince: 0,
      where: { how: 'folder', name: 'Boxes' },
    });

    make('Rain');
    await letRun(FOLDER_WAIT_MS - 1000);
    expect(namesIn(door.newest)).toEqual(['Snow']);
    await letRun(2000);
    expect(namesIn(door.newest)).toEqual(['Rain', 'Snow']);
    // Noting the copy is no reason for another.
    await letRun(10 * FOLDER_WAIT_MS);
    expect(door.written).toHaveLength(2);
  });

  test('keeps the copy of the day before, and never writes an empty shelf over anything', async () => {
    const { store, folder, door, make } = await withFolder();
    const made = make('Snow');
    await folder.pick();
    await letRun(DAY_MS);
    make('Rain');
    await letRun(FOLDER_WAIT_MS + 1000);
    expect([...door.files.keys()].map((name) => name.slice(0, 27))).toEqual([
      'crease-and-count-2026-11-26',
      'crease-and-count-2026-11-27',
    ]);
    expect([...door.files.values()].map(namesIn)).toEqual([['Snow'], ['Rain', 'Snow']]);
    for (const id of store.getState().rows.recipes.keys()) store.getState().remove({ table: 'recipes', id });
    expect(made.ok).toBe(true);
    await letRun(FOLDER_WAIT_MS + 1000);
    expect(namesIn(door.newest)).toEqual(['Rain', 'Snow']);
  });

  test('is known again at the next visit; what was saved since goes into it', async () => {
    const { world, folder, door, make } = await withFolder();
    make('Snow');
    await folder.pick();
    make('Rain');
    await letRun(300);
    world.kill('a');
    const next = await withFolder(door, world, 'b');
    await letRun(FOLDER_WAIT_MS + 1000);
    expect(next.store.getState().folder).toMatchObject({
      name: 'Boxes',
      lastFile: expect.stringMatching(TODAY) as string,
      trouble: null,
    });
    expect(namesIn(door.newest)).toEqual(['Rain', 'Snow']);
  });

  test('that must be allowed again says so, is never asked about by itself, and goes on when allowed', async () => {
    const { world, folder, door, make } = await withFolder();
    make('Snow');
    await folder.pick();
    await letRun(300);
    world.kill('a');
    door.allowed = false;
    const asked = door.asked;
    const next = await withFolder(door, world, 'b');
    next.make('Rain');
    await letRun(FOLDER_WAIT_MS + 1000);
    expect(next.store.getState().folder).toMatchObject({ trouble: 'forbidden' });
    expect(door.asked).toBe(asked);
    expect(namesIn(door.newest)).toEqual(['Snow']);

    door.answer = false;
    await next.folder.allow();
    expect(next.store.getState().folder).toMatchObject({ trouble: 'forbidden' });
    door.answer = true;
    await next.folder.allow();
    expect(next.store.getState().folder).toMatchObject({ trouble: null });
    expect(namesIn(door.newest)).toEqual(['Rain', 'Snow']);
  });

  test.each(['gone', 'full', 'failed'] as const)(
    'that is %s says so, is not called a backup, and is tried again',
    async (trouble) => {
      const { store, folder, door, make } = await withFolder();
      make('Snow');
      await letRun(300);
      door.trouble = trouble;
      await folder.pick();
      expect(store.getState().folder).toMatchObject({ trouble, lastAt: null });
      expect(store.getState().backup.at).toBeNull();
      door.trouble = null;
      await letRun(400_000);
      expect(store.getState().folder).toMatchObject({
        trouble: null,
        lastFile: expect.stringMatching(TODAY) as string,
      });
    },
  );

  test('has each copy under a name of its own, the last five and the last of each of ten days, and nothing else of hers is touched', async () => {
    const { door, folder, make } = await withFolder();
    door.files.set('my notes.txt', 'mine');
    make('Snow');
    await folder.pick();
    for (let day = 0; day < 12; day++) {
      for (let hour = 0; hour < 3; hour++) {
        make(`Box ${day} ${hour}`);
        await letRun(3_600_000);
      }
      await letRun(DAY_MS - 3 * 3_600_000);
    }
    const names = [...door.files.keys()].filter((name) => name.startsWith('crease')).sort();
    const days = names.map((name) => name.slice(17, 27));
    expect(new Set(days).size).toBe(10);
    expect(names).toHaveLength(13);
    expect(namesIn(door.newest)).toHaveLength(37);
    expect(door.files.get('my notes.txt')).toBe('mine');
    expect(new Set(door.written).size).toBe(door.written.length);
  });

  test('that keeps less of a file than was written is not called a backup', async () => {
    const { store, folder, door, make } = await withFolder();
    make('Snow');
    door.cuts = true;
    await folder.pick();
    expect(store.getState().folder).toMatchObject({ trouble: 'failed', lastAt: null });
    expect(store.getState().backup.at).toBeNull();
    expect(door.files.size).toBe(0);
  });

  test('gets no copy with far fewer rows than the last before she said so', async () => {
    const { store, folder, door, make } = await withFolder();
    const made = Array.from({ length: 10 }, (_, n) => make(`Box ${n}`));
    await folder.pick();
    for (const one of made.slice(0, 3))
      store.getState().remove({ table: 'recipes', id: one.ok ? one.id : '' });
    await letRun(FOLDER_WAIT_MS + 1000);
    expect(store.getState().folder).toMatchObject({ trouble: 'fewer' });
    expect(namesIn(door.newest)).toHaveLength(10);
    await folder.writeNow(true);
    expect(store.getState().folder).toMatchObject({ trouble: null, rows: 7 });
    expect(namesIn(door.newest)).toHaveLength(7);
  });

  test('of two tabs, one of which lags behind a restore, only ever gets whole copies', async (context) => {
    const world = new World();
    const door = new FolderDouble();
    let before: Promise<unknown> = Promise.resolve();
    const alone = (_name: string, work: () => Promise<void>) => {
      const mine = before.then(work);
      before = mine;
      return mine;
    };
    const ports = { folderDoor: () => Promise.resolve(door), alone };
    const one = await openTab(world, 'one', undefined, ports);
    one.getState().createRecipe({ name: 'Snow', styleId: 'tray' });
    await (await one.getState().keeping()).folder.pick();
    await letRun(600);
    const deaf = (storage: WorkbookStorage) => ({ ...storage, watch: () => () => undefined });
    const late = await openTab(world, 'late', deaf, ports);
    await letRun(600);
    for (let n = 0; n < 300; n++) one.getState().createRecipe({ name: `Box ${n}`, styleId: 'tray' });
    await letRun(600);
    let short = 0;
    for (let round = 0; round < 5; round++) {
      late.getState().edit('recipes', 'one-1', 'Notes', (row) => ({ ...row, notes: `${round}` }));
      await letRun(FOLDER_WAIT_MS + 1000);
      if ((namesIn(door.newest) as readonly unknown[]).length !== 301) short++;
    }
    expect(new Set(door.written).size).toBe(door.written.length);
    recordFault(context, {
      fault: 'a folder copy of a tab that lags behind',
      tries: 5,
      lost: short,
      goal: 0,
    });
  });

  test('is let go of for good, with what lies there', async () => {
    const { world, store, folder, door, make } = await withFolder();
    make('Snow');
    await folder.pick();
    await folder.forget();
    make('Rain');
    await letRun(10 * FOLDER_WAIT_MS);
    expect(store.getState().folder).toBeNull();
    expect(namesIn(door.newest)).toEqual(['Snow']);
    const next = await withFolder(door, world, 'b');
    await letRun(0);
    expect(next.store.getState().folder).toBeNull();
  });

  test('is not written to while rows are missing', async () => {
    const { world, store, folder, door, make } = await withFolder();
    make('Snow');
    const rain = make('Rain');
    await folder.pick();
    await letRun(300);
    world.kill('a');
    world.disk.contents.recipes.delete(rain.ok ? rain.id : '');
    const next = await withFolder(door, world, 'b');
    expect(next.store.getState().phase).toMatchObject({ phase: 'lossFound' });
    await next.folder.writeNow();
    expect(namesIn(door.newest)).toEqual(['Rain', 'Snow']);
    expect(store.getState().rows.recipes.size).toBe(2);
  });

  test('is forgotten when everything is erased', async () => {
    const { store, folder, door, make } = await withFolder();
    make('Snow');
    await folder.pick();
    await store.getState().eraseEverything();
    make('Fog');
    await letRun(10 * FOLDER_WAIT_MS);
    expect(store.getState().folder).toBeNull();
    expect(namesIn(door.newest)).toEqual(['Snow']);
  });
});

test('where the browser has no such door, nothing is offered and nothing breaks', async () => {
  const { store, folder, make } = await withFolder(null);
  make('Snow');
  expect(await folder.isThere()).toBe(false);
  await folder.pick();
  await folder.writeNow();
  expect(store.getState().folder).toBeNull();
});

test('closing the dialog of the browser picks nothing', async () => {
  const door = new FolderDouble();
  door.picks = false;
  const { store, folder } = await withFolder(door);
  await folder.pick();
  expect(store.getState().folder).toBeNull();
});
