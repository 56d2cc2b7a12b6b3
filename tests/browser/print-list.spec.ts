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
