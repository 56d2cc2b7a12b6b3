import type { Page } from '@playwright/test';
import { findBarriers, overflow, smallTargets } from './barriers';
import { expect, test } from './maker';
import { shelf } from './pages/shelf';
import { PAGES, workbook } from './pages/workbook';

/** Nothing is cut off at 320 px (1280 px seen at 400 %, WCAG 1.4.10), and every control is as large as a thumb at 360 px. */
async function expectRoomForHands(page: Page, name: string): Promise<void> {
  const usual = page.viewportSize();
  await page.setViewportSize({ width: 320, height: 800 });
  await expect.poll(() => overflow(page), { message: `${name} at 320 px` }).toBeLessThanOrEqual(0);
  await page.setViewportSize({ width: 360, height: 800 });
  await expect.poll(() => smallTargets(page, 44), { message: `${name} at 360 px` }).toEqual([]);
  // With glue on the fingers.
  if (name === 'bench') expect(await smallTargets(page, 64, 'main button')).toEqual([]);
  if (usual) await page.setViewportSize(usual);
}

test('the checks for barriers and for thumbs see one each', async ({ page }) => {
  await shelf(page).lookAtDemo();
  await page.evaluate(() => document.body.append(document.createElement('button')));
  expect((await findBarriers(page)).join()).toContain('button-name');
  await page.evaluate(() => {
    document.body.lastElementChild?.append('!');
  });
  expect((await smallTargets(page, 44)).join()).toContain('BUTTON “!”');
});

for (const colorScheme of ['light', 'dark'] as const)
  test(
    `every page in a ${colorScheme} room is without barriers and no wider than the window`,
    {
      tag: ['@phone', '@tablet'],
    },
    async ({ page }, { project }) => {
      const byHand = colorScheme === 'light' && project.name === 'desktop';
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      await shelf(page).lookAtDemo();
      const barriers = { example: await findBarriers(page) } as Record<string, string[]>;
      await page.getByRole('button', { name: 'Make it yours' }).click();
      for (const name of PAGES) {
        await workbook(page).turnTo(name);
        barriers[name] = await findBarriers(page);
        expect(await overflow(page), `${name} is wider than the window`).toBeLessThanOrEqual(0);
        if (byHand) await expectRoomForHands(page, name);
      }
      await page.getByRole('link', { name: /Go to the shelf/ }).click();
      await expect(page.getByRole('heading', { name: 'Shelf' })).toBeVisible();
      barriers['shelf'] = await findBarriers(page);
      if (byHand) await expectRoomForHands(page, 'shelf');
      for (const door of ['Supplies', 'Backup']) {
        await page.getByRole('link', { name: new RegExp(`^${door}`) }).click();
        barriers[door] = await findBarriers(page);
        if (byHand) await expectRoomForHands(page, door);
      }
      await page.getByRole('link', { name: 'More about backups' }).click();
      await expect(page.getByRole('heading', { name: 'Earlier versions' })).toBeVisible();
      barriers['keeping'] = await findBarriers(page);
      expect(await overflow(page), 'safe keeping is wider than the window').toBeLessThanOrEqual(0);
      if (byHand) await expectRoomForHands(page, 'safe keeping');
      await page.keyboard.press('/');
      await page.getByRole('combobox', { name: /^Find a page/ }).fill('help');
      barriers['find and do'] = await findBarriers(page);
      await page.keyboard.press('Enter');
      await expect(page.getByRole('heading', { name: 'A net with its lines' })).toBeVisible();
      barriers['words and lines'] = await findBarriers(page);
      expect(await overflow(page), 'words and lines are wider than the window').toBeLessThanOrEqual(0);
      if (byHand) await expectRoomForHands(page, 'words and lines');
      expect(Object.fromEntries(Object.entries(barriers).filter(([, found]) => found.length > 0))).toEqual(
        {},
      );
    },
  );
