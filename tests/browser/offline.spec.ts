import { expect, type Page } from '@playwright/test';
import { recordFault } from './fault-record';
import { test } from './maker';
import { workbook } from './pages/workbook';
import { serveApp } from './served-app';

test.use({ serviceWorkers: 'allow' });

const inControl = (page: Page) =>
  page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
const drawOpenTop = async (page: Page, name: string) => {
  await page.getByRole('link', { name: 'Start a box of your own' }).click();
  await page.getByRole('link', { name: 'I know the style' }).click();
  await page.getByRole('button', { name: /^Open-top box Treats/ }).click();
  await page.getByRole('textbox', { name: 'Name of this box' }).fill(name);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('img', { name: /^Net of Box/ })).toBeVisible();
};

test('with the network off, a maker opens the app again, draws a box, prints its card, and finds it when she is back', async ({
  page,
  context,
}) => {
  await page.goto('./');
  await inControl(page);
  await context.setOffline(true);
  await page.reload();
  await drawOpenTop(page, 'Made on the train');
  await workbook(page).turnTo('bench');
  const printed = page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        const create = URL.createObjectURL.bind(URL);
        URL.createObjectURL = (made: Blob) => {
          resolve(made.size);
          return create(made);
        };
      }),
  );
  await page.getByRole('button', { name: 'Print the step card' }).click();
  expect(await printed).toBeGreaterThan(5000);
  await workbook(page).saved();
  await context.setOffline(false);
  await page.goto('./');
  await expect(page.getByRole('link', { name: /^Made on the train/ })).toBeVisible();
});

test('a newer version waits until the maker takes it, and swaps nothing under her hands', async ({
  browser,
}) => {
  const app = await serveApp();
  const context = await browser.newContext({ serviceWorkers: 'allow' });
  try {
    const page = await context.newPage();
    await page.goto(app.origin);
    await inControl(page);
    await drawOpenTop(page, 'Half done');
    let reloads = 0;
    page.on('load', () => {
      reloads += 1;
    });
    app.publish();
    await page.evaluate(async () => {
      await (await navigator.serviceWorker.getRegistration())?.update();
    });
    const take = page.getByRole('button', { name: 'Update now' });
    await expect(take).toBeEnabled();
    await page.getByRole('textbox', { name: 'Width', exact: true }).fill('4');
    expect(reloads).toBe(0);
    await take.click();
    await expect.poll(() => reloads).toBe(1);
    await expect(page.getByRole('textbox', { name: 'Width', exact: true })).toHaveValue('4');
    await expect(page.getByRole('textbox', { name: 'Name of this box' })).toHaveValue('Half done');
    await expect(take).toHaveCount(0);
  } finally {
    await context.close();
    await app.close();
  }
});

test('a second tab can take a newer version that the first has taken already', async ({ browser }, info) => {
  const app = await serveApp();
  const context = await browser.newContext({ serviceWorkers: 'allow' });
  try {
    const [first, second] = [await context.newPage(), await context.newPage()];
    for (const page of [first, second]) {
      await page.goto(`${app.origin}/#/help`);
      await inControl(page);
    }
    app.publish();
    await second.evaluate(async () => {
      await (await navigator.serviceWorker.getRegistration())?.update();
    });
    const take = (page: Page) => page.getByRole('button', { name: 'Update now' });
    await expect(take(second)).toBeEnabled();
    await take(first).click();
    await expect(take(first)).toHaveCount(0);
    const loaded = second.waitForEvent('load', { timeout: 30_000 }).then(
      () => true,
      () => false,
    );
    await take(second).click();
    recordFault(info, {
      fault: '“Update now” in a second tab does nothing',
      tries: 1,
      lost: (await loaded) ? 0 : 1,
      goal: 0,
    });
    await expect(take(second)).toHaveCount(0);
  } finally {
    await context.close();
    await app.close();
  }
});
