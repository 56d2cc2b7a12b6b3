import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from '@playwright/test';
import { ServedShare } from '../share-server/served-share';
import { expect } from './maker';

const dist = fileURLToPath(new URL('../../dist', import.meta.url));

/** The built app and the exchange from one address, which can be killed and comes back at the same one. */
export async function servedApp() {
  const folder = mkdtempSync(join(tmpdir(), 'crease-devices-'));
  const env = { SHARE_APP: dist, SHARE_DATA: join(folder, 'shelves.db') };
  let server = await ServedShare.start(env);
  const { origin } = server;
  return {
    origin,
    kill: () => server.stop('SIGKILL'),
    async again(): Promise<void> {
      server = await ServedShare.start({ ...env, SHARE_PORT: new URL(origin).port });
    },
    async end(): Promise<void> {
      await server.stop('SIGTERM');
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** A device of its own: a browser without the server prints that it cannot reach it, so nothing listens to what it prints. */
export async function device(browser: Browser, hand: 'desk' | 'phone' = 'desk'): Promise<Page> {
  const context = await browser.newContext({
    serviceWorkers: 'block',
    ...(hand === 'desk'
      ? { viewport: { width: 1366, height: 900 } }
      : { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true }),
  });
  return context.newPage();
}

/** Makes a shared shelf of this device's, and gives the link for another one. */
export async function share(page: Page, origin: string, name: string): Promise<string> {
  await page.goto(`${origin}/#/keeping`);
  await page.getByRole('button', { name: 'Check for a sharing server' }).click();
  await page.getByLabel('Name of this device').fill(name);
  await page.getByRole('button', { name: 'Share this shelf' }).click();
  return page.getByRole('textbox', { name: 'Link for your other device' }).inputValue();
}

export async function joinBy(page: Page, link: string, name: string): Promise<void> {
  await page.goto(link);
  await page.getByLabel('Name of this device').fill(name);
  await page.getByRole('button', { name: 'Join', exact: true }).click();
  await expect(page.getByText('Connected.')).toBeVisible();
}

/** On the page of a shared shelf: a link to the one event there is, for helpers or learners. */
export async function linkFor(page: Page, whom: 'helpers' | 'learners'): Promise<string> {
  await expect(page.getByText('Connected.')).toBeVisible();
  await page.getByRole('button', { name: `Make a link for ${whom}` }).click();
  const row = page.getByRole('listitem').filter({ hasText: `, for ${whom}` });
  await expect(row.getByText('shows the newest version.')).toBeVisible();
  await row.getByText('Show the link').click();
  await expect(row.getByRole('img', { name: 'QR code of the link' })).toBeVisible();
  return row.getByRole('textbox').inputValue();
}
