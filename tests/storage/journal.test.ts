import { describe, expect, test } from 'vitest';
import { browserJournal } from '../../src/storage/journal';
import type { Draft } from '../../src/storage/port';
import { LocalMap } from './local-map';
import { recipeRow } from './sample-rows';

const draft = (notes: string): Draft => ({
  changes: [{ table: 'recipes', id: 'a', row: recipeRow('a', { notes }), deleted: false, basedOn: 3 }],
  sent: [],
  at: '2026-01-17T09:00:00.000Z',
});

/** Locks as browsers have them, of which a tab lets go when it is closed. */
class Locks {
  readonly held = new Set<string>();
  request = async (name: string, ...rest: unknown[]): Promise<unknown> => {
    const act = rest.at(-1) as (lock: object | null) => Promise<unknown>;
    if (this.held.has(name)) return act(null);
    this.held.add(name);
    void Promise.resolve(act({ name })).then(() => this.held.delete(name));
    return rest.length > 1 ? act({ name }) : undefined;
  };
}
const asLocks = (locks: Locks) => locks as unknown as LockManager;

const leftTo = async (store: LocalMap, locks: Locks | null, tab = 'new') =>
  (await browserJournal(store, { locks: locks && asLocks(locks), tab }).leftBehind()).map(
    ({ draft: found }) => found,
  );

describe('the journal of a tab', () => {
  test('is left to the next one when the tab is gone, and not before', async () => {
    const store = new LocalMap();
    const locks = new Locks();
    const journal = browserJournal(store, { locks: asLocks(locks), tab: 'old' });
    journal.write(draft('Snow'));
    journal.write(draft('Snow tray'));
    expect(await leftTo(store, locks)).toEqual([]);
    locks.held.clear();
    expect(await leftTo(store, locks)).toEqual([draft('Snow tray')]);
  });

  test('is empty once everything is kept', async () => {
    const store = new LocalMap();
    const journal = browserJournal(store, { locks: null, tab: 'old' });
    journal.write(draft('Snow'));
    journal.clear();
    expect(await leftTo(store, null)).toEqual([]);
    expect(store.length).toBe(0);
  });

  test('is handed over until it is dropped', async () => {
    const store = new LocalMap();
    browserJournal(store, { locks: null, tab: 'old' }).write(draft('Snow'));
    expect(await leftTo(store, null, 'one')).toHaveLength(1);
    const [entry] = await browserJournal(store, { locks: null, tab: 'two' }).leftBehind();
    entry?.drop();
    expect(await leftTo(store, null, 'three')).toEqual([]);
  });

  test('with no room says so, and keeps the keystroke before', async () => {
    const store = new LocalMap();
    const journal = browserJournal(store, { locks: null, tab: 'old' });
    expect(journal.write(draft('Snow'))).toBe(true);
    store.isFull = true;
    expect(journal.write(draft('Snow tray'))).toBe(false);
    expect(await leftTo(store, null)).toEqual([draft('Snow')]);
  });

  test.each([
    '',
    'null',
    '{',
    '[]',
    '{"at":"x","changes":[{}],"sent":[]}',
    '{"at":"x","changes":[],"sent":null}',
  ])('of scribble (%s) is passed over and left alone', async (scribble) => {
    const store = new LocalMap();
    store.setItem('crease-and-count.draft.old', scribble);
    expect(await leftTo(store, null)).toEqual([]);
    expect(store.length).toBe(1);
  });

  test('of somebody else who uses the same local storage is none of ours', async () => {
    const store = new LocalMap();
    store.setItem('another.draft.old', JSON.stringify(draft('Snow')));
    expect(await leftTo(store, null)).toEqual([]);
  });

  test('keeps nothing where the browser lets us write nowhere', async () => {
    const journal = browserJournal(null, { locks: null });
    expect(journal.write(draft('Snow'))).toBe(false);
    journal.clear();
    expect(await journal.leftBehind()).toEqual([]);
  });
});
