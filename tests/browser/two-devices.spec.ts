import { readFileSync } from 'node:fs';
import { expect, test } from './maker';
import { keptRecipe } from './pages/kept-recipe';
import { device, joinBy, servedApp, share } from './shared-devices';

test('two devices share a shelf by link, work apart without the server, and are equal when it is back', async ({
  browser,
}) => {
  const served = await servedApp();
  const { origin } = served;
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
  await served.kill();
  await mine.width.fill('75');
  await theirs.depth.fill('44');
  await Promise.all([mine.saved(), theirs.saved()]);
  await served.again();
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
  await served.end();
});

test('a device that has work of its own gets a backup of it before it joins, and keeps it', async ({
  browser,
}) => {
  const served = await servedApp();
  const [laptop, phone] = [await device(browser), await device(browser)];
  await keptRecipe(laptop).make(served.origin);
  await keptRecipe(phone).make(served.origin);
  await keptRecipe(phone).keep(83);
  const at = phone.url();
  const link = await share(laptop, served.origin, 'Laptop');
  await phone.goto(link);
  await expect(phone.getByText('Your browser saves a backup of this device first.')).toBeVisible();
  const saved = phone.waitForEvent('download');
  await phone.getByRole('button', { name: 'Join', exact: true }).click();
  const path = await (await saved).path();
  const file = JSON.parse(readFileSync(path, 'utf8')) as { recipes: { sizesMm: { width?: number } }[] };
  expect(file.recipes.map(({ sizesMm }) => sizesMm.width)).toEqual([83]);
  await expect(phone.getByText('Connected.')).toBeVisible();
  await phone.goto(at);
  await expect(keptRecipe(phone).width).toHaveValue('83');
  // The other device has both boxes now.
  await laptop.goto(`${served.origin}/#/`);
  await expect(laptop.getByRole('link', { name: /Open-top box/ })).toHaveCount(2);
  for (const page of [laptop, phone]) await page.context().close();
  await served.end();
});
