import { expect, test } from './maker';
import { shelf } from './pages/shelf';
import { workbook } from './pages/workbook';

test('a maker adds a tip and a photo, saves the page for a telephone, and a friend keeps the recipe from its link', async ({
  page,
  browser,
}) => {
  await shelf(page).openDemo();
  await workbook(page).turnTo('handout');
  await page.getByRole('button', { name: 'Add a tip' }).click();
  await page.getByRole('textbox', { name: 'Tip' }).last().fill('Score twice, lightly.');
  const photo = await page.evaluate(async () => {
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [2400, 1200];
    canvas.getContext('2d')?.fillRect(10, 10, 500, 500);
    const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
    return [...new Uint8Array((await blob?.arrayBuffer()) ?? new ArrayBuffer())];
  });
  await page
    .locator('input[type=file][accept="image/*"]')
    .setInputFiles({ name: 'table.png', mimeType: 'image/png', buffer: Buffer.from(photo) });
  const shown = page.getByRole('img', { name: 'Seed box', exact: true }).last();
  await expect(shown).toHaveAttribute('width', '1280');

  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a web page (for phones)' }).click();
  const html = await (await (await download).createReadStream()).toArray();
  const text = Buffer.concat(html as Buffer[]).toString();
  expect(text).toContain('Score twice, lightly.');
  expect(text).toContain('data:image/jpeg;base64,');

  const link = await page.getByRole('textbox', { name: 'Send the box' }).inputValue();
  expect(link).toContain('#v2.');
  const friend = await browser.newContext({ serviceWorkers: 'block' });
  try {
    const there = await friend.newPage();
    await there.goto(link);
    await expect(there.getByRole('heading', { name: 'Someone sent you “Seed box”' })).toBeVisible();
    await there.getByRole('button', { name: 'Import', exact: true }).click();
    await expect(there.getByRole('textbox', { name: 'Width', exact: true })).toHaveValue('3 1/2');
    await workbook(there).turnTo('handout');
    await expect(there.getByRole('textbox', { name: 'Tip' }).last()).toHaveValue('Score twice, lightly.');
    await there.goto(link.slice(0, -9));
    await expect(there.getByRole('heading', { name: 'This link has no box in it' })).toBeVisible();
  } finally {
    await friend.close();
  }
});
