/**
 * Many shelves on one share server: how long a change takes to the other devices, and what a shelf costs in memory. Words: shelves (500),
 * devices a shelf (3), seconds (20), changes a second over all (100, 250, 500). The devices live in this process and cost it time as well, so
 * that what is measured is more than what a phone sees of the server.
 */
import { randomBytes } from 'node:crypto';
import { readFileSync } from 'node:fs';
import {
  bundled,
  type Device,
  device,
  newShelf,
  place,
  ServedShare,
  until,
} from '../share-server/served-share';

const [shelves = 500, perShelf = 3, seconds = 20, ...rates] = process.argv.slice(2).map(Number);
const RATES = rates.length > 0 ? rates : [100, 250, 500];
/** A shelf of some twenty boxes, and one value of it as it is sealed. */
const VALUES = 300;
const VALUE_BYTES = 150;

const say = (line: string) => void process.stdout.write(`${line}\n`);

/** Memory of a process, in bytes. */
const memoryOf = (pid: number): number =>
  1024 * Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1] ?? Number.NaN);

/** Processor seconds a process has taken. */
function takenBy(pid: number): number {
  const [, rest = ''] = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ');
  const fields = rest.split(' ').map(Number);
  return ((fields[11] ?? 0) + (fields[12] ?? 0)) / 100;
}

const share = (sorted: readonly number[], of: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(of * sorted.length))] ?? Number.NaN;

const here = place();
const server = await ServedShare.start({ ...here.env, SHARE_PROXY: '1' }, await bundled());
const bare = memoryOf(server.pid);

const all: Device[][] = [];
const began = performance.now();
for (let n = 0; n < shelves; n++) {
  const shelf = newShelf();
  // Callers come from as many places as there are shelves.
  const caller = `198.51.${n >> 8}.${n & 255}`;
  const [first, ...others] = Array.from({ length: perShelf }, () =>
    device(server.port, shelf.name, shelf.write, { caller }),
  );
  if (!first) throw new Error('no device');
  await until(() => first.provider.synced, 'synced');
  first.doc.transact(() => {
    for (let v = 0; v < VALUES; v++)
      first.doc.getMap('sealed').set(`v${v}`, new Uint8Array(randomBytes(VALUE_BYTES)));
  });
  all.push([first, ...others]);
  if (n % 50 === 49)
    await until(
      () => all.every((on) => on.every(({ doc }) => doc.getMap('sealed').size >= VALUES)),
      'joined',
    );
}
await until(
  () => all.every((on) => on.every(({ doc }) => doc.getMap('sealed').size >= VALUES)),
  'all joined',
  60_000,
);
say(
  `${shelves} shelves × ${perShelf} devices joined in ${((performance.now() - began) / 1000).toFixed(1)} s, ${VALUES} values of ${VALUE_BYTES} bytes each`,
);
await new Promise((resolve) => setTimeout(resolve, 5000));
const full = memoryOf(server.pid);
say(
  `memory of the server: ${(bare / 1e6).toFixed(0)} MB bare, ${(full / 1e6).toFixed(0)} MB now, ${((full - bare) / shelves / 1e3).toFixed(0)} kB a shelf`,
);

const took: number[] = [];
for (const on of all)
  for (const { doc } of on)
    doc.getMap('sealed').observe((event, { local }) => {
      if (local) return;
      const now = performance.now();
      for (const key of event.keysChanged)
        if (key.startsWith('at')) took.push(now - (doc.getMap('sealed').get(key) as number));
    });

for (const rate of RATES) {
  took.length = 0;
  const cpu = takenBy(server.pid);
  const own = process.cpuUsage();
  const start = performance.now();
  const end = start + seconds * 1000;
  let sent = 0;
  while (performance.now() < end) {
    // As many as should have gone by now, each from a device of its own.
    const due = Math.floor(((performance.now() - start) / 1000) * rate);
    for (; sent < due; sent++) {
      const on = all[(sent * 7919) % all.length] ?? [];
      const at = sent % perShelf;
      on[at]?.doc.getMap('sealed').set(`at${at}`, performance.now());
    }
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
  const awaited = sent * (perShelf - 1);
  await until(() => took.length >= awaited, `all ${awaited} delivered`, 60_000).catch(() => undefined);
  const spent = (performance.now() - start) / 1000;
  took.sort((a, b) => a - b);
  const busy = ((takenBy(server.pid) - cpu) / spent) * 100;
  const { user, system } = process.cpuUsage(own);
  say(
    `${rate} changes a second: ${took.length} of ${awaited} delivered, median ${share(took, 0.5).toFixed(0)} ms, p95 ${share(took, 0.95).toFixed(0)} ms, p99 ${share(took, 0.99).toFixed(0)} ms; server ${busy.toFixed(0)} % of one core, devices ${((user + system) / 1e4 / spent).toFixed(0)} %, server ${(memoryOf(server.pid) / 1e6).toFixed(0)} MB`,
  );
}
await server.stop('SIGKILL');
here.end();
process.exit(0);
