import { readFile } from 'node:fs/promises';
import { expect, type Page } from '@playwright/test';
import { test } from './maker';
import { madeFile } from './pages/made-file';
import { shelf } from './pages/shelf';
import { workbook } from './pages/workbook';

const size = (page: Page, label: string) => page.getByRole('textbox', { name: label, exact: true });

test('a maker goes from a new box to a bench card, forty favors and a shopping list, and finds it all tomorrow', async ({
  page,
}) => {
  await shelf(page).lookAtDemo();
  await shelf(page).addPaper('Cream card, letter', '7.50');

  await page.getByRole('link', { name: 'New box' }).click();
  await page.getByRole('link', { name: 'I know the style' }).click();
  await page.getByRole('button', { name: /^Open-top box Treats/ }).click();
  await page.getByRole('textbox', { name: 'Name of this box' }).fill('Soap box');
  await page.keyboard.press('Enter');
  await size(page, 'Width').fill('3 1/2');
  await size(page, 'Depth').fill('1-1/2');
  await size(page, 'Height').fill('3');
  await page.keyboard.press('Enter');
  await page.getByRole('combobox', { name: 'Paper', exact: true }).selectOption('Cream card, letter');

  // Common practice, no source: this box with flaps 1/4 in shorter, from an 11 × 4 1/4 in piece; its scores lie at 3 1/2, 5, 8 1/2, 10 and 3.
  const net = page.getByRole('img', { name: /^Net of Box/ });
  await expect(net).toContainText('11 × 4¼ in');
  for (const mark of ['3½', '5', '8½', '10'])
    await expect(net.getByText(mark, { exact: true })).toBeVisible();

  await workbook(page).turnTo('bench');
  const card = await madeFile(page, () => page.getByRole('button', { name: 'Print the step card' }).click());
  expect(String.fromCharCode(...card.subarray(0, 5))).toBe('%PDF-');
  expect(card.length).toBeGreaterThan(5000);

  await workbook(page).planBatch('40');
  await expect(page.getByRole('definition').filter({ hasText: '40 needed + 4 spares' })).toContainText('44');

  await workbook(page).turnTo('sheets');
  // 8 1/2 in of the sheet are twice 4 1/4: 44 pieces from 22 sheets.
  await expect(page.getByRole('heading', { name: '22 sheets of Cream card, letter' })).toBeVisible();
  await expect(page.getByText('This is the fewest sheets possible.')).toBeVisible();

  await workbook(page).turnTo('shopping');
  const row = page.getByRole('row', { name: /Cream card, letter/ });
  await expect(row).toContainText('1 × pack of 25');
  await expect(row).toContainText('$7.50');
  const table = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a table (CSV)' }).click();
  expect(await readFile(await (await table).path(), 'utf8')).toContain('Cream card');

  await workbook(page).saved();
  await page.reload();
  await expect(page.getByRole('row', { name: /Cream card, letter/ })).toContainText('$7.50');
  await page.goto('./#/');
  await expect(page.getByRole('link', { name: /^Soap box Open-top box/ })).toBeVisible();
  await expect(page.getByRole('link', { name: /^Soap box batch.*40 \+ 4 spares/ })).toBeVisible();
});
