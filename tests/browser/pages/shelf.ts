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
});
