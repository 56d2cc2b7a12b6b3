import { expect, test } from '@playwright/test';
import { recordFault } from './fault-record';
import { serveApp } from './served-app';

/** A name in the maker's own network, without https: browsers keep much of what they can do from such an address. */
test.use({
  launchOptions: async ({ launchOptions }, use) => {
    await use({
      ...launchOptions,
      args: [...(launchOptions.args ?? []), '--host-resolver-rules=MAP workroom.test 127.0.0.1'],
    });
  },
});

test('from an address without https the app opens, draws a box, and keeps it', async ({ page }, info) => {
  const app = await serveApp();
  try {
    const thrown: string[] = [];
    page.on('pageerror', ({ message }) => thrown.push(message));
    const origin = app.origin.replace('127.0.0.1', 'workroom.test');
    await page.goto(`${origin}/#/new`);
    expect(await page.evaluate(() => [isSecureContext, 'randomUUID' in crypto])).toEqual([false, false]);
    const openTop = page.getByRole('button', { name: /^Open-top box Treats/ });
    const works = await openTop.waitFor({ timeout: 30_000 }).then(
      () => true,
      () => false,
    );
    recordFault(info, {
      fault: 'an address without https: empty page',
      tries: 1,
      lost: works ? 0 : 1,
      goal: 0,
    });
    await openTop.click();
    await expect(page.getByRole('img', { name: /^Net of Box/ })).toBeVisible();
    await expect(page.locator('.save-state-saved')).toBeVisible();
    await page.reload();
    await expect(page.getByRole('img', { name: /^Net of Box/ })).toBeVisible();
    for (const address of ['#/', '#/keeping', '#/help']) {
      await page.goto(`${origin}/${address}`);
      await expect(page.getByRole('main')).toContainText(/\w/);
    }
    expect(thrown).toEqual([]);
  } finally {
    await app.close();
  }
});
