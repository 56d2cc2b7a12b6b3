import { expect, test } from './maker';
import { madeFile } from './pages/made-file';
import { shelf } from './pages/shelf';
import { PAGES, workbook } from './pages/workbook';

test('Print lists every document on every page, one press makes one, and Back closes the list first', async ({
  page,
}) => {
  await shelf(page).lookAtDemo();
  const list = page.getByRole('dialog', { name: 'Print' });
  const open = () => page.getByRole('banner').getByRole('button', { name: 'Print' }).click();
  for (const name of PAGES) {
    await workbook(page).turnTo(name);
    const address = page.url();
    await open();
    await expect(list.getByRole('listitem')).toHaveCount(18);
    await page.goBack();
    await expect(list).toBeHidden();
    expect(page.url()).toBe(address);
  }
  await open();
  const card = await madeFile(page, () => list.getByRole('button', { name: 'Print the step card' }).click());
  expect(String.fromCharCode(...card.slice(0, 5))).toBe('%PDF-');
  const download = page.waitForEvent('download');
  await list.getByRole('button', { name: 'Save the net as SVG' }).click();
  expect((await download).suggestedFilename()).toMatch(/\.svg$/);
  // What a document still needs leads to where it is given; Back from there leads to the page, not to the list.
  await list.getByRole('button', { name: 'Count in kits first' }).first().click();
  await expect(page).toHaveURL(/\/event$/);
  await page.goBack();
  await expect(page).toHaveURL(/\/handout/);
  await expect(list).toBeHidden();

  // The same from the list of everything that can be done, where Back closes that one.
  await page.keyboard.press('/');
  await page.getByRole('dialog').getByRole('combobox').fill('everything that prints');
  await page.keyboard.press('Enter');
  await expect(list).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.locator('dialog')).toHaveCount(0);
  await expect(page).toHaveURL(/\/handout/);

  await page.getByRole('link', { name: /to the shelf/i }).click();
  await open();
  await expect(list).toContainText('Open a box or an event first');
});

test.describe('on a phone', () => {
  test.use({ viewport: { width: 390, height: 844 } });

  test('Back closes the settings first, and whatever closes them leaves no step behind', async ({ page }) => {
    await shelf(page).lookAtDemo();
    await workbook(page).turnTo('bench');
    const address = page.url();
    const settings = page.locator('#preferences');
    const steps = () => page.evaluate(() => history.length);
    const open = async () => {
      await page.getByRole('button', { name: 'Settings' }).click();
      await expect(settings).toBeVisible();
      await page.waitForFunction(() => history.state?.usr?.asked === 'preferences');
    };
    const closed = async () => {
      await expect(settings).toBeHidden();
      await page.waitForFunction(() => history.state?.usr?.asked !== 'preferences');
      expect(page.url()).toBe(address);
    };
    await open();
    const length = await steps();
    await page.goBack();
    await closed();
    for (const close of [
      () => page.keyboard.press('Escape'),
      () => page.getByRole('button', { name: 'Settings' }).click(),
      () => page.mouse.click(20, 600),
    ]) {
      await open();
      await close();
      await closed();
      expect(await steps()).toBe(length);
    }
    // A press on what lies beside them leads on, and Back from there leads to the page alone.
    await open();
    await page
      .getByRole('navigation', { name: 'Places' })
      .getByRole('link', { name: /^Count/ })
      .click();
    await expect(page).toHaveURL(/\/event\?/);
    await page.goBack();
    await closed();
    await open();
    await page.getByRole('button', { name: 'Search' }).click();
    await expect(page.getByRole('dialog', { name: 'Search' })).toBeVisible();
    await page.goBack();
    await expect(page.locator('dialog')).toHaveCount(0);
    await closed();
  });
});
