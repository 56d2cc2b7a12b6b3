import type { Page } from '@playwright/test';
import { expect, test } from './maker';

test.use({ deviceScaleFactor: 4 });

/**
 * How a colour is seen, row by row for red, green and blue: all grey by the luminance of ITU-R BT.709; without one kind of cone by Machado,
 * Oliveira and Fernandes 2009, severity 1. All from memory.
 */
const EYES = {
  grey: [0.2126, 0.7152, 0.0722, 0.2126, 0.7152, 0.0722, 0.2126, 0.7152, 0.0722],
  protan: [0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998],
  deutan: [0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.01182, 0.04294, 0.968881],
  tritan: [1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.3039],
} as const;

/** Less than this share of all ink between two samples, and a hurried eye takes one for the other. Source: our own. */
const APART = 0.008;

/** The pair of pictures that look most alike to these eyes: mean difference over pixels and colours, 0 to 1. */
const mostAlike = (page: Page, pictures: Record<string, string>, eyes: readonly number[]) =>
  page.evaluate(
    async ([given, matrix]) => {
      const seen: Record<string, number[]> = {};
      for (const [name, data] of Object.entries(given)) {
        const image = new Image();
        image.src = `data:image/png;base64,${data}`;
        await image.decode();
        const canvas = Object.assign(document.createElement('canvas'), { width: 176, height: 64 });
        const brush = canvas.getContext('2d');
        if (!brush) throw new Error('no canvas');
        brush.drawImage(image, 0, 0, 176, 64);
        const { data: pixels } = brush.getImageData(0, 0, 176, 64);
        const out: number[] = [];
        for (let at = 0; at < pixels.length; at += 4)
          for (let row = 0; row < 9; row += 3) {
            const mixed = [0, 1, 2].reduce(
              (sum, channel) => sum + (matrix[row + channel] ?? 0) * (pixels[at + channel] ?? 0),
              0,
            );
            out.push(Math.min(255, Math.max(0, mixed)) / 255);
          }
        seen[name] = out;
      }
      let least = { pair: '', off: 1 };
      const names = Object.keys(seen);
      for (const [place, a] of names.entries())
        for (const b of names.slice(place + 1)) {
          const [one = [], other = []] = [seen[a], seen[b]];
          const off =
            one.reduce((sum, value, at) => sum + Math.abs(value - (other[at] ?? 0)), 0) / one.length;
          if (off < least.off) least = { pair: `${a} and ${b}`, off };
        }
      return least;
    },
    [pictures, eyes] as const,
  );

test('every kind of line is told from every other without colour, in every look', async ({ page }) => {
  await page.goto('./#/help');
  const samples = page.locator('.help-lines tr[data-ink] svg');
  await expect(samples.first()).toBeVisible();
  for (const look of ['light', 'dark', 'contrast']) {
    await page.evaluate((theme) => {
      document.documentElement.dataset['theme'] = theme;
    }, look);
    const pictures: Record<string, string> = {};
    for (const sample of await samples.all()) {
      const name = await sample.evaluate((svg) => svg.closest('tr')?.dataset['ink'] ?? '');
      pictures[name] = (await sample.screenshot()).toString('base64');
    }
    expect(Object.keys(pictures).length).toBeGreaterThan(14);
    for (const [eyes, matrix] of Object.entries(EYES)) {
      const { pair, off } = await mostAlike(page, pictures, matrix);
      expect(off, `${pair}, ${look}, ${eyes}`).toBeGreaterThan(APART);
    }
    // Two that are drawn alike are seen to be.
    const twins = { cut: pictures['cut'] ?? '', twin: pictures['cut'] ?? '' };
    expect((await mostAlike(page, twins, EYES.grey)).off).toBeLessThan(APART);
  }
});
