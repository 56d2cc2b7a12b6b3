import { EventEmitter } from 'node:events';
import type { IncomingMessage } from 'node:http';
import { WebSocketStatus } from '@hocuspocus/provider';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { Guard } from '../../src/share-server/guard';
import { LIMITS } from '../../src/share-server/limits';
import { type Device, device, newShelf, place, ServedShare, until } from './served-share';

const here = place();
let server: ServedShare;
let saidAtStart = '';
beforeAll(async () => {
  server = await ServedShare.start({ ...here.env, SHARE_PROXY: '1' });
  // Its lines come one by one; this is the last of those it begins with.
  await until(() => server.said.endsWith('one in front.\n'), 'all it says at the start');
  saidAtStart = server.said;
}, 60_000);
const opened: Device[] = [];
afterAll(async () => {
  for (const one of opened) one.leave();
  await server.stop('SIGKILL');
  here.end();
});

const join = (shelf = newShelf(), caller?: string): Device => {
  const one = device(server.port, shelf.name, shelf.write, caller === undefined ? {} : { caller });
  opened.push(one);
  return one;
};
const synced = (one: Device) => until(() => one.provider.synced, 'synced');
/** Whether the server hangs up on what is sent down this device's line. */
const ended = (one: Device, send: (line: WebSocket) => void): Promise<boolean> => {
  const line = one.provider.configuration.websocketProvider.webSocket as WebSocket;
  return new Promise((resolve) => {
    line.addEventListener('close', () => resolve(true));
    send(line);
    setTimeout(() => resolve(false), 5000);
  });
};
const message = (name: string, kind: number, body: Uint8Array) =>
  Buffer.concat([Buffer.from([name.length]), Buffer.from(name), Buffer.from([kind]), body]);

test('more messages than a hand can make, and one message larger than any photo, end the line; another device works on', async () => {
  const shelf = newShelf();
  const good = join(shelf);
  await synced(good);
  const flood = join(shelf);
  await synced(flood);
  expect(
    await ended(flood, (line) => {
      // An empty question for what is new, which costs the server an answer.
      for (let n = 0; n < LIMITS.framesAtOnce + 100; n++)
        line.send(message(shelf.name, 0, new Uint8Array([0, 1, 0])));
    }),
  ).toBe(true);
  const large = join(shelf);
  await synced(large);
  const body = new Uint8Array(LIMITS.frameBytes + 1);
  expect(await ended(large, (line) => line.send(message(shelf.name, 0, body)))).toBe(true);
  good.doc.getMap('sealed').set('on', 1);
  await until(() => good.kept() === 1, 'kept');
});

test('a shelf with a name that could be guessed is not made', async () => {
  for (const name of ['my-shelf', 'a'.repeat(21), 'a'.repeat(23), `${'a'.repeat(21)}!`]) {
    const one = join({ ...newShelf(), name });
    const line = one.provider.configuration.websocketProvider;
    await until(() => line.status === WebSocketStatus.Disconnected, `“${name}” is turned away`);
    expect(one.provider.synced).toBe(false);
  }
  // What our devices make: 128 bits, none twice.
  expect(new Set(Array.from({ length: 1000 }, () => newShelf().name)).size).toBe(1000);
});

test('one caller makes so many shelves an hour, whatever they say before the word of the proxy', async () => {
  for (let n = 0; n < LIMITS.newShelvesPerHour; n++) {
    const one = join(newShelf(), `10.0.0.${n}, 203.0.113.9`);
    await synced(one);
    one.leave();
  }
  const more = join(newShelf(), '192.0.2.1, 203.0.113.9');
  await until(() => more.refused(), 'refused');
  await synced(join(newShelf(), '203.0.113.10'));
});

test('one caller holds so many lines and no more, and silence is not listened to for long', async () => {
  vi.useFakeTimers();
  const settings = { origin: 'https://a.example', behindProxy: false } as never;
  const guard = new Guard(settings, () => Date.now());
  const request = (key: number) =>
    ({
      url: '/exchange',
      headers: { origin: 'https://a.example', 'sec-websocket-key': `${key}` },
      socket: { remoteAddress: '203.0.113.1' },
    }) as unknown as IncomingMessage;
  class Line extends EventEmitter {
    over = false;
    terminate() {
      this.over = true;
      this.emit('close');
    }
  }
  const lines = Array.from({ length: LIMITS.connectionsPerCaller }, (_, n) => {
    expect(guard.admits(request(n), 0)).toBe(true);
    const line = new Line();
    guard.watch(line, request(n));
    return line;
  });
  expect(guard.admits(request(-1), 0)).toBe(false);
  guard.proven(request(0));
  await vi.advanceTimersByTimeAsync(LIMITS.silence + 1);
  expect(lines.map(({ over }) => over)).toEqual(lines.map((_, n) => n > 0));
  expect(guard.admits(request(-1), 0)).toBe(true);
  vi.useRealTimers();
});

test('told to stop, it keeps everything, says goodbye and leaves; nothing of what went on was written down', async () => {
  const shelf = newShelf();
  const one = join(shelf);
  await synced(one);
  for (let n = 0; n < 200; n++) one.doc.getMap('sealed').set(`value ${n}`, new Uint8Array(100));
  const began = Date.now();
  await until(() => one.kept() > 0, 'some are kept');
  const kept = one.kept();
  expect(await server.stop('SIGTERM')).toBe(0);
  expect(Date.now() - began).toBeLessThan(15_000);
  expect(server.said).toBe(saidAtStart);
  server = await ServedShare.start({ ...here.env, SHARE_PROXY: '1' });
  const again = join(shelf);
  await synced(again);
  expect(again.doc.getMap('sealed').size).toBeGreaterThanOrEqual(kept);
});
