import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { expect, test } from '@playwright/test';
import { frameMessages } from '../../src/ui/words/english/frame';
import { recordFault } from './fault-record';
import { serveApp } from './served-app';

const { frame } = frameMessages;

/** A static host that sends no headers: the page itself has to see to what `frame-ancestors` would. */
test('in a frame of another site the app stays shut, and offers to open by itself', async ({
  page,
}, info) => {
  const app = await serveApp();
  const other = createServer((_asked, answer) => {
    answer.setHeader('Content-Type', 'text/html');
    answer.end(`<!doctype html><iframe src="${app.origin}/" width="900" height="600"></iframe>`);
  });
  await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', () => resolve()));
  try {
    await page.goto(`http://127.0.0.1:${(other.address() as AddressInfo).port}/`);
    const inside = page.frameLocator('iframe');
    const told = await inside
      .getByText(frame.framed)
      .waitFor({ timeout: 8000 })
      .then(
        () => true,
        () => false,
      );
    const buttons = await inside.getByRole('button').count();
    recordFault(info, {
      fault: 'in a frame of another site',
      tries: 1,
      lost: told && buttons === 0 ? 0 : 1,
      goal: 0,
    });
    await inside.getByRole('link', { name: frame.openAlone }).click();
    await expect(page).toHaveURL(new RegExp(`^${app.origin}/`));
    await expect(page.locator('.workbook')).toBeVisible();
  } finally {
    other.close();
    await app.close();
  }
});

test('in the page no policy but the app’s own can be made that lets text through as a script', async ({
  page,
}, info) => {
  const app = await serveApp();
  try {
    await page.goto(app.origin);
    await page.locator('.workbook').waitFor();
    const made = await page.evaluate(() => {
      const factory = (
        window as { trustedTypes?: { createPolicy: (name: string, rules: object) => unknown } }
      ).trustedTypes;
      if (!factory) return ['no trusted types in this browser'];
      return ['other', 'default'].filter((name) => {
        try {
          factory.createPolicy(name, {
            createHTML: (text: string) => text,
            createScript: (text: string) => text,
          });
          return true;
        } catch {
          return false;
        }
      });
    });
    recordFault(info, { fault: 'a policy of another’s making', tries: 2, lost: made.length, goal: 0 });
  } finally {
    await app.close();
  }
});
