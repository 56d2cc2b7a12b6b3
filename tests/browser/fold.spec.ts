import type { Page } from '@playwright/test';
import { expect, test } from './maker';
import { shelf } from './pages/shelf';
import { workbook } from './pages/workbook';

const stage = (page: Page) => page.getByRole('img', { name: / in 3D\. / });
const picture = async (page: Page) => (await stage(page).screenshot()).toString('base64');

async function openFold(page: Page) {
  await shelf(page).openDemo();
  await workbook(page).turnTo('fold');
  await expect(stage(page)).toBeVisible();
  // The first picture is drawn: the rulers’ numbers stand on it.
  await expect(page.locator('.fold-labels text')).toHaveCount(3);
}

/** From the press on the tab to the first picture, and how long a frame takes while the box folds by itself. The browser draws in software here. */
async function timesOfFolding(page: Page): Promise<string> {
  await workbook(page).turnTo('box');
  const first = await workbook(page)
    .tab('fold')
    .evaluate(async (tab: HTMLElement) => {
      const start = performance.now();
      tab.click();
      while (document.querySelectorAll('.fold-labels text').length < 3)
        await new Promise((resolve) => requestAnimationFrame(resolve));
      return performance.now() - start;
    });
  const button = page.getByRole('button', { name: 'Fold it', exact: true });
  await button.click();
  const frames = await page.evaluate(async () => {
    const times: number[] = [];
    let last = performance.now();
    for (let i = 0; i < 90; i++) {
      const now = await new Promise<number>((resolve) => requestAnimationFrame(resolve));
      times.push(now - last);
      last = now;
    }
    return times.sort((one, other) => one - other);
  });
  return `first picture in space ${first.toFixed(0)} ms, a frame ${frames[45]?.toFixed(1)} ms, the 95th of a hundred ${frames[85]?.toFixed(1)} ms`;
}

test('the box is folded by mouse and by keyboard, turned, cut open, and every state says itself in words', async ({
  page,
}, info) => {
  await openFold(page);
  const closed = await picture(page);
  await page.getByRole('button', { name: /Fold the front wall over onto it\.$/ }).click();
  await expect(page.getByText('Step 2 of 6 done.').first()).toBeVisible();
  await expect.poll(() => picture(page)).not.toBe(closed);

  const slider = page.getByRole('slider', { name: 'Fold progress' });
  await slider.focus();
  await page.keyboard.press('Home');
  await expect(page.getByText('Flat, cut and scored.').first()).toBeVisible();
  await expect(page.getByRole('button', { name: 'Previous step' })).toBeDisabled();
  const flat = await picture(page);
  await page.keyboard.press('ArrowRight');
  await expect(slider).toHaveAttribute('aria-valuetext', 'Step 1 of 6, 5%.');
  await page.keyboard.press('End');
  await expect(slider).toHaveAttribute('aria-valuetext', 'Closed, after 6 steps.');

  await stage(page).focus();
  const before = await picture(page);
  expect(before).not.toBe(flat);
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => picture(page)).not.toBe(before);
  await page.keyboard.press('0');

  const box = (await stage(page).boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };
  const middle = [box.x + box.width / 2, box.y + box.height / 2] as const;
  const still = await picture(page);
  await page.mouse.move(...middle);
  await page.mouse.down();
  await page.mouse.move(middle[0] + 120, middle[1], { steps: 4 });
  await page.mouse.up();
  await expect.poll(() => picture(page)).not.toBe(still);
  const whole = await picture(page);
  await page.getByRole('checkbox', { name: 'Cut open' }).click();
  await expect.poll(() => picture(page)).not.toBe(whole);

  await page.getByText('Angles now').click();
  await expect(page.getByRole('row', { name: /^front flap/ })).toContainText('90°');
  info.annotations.push({ type: 'measured', description: await timesOfFolding(page) });
});

test('the box is folded by touch', { tag: ['@phone'] }, async ({ page, isMobile }) => {
  test.skip(!isMobile, 'by touch only');
  await openFold(page);
  const closed = await picture(page);
  await page.getByRole('button', { name: 'Previous step' }).tap();
  await expect(page.getByText('Step 6 of 6, 50%.').first()).toBeVisible();
  await expect.poll(() => picture(page)).not.toBe(closed);
});

test('where the browser draws nothing in space, a line drawing folds in its place', async ({ page }) => {
  await page.addInitScript(() => {
    const real: (this: HTMLCanvasElement, kind: string, ...more: unknown[]) => unknown = Reflect.get(
      HTMLCanvasElement.prototype,
      'getContext',
    );
    Reflect.set(
      HTMLCanvasElement.prototype,
      'getContext',
      function (this: HTMLCanvasElement, kind: string, ...more: unknown[]) {
        return kind.startsWith('webgl') ? null : real.call(this, kind, ...more);
      },
    );
  });
  await shelf(page).openDemo();
  await workbook(page).turnTo('fold');
  await expect(page.getByRole('img', { name: 'Box, closed' })).toBeVisible();
  await page.getByRole('button', { name: 'Flat, cut and scored.' }).click();
  await expect(page.getByRole('img', { name: 'Box, flat' })).toBeVisible();
});
