import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { ownStyleId } from '../../src/core/style-file/own-style';
import { openSharing } from '../../src/exchange/open-sharing';
import type { SharingDesk } from '../../src/state/sharing';
import type { WorkbookStore } from '../../src/state/workbook-store';
import { place, ServedShare, until } from '../share-server/served-share';
import { openTab, World } from '../state/open-tab';
import { socketsOfPage } from './page-sockets';

const here = place();
let server: ServedShare;
let putBack: () => void = () => undefined;
beforeAll(async () => {
  server = await ServedShare.start(here.env);
  putBack = socketsOfPage(server.origin);
}, 60_000);
afterAll(async () => {
  putBack();
  await server.stop('SIGKILL');
  here.end();
});

/** Whoever stands here tries the server again only when it is let go. */
let held: { readonly name: string; readonly until: Promise<void> } | null = null;

interface Device {
  readonly store: WorkbookStore;
  readonly desk: SharingDesk;
}

/** A device with a disk of its own, joined to the real server. */
async function device(name: string): Promise<Device> {
  const store = await openTab(new World(), name, undefined, {
    sharing: {
      isShared: () => false,
      open: (door) =>
        openSharing(door, `${name}-${Math.random()}`, {
          address: `${server.origin.replace('http', 'ws')}/exchange`,
          now: () => Date.now(),
          alone: (work) => work(),
          wait: async (milliseconds) => {
            if (held?.name === name) await held.until;
            await new Promise((resolve) => setTimeout(resolve, Math.min(200, milliseconds)));
          },
          remember: () => undefined,
        }),
    },
  });
  const desk = await store.getState().sharingDesk();
  if (!desk) throw new Error('no desk');
  return { store, desk };
}

const recipe = ({ store }: Device, id: string) => store.getState().rows.recipes.get(id);
const edit = ({ store }: Device, id: string, change: object) =>
  store.getState().edit('recipes', id, 'Change', (row) => ({ ...row, ...change }));
const line = ({ store }: Device) => store.getState().sharing?.line;

/** A style of the maker’s own, as a box keeps it. */
function styled(name: string) {
  const file = readFileSync('tests/fixtures/own-styles/deep-tray.json', 'utf8');
  const ownStyle = JSON.stringify(JSON.parse(file.replace('"Deep tray"', JSON.stringify(name))));
  return { styleId: ownStyleId(ownStyle), ownStyle };
}

/** A shelf that begins on one device, without asking the address first, which only a page can. */
async function begin(one: Device, name: string): Promise<string> {
  const secret = Buffer.from(crypto.getRandomValues(new Uint8Array(32))).toString('base64url');
  const shelf = Buffer.from(crypto.getRandomValues(new Uint8Array(16))).toString('base64url');
  const link = `join/${shelf}.${secret}`;
  await one.desk.join(link, name);
  await until(() => line(one) === 'joined', 'joined');
  return link;
}

test('pair, work apart while the server is dead, meet again: both fields, and both versions of a third', async () => {
  const [a, b] = [await device('a'), await device('b')];
  const made = a.store.getState().createRecipe({ name: 'Snow tray', styleId: 'tray' });
  if (!made.ok) throw new Error('refused');
  const { id } = made;
  const link = await begin(a, 'Laptop');
  await b.desk.join(link, 'Phone');
  await until(() => recipe(b, id)?.name === 'Snow tray', 'came over');
  await until(
    () => a.store.getState().sharing?.devices.some(({ isThis, hasAll }) => !isThis && hasAll) ?? false,
    'received',
  );
  // What was agreed is on the disk of both.
  await new Promise((resolve) => setTimeout(resolve, 1500));

  let letGo: () => void = () => undefined;
  const backAgain = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  held = { name: 'b', until: backAgain };
  const { port } = server;
  await server.stop('SIGKILL');
  await until(() => line(a) !== 'joined' && line(b) !== 'joined', 'offline is said');
  edit(a, id, { notes: 'from the laptop', name: 'Frost tray', ...styled('Frost style') });
  expect(edit(b, id, { name: 'Ice tray', caliperUm: 310, ...styled('Ice style') })).toEqual([]);
  server = await ServedShare.start({ ...here.env, SHARE_PORT: String(port) });
  await until(() => line(a) === 'joined' && a.store.getState().sharing?.unsent === 0, 'sent');
  letGo();
  const names = ({ store }: Device) =>
    [...store.getState().rows.recipes.values()].map(({ name }) => name).sort();
  await until(() => names(a).length === 2 && names(b).length === 2, 'both versions on both');
  expect(names(a)).toEqual(['Frost tray', 'Ice tray']);
  expect(names(b)).toEqual(names(a));
  for (const on of [a, b]) {
    await until(
      () => recipe(on, id)?.notes === 'from the laptop' && recipe(on, id)?.caliperUm === 310,
      'both fields',
    );
  }

  // Each version brings the style that it was given, whole: its id is made of its text.
  for (const on of [a, b])
    for (const { name, styleId, ownStyle } of on.store.getState().rows.recipes.values())
      expect([name, { styleId, ownStyle }]).toEqual([name, styled(name.replace('tray', 'style'))]);

  // Taken off the list, the phone keeps what it had and hears of nothing new.
  const phone = a.store.getState().sharing?.devices.find(({ isThis }) => !isThis);
  expect(phone?.name).toBe('Phone');
  expect(await a.desk.remove(phone?.id ?? '')).toBe(true);
  await until(() => line(b) === 'removed', 'removed');
  expect(names(b)).toEqual(['Frost tray', 'Ice tray']);
  await until(() => line(a) === 'joined', 'joined again');
  expect(names(a)).toEqual(['Frost tray', 'Ice tray']);
  await a.desk.leave();
}, 90_000);

test('a device that is taken off a shelf of one thing while it is connected keeps that thing', async () => {
  const [a, b] = [await device('a'), await device('b')];
  const made = a.store.getState().createRecipe({ name: 'Snow tray', styleId: 'tray' });
  const id = made.ok ? made.id : '';
  await b.desk.join(await begin(a, 'Laptop'), 'Phone');
  await until(() => recipe(b, id)?.name === 'Snow tray', 'came over');
  const phoneOf = () => a.store.getState().sharing?.devices.find(({ isThis }) => !isThis);
  await until(() => phoneOf() !== undefined, 'listed');
  expect(await a.desk.remove(phoneOf()?.id ?? '')).toBe(true);
  await until(() => line(b) === 'removed' && line(a) === 'joined', 'removed');
  for (const on of [a, b]) expect(recipe(on, id)?.name).toBe('Snow tray');
  await a.desk.leave();
}, 60_000);

test('a device that was away for two months comes back without loss, and asks before more than a fifth of its shelf goes', async () => {
  const [a, b] = [await device('a'), await device('b')];
  const make = (on: Device, name: string) => {
    const made = on.store.getState().createRecipe({ name, styleId: 'tray' });
    if (!made.ok) throw new Error('refused');
    return made.id;
  };
  const ids = Array.from({ length: 20 }, (_, n) => make(a, `Tray ${n}`));
  await b.desk.join(await begin(a, 'Laptop'), 'Phone');
  await until(() => ids.every((id) => recipe(b, id)), 'came over');
  await until(
    () => a.store.getState().sharing?.devices.some(({ isThis, hasAll }) => !isThis && hasAll) ?? false,
    'received',
  );
  await new Promise((resolve) => setTimeout(resolve, 1500));

  let letGo: () => void = () => undefined;
  held = {
    name: 'b',
    until: new Promise<void>((resolve) => {
      letGo = resolve;
    }),
  };
  const { port } = server;
  await server.stop('SIGKILL');
  await until(() => line(b) !== 'joined', 'b is away');
  server = await ServedShare.start({ ...here.env, SHARE_PORT: String(port) });
  await until(() => line(a) === 'joined', 'a is back');

  // Two months of work on both, 300 changes on one side, whose server folds them and starts anew in between.
  const clock = vi.spyOn(Date, 'now').mockReturnValue(Date.now() + 60 * 86_400_000);
  for (let round = 0; round < 15; round++)
    for (const id of ids) edit(a, id, { notes: `round ${round}`, caliperUm: 200 + round });
  const late = make(a, 'Made meanwhile');
  await until(() => a.store.getState().sharing?.unsent === 0, 'sent');
  clock.mockRestore();
  expect(await server.stop('SIGTERM')).toBe(0);
  server = await ServedShare.start({ ...here.env, SHARE_PORT: String(port) });
  await until(() => line(a) === 'joined', 'a is back again');
  for (const id of ids) edit(b, id, { name: `Renamed ${id}` });
  const own = make(b, 'Made on the phone');
  letGo();
  const both = (on: Device) =>
    ids.every((id) => {
      const row = recipe(on, id);
      return row?.name === `Renamed ${id}` && row.notes === 'round 14' && row.caliperUm === 214;
    });
  for (const on of [a, b]) {
    await until(() => both(on), 'both sides of every row');
    await until(() => recipe(on, late) !== undefined && recipe(on, own) !== undefined, 'what was made apart');
    expect(on.store.getState().rows.recipes.size).toBe(22);
  }
  await until(() => line(b) === 'joined' && b.store.getState().sharing?.unsent === 0, 'settled');
  await new Promise((resolve) => setTimeout(resolve, 1500));

  // Away once more; half of the shelf is deleted on the other.
  held = {
    name: 'b',
    until: new Promise<void>((resolve) => {
      letGo = resolve;
    }),
  };
  await server.stop('SIGKILL');
  await until(() => line(b) !== 'joined', 'b is away');
  server = await ServedShare.start({ ...here.env, SHARE_PORT: String(port) });
  await until(() => line(a) === 'joined', 'a is back');
  for (const id of ids.slice(0, 11)) a.store.getState().remove({ table: 'recipes', id });
  // Told when they are kept.
  await until(() => a.store.getState().save.state === 'saved', 'kept');
  await new Promise((resolve) => setTimeout(resolve, 300));
  await until(() => a.store.getState().sharing?.unsent === 0, 'sent');
  letGo();
  await until(() => line(b) === 'asks', 'b asks');
  expect(b.store.getState().sharing?.deletions).toBe(11);
  expect(b.store.getState().rows.recipes.size).toBe(22);
  b.desk.decide(false);
  await until(() => a.store.getState().rows.recipes.size === 22, 'everything is on both again');
  expect(b.store.getState().rows.recipes.size).toBe(22);
  await a.desk.leave();
  await b.desk.leave();
}, 120_000);
