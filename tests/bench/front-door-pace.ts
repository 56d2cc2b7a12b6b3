/**
 * How soon the front door answers, in the built app and a real browser: `node --import tsx tests/bench/front-door-pace.ts 30`. So many runs,
 * each with a size of its own, as the processor is and four times slowed, where first boxes alone are waited for. A speed ends after
 * three minutes with the runs it has. The first run of each warms up and stands by itself: it is what a first visit waits for. Beside the
 * clock stands how many times slower than quiet the machine was. Wanted: first boxes within 500 ms, all styles within 2 s, and first
 * boxes within 1.5 s four times slowed, each 95 times in a hundred.
 */
import { readFileSync } from 'node:fs';
import { chromium, type Page } from '@playwright/test';
import { slowness } from '../browser/pace';
import { serveApp } from '../browser/served-app';

const runs = Number(process.argv[2] ?? 30);
/** Minutes a speed may take; nine are what a shared machine allows for both. source: our choice */
const MOST_MINUTES = 3;
const say = (line: string) => void process.stdout.write(`${line}\n`);

const cache = new URL('../../node_modules/.cache/browser.json', import.meta.url);
const found = JSON.parse(readFileSync(cache, 'utf8')) as { path: string; env: Record<string, string> };
const served = await serveApp();
const browser = await chromium.launch({
  executablePath: found.path,
  env: { ...(process.env as Record<string, string>), ...found.env },
  chromiumSandbox: false,
});
const page = await (await browser.newContext({ serviceWorkers: 'block' })).newPage();

interface Waited {
  readonly first: number;
  /** Null where only the first box was waited for, or all did not come within a minute. */
  readonly all: number | null;
}

/** Runs in the page: looks at every frame. A text, since what runs this file adds names to functions that the page does not know. */
const watch = (forAll: boolean): string => `new Promise((done) => {
  const from = performance.now();
  let first = 0;
  requestAnimationFrame(function look() {
    const now = performance.now() - from;
    if (first === 0 && document.querySelector('.answer')) first = now;
    const said = document.querySelector('.door-progress [role=status]')?.textContent ?? '';
    const isAll = first > 0 && /all \\d+ styles/i.test(said);
    if (isAll || now > 60000 || (first > 0 && ${!forAll})) done({ first: first || now, all: isAll ? now : null });
    else requestAnimationFrame(look);
  });
})`;

/** From the last keystroke to the first box, and to the last style, in milliseconds. */
async function answer(page: Page, size: string, forAll: boolean): Promise<Waited> {
  await page.getByLabel('Its size').fill('');
  await page.locator('.answer').first().waitFor({ state: 'detached', timeout: 60_000 });
  const begun = page.evaluate<Waited>(watch(forAll));
  await page.getByLabel('Its size').fill(size);
  return begun;
}

const part = (sorted: readonly number[], of: number): number =>
  Math.round(sorted[Math.min(sorted.length - 1, Math.floor(of * sorted.length))] ?? Number.NaN);
const spread = (times: readonly number[]): string => {
  const sorted = times.toSorted((a, b) => a - b);
  return `${part(sorted, 0.5)} / ${part(sorted, 0.95)} / ${part(sorted, 1)}`;
};

try {
  await page.goto(`${served.origin}/#/start`);
  await page.getByLabel('Your paper').fill('12x12, 65 lb');
  const session = await page.context().newCDPSession(page);
  for (const slowed of [1, 4]) {
    const before = await slowness(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: slowed });
    const took: Waited[] = [];
    const end = performance.now() + MOST_MINUTES * 60_000;
    for (let run = 0; run <= runs && performance.now() < end; run++) {
      // Sixteenths from 1 1/2 in up, no two alike, so that nothing is remembered.
      const size = `${24 + run}/16 x ${20 + ((run * 7) % 23)}/16 x ${32 + ((run * 5) % 31)}/16`;
      took.push(await answer(page, size, slowed === 1));
    }
    const [warmUp, ...counted] = took;
    const alls = counted.flatMap(({ all }) => all ?? []);
    await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
    const busy = [before, await slowness(page)].map((times) => times.toFixed(1)).join(' to ');
    say(
      `${slowed} × slowed, ${counted.length} runs, machine ${busy} × slower than quiet; ms median / p95 / most: first ${spread(counted.map(({ first }) => first))}${slowed === 1 ? `, all ${spread(alls)} (${counted.length - alls.length} not within a minute)` : ''}; warming up ${Math.round(warmUp?.first ?? Number.NaN)}`,
    );
  }
} finally {
  await browser.close();
  await served.close();
}
