import { expect, test } from './maker';
import { shelf } from './pages/shelf';
import { workbook } from './pages/workbook';

test('the box of a recipe is made for a family of sizes, as recipes of their own, and one undo takes all of them back', async ({
  page,
}) => {
  await shelf(page).openDemo();
  await workbook(page).turnTo('marks');
  await page.getByText('Compare with another box or style').click();
  await page
    .getByRole('combobox', { name: 'Compare with', exact: true })
    .selectOption('Tray, same inside size');
  await expect(page.getByRole('row', { name: /^Time to fold one/ })).toContainText('minutes');
  await expect(page.getByRole('button', { name: 'Save as a box in this style' })).toBeVisible();
  await page.getByText('Other contents, or a nesting set').click();
  await page.getByRole('combobox', { name: 'Cut from' }).selectOption({ label: 'Press 12 × 18' });
  await page.getByRole('button', { name: 'How many sizes: one fewer' }).click();
  const make = page.getByRole('button', { name: 'Save as 2 boxes' });
  await make.click({ timeout: 40_000 });
  await expect(page).toHaveURL(/#\/recipe\/.*\/box/);
  await page.getByRole('link', { name: /Go to the shelf/ }).click();
  for (const size of ['small', 'large'])
    await expect(page.getByRole('link', { name: new RegExp(`^Seed box, ${size}`) })).toBeVisible();
  await page.keyboard.press('ControlOrMeta+z');
  await expect(page.getByRole('link', { name: /^Seed box, / })).toHaveCount(0);
});
