import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from '@playwright/test';
import type { AxeResults } from 'axe-core';
import { expect, test } from './maker';
import { shelf } from './pages/shelf';
import { PAGES, workbook } from './pages/workbook';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const WCAG = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** What a page does against WCAG 2.2 AA, as far as axe-core can see: rule and the first element that breaks it. */
async function findBarriers(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  const { violations } = await page.evaluate(
    (tags) =>
      (window as unknown as { axe: { run: (options: unknown) => Promise<AxeResults> } }).axe.run({
        runOnly: { type: 'tag', values: tags },
      }),
    WCAG,
  );
  return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`);
}

const overflow = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** Controls smaller than a thumb, as shown; a link within a sentence, and one that only eyes do not see, may be. */
const smallTargets = (
  page: Page,
  least: number,
  kinds = 'button, a[href], input, select, textarea, summary',
) =>
  page.evaluate(
    ([px, wanted]) =>
      [...document.querySelectorAll<HTMLElement>(wanted)].flatMap((control) => {
        const { display, clipPath } = getComputedStyle(control);
        const boxes = [control, control.closest('label')].flatMap(
          (each) => each?.getBoundingClientRect() ?? [],
        );
        const width = Math.max(...boxes.map((box) => box.width));
        const height = Math.max(...boxes.map((box) => box.height));
        const unseen =
          !control.checkVisibility({ visibilityProperty: true }) || width < 2 || clipPath !== 'none';
        if (unseen || (control.tagName === 'A' && display === 'inline')) return [];
        if (width >= px - 0.5 && height >= px - 0.5) return [];
        const name = control.getAttribute('aria-label') ?? control.textContent;
        return [
          `${control.tagName} “${name.trim().slice(0, 40)}” ${Math.round(width)} × ${Math.round(height)}`,
        ];
      }),
    [least, kinds] as const,
  );

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
