import { expect, test } from './maker';

test.describe('what goes in', { tag: '@phone' }, () => {
  test('boxes for a candle, and one of them opened with all that was typed', async ({ page }) => {
    await page.goto('./#/start');
    await page.getByLabel('Its size').fill('2 x 2 x 3');
    await page.getByLabel('Your paper').fill('12x12, 65 lb, white, $12.99 for 25');
    await page.getByLabel('How many favors?').fill('48');
    const answers = page.locator('.answer');
    await expect(page.getByRole('status').filter({ hasText: 'All 22 styles looked at' })).toBeVisible();
    expect(await answers.count()).toBeGreaterThanOrEqual(5);
    await answers.first().getByRole('button').click();
    await expect(page).toHaveURL(/event\/.*box/);
  });
});
