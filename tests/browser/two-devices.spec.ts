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
