import { randomBytes } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { createClient } from '@libsql/client';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { recordFault } from '../setup/fault-record';
import { bundled, connect, type Device, device, newShelf, place, ServedShare, until } from './served-share';

const here = place();
let server: ServedShare;
beforeAll(async () => {
  server = await ServedShare.start(here.env);
}, 60_000);
afterAll(async () => {
  await server.stop('SIGKILL');
  here.end();
});

const opened: Device[] = [];
afterAll(() => {
  for (const one of opened) one.leave();
});
const join = (shelf: { name: string }, token: string, port = server.port): Device => {
  const joined = device(port, shelf.name, token);
  opened.push(joined);
  return joined;
};
const synced = (one: Device) => until(() => one.provider.synced, 'synced');

describe('the share server', () => {
  test('serves the app with its headers, says that there is an exchange, and gives nothing else of the machine', async () => {
    const page = await fetch(`http://127.0.0.1:${server.port}/`);
    expect(await page.text()).toContain('<title>app</title>');
    expect(page.headers.get('content-security-policy')).toContain("frame-ancestors 'none'");
    const told = await fetch(`http://127.0.0.1:${server.port}/exchange`);
    expect(await told.json()).toEqual({ exchange: 1 });
    for (const path of ['/../package.json', '/%2e%2e/package.json', '/shelves', '/data/shelves.db']) {
      const answer = await fetch(`http://127.0.0.1:${server.port}${path}`);
      expect(answer.status).toBe(404);
    }
    expect((await fetch(`http://127.0.0.1:${server.port}/`, { method: 'POST' })).status).toBe(404);
  });

  test('carries what one device writes to the other, and says when it is kept', async () => {
    const shelf = newShelf();
    const [a, b] = [join(shelf, shelf.write), join(shelf, shelf.write)];
    await synced(a);
    await synced(b);
    a.doc.getMap('sealed').set('one', new Uint8Array([1, 2, 3]));
    await until(() => b.doc.getMap('sealed').has('one'), 'came over');
    await until(() => a.kept() === 1, 'kept');
    expect(b.doc.getMap('sealed').get('one')).toEqual(new Uint8Array([1, 2, 3]));
  });

  test('lets a reader read and not write, and lets nobody in who cannot prove what they may', async () => {
    const shelf = newShelf();
    const a = join(shelf, shelf.write);
    await synced(a);
    a.doc.getMap('sealed').set('one', 1);
    const reader = join(shelf, shelf.read);
    await until(() => reader.doc.getMap('sealed').get('one') === 1, 'read');
    reader.doc.getMap('sealed').set('one', 'scribbled');
    a.doc.getMap('sealed').set('two', 2);
    await until(() => reader.doc.getMap('sealed').has('two'), 'read on');
    expect(a.doc.getMap('sealed').get('one')).toBe(1);
    expect(reader.kept()).toBe(0);
    const other = newShelf();
    for (const token of [other.write, other.read, 'w.', '', `r.${shelf.write.slice(2)}`]) {
      const stranger = join(shelf, token);
      await until(() => stranger.refused(), 'refused');
      expect(stranger.doc.getMap('sealed').size).toBe(0);
    }
    // Who may only read makes no shelf.
    const nobody = join(other, other.read);
    await until(() => nobody.refused(), 'refused');
  });

  test('turns pages of other origins away, and sockets at other addresses', async () => {
    const fates = [
      connect(server.port, 'https://elsewhere.example'),
      connect(server.port, `http://localhost:${server.port}`),
      connect(server.port, undefined, '/other'),
    ].map(
      (socket) =>
        new Promise<string>((resolve) => {
          socket.once('open', () => {
            resolve('open');
            socket.terminate();
          });
          socket.once('error', () => resolve('shut'));
        }),
    );
    expect(await Promise.all(fates)).toEqual(['shut', 'open', 'shut']);
  });

  test('10,000 hostile frames: it lives on, reads nobody anybody’s rows, and prints nothing of them', async (context) => {
    const shelf = newShelf();
    const a = join(shelf, shelf.write);
    await synced(a);
    a.doc.getMap('sealed').set('secret', 'a row of hers');
    await until(() => a.kept() === 1, 'kept');
    const seen: Buffer[] = [];
    let sent = 0;
    while (sent < 10_000) {
      const socket = connect(server.port);
      socket.on('message', (data: Buffer) => seen.push(data));
      socket.on('error', () => undefined);
      await new Promise((resolve) => socket.once('open', resolve));
      // Frames of every length, some with the right name and a kind of message in front, none with a proof.
      for (let n = 0; n < 100; n++) {
        const head = [22, ...Buffer.from(shelf.name), n % 9];
        const noise = randomBytes((n * 37) % 2000);
        socket.send(n % 3 === 0 ? noise : Buffer.concat([Buffer.from(head.slice(0, 1 + (n % 24))), noise]));
        sent++;
      }
      await new Promise((resolve) => setTimeout(resolve, 2));
      socket.terminate();
    }
    expect(server.alive).toBe(true);
    expect(Buffer.concat(seen).includes('a row of hers')).toBe(false);
    expect(server.said).not.toContain(shelf.name);
    // Work goes on for those who belong here.
    const b = join(shelf, shelf.write);
    await until(() => b.doc.getMap('sealed').get('secret') === 'a row of hers', 'read');
    recordFault(context, { fault: 'hostile frames at the share server', tries: sent, lost: 0, goal: 0 });
  });

  test('a device that may write and sends nonsense loses its line, and harms no other shelf', async () => {
    const [mine, hers] = [newShelf(), newShelf()];
    const good = join(hers, hers.write);
    await synced(good);
    for (const kind of [0, 1, 3, 5, 6, 8, 100]) {
      const bad = join(mine, mine.write);
      await synced(bad);
      const line = bad.provider.configuration.websocketProvider.webSocket as unknown as WebSocket;
      let ended = false;
      line.addEventListener('close', () => {
        ended = true;
      });
      // For its own shelf with a broken body, and for hers without a proof.
      line.send(
        Buffer.concat([Buffer.from([22]), Buffer.from(mine.name), Buffer.from([kind]), randomBytes(40)]),
      );
      line.send(
        Buffer.concat([Buffer.from([22]), Buffer.from(hers.name), Buffer.from([0, 2]), randomBytes(40)]),
      );
      if (kind !== 0) await until(() => ended, `ended after a message of kind ${kind}`);
      bad.leave();
    }
    good.doc.getMap('sealed').set('on', 1);
    await until(() => good.kept() === 1, 'kept');
    expect(good.doc.getMap('sealed').size).toBe(1);
  });
});

test('twenty shelves of three devices at once: every change reaches the two others, and no other shelf', async (context) => {
  const shelves = await Promise.all(
    Array.from({ length: 20 }, async () => {
      const shelf = newShelf();
      const on = [0, 1, 2].map(() => join(shelf, shelf.write));
      for (const one of on) await synced(one);
      return on;
    }),
  );
  const changes = 10;
  const took: number[] = [];
  for (const on of shelves)
    for (const { doc } of on)
      doc.getMap('sealed').observe((event, { local }) => {
        for (const key of local ? [] : event.keysChanged)
          took.push(performance.now() - (doc.getMap('sealed').get(key) as number));
      });
  for (let n = 0; n < changes; n++)
    for (const [nth, on] of shelves.entries()) {
      on[n % 3]?.doc.getMap('sealed').set(`${nth}/${n}`, performance.now());
      await new Promise((resolve) => setTimeout(resolve, 2));
    }
  const awaited = 20 * changes * 2;
  await until(() => took.length >= awaited, 'all delivered').catch(() => undefined);
  const strays = shelves.flatMap((on, nth) =>
    on.flatMap(({ doc }) => [...doc.getMap('sealed').keys()].filter((key) => !key.startsWith(`${nth}/`))),
  );
  expect(strays).toEqual([]);
  // The goal is 200 ms 95 times in a hundred on a quiet machine; this only ends what hangs.
  took.sort((a, b) => a - b);
  expect(took[Math.floor(took.length * 0.95)]).toBeLessThan(5000);
  const lost = awaited - took.length;
  recordFault(context, { fault: 'sixty devices at once on a share server', tries: awaited, lost, goal: 0 });
});

test('killed in the middle of writing, 20 times: nothing that was acknowledged is lost', async (context) => {
  const spot = place();
  const shelf = newShelf();
  const kills = 20;
  const bundle = await bundled();
  let next = ServedShare.start(spot.env, bundle);
  const kept = new Set<string>();
  let lost = 0;
  for (let kill = 0; kill < kills; kill++) {
    const running = await next;
    // The one after it is got ready meanwhile; two may stand on one file.
    next = ServedShare.start(spot.env, bundle);
    const a = device(running.port, shelf.name, shelf.write);
    await synced(a);
    for (const name of kept) if (!a.doc.getMap('sealed').has(name)) lost++;
    const written: string[] = [];
    const writes = setInterval(() => {
      const name = `${kill}-${written.length}`;
      a.doc.getMap('sealed').set(name, new Uint8Array(randomBytes(200)));
      written.push(name);
    }, 1);
    await until(() => a.kept() > 20 + kill, 'some were kept');
    await running.stop('SIGKILL');
    clearInterval(writes);
    for (const name of written.slice(0, a.kept())) kept.add(name);
    a.leave();
  }
  const last = await next;
  const b = device(last.port, shelf.name, shelf.write);
  await synced(b);
  for (const name of kept) if (!b.doc.getMap('sealed').has(name)) lost++;
  b.leave();
  expect(await last.stop('SIGTERM')).toBe(0);
  // A graceful end folds every change into one state.
  const db = createClient({ url: `file:${spot.data}` });
  expect((await db.execute('PRAGMA journal_mode')).rows[0]?.['journal_mode']).toBe('wal');
  expect((await db.execute('SELECT count(*) AS n FROM shelf')).rows[0]?.['n']).toBe(1);
  db.close();
  expect(readFileSync(spot.data).includes(shelf.write.slice(2))).toBe(false);
  spot.end();
  expect(kept.size).toBeGreaterThan(400);
  expect(lost).toBe(0);
  recordFault(context, { fault: 'share server killed while writing', tries: kills, lost, goal: 0 });
}, 180_000);
