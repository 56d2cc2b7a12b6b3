import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { readWorkbook } from '../../shared/read-workbook';
import { FOLDER_WAIT_MS } from '../../src/state/keeping/folder-backup';
import { FolderDouble } from './folder-double';
import { letRun, openTab, World } from './open-tab';

beforeEach(() => void vi.useFakeTimers({ now: Date.UTC(2026, 10, 26, 12) }));
afterEach(() => void vi.useRealTimers());

const DAY_MS = 86_400_000;
const TODAY = 'crease-and-count-2026-11-26.json';

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
    expect(namesIn(door.files.get(TODAY))).toEqual(['Snow']);
    expect(store.getState().folder).toEqual({
      name: 'Boxes',
      lastAt: '2026-11-26T12:00:00.300Z',
      lastFile: TODAY,
      trouble: null,
    });
    expect(store.getState().backup).toMatchObject({
      savesSince: 0,
      where: { how: 'folder', name: 'Boxes' },
    });

    make('Rain');
    await letRun(FOLDER_WAIT_MS - 1000);
    expect(namesIn(door.files.get(TODAY))).toEqual(['Snow']);
    await letRun(2000);
    expect(namesIn(door.files.get(TODAY))).toEqual(['Rain', 'Snow']);
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
    expect([...door.files.keys()]).toEqual([TODAY, 'crease-and-count-2026-11-27.json']);
    expect(namesIn(door.files.get(TODAY))).toEqual(['Snow']);
    for (const id of store.getState().rows.recipes.keys()) store.getState().remove({ table: 'recipes', id });
    expect(made.ok).toBe(true);
    await letRun(FOLDER_WAIT_MS + 1000);
    expect(namesIn(door.files.get('crease-and-count-2026-11-27.json'))).toEqual(['Rain', 'Snow']);
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
    expect(next.store.getState().folder).toMatchObject({ name: 'Boxes', lastFile: TODAY, trouble: null });
    expect(namesIn(door.files.get(TODAY))).toEqual(['Rain', 'Snow']);
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
    expect(namesIn(door.files.get(TODAY))).toEqual(['Snow']);

    door.answer = false;
    await next.folder.allow();
    expect(next.store.getState().folder).toMatchObject({ trouble: 'forbidden' });
    door.answer = true;
    await next.folder.allow();
    expect(next.store.getState().folder).toMatchObject({ trouble: null });
    expect(namesIn(door.files.get(TODAY))).toEqual(['Rain', 'Snow']);
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
      expect(store.getState().folder).toMatchObject({ trouble: null, lastFile: TODAY });
    },
  );

  test('is let go of for good, with what lies there', async () => {
    const { world, store, folder, door, make } = await withFolder();
    make('Snow');
    await folder.pick();
    await folder.forget();
    make('Rain');
    await letRun(10 * FOLDER_WAIT_MS);
    expect(store.getState().folder).toBeNull();
    expect(namesIn(door.files.get(TODAY))).toEqual(['Snow']);
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
    expect(namesIn(door.files.get(TODAY))).toEqual(['Rain', 'Snow']);
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
    expect(namesIn(door.files.get(TODAY))).toEqual(['Snow']);
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
