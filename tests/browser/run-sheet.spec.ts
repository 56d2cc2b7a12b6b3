import { expect, test } from './maker';
import { shelf } from './pages/shelf';
import { workbook } from './pages/workbook';

test('an event goes from a ticked-off shopping list to a finished run sheet, and no tap is lost on the way', {
  tag: ['@phone'],
}, async ({ page }) => {
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

test('on a small phone, upright and on its side, a step shows its picture and every button, and the timer outlives a reload', async ({
  page,
}) => {
  await page.setViewportSize({ width: 360, height: 640 });
  await shelf(page).openDemo();
  await workbook(page).turnTo('bench');
  await page.getByRole('button', { name: /^Score all/ }).click();
  await page.getByRole('button', { name: 'Start the timer' }).click();
  const picture = page.locator('.bench-step-picture svg').first();
  const acts = page.locator('.bench-acts');
  const one = page.getByRole('button', { name: '+1', exact: true });
  const next = page.getByRole('button', { name: 'Next', exact: true });
  for (const [width, height] of [
    [360, 640],
    [640, 360],
    [820, 1180],
    [1440, 900],
  ] as const) {
    await page.setViewportSize({ width, height });
    await page.getByRole('button', { name: /^Slit and cut/ }).click();
    await page.getByRole('button', { name: /^Score all/ }).click();
    const places: unknown[] = [];
    for (let step = 0; step < 4; step++) {
      await expect(picture).toBeInViewport({ ratio: 0.9 });
      await expect(acts).toBeInViewport({ ratio: 0.99 });
      // The buttons stand below the picture, and hide nothing of it; on a wide screen they stand beside it.
      const [drawn, pressed] = [await picture.boundingBox(), await acts.boundingBox()];
      const below = width < 1024 ? (pressed?.y ?? 0) + 1 : height;
      expect((drawn?.y ?? 0) + (drawn?.height ?? height), `${width} × ${height}`).toBeLessThanOrEqual(below);
      places.push([await one.boundingBox(), await next.boundingBox()]);
      await next.click();
    }
    expect(new Set(places.map((place) => JSON.stringify(place))).size, `${width} × ${height}`).toBe(1);
  }
  await workbook(page).saved();
  await page.reload();
  await expect(page.getByRole('button', { name: 'Stop the timer' })).toBeVisible();
  await expect(page.getByRole('timer')).not.toHaveText('0:00');
  await page.keyboard.press('+');
  await expect(page.getByText(/^1 of 44 pieces/)).toBeVisible();
});
