import { expect, test } from './maker';
import { shelf } from './pages/shelf';
import { PAGES, workbook } from './pages/workbook';

test('the first time, the example opens by itself; nothing typed in it changes it until it is made one’s own', async ({
  page,
}) => {
  await shelf(page).lookAtDemo();
  await page.getByRole('button', { name: 'Next hint' }).click();
  await expect(page.getByText('2 of 3')).toBeVisible();
  await page.getByRole('button', { name: 'No more hints' }).click();
  await expect(page.getByText('2 of 3')).toBeHidden();
  await workbook(page).turnTo('box');
  const width = page.getByRole('textbox', { name: 'Width', exact: true });
  await expect(width).toHaveValue('3 1/2');
  await width.fill('4');
  await width.blur();
  const note = page.getByText(/is an example and can’t be changed/);
  await expect(note).toBeVisible();
  await expect(width).toHaveValue('3 1/2');
  await page.getByRole('button', { name: 'Make it yours' }).first().click();
  await expect(note).toBeHidden();
  await width.fill('4');
  await width.blur();
  await expect(width).toHaveValue('4');
});

test('the demo opens in one click, every page of it stands, and it is there again after a reload', {
  tag: ['@phone', '@tablet'],
}, async ({ page }) => {
  await shelf(page).openDemo();
  for (const name of PAGES) await workbook(page).turnTo(name);
  await workbook(page).saved();
  await page.reload();
  await expect(page.getByRole('navigation', { name: 'Pages' })).toBeVisible();
  await workbook(page).turnTo('shopping');
  await expect(page.getByRole('main')).toContainText('sheet');
});
