import { expect, test } from './maker';
import { shelf } from './pages/shelf';
import { workbook } from './pages/workbook';

test('an event goes from a ticked-off shopping list to a finished run sheet, and no tap is lost on the way', {
  tag: ['@phone'],
}, async ({ page }) => {
  test.setTimeout(90_000);
  await shelf(page).openDemo();
  await workbook(page).turnTo('shopping');
  const bought = page.getByRole('checkbox', { name: 'Bought: Oat cardstock, letter' });
  await bought.check();
  await page.getByRole('button', { name: 'Add to supplies: Oat cardstock, letter' }).click();
  await expect(page.getByText(/^1 of \d+ bought$/)).toBeVisible();

  await workbook(page).turnTo('bench');
  await page.getByRole('button', { name: 'Yes, it matches' }).click();
  await page.getByRole('button', { name: /^Fold and burnish/ }).click();
  await page.getByRole('button', { name: '+5', exact: true }).click();
  await page.getByRole('button', { name: 'Spoiled +1' }).click();
  // Gone at once: the tap is in the journal, not in a timer.
  await page.getByRole('button', { name: '+1', exact: true }).click();
  await page.reload();
  await expect(page.getByText('6 of 44 pieces')).toBeVisible();
  await expect(page.getByText('1 piece spoiled')).toBeVisible();
  // Whether it came from the journal or was kept just in time depends on the moment; the note says so.
  for (const note of await page.getByRole('button', { name: 'Dismiss' }).all()) await note.click();

  const next = page.getByRole('button', { name: 'Next', exact: true });
  await page.getByRole('button', { name: /^First box/ }).click();
  for (let step = 0; step < 40 && (await next.isEnabled()); step++) {
    await next.click();
    const ten = page.getByRole('button', { name: '+10', exact: true });
    for (let tap = 0; tap < 30 && (await ten.count()) > 0 && (await ten.isEnabled()); tap++)
      await ten.click();
  }
  await expect(page.getByText('Every box is made.')).toBeVisible();
  await workbook(page).saved();
  await page.reload();
  await expect(page.getByText('Every box is made.')).toBeVisible();
});
