import { expect, test } from './maker';
import { shelf } from './pages/shelf';
import { workbook } from './pages/workbook';

test('a proof opens to plain words, every cut is a step, and outlines laid into one another say what they gain', async ({
  page,
}) => {
  await shelf(page).openDemo();
  await workbook(page).turnTo('sheets');
  await expect(page.getByRole('heading', { name: /^\d+ sheets of / }).first()).toBeVisible();
  await page.getByText('This is the fewest sheets possible.').first().click();
  await expect(page.getByText(/^Double-checked/).first()).toBeVisible();

  const step = page.getByText(/^Cut \S+ of \d+$/).first();
  const first = await step.textContent();
  await page.getByRole('button', { name: 'Next cut' }).first().click();
  await expect(step).not.toHaveText(first ?? '');

  await page.getByRole('combobox', { name: 'Try' }).selectOption('A different sheet size');
  await expect(page.getByText(/→ \d+ sheets?: /)).toBeVisible();

  await page
    .getByRole('button', { name: /^Add to supplies/ })
    .first()
    .click();
  await expect(page.getByText(/\d+ in your supplies/).first()).toBeVisible();
  await page.getByRole('button', { name: /^Undo/ }).first().click();
  await expect(page.getByText(/\d+ in your supplies/)).toHaveCount(0);

  await page.getByRole('button', { name: 'Nest them' }).click();
  await expect(page.getByText('Not for a trimmer').first()).toBeVisible();
  await expect(page.getByRole('button', { name: 'Save as PDF' })).toBeVisible({ timeout: 60_000 });
});
