/** Takes the pictures of README's tour from the built app: `npm run build && node tests/browser/take-tour.mjs`, after the browser was found once. */
import { mkdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';
import { preview } from 'vite';

const root = fileURLToPath(new URL('../..', import.meta.url));
const browser = JSON.parse(readFileSync(`${root}/node_modules/.cache/browser.json`, 'utf8'));
const folder = `${root}/public/tour`;
mkdirSync(folder, { recursive: true });

const server = await preview({
  root: `${root}/src/app`,
  configFile: `${root}/vite.config.ts`,
  preview: { host: '127.0.0.1', port: 4175, open: false },
});
const launched = await chromium.launch({
  executablePath: browser.path,
  env: { ...process.env, ...browser.env },
  chromiumSandbox: false,
});
try {
  const page = await launched.newPage({ viewport: { width: 1180, height: 760 }, deviceScaleFactor: 1 });
  await page.goto('http://127.0.0.1:4175/');
  const pages = page.getByRole('navigation', { name: 'Pages' });
  await pages.waitFor();
  await page.getByRole('button', { name: 'No more hints' }).click();
  const PICTURED = {
    box: 'Size',
    fold: 'Fold',
    marks: 'Easy sizes',
    dressing: 'Decorate',
    sheets: 'Sheets',
    shopping: 'Shopping',
    bench: 'Make',
    handout: 'Share',
  };
  for (const [file, name] of Object.entries(PICTURED)) {
    await pages.getByRole('link', { name: new RegExp(`^${name}`) }).click();
    if (file === 'marks') await page.locator('.easy-card').first().waitFor();
    await page.waitForTimeout(900);
    await page.screenshot({ path: `${folder}/${file}.png` });
  }
  await page.goto('http://127.0.0.1:4175/#/start');
  await page.getByLabel('Its size').fill('2 x 2 x 3');
  await page.getByLabel('How many favors?').fill('48');
  await page.getByLabel('Your paper').fill('12x12, 65 lb, white, $12.99 for 25');
  await page
    .getByRole('status')
    .filter({ hasText: /all \d+ styles/i })
    .waitFor({ timeout: 120_000 });
  await page.locator('.door-answers').scrollIntoViewIfNeeded();
  await page.screenshot({ path: `${folder}/start.png` });
  await page.goto('http://127.0.0.1:4175/#/new');
  await page.waitForTimeout(4000);
  await page.getByRole('heading', { name: /^Tall with a top/ }).evaluate((head) => head.scrollIntoView());
  await page.screenshot({ path: `${folder}/styles.png` });
  await page.getByRole('button', { name: 'Start with a floor' }).click();
  for (const edge of ['left', 'right', 'down', 'up']) {
    await page.locator(`[data-panel=base][data-edge=${edge}]`).first().click();
    await page.getByRole('button', { name: /^Wall/ }).first().click();
  }
  await page.waitForTimeout(1500);
  await page.screenshot({ path: `${folder}/draw.png` });
} finally {
  await launched.close();
  await server.close();
}
