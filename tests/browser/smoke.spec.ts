import { expect, test } from './maker';
import { shelf } from './pages/shelf';
import { PAGES, workbook } from './pages/workbook';

test('the demo opens in one click, every page of it stands, and it is there again after a reload', {
  tag: ['@phone', '@tablet'],
}, async ({ page }) => {
  await shelf(page).openDemo();
  for (const name of PAGES) await workbook(page).turnTo(name);
  await workbook(page).saved();
  await page.reload();
  await expect(page.getByRole('navigation', { name: 'Pages of this workbook' })).toBeVisible();
  await workbook(page).turnTo('shopping');
  await expect(page.getByRole('main')).toContainText('sheet');
});
