import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { textOfAside, textOfSalvage } from '../../src/state/keeping/as-it-is';
import { earlierRows } from '../../src/state/keeping/earlier-states';
import { recipeRow } from '../storage/sample-rows';
import { letRun, openTab, World } from './open-tab';

beforeEach(() => void vi.useFakeTimers({ now: Date.UTC(2026, 10, 26, 12) }));
afterEach(() => void vi.useRealTimers());

/** A tab that found one box it cannot read, among two. */
async function withBadBox() {
  const world = new World();
  const first = await openTab(world, 'first');
  for (const name of ['Snow', 'Rain']) first.getState().createRecipe({ name, styleId: 'tray' });
  await letRun(300);
  const id = [...first.getState().rows.recipes.keys()][0] ?? '';
  const good = world.disk.contents.recipes.get(id) as object;
  const bad = { ...good, caliperUm: 'thick' };
  world.disk.contents.recipes.set(id, bad);
  const store = await openTab(world, 'next');
  const keeping = await store.getState().keeping();
  const aside = store.getState().quarantined[0];
  if (!aside) throw new Error('nothing was set aside');
  return { world, store, keeping, aside, id, good, bad };
}

describe('a box that was set aside', () => {
  test('is still not read when tried again, and lies where it lay', async () => {
    const { world, store, keeping, aside, id, bad } = await withBadBox();
    expect(await keeping.tryAgain(aside)).toBe('still-not');
    expect(store.getState().quarantined).toEqual([aside]);
    expect(world.disk.contents.recipes.get(id)).toEqual(bad);
  });

  test('that can be read by now comes onto the shelf, and is edited and kept like any other', async () => {
    const { world, store, keeping, aside, id, good } = await withBadBox();
    world.disk.contents.recipes.set(id, good);
    expect(await keeping.tryAgain(aside)).toBe('read');
    expect(store.getState().quarantined).toEqual([]);
    store.getState().edit('recipes', id, 'Name', (row) => ({ ...row, name: 'Sleet' }));
    await letRun(300);
    expect(store.getState()).toMatchObject({ save: { state: 'saved' }, notices: [] });
    expect(world.disk.contents.recipes.get(id)).toMatchObject({ name: 'Sleet', rev: 2 });
  });

  test('is put into the bin as it is and taken out again as it is', async () => {
    const { world, store, keeping, aside, id, bad } = await withBadBox();
    expect(await keeping.binAside(aside)).toBe(true);
    expect(store.getState().quarantined).toEqual([]);
    expect(world.disk.contents.recipes.has(id)).toBe(false);
    const next = await openTab(world, 'third');
    expect(next.getState()).toMatchObject({ phase: { phase: 'ready' }, quarantined: [] });
    const bin = await keeping.listBinAside();
    const binned = bin.ok ? bin.value[0] : undefined;
    if (!binned) throw new Error('not in the bin');
    expect(binned.raw).toEqual(bad);
    expect(await keeping.unbinAside(binned)).toBe(true);
    expect(store.getState().quarantined).toMatchObject([
      { id, raw: bad, refusals: [{ code: 'wrong-type' }] },
    ]);
    expect(world.disk.contents.recipes.get(id)).toEqual(bad);
  });

  test('is written to a file with all it holds', async () => {
    const { aside, bad } = await withBadBox();
    const { rows } = JSON.parse(textOfAside([aside])) as { rows: { row: unknown; why: unknown[] }[] };
    expect(rows.map(({ row }) => row)).toEqual([bad]);
    expect(rows[0]?.why).toHaveLength(1);
  });
});

test('what no JSON holds does not keep the rest from being written to a file', () => {
  const round: Record<string, unknown> = { name: 'round' };
  round['self'] = round;
  const twice = { name: 'twice' };
  const text = textOfSalvage({
    recipes: [round, { many: 12n }, new Map([['a', 1]]), { first: twice, second: twice }],
  });
  expect(JSON.parse(text)).toEqual({
    holds: 'a database as it was found',
    stores: {
      recipes: [
        { name: 'round', self: '(not written out)' },
        { many: '12' },
        [['a', 1]],
        { first: twice, second: twice },
      ],
    },
  });
  let deep: object = {};
  for (let level = 0; level < 20_000; level++) deep = { deep };
  expect(textOfSalvage({ recipes: [deep] })).toContain('(not written out)');
});

describe('an earlier state', () => {
  async function withEarlier() {
    const world = new World();
    const store = await openTab(world, 'a');
    const made = store.getState().createRecipe({ name: 'Snow', styleId: 'tray' });
    const id = made.ok ? made.id : '';
    await letRun(300);
    for (const name of ['Sleet', 'Hail']) {
      await letRun(600_000);
      store.getState().edit('recipes', id, 'Name', (row) => ({ ...row, name, notes: name }));
      await letRun(300);
    }
    const keeping = await store.getState().keeping();
    const listed = await keeping.listEarlier();
    if (!listed.ok) throw new Error('not listed');
    return { world, store, keeping, id, snapshots: listed.value };
  }

  test('is listed by row, newest first, with what differs from today', async () => {
    const { store, id, snapshots } = await withEarlier();
    const rows = earlierRows(snapshots, store.getState().rows);
    expect(rows).toMatchObject([{ table: 'recipes', id, name: 'Hail', onShelf: true }]);
    expect(rows[0]?.states.map(({ row, differs }) => [row?.name, differs])).toEqual([
      ['Sleet', ['name', 'notes']],
      ['Snow', ['name', 'notes']],
    ]);
  });

  test('is brought back beside the present, which stays; one step takes it off again', async () => {
    const { store, keeping, id, snapshots } = await withEarlier();
    const [newest] = snapshots;
    if (!newest) throw new Error('none');
    expect(keeping.bringBeside(newest, 'Sleet, as it was')).toEqual([]);
    const names = () => [...store.getState().rows.recipes.values()].map(({ name }) => name);
    expect(names()).toEqual(['Hail', 'Sleet, as it was']);
    expect(store.getState().rows.recipes.get(id)?.name).toBe('Hail');
    store.getState().undo();
    expect(names()).toEqual(['Hail']);
  });

  test('that cannot be read says so and brings nothing back', async () => {
    const { world, store, keeping } = await withEarlier();
    const bad = { ...recipeRow('x'), caliperUm: 'thick' };
    const snapshot = {
      id: 'recipes/x@1',
      of: 'recipes/x',
      table: 'recipes',
      rev: 1,
      takenAt: '2027-01-01T00:00:00.000Z',
      row: bad,
    } as const;
    world.disk.contents.snapshots.set(snapshot.id, snapshot);
    const listed = await keeping.listEarlier();
    const rows = earlierRows(listed.ok ? listed.value : [], store.getState().rows);
    expect(rows[0]).toMatchObject({ name: 'Recipe x', onShelf: false, states: [{ row: null }] });
    const before = store.getState().rows;
    expect(keeping.bringBeside(snapshot, 'Again')).toMatchObject([{ code: 'wrong-type', path: 'caliperUm' }]);
    expect(store.getState().rows).toBe(before);
  });
});

test('what the browser says of its storage is handed on; where it says nothing, so is that', async () => {
  const facts = { persisted: true, usedBytes: 5, roomBytes: 9 };
  const store = await openTab(new World(), 'a', undefined, { storageFacts: () => Promise.resolve(facts) });
  expect(await (await store.getState().keeping()).facts()).toEqual(facts);
  const silent = await openTab(new World());
  expect(await (await silent.getState().keeping()).facts()).toEqual({
    persisted: null,
    usedBytes: null,
    roomBytes: null,
  });
});
