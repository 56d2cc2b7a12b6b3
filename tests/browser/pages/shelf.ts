import type { Page } from '@playwright/test';

/** The first page: what a maker has. */
export const shelf = (page: Page) => ({
  /** The invented event, as it opens by itself the first time. */
  async lookAtDemo(): Promise<void> {
    await page.goto('./');
    await page.locator('.workbook').waitFor();
  },
  /** The same, made the maker's own by one click; leaves her on its first page. */
  async openDemo(): Promise<void> {
    await this.lookAtDemo();
    await page.getByRole('button', { name: 'Make it yours' }).click();
  },
  /** From a workbook: a paper of this name among the supplies, sold by the usual pack if its price is given. */
  async addPaper(name: string, packPrice?: string): Promise<void> {
    await page.getByRole('link', { name: 'Go to the shelf' }).click();
    await page.getByRole('link', { name: /^Supplies/ }).click();
    await page.getByRole('button', { name: 'Add a paper' }).click();
    await page.getByRole('textbox', { name: 'Name' }).fill(name);
    if (packPrice !== undefined) {
      await page.getByRole('button', { name: 'Add a pack' }).click();
      await page.getByRole('textbox', { name: 'Price per pack' }).fill(packPrice);
    }
    await page.getByRole('button', { name: 'Done' }).click();
  },
});
