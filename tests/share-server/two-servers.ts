/**
 * Two share servers on one database, joined by Redis: what is written at one reaches a device at the other, and goes on when either of them,
 * or Redis, is killed and comes back. `--install` fetches Redis where `CI` is set and root runs it, and does no more. Says a line and leaves
 * 0; where there is no Redis the line says that this was skipped.
 */

import { findRedis, installRedis, startRedis } from './served-redis';
import { type Device, device, newShelf, place, ServedShare, until } from './served-share';

/** Changes each way while all is well. */
const CHANGES = 50;

async function tryTwo(path: string): Promise<string> {
  const here = place();
  let redis = await startRedis(path);
  const env = { ...here.env, SHARE_REDIS: `redis://127.0.0.1:${redis.port}` };
  const [one, two] = await Promise.all([ServedShare.start(env), ServedShare.start(env)]);
  const opened: Device[] = [];
  const join = async (server: ServedShare, shelf: ReturnType<typeof newShelf>, token = shelf.write) => {
    const joined = device(server.port, shelf.name, token);
    opened.push(joined);
    await until(() => joined.provider.synced, 'synced');
    return joined;
  };
  const has = (there: Device, name: string) => there.doc.getMap('sealed').has(name);
  const write = async (from: Device, to: Device, name: string): Promise<number> => {
    const began = performance.now();
    from.doc.getMap('sealed').set(name, new Uint8Array(200));
    await until(() => has(to, name), `${name} came over`);
    return performance.now() - began;
  };
  try {
    const shelf = newShelf();
    const [a, b] = [await join(one, shelf), await join(two, shelf)];
    const took: number[] = [];
    for (let n = 0; n < CHANGES; n++) {
      took.push(await write(a, b, `a${n}`));
      took.push(await write(b, a, `b${n}`));
    }
    const stranger = device(two.port, shelf.name, newShelf().write);
    opened.push(stranger);
    await until(() => stranger.refused(), 'a stranger is refused at the second server as well');

    // Without Redis each server goes on alone, and what was written meanwhile is not lost.
    await redis.stop();
    a.doc.getMap('sealed').set('alone', 1);
    const before = a.kept();
    await until(() => a.kept() > before, 'kept without Redis');
    if (!one.alive || !two.alive) throw new Error('a server ended with Redis');
    redis = await startRedis(path, redis.port);
    const late = await join(two, newShelf());
    late.leave();
    await until(() => {
      a.doc.getMap('sealed').set('again', Date.now());
      return has(b, 'again') && has(b, 'alone');
    }, 'joined again after Redis was back');

    // One server killed: a device at the other has everything that was kept.
    const kept = a.doc.getMap('sealed').size;
    await one.stop('SIGKILL');
    const c = await join(two, shelf);
    if (c.doc.getMap('sealed').size < kept) throw new Error('lost with the first server');
    took.sort((x, y) => x - y);
    const middle = (took[took.length >> 1] ?? 0).toFixed(0);
    return `${2 * CHANGES} changes each reached a device at the other server, in ${middle} ms in the median; none lost when Redis and then one server were killed`;
  } finally {
    for (const each of opened) each.leave();
    await Promise.all([one.stop('SIGKILL'), two.stop('SIGKILL'), redis.stop()]);
    here.end();
  }
}

if (process.argv.includes('--install')) installRedis();
else {
  const path = findRedis();
  process.stdout.write(
    path ? await tryTwo(path) : 'skipped: no redis-server is on this machine (apt-get install redis-server)',
  );
  process.exit(0);
}
