import { expect, test } from './maker';
import { shelf } from './pages/shelf';
import { workbook } from './pages/workbook';

test('styles are found by what they must do, and the wish is kept when she comes back', async ({ page }) => {
  await page.goto('./#/new');
  await expect(page.getByText(/^All \d+ styles\.$/)).toBeVisible();
  const lidded = page.getByRole('checkbox', { name: 'Closes with a lid' });
  await lidded.click();
  await expect(lidded).toBeChecked();
  const matching = page.getByText(/^\d+ of \d+ styles match\.$/);
  await expect(matching).toBeVisible();
  await expect(page.getByRole('button', { name: /^Open-top box Treats/ })).toHaveCount(0);
  await page.getByRole('button', { name: /^Box with closing lid/ }).click();
  await expect(page.getByRole('img', { name: /^Net of / })).toBeVisible();
  await page.goBack();
  await expect(page.getByRole('checkbox', { name: 'Closes with a lid' })).toBeChecked();
  await expect(matching).toBeVisible();
});

test('a net of her own is asked about its open lines, carded, laid out and counted', async ({ page }) => {
  await shelf(page).lookAtDemo();
  await shelf(page).addPaper('Cream card, letter');
  await page.getByRole('link', { name: 'New box' }).click();
  await page.getByRole('link', { name: 'I know the style' }).click();
  await page.getByRole('button', { name: 'Import a FOLD file' }).waitFor();
  const nets = page.locator('section', { hasText: 'Import a FOLD file' }).locator('input[type=file]');
  await nets.setInputFiles('tests/fixtures/own-nets/open-cross.fold');
  await expect(page.getByText('2 lines left to choose.')).toBeVisible();
  const questions = page.getByRole('group').filter({ hasText: /^Line \d+, / });
  await expect(questions).toHaveCount(2);
  for (const question of await questions.all()) await question.getByRole('radio', { name: 'valley' }).check();
  await page.getByRole('button', { name: 'Make this box' }).click();
  await expect(page.getByRole('img', { name: /^Net of / })).toContainText('3 in');

  for (const name of ['contents', 'marks', 'dressing', 'handout'] as const) {
    await workbook(page).turnTo(name);
    await expect(page.getByText('This page didn’t load')).toHaveCount(0);
  }
  await workbook(page).turnTo('bench');
  await expect(page.getByText(/^Cut 3 × /).first()).toBeVisible();
  await workbook(page).planBatch('12', 'Cream card, letter');
  await workbook(page).turnTo('sheets');
  await expect(page.getByRole('heading', { name: /sheets? of Cream card, letter$/ })).toBeVisible();
});
