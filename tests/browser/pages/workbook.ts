import { expect, type Page } from '@playwright/test';
import { PAGES, type PageName, PLACES, type PlaceName, placeOf } from '../../../src/ui/frame/pages';

export { PAGES };

const TITLES: Readonly<Record<PageName, RegExp>> = {
  contents: /^Inside/,
  box: /^Size/,
  fold: /^Fold/,
  marks: /^Easy sizes/,
  dressing: /^Decorate/,
  event: /^Count/,
  sheets: /^Sheets/,
  shopping: /^Shopping/,
  bench: /^Make/,
  handout: /^Share/,
};

const PLACE_TITLES: Readonly<Record<PlaceName, RegExp>> = {
  box: /^Box/,
  decorate: /^Decorate/,
  count: /^Count/,
  buy: /^Cut & buy/,
  make: /^Make/,
};

/** A recipe or an event, open at one of its pages. */
export const workbook = (page: Page) => ({
  tab: (name: PageName) =>
    page.getByRole('navigation', { name: 'Pages' }).getByRole('link', { name: TITLES[name] }),
  /** Turns to a page by its tab, and waits until it is the current one. */
  async turnTo(name: PageName): Promise<void> {
    const tab = this.tab(name);
    const place = page.getByRole('navigation', { name: 'Places' });
    // On a narrow screen the places are turned to first, and a place of one page is that page.
    if (await place.isVisible()) {
      await place.getByRole('link', { name: PLACE_TITLES[placeOf(name)] }).click();
      if (PLACES[placeOf(name)].length === 1) {
        await expect(place.getByRole('link', { name: PLACE_TITLES[placeOf(name)] })).toHaveAttribute(
          'aria-current',
          'page',
        );
        return;
      }
    }
    await tab.click();
    await expect(tab).toHaveAttribute('aria-current', 'page');
    await expect(page.getByRole('main')).not.toBeEmpty();
  },
  /** Plans so many favors of the open box, all of one paper if it is named. */
  async planBatch(favors: string, paper?: string): Promise<void> {
    await this.turnTo('event');
    await page.getByRole('textbox', { name: 'How many favors' }).fill(favors);
    await page.getByRole('button', { name: 'Plan the batch' }).click();
    if (paper !== undefined)
      await page
        .getByRole('combobox', { name: /^Paper/ })
        .first()
        .selectOption(paper);
  },
  /** The shelf has put everything away. */
  saved: () => expect(page.getByRole('banner').getByRole('status')).toHaveText(/saved/i),
});
