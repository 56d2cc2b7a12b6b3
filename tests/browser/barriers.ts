import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from '@playwright/test';
import type { AxeResults } from 'axe-core';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const WCAG = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** What a page does against WCAG 2.2 AA, as far as axe-core can see: rule and the first element that breaks it. */
export async function findBarriers(page: Page): Promise<string[]> {
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

/** How far a page is wider than its window, in CSS pixels. */
export const overflow = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** Controls smaller than a thumb, as shown; a link within a sentence, and one that only eyes do not see, may be. */
export const smallTargets = (
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
