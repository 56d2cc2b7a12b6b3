import type { Page } from '@playwright/test';

/** The first page: what a maker has. */
export const shelf = (page: Page) => ({
  open: () => page.goto('./'),
  /** The invented event, read in by one click; leaves the maker on its first page. */
  async openDemo(): Promise<void> {
    await page.goto('./');
    await page.getByRole('button', { name: 'Open the demo' }).click();
    await page.getByRole('navigation', { name: 'Pages of this workbook' }).waitFor();
  },
});
