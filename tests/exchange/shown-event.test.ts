import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import * as Y from 'yjs';
import { readWorkbook } from '../../shared/read-workbook';
import type { FavorEvent } from '../../shared/workbook';
import { visitingWorkbook } from '../../src/app/visiting-workbook';
import { addCount, countAt } from '../../src/core/plan';
import {
  countingKeys,
  helpersOf,
  keysOf,
  readShown,
  type ShownLink,
  shownKeys,
  unseal,
} from '../../src/exchange/keys';
import { type MemoryOfVisits, memoryOfVisits, type Visited } from '../../src/exchange/memory-of-visits';
import { openSharing } from '../../src/exchange/open-sharing';
import { SealedRows } from '../../src/exchange/sealed-rows';
import type { SharingDesk } from '../../src/state/sharing';
import type { WorkbookStore } from '../../src/state/workbook-store';
import { device, newShelf, place, ServedShare, until } from '../share-server/served-share';
import { openTab, World } from '../state/open-tab';
import { socketsOfPage } from './page-sockets';

const demo = readFileSync('demo-data/seed-swap-supper.json', 'utf8');
const here = place();
let server: ServedShare;
let putBack: () => void = () => undefined;
beforeAll(async () => {
  server = await ServedShare.start(here.env);
  putBack = socketsOfPage(server.origin);
}, 60_000);
const closing: (() => void)[] = [];
afterAll(async () => {
  for (const close of closing) close();
  putBack();
  await server.stop('SIGKILL');
  here.end();
});

const wait = (milliseconds: number) =>
  new Promise<void>((resolve) => setTimeout(resolve, Math.min(100, milliseconds)));
const address = () => `${server.origin.replace('http', 'ws')}/exchange`;

/** A maker with the example on the shelf as their own, who shares it. */
async function maker(): Promise<{ store: WorkbookStore; desk: SharingDesk; event: () => FavorEvent }> {
  const store = await openTab(new World(), 'maker', undefined, {
    sharing: {
      isShared: () => false,
      open: (door) =>
        openSharing(door, `maker-${Math.random()}`, {
          address: address(),
          now: () => Date.now(),
          alone: (work) => work(),
          wait,
          remember: () => undefined,
        }),
    },
  });
  const reading = readWorkbook(demo);
  if (!reading.ok) throw new Error('the demo is refused');
  const { planImport, importPlanned } = store.getState();
  importPlanned(planImport(reading.file), 'Import');
  const desk = await store.getState().sharingDesk();
  if (!desk) throw new Error('no desk');
  const { name, write } = newShelf();
  await desk.join(`join/${name}.${write.slice(2)}`, 'Laptop');
  await until(() => store.getState().sharing?.line === 'joined', 'joined');
  closing.push(() => void desk.leave());
  return { store, desk, event: () => [...store.getState().rows.events.values()][0] as FavorEvent };
}

async function link(of: Awaited<ReturnType<typeof maker>>, kind: 'bench' | 'class'): Promise<ShownLink> {
  expect(await of.desk.showEvent(of.event().id, kind, 'in')).toBe(true);
  const found = () => of.store.getState().sharing?.shown.find((shown) => shown.kind === kind);
  await until(() => found()?.isShown ?? false, 'shown');
  const read = readShown(`https://boxes.example.org/#/${found()?.link}`);
  if (!read) throw new Error('no link');
  return read;
}

function helper(of: ShownLink, database: string, memory: MemoryOfVisits = memoryOfVisits(database)) {
  const opened = visitingWorkbook(of, {
    address: address(),
    memory,
    language: 'en-US',
    now: () => Date.now(),
    alone: (_, work) => work(),
    wait,
  });
  closing.push(opened.close);
  const { workbook } = opened;
  const event = () => [...workbook.getState().rows.events.values()][0];
  const sharing = () => workbook.getState().sharing;
  return {
    ...opened,
    event,
    sharing,
    /** As the page does it at a press. */
    tap: (stage: string, done: number) =>
      workbook.getState().edit('events', event()?.id ?? '', `${Math.random()}`, (row) => ({
        ...row,
        run: addCount(row.run, stage, { done }, sharing()?.device),
      })),
    received: () => sharing()?.unsent === 0 && sharing()?.devices.every(({ hasAll }) => hasAll) === true,
  };
}

test('two helpers count to 1,000 by a link, also while the server is dead and over a fresh page: 1,000 of 1,000', async () => {
  const hers = await maker();
  const bench = await link(hers, 'bench');
  const stage = `${hers.event().lines[0]?.id}/fold/a/0`;
  const one = helper(bench, 'phone-one');
  let two = helper(bench, 'phone-two');
  await until(() => one.event() !== undefined && two.event() !== undefined, 'shown to both');
  const tapBoth = (times: number) => {
    for (let tap = 0; tap < times; tap++) for (const on of [one, two]) on.tap(stage, 1);
  };
  tapBoth(200);
  await until(() => countAt(hers.event().run, stage).done === 400, 'the first 400');
  await until(() => one.received() && two.received(), 'said to be received');

  const { port } = server;
  await server.stop('SIGKILL');
  await until(() => one.sharing()?.line === 'offline', 'offline is said');
  tapBoth(200);
  await until(() => (two.sharing()?.unsent ?? 0) > 0 && !two.received(), 'not sent is said');
  // The phone's page is closed and opened again before the server is back.
  await new Promise((resolve) => setTimeout(resolve, 300));
  two.close();
  two = helper(bench, 'phone-two');
  await until(() => countAt(two.event()?.run, stage).done >= 400, 'kept on the phone');
  server = await ServedShare.start({ ...here.env, SHARE_PORT: String(port) });
  await until(() => two.sharing()?.line === 'joined' && one.sharing()?.line === 'joined', 'both back');
  tapBoth(100);
  await until(() => countAt(hers.event().run, stage).done === 1000, 'all 1,000');
  for (const on of [one, two]) {
    await until(() => countAt(on.event()?.run, stage).done === 1000, 'seen by the helpers as well');
    await until(on.received, 'received');
  }
  // The maker counts along, and takes one of their own back; the helpers see that too.
  hers.store.getState().edit('events', hers.event().id, 'Fold', (row) => ({
    ...row,
    run: addCount(row.run, stage, { done: 7 }, hers.store.getState().sharing?.device),
  }));
  await until(() => countAt(one.event()?.run, stage).done === 1007, 'the maker’s own');
  expect(
    new Set(
      hers
        .event()
        .run?.stages.filter(({ stage: at }) => at === stage)
        .map(({ by }) => by),
    ).size,
  ).toBe(3);

  const [shown] = hers.store.getState().sharing?.shown ?? [];
  expect(shown?.helpers).toBe(2);
  expect(await hers.desk.withdraw(shown?.id ?? '')).toBe(true);
  await until(() => one.sharing()?.line === 'removed' && two.sharing()?.line === 'removed', 'withdrawn');
  await until(() => hers.store.getState().sharing?.shown.length === 0, 'off the list');
  one.tap(stage, 50);
  await new Promise((resolve) => setTimeout(resolve, 500));
  expect(countAt(hers.event().run, stage).done).toBe(1007);
}, 240_000);

const SECRETS = [
  'Secret guest',
  'Secret notes of the event',
  'Secret notes of the box',
  'Secret tip',
  'Another box',
  // Amounts of money, and counts on hand.
  ...['91234', '92345', '93456', '94567', '95678', '96789'],
];

/** Lays everything that is nobody else's business into the rows that a link is made for, and one box beside them. */
function fillWithSecrets({ store, event }: Awaited<ReturnType<typeof maker>>): void {
  const { edit, rows, createRecipe } = store.getState();
  expect(createRecipe({ name: 'Another box', styleId: 'tray' }).ok).toBe(true);
  const { id, lines } = event();
  edit('events', id, 'Fill', (row) => ({
    ...row,
    notes: 'Secret notes of the event',
    lines: row.lines.map((line) => ({ ...line, byGuests: true, byTable: { tables: 5, guests: 8 } })),
    guests: [{ id: 'guest-1', name: 'Secret guest', table: '', needs: '', lineId: null }],
    shareGuests: true,
    asking: { hourlyMinor: 91_234, marginPercent: 10 },
    terms: {
      discounts: [],
      minimumMinor: 92_345,
      shippingMinor: 0,
      freeShippingFromMinor: null,
      taxHundredths: 0,
    },
    bought: [{ of: [...rows.papers.keys()][0] ?? '', packs: 93_456, received: false }],
  }));
  for (const { recipeId } of lines)
    edit('recipes', recipeId, 'Fill', (row) => ({
      ...row,
      notes: 'Secret notes of the box',
      handout: { tips: [{ id: 'tip-1', step: null, says: 'Secret tip' }], credits: '' },
    }));
  for (const { id: paper } of rows.papers.values())
    edit('papers', paper, 'Fill', (row) => ({
      ...row,
      packs: [{ sheets: 10, priceMinor: 94_567 }],
      onHandSheets: 95_678,
    }));
  for (const { id: supply } of rows.supplies.values())
    edit('supplies', supply, 'Fill', (row) =>
      'packs' in row
        ? { ...row, packs: [{ pieces: 10, priceMinor: 96_789 }] }
        : { ...row, priceMinor: 96_789 },
    );
}

/** Everything the server passes on by a link, opened with the link. */
async function roomOf(of: ShownLink): Promise<string> {
  const keys = await shownKeys(of);
  const reader = device(server.port, keys.name, keys.token);
  closing.push(reader.leave);
  await until(() => reader.provider.synced, 'read');
  const sealed = [...reader.doc.getMap<Uint8Array>('sealed').values()];
  return JSON.stringify(await Promise.all(sealed.map((value) => unseal(keys, value))));
}

test.each(['bench', 'class'] as const)(
  'the room of a %s link holds the event, and no price, stock, guest, note, tip or other box',
  async (kind) => {
    const hers = await maker();
    fillWithSecrets(hers);
    const { rows } = hers.store.getState();
    const shelf = JSON.stringify(Object.values(rows).map((table) => [...table.values()]));
    for (const secret of SECRETS) expect(shelf).toContain(secret);
    const room = await roomOf(await link(hers, kind));
    expect(room).toContain(hers.event().name);
    expect(SECRETS.filter((secret) => room.includes(secret))).toEqual([]);
    for (const field of ['guests', 'byTable', 'byGuests', 'terms', 'asking', 'bought', 'handout'])
      expect(room).not.toContain(`"${field}":`);
  },
  60_000,
);

test.each([
  ['from the first', true],
  ['after the first counts', false],
])(
  'a browser that can keep nothing %s counts all the same, and a fresh page takes nothing back',
  async (_, isFull) => {
    const hers = await maker();
    const kept = new Map<string, Visited>();
    let full = isFull;
    const memory: MemoryOfVisits = {
      read: (name) =>
        isFull ? Promise.reject(new Error('no disk')) : Promise.resolve(kept.get(name) ?? null),
      keep: (name, value) => {
        if (full) return Promise.reject(new Error('no room on the disk'));
        kept.set(name, value);
        return Promise.resolve();
      },
      forget: (name) => {
        kept.delete(name);
        return Promise.resolve();
      },
    };
    const bench = await link(hers, 'bench');
    const stage = `${hers.event().lines[0]?.id}/fold/a/0`;
    const counted = () => countAt(hers.event().run, stage).done;
    const phone = helper(bench, '', memory);
    await until(() => phone.event() !== undefined && phone.sharing()?.line === 'joined', 'shown');
    expect(phone.sharing()?.unsent).toBe(0);
    phone.tap(stage, 1);
    await until(() => counted() === 1 && phone.received(), 'the first is received');
    full = true;
    for (let tap = 0; tap < 3; tap++) phone.tap(stage, 1);
    await until(() => counted() === 4 && phone.received(), 'all are received, and that is said');
    phone.close();
    const fresh = helper(bench, '', memory);
    await until(() => countAt(fresh.event()?.run, stage).done === 4, 'seen on a fresh page');
    fresh.tap(stage, 1);
    await until(() => counted() === 5, 'counted on');
  },
  60_000,
);

test('a link cannot be made while the line is down, and that is said', async () => {
  const hers = await maker();
  const { port } = server;
  await server.stop('SIGKILL');
  await until(() => hers.store.getState().sharing?.line === 'offline', 'offline is said');
  expect(await hers.desk.showEvent(hers.event().id, 'bench', 'in')).toBe(false);
  server = await ServedShare.start({ ...here.env, SHARE_PORT: String(port) });
  await until(() => hers.store.getState().sharing?.line === 'joined', 'back');
  expect(hers.store.getState().sharing?.shown).toEqual([]);
  await link(hers, 'bench');
}, 60_000);

test('who has a helper’s link can write nowhere but under their own name', async () => {
  const hers = await maker();
  const bench = await link(hers, 'bench');
  const { id } = hers.event();
  const phone = helper(bench, 'phone-three');
  await until(() => phone.event() !== undefined, 'shown');
  expect([...phone.workbook.getState().rows.events.keys()]).toEqual([id]);

  // Neither part of the link opens the shelf or leads to its name, and what is seen by it cannot be written by it.
  const sheet = await shownKeys(bench);
  expect(sheet.token.startsWith('r.')).toBe(true);
  const reader = device(server.port, sheet.name, sheet.token);
  closing.push(reader.leave);
  await until(() => reader.provider.synced, 'read');
  const before = Y.encodeStateAsUpdate(reader.doc).length;
  reader.doc.getMap('sealed').set('scribble', new Uint8Array(40));
  const stranger = device(
    server.port,
    sheet.name,
    (await keysOf({ name: bench.name, secret: bench.view })).token,
  );
  closing.push(stranger.leave);
  await until(() => stranger.refused(), 'no right to write follows from the link');
  const again = device(server.port, sheet.name, sheet.token);
  closing.push(again.leave);
  await until(() => again.provider.synced, 'read again');
  expect(Y.encodeStateAsUpdate(again.doc).length).toBe(before);

  // A helper who writes under names of others, or nonsense, changes nothing of the maker's.
  const counting = await countingKeys(bench);
  const forger = device(server.port, counting.name, counting.token);
  closing.push(forger.leave);
  await until(() => forger.provider.synced, 'counts read');
  const forged = new SealedRows(counting, 'x', null);
  const stage = `${hers.event().lines[0]?.id}/fold/a/0`;
  const own = hers.store.getState().sharing?.device ?? '';
  const good = { done: 3, spoiled: 0, seconds: 0 };
  forged.write([
    [['#count', stage, own], { ...good, done: 99_000 }],
    [['#count', stage, ''], { ...good, done: 98_000 }],
    [['#count', stage, 'h-000000000000-other'], good],
    [['#count', stage, `${helpersOf(bench.name)}a`], { ...good, done: -5 }],
    [['#count', stage, `${helpersOf(bench.name)}b`], { ...good, done: 1e9 }],
    [['#count', 'No Stage', `${helpersOf(bench.name)}c`], good],
    [['#row', 'events', id], { id, name: 'Not the event' }],
    [['#count', stage, `${helpersOf(bench.name)}d`], good],
  ]);
  await forged.settled();
  Y.applyUpdate(forger.doc, Y.encodeStateAsUpdate(forged.doc));
  await until(() => countAt(hers.event().run, stage).done === 3, 'what is a count came in');
  await new Promise((resolve) => setTimeout(resolve, 300));
  expect(hers.event().run?.stages.map(({ by }) => by)).toEqual([`${helpersOf(bench.name)}d`]);
  expect(hers.event().name).not.toBe('Not the event');
}, 60_000);

test('learners see the boxes of a class as they are changed, and no counts', async () => {
  const hers = await maker();
  const phone = helper(await link(hers, 'class'), 'phone-four');
  await until(() => phone.event() !== undefined, 'shown');
  const { id, lines } = hers.event();
  expect(phone.event()?.run).toEqual({ stages: [], firstRight: [] });
  expect(phone.workbook.getState().rows.supplies.size).toBe(0);
  const recipe = hers.store.getState().rows.recipes.get(lines[0]?.recipeId ?? '');
  hers.store
    .getState()
    .edit('recipes', recipe?.id ?? '', 'Name', (row) => ({ ...row, name: 'Changed in class' }));
  await until(
    () => phone.workbook.getState().rows.recipes.get(recipe?.id ?? '')?.name === 'Changed in class',
    'seen',
  );
  phone.tap(`${lines[0]?.id}/fold/a/0`, 5);
  await new Promise((resolve) => setTimeout(resolve, 400));
  expect(hers.store.getState().rows.events.get(id)?.run).toEqual(hers.event().run);
}, 60_000);
