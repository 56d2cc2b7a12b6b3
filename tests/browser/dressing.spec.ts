import { expect } from '@playwright/test';
import { test } from './maker';
import { shelf } from './pages/shelf';
import { workbook } from './pages/workbook';

test('a box is given a liner, a layer, a ribbon and a tag, forty of it in two colours, and all of it is counted', async ({
  page,
}) => {
  await shelf(page).openDemo();
  const book = workbook(page);
  await book.turnTo('dressing');
  await page.getByRole('button', { name: 'Add a look' }).click();
  await page.getByRole('textbox', { name: 'Name of this look' }).fill('Wedding');
  for (const what of ['Liner', 'Layer', 'Tag or label', 'Ribbon both ways'])
    await page.getByRole('button', { name: what, exact: true }).click();

  // Common practice: 1/8 in of reveal on a 3 1/2 × 3 in wall. The bow: 2 loops of 2, tails of 2 1/2, 1 1/2 for the knot.
  const layer = page.getByRole('listitem').filter({ hasText: /^Layer/ });
  await expect(layer).toContainText('cut 3¼ × 2¾ in');
  await layer.getByText('Layer', { exact: true }).click();
  await expect(layer).toContainText('Across: 3½ in − ⅛ in − ⅛ in = 3¼ in');
  const ribbon = page.getByRole('listitem').filter({ hasText: /^Ribbon both ways/ });
  await ribbon.getByText('Ribbon both ways', { exact: true }).click();
  await expect(ribbon).toContainText('= 14½ in.');
  await expect(page.getByRole('img', { name: /^Map of Box/ })).toContainText('seam');

  // It follows the box: half an inch wider is half an inch more layer.
  await book.turnTo('box');
  await page.getByRole('textbox', { name: 'Width', exact: true }).fill('4');
  await page.keyboard.press('Enter');
  await book.turnTo('dressing');
  await page.getByRole('radio', { name: 'Wedding' }).click();
  await expect(layer).toContainText('cut 3¾ × 2¾ in');
  await page.getByRole('button', { name: 'Undo' }).first().click();

  await book.turnTo('event');
  await page.getByRole('button', { name: 'Add Seed box in another color' }).click();
  const papers = page.getByRole('combobox', { name: /^Paper.*Seed box/ });
  await expect(papers).toHaveCount(2);
  await papers.nth(1).selectOption({ index: 1 });
  for (const at of [0, 1]) {
    await page.getByRole('textbox', { name: 'How many of Seed box' }).nth(at).fill('20');
    await page
      .getByRole('combobox', { name: /^Look.*Seed box/ })
      .nth(at)
      .selectOption('Wedding');
  }
  // 20 and one in ten of it, twice.
  await expect(page.getByRole('definition').filter({ hasText: '40 needed + 4 spares' })).toContainText('44');
  await expect(page.getByRole('img', { name: /^Stages by day/ })).toBeVisible();

  await book.turnTo('sheets');
  await expect(page.getByText('Seed box: Layer').first()).toBeVisible();
  await expect(page.getByText('Seed box: Tag or label').first()).toBeVisible();
});

test('a class of twelve kits knows what one kit holds, and prints a label for each', async ({ page }) => {
  await shelf(page).openDemo();
  await workbook(page).turnTo('event');
  await page.getByRole('textbox', { name: 'How many of Seed box' }).fill('2');
  await page.getByText('Kits for a class', { exact: true }).click();
  await page.getByRole('radio', { name: 'kits for a class' }).click();
  await expect(page.getByRole('textbox', { name: 'Kits', exact: true })).toHaveValue('12');
  const table = page.getByRole('table', { name: /^In one kit/ });
  // Twelve kits and one in ten, whole kits: two spare. Two boxes to a kit.
  await expect(table).toContainText('12 kits and 2 spare: 14 to pack.');
  await expect(table.getByRole('row', { name: /^Seed box: Box/ })).toContainText('28');

  const made = page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        const create = URL.createObjectURL.bind(URL);
        URL.createObjectURL = (file: Blob) => {
          URL.createObjectURL = create;
          resolve(file.size);
          return create(file);
        };
      }),
  );
  await page.getByRole('button', { name: 'Print the pick list and labels' }).click();
  expect(await made).toBeGreaterThan(5000);
});
