import { expect, test } from 'vitest';
import * as Y from 'yjs';
import type { FavorEvent, Recipe } from '../../shared/workbook';
import { addCount, countAt } from '../../src/core/plan';
import { keysOf, newShelf, readLink, writeLink } from '../../src/exchange/keys';
import { SealedRows } from '../../src/exchange/sealed-rows';

const AT = '2026-01-17T09:00:00.000Z';
const recipe = {
  id: 'snow',
  rev: 3,
  createdAt: AT,
  changedAt: AT,
  name: 'Snow tray',
  sizesMm: { width: 100, depth: 80 },
  options: {},
} as unknown as Recipe;
const event = { id: 'fair', rev: 1, createdAt: AT, changedAt: AT, name: 'Fair' } as unknown as FavorEvent;

/** Carries everything both have to both, as the server does. */
async function meet(...all: readonly SealedRows[]): Promise<void> {
  for (const one of all) await one.settled();
  for (const to of all)
    for (const from of all)
      if (to !== from) Y.applyUpdate(to.doc, Y.encodeStateAsUpdate(from.doc, Y.encodeStateVector(to.doc)));
  for (const one of all) await one.settled();
}

async function pair(): Promise<readonly [SealedRows, SealedRows]> {
  const keys = await keysOf(newShelf());
  return [new SealedRows(keys, 'd-a', null), new SealedRows(keys, 'd-b', null)];
}

test('fields that two devices change at one moment both stand on both', async () => {
  const [a, b] = await pair();
  a.tell([{ table: 'recipes', id: 'snow', do: 'add', row: recipe }]);
  await meet(a, b);
  expect(b.all()).toEqual([{ table: 'recipes', id: 'snow', row: { ...recipe, rev: 0 } }]);
  const edit = (on: SealedRows, name: string, after: number) =>
    on.tell([
      { table: 'recipes', id: 'snow', do: 'edit', fields: [{ at: ['sizesMm', name], before: 0, after }] },
    ]);
  edit(a, 'width', 71);
  edit(b, 'depth', 44);
  await meet(a, b);
  for (const on of [a, b])
    expect(on.now({ table: 'recipes', id: 'snow' })?.row).toMatchObject({
      sizesMm: { width: 71, depth: 44 },
    });
  a.tell([{ table: 'recipes', id: 'snow', do: 'remove', row: recipe }]);
  await meet(a, b);
  expect([a.all(), b.all()]).toEqual([[], []]);
});

test('two phones count to 1,000 at once and apart: 1,000 of 1,000', async () => {
  const [a, b] = await pair();
  a.tell([{ table: 'events', id: 'fair', do: 'add', row: event }]);
  await meet(a, b);
  const runOf = (on: SealedRows) =>
    (on.now({ table: 'events', id: 'fair' })?.row as FavorEvent | undefined)?.run;
  for (let tap = 0; tap < 1000; tap++) {
    const [on, device] = tap % 2 === 0 ? [a, 'd-a'] : [b, 'd-b'];
    const before = runOf(on);
    const after = addCount(before, 'line/fold', { done: 1 }, device);
    const change = before
      ? { at: ['run', 'stages'] as const, before: before.stages, after: after.stages }
      : { at: ['run'] as const, before, after };
    on.tell([{ table: 'events', id: 'fair', do: 'edit', fields: [change] }]);
    // Now and then they hear of one another; in between both count on.
    if (tap % 97 === 0) await meet(a, b);
  }
  await meet(a, b);
  for (const on of [a, b]) expect(countAt(runOf(on), 'line/fold').done).toBe(1000);
});

test('what leaves the device can be read by nobody without the key, and only in its own shelf', async () => {
  const link = newShelf();
  const a = new SealedRows(await keysOf(link), 'd-a', null);
  a.tell([{ table: 'recipes', id: 'snow', do: 'add', row: recipe }]);
  await a.settled();
  const bytes = Buffer.from(Y.encodeStateAsUpdate(a.doc));
  for (const word of ['Snow tray', 'recipes', 'snow', 'width', link.secret])
    expect(bytes.includes(word)).toBe(false);
  for (const other of [newShelf(), { ...link, name: newShelf().name }]) {
    const stranger = new SealedRows(await keysOf(other), 'd-x', bytes);
    await stranger.settled();
    expect(stranger.all()).toEqual([]);
  }
});

test('a link is read back whole, and refused when a letter is missing', () => {
  const link = newShelf();
  const address = `https://boxes.example.org/#/${writeLink(link)}`;
  expect(readLink(address)).toEqual(link);
  expect(readLink(address.slice(0, -1))).toBeNull();
  expect(readLink('https://boxes.example.org/#/help')).toBeNull();
});
