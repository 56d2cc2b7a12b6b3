/**
 * How soon the front door answers, in the built app and a real browser: `node --import tsx tests/bench/front-door-pace.ts 30`. So many runs,
 * each with a size of its own, as the processor is and four times slowed; the first run of each warms up and does not count. Beside the
 * clock stands how many times slower than quiet the machine was. Wanted: first boxes within 500 ms, all styles within 2 s, and first
 * boxes within 1.5 s four times slowed, each 95 times in a hundred.
 */
import { readFileSync } from 'node:fs';
import { chromium, type Page } from '@playwright/test';
import { slowness } from '../browser/pace';
import { serveApp } from '../browser/served-app';

const runs = Number(process.argv[2] ?? 30);
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

/** Runs in the page: looks at every frame. A text, since what runs this file adds names to functions that the page does not know. */
const WATCH = `new Promise((done) => {
  const from = performance.now();
  let first = 0;
  requestAnimationFrame(function look() {
    const now = performance.now() - from;
    if (first === 0 && document.querySelector('.answer')) first = now;
    const said = document.querySelector('.door-progress [role=status]')?.textContent ?? '';
    if (first > 0 && /all \\d+ styles/i.test(said)) done({ first, all: now });
    else requestAnimationFrame(look);
  });
})`;

/** From the last keystroke to the first box, and to the last style, in milliseconds. */
async function answer(page: Page, size: string): Promise<{ readonly first: number; readonly all: number }> {
  await page.getByLabel('Its size').fill('');
  await page.locator('.answer').first().waitFor({ state: 'detached' });
  const begun = page.evaluate<{ first: number; all: number }>(WATCH);
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
    const took: { first: number; all: number }[] = [];
    for (let run = 0; run <= runs; run++) {
      // Sixteenths from 1 1/2 in up, no two alike, so that nothing is remembered.
      const size = `${24 + run}/16 x ${20 + ((run * 7) % 23)}/16 x ${32 + ((run * 5) % 31)}/16`;
      const times = await answer(page, size);
      if (run > 0) took.push(times);
    }
    await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
    const busy = [before, await slowness(page)].map((times) => times.toFixed(1)).join(' to ');
    say(
      `${slowed} × slowed, ${took.length} runs, machine ${busy} × slower than quiet; ms median / p95 / most: first ${spread(took.map(({ first }) => first))}, all ${spread(took.map(({ all }) => all))}`,
    );
  }
} finally {
  await browser.close();
  await served.close();
}
