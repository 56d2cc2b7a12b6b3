import type { Locator } from '@playwright/test';
import { expect, test } from './maker';
import { shelf } from './pages/shelf';
import { workbook } from './pages/workbook';

test('a maker who comes back prints the card of a box she has in three inputs', async ({ page }) => {
  await shelf(page).openDemo();
  await page.goto('./#/');
  let inputs = 0;
  const press = async (target: Locator) => {
    inputs++;
    await target.click();
  };
  await press(page.getByRole('link', { name: /^Seed box/ }));
  await press(workbook(page).tab('bench'));
  const made = page.evaluate(
    () =>
      new Promise<string>((resolve) => {
        const create = URL.createObjectURL.bind(URL);
        URL.createObjectURL = (file: Blob) => {
          void file.text().then((text) => resolve(text.slice(0, 5)));
          return create(file);
        };
      }),
  );
  await press(page.getByRole('button', { name: 'Print the step card' }));
  expect(await made).toBe('%PDF-');
  expect(inputs).toBeLessThanOrEqual(3);
});

test('twelve truffles of 28 mm in paper cups come to a tray on easy marks and its card, in at most eight inputs', async ({
  page,
}) => {
  let inputs = 0;
  const input = async (act: Promise<unknown>) => {
    inputs++;
    await act;
  };
  await page.goto('./#/new');
  await input(
    page
      .getByRole('button', { name: /^Tray(?! with)/ })
      .first()
      .click(),
  );
  await input(workbook(page).turnTo('contents'));
  const list = page.getByRole('combobox', { name: 'Add an item from the list' });
  await input(list.selectOption({ label: 'Chocolate truffle, 28 mm, in its cup' }));
  await input(page.getByRole('textbox', { name: 'How many per box' }).fill('12'));

  // Hand-worked: four by three balls of 28 mm are 112 × 84 × 28 mm; with 1/16 in of air 4 15/32 × 3 3/8 × 1 11/64 in.
  const flat = page.getByRole('article').filter({ hasText: 'one layer, 3 in a row' });
  await expect(flat.getByRole('img')).toBeVisible();
  await input(flat.getByRole('button', { name: 'Find easy sizes for this' }).click());

  const card = page.locator('.easy-card').first();
  await expect(card).toContainText(/(whole-inch|½ in|¼ in) marks/);
  await input(card.getByRole('button', { name: /^Use it/ }).click());
  await expect(page.locator('.easy-card').filter({ hasText: 'In use' })).toHaveCount(1);

  await input(workbook(page).turnTo('bench'));
  await expect(page.getByRole('button', { name: 'Print the step card' })).toBeVisible();
  expect(inputs).toBeLessThanOrEqual(8);
});
