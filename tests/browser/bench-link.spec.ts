import type { Page } from '@playwright/test';
import { expect, test } from './maker';
import { shelf } from './pages/shelf';
import { workbook } from './pages/workbook';
import { device, linkFor, servedApp, share } from './shared-devices';

const count = async (on: Page, more: '+1' | '+10', times: number) => {
  const button = on.getByRole('button', { name: more, exact: true });
  for (let tap = 0; tap < times; tap++) await button.click();
};

test('two phones count to 1,000 by a bench link, also while the server is dead, and neither sees more than the batch', async ({
  browser,
}) => {
  const served = await servedApp();
  const [laptop, one, two] = [
    await device(browser),
    await device(browser, 'phone'),
    await device(browser, 'phone'),
  ];
  await laptop.goto(`${served.origin}/`);
  await laptop.locator('.workbook').waitFor();
  await laptop.getByRole('button', { name: 'Make it yours' }).click();
  await laptop.getByRole('textbox', { name: 'How many of Seed box' }).fill('1000');
  await workbook(laptop).saved();
  const event = laptop.url();
  await share(laptop, served.origin, 'Laptop');
  const link = await linkFor(laptop, 'helpers');
  expect(link).toMatch(/#\/bench\/[\w-]{22}\.[\w-]{43}\.[\w-]{43}$/);

  for (const phone of [one, two]) {
    await phone.goto(link);
    await expect(phone.getByRole('heading', { name: 'Village seed-swap supper' })).toBeVisible();
    await expect(phone.getByText('Connected.')).toBeVisible();
    await expect(phone.getByRole('link')).toHaveCount(0);
    await expect(phone.getByText('Blade: cut away from your fingers').first()).toBeVisible();
    await phone.getByRole('button', { name: /^Fold and burnish/ }).click();
  }
  await Promise.all([one, two].map((phone) => count(phone, '+1', 20)));
  await expect(one.getByText(/^40 of 1,100 pieces/)).toBeVisible();
  await expect(one.getByText('The host has all your counts.')).toBeVisible();

  await served.kill();
  await expect(one.getByText('Offline.')).toBeVisible();
  await Promise.all([one, two].map((phone) => count(phone, '+10', 47)));
  await expect(one.getByText(/Your counts of 1 step aren’t sent yet/)).toBeVisible();
  await served.again();
  await Promise.all([one, two].map((phone) => count(phone, '+1', 10)));
  for (const phone of [one, two]) {
    await expect(phone.getByText(/^1,?000 of 1,100 pieces/)).toBeVisible();
    await expect(phone.getByText('The host has all your counts.')).toBeVisible();
  }
  // The page opened again knows what was counted on it.
  await two.reload();
  await expect(two.getByText(/^1,?000 of 1,100 pieces/)).toBeVisible();

  await expect(laptop.getByText('2 helpers counted.')).toBeVisible();
  await laptop.goto(event.replace(/\/event$/, '/bench'));
  await laptop.getByRole('button', { name: /^Fold and burnish/ }).click();
  await expect(laptop.getByText(/^1,?000 of 1,100 pieces/)).toBeVisible();

  // The phone has no shelf of anybody's, and the rest of the app is as on a first visit.
  const databases = await one.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name));
  expect(databases.some((name) => name?.endsWith('.sharing'))).toBe(false);

  await laptop.goto(`${served.origin}/#/keeping`);
  await laptop.getByRole('button', { name: /^Withdraw/ }).click();
  await laptop.getByRole('button', { name: /^Withdraw Village/ }).click();
  await expect(one.getByText('This link was withdrawn')).toBeVisible();
  await expect(one.getByRole('button', { name: '+1', exact: true })).toHaveCount(0);
  for (const page of [laptop, one, two]) await page.context().close();
  await served.end();
});

test('a learner reads the steps of a class as they change, and can press nothing that changes them', async ({
  browser,
}) => {
  const served = await servedApp();
  const [laptop, phone] = [await device(browser), await device(browser, 'phone')];
  await laptop.goto(`${served.origin}/`);
  await laptop.locator('.workbook').waitFor();
  await laptop.getByRole('button', { name: 'Make it yours' }).click();
  await share(laptop, served.origin, 'Laptop');
  await phone.goto(await linkFor(laptop, 'learners'));
  await expect(phone.getByText('You see the newest version the host has sent.')).toBeVisible();
  await expect(phone.getByText(/^Step 1 of \d+/).first()).toBeVisible();
  for (const name of ['+1', 'Print', 'Undo', 'Spoiled +1'])
    await expect(phone.getByRole('button', { name, exact: true })).toHaveCount(0);
  await expect(phone.getByRole('link')).toHaveCount(0);
  await served.kill();
  await expect(phone.getByText('Offline.')).toBeVisible();
  await phone.getByRole('button', { name: 'Next', exact: true }).click();
  await expect(phone.getByText(/^Step 2 of \d+/).first()).toBeVisible();
  for (const page of [laptop, phone]) await page.context().close();
  await served.end();
});

test('what carries rows is fetched when it is asked for, and by nobody before', async ({ page }) => {
  const scripts: string[] = [];
  page.on('response', (response) => {
    if (response.url().endsWith('.js')) void response.text().then((text) => scripts.push(text));
  });
  // A sentence of the merging library: https://github.com/yjs/yjs prints it where it is loaded twice.
  const carries = () => scripts.filter((text) => text.includes('Yjs was already imported')).length;
  await shelf(page).openDemo();
  for (const name of ['sheets', 'shopping', 'bench'] as const) await workbook(page).turnTo(name);
  await page.goto('./#/keeping');
  await expect(page.getByRole('button', { name: 'Check for a sharing server' })).toBeVisible();
  // What is fetched late counts as well.
  await page.waitForLoadState('networkidle');
  expect(scripts.length).toBeGreaterThan(3);
  expect(carries()).toBe(0);
  await page.getByRole('button', { name: 'Check for a sharing server' }).click();
  await expect(page.getByText(/This address has no sharing server/)).toBeVisible();
  await expect.poll(carries).toBe(1);
});
