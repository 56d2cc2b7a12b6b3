import { expect, type Page } from '@playwright/test';

/** One open-top box whose width is typed over and over, in millimetres: the smallest thing that can be lost. */
export const keptRecipe = (page: Page) => {
  const width = page.getByRole('textbox', { name: 'Width', exact: true });
  const status = page.getByRole('banner').locator('.save-state');
  const depth = page.getByRole('textbox', { name: 'Depth', exact: true });
  return {
    width,
    depth,
    status,
    async make(origin: string): Promise<void> {
      await page.goto(new URL('#/new', origin).href);
      const openTop = page.getByRole('button', { name: /^Open-top box Treats/ });
      // Settings are read while the page opens; a unit chosen before that would be overtaken.
      await openTop.waitFor();
      const millimetres = page.getByRole('radio', { name: 'Millimeters' });
      await millimetres.click();
      await expect(millimetres).toBeChecked();
      await openTop.click();
      await expect(width).toBeVisible();
      await this.saved();
    },
    saved: () => expect(status).toHaveText('Saved'),
    /** Types a width and waits until the page says that it is kept. */
    async keep(mm: number): Promise<void> {
      await width.fill(String(mm));
      await this.saved();
    },
    async shown(): Promise<number> {
      await expect(width).toBeVisible();
      return Number(await width.inputValue());
    },
  };
};
