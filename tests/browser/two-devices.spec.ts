import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from '@playwright/test';
import { ServedShare } from '../share-server/served-share';
import { expect, test } from './maker';
import { keptRecipe } from './pages/kept-recipe';

const dist = fileURLToPath(new URL('../../dist', import.meta.url));

// Devices of their own: a browser without the server prints that it cannot reach it.
async function device(browser: Browser): Promise<Page> {
  const context = await browser.newContext({
    serviceWorkers: 'block',
    viewport: { width: 1366, height: 900 },
  });
  return context.newPage();
}

async function share(page: Page, origin: string, name: string): Promise<string> {
  await page.goto(`${origin}/#/keeping`);
  await page.getByRole('button', { name: 'Look for an exchange' }).click();
  await page.getByLabel('Name of this device').fill(name);
  await page.getByRole('button', { name: 'Share this shelf' }).click();
  return page.getByRole('textbox', { name: 'Link for your other device' }).inputValue();
}

async function joinBy(page: Page, link: string, name: string): Promise<void> {
  await page.goto(link);
  await page.getByLabel('Name of this device').fill(name);
  await page.getByRole('button', { name: 'Join', exact: true }).click();
  await expect(page.getByText('Connected.')).toBeVisible();
}

test('two devices share a shelf by link, work apart without the server, and are equal when it is back', async ({
  browser,
}) => {
  const folder = mkdtempSync(join(tmpdir(), 'crease-devices-'));
  const env = { SHARE_APP: dist, SHARE_DATA: join(folder, 'shelves.db') };
  let server = await ServedShare.start(env);
  const { origin } = server;
  const [laptop, phone] = [await device(browser), await device(browser)];
  const mine = keptRecipe(laptop);
  await mine.make(origin);
  await mine.width.fill('70');
  await mine.saved();
  const at = laptop.url();
  const link = await share(laptop, origin, 'Laptop');
  expect(link).toContain('#/join/');
  await joinBy(phone, link, 'Phone');
  await expect(phone.getByText('Laptop', { exact: true })).toBeVisible();
  await expect(laptop.getByText('Received by 1 of 1 other device.')).toBeVisible();

  const theirs = keptRecipe(phone);
  await phone.goto(at);
  await phone.getByRole('radio', { name: 'Millimeters' }).click();
  await expect(theirs.width).toHaveValue('70');
  await laptop.goto(at);
  await server.stop('SIGKILL');
  await mine.width.fill('75');
  await theirs.depth.fill('44');
  await Promise.all([mine.saved(), theirs.saved()]);
  server = await ServedShare.start({ ...env, SHARE_PORT: new URL(origin).port });
  for (const one of [mine, theirs]) {
    await expect(one.width).toHaveValue('75', { timeout: 40_000 });
    await expect(one.depth).toHaveValue('44', { timeout: 40_000 });
  }

  await test.info().attach('pairing', { body: await laptop.screenshot(), contentType: 'image/png' });
  // Taken off the list, the phone is told so.
  await laptop.goto(`${origin}/#/keeping`);
  await laptop.getByRole('button', { name: 'Remove Phone' }).click();
  await laptop.getByRole('button', { name: 'Remove Phone' }).click();
  await phone.goto(`${origin}/#/keeping`);
  await expect(phone.getByText('This device was removed from the list.')).toBeVisible({ timeout: 30_000 });
  await phone.context().close();
  await laptop.context().close();
  await server.stop('SIGTERM');
  rmSync(folder, { recursive: true, force: true });
});
