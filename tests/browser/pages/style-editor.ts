import { expect, type Page } from '@playwright/test';

/** The page where a style is drawn; every press and every field filled in is counted. */
export class StyleEditor {
  inputs = 0;
  readonly #page: Page;
  constructor(page: Page) {
    this.#page = page;
  }

  /** From the page of a new box. */
  async start(from: 'floor' | 'wall'): Promise<void> {
    await this.#page.goto('./#/new');
    await this.press(`Start with a ${from}`);
    await expect(this.#page.getByRole('heading', { name: 'Draw your style' })).toBeVisible();
  }

  /** Presses a button by its name. */
  async press(name: string | RegExp): Promise<void> {
    await this.#page.getByRole('button', { name }).first().click();
    this.inputs++;
  }

  /** Taps an edge or a panel in the net. */
  async tap(panel: string, edge?: string): Promise<void> {
    const place = edge === undefined ? ':not([data-edge])' : `[data-edge=${edge}]`;
    await this.#page.locator(`[data-panel=${panel}]${place}`).first().click();
    this.inputs++;
  }

  /** Adds a part on the edge that is selected. */
  add = (part: string): Promise<void> => this.press(new RegExp(`^${part}`));

  /** The style text of the newest box, as it is kept on the device. */
  async keptText(): Promise<string | undefined> {
    await expect(this.#page.getByRole('banner').locator('.save-state')).toHaveText('Saved');
    return this.#page.evaluate(async () => {
      const asked = <Value>(request: IDBRequest<Value>) =>
        new Promise<Value>((resolve, reject) => {
          request.onsuccess = () => resolve(request.result);
          request.onerror = () => reject(request.error ?? new Error('not read'));
        });
      const rows: { ownStyle?: string; createdAt?: string }[] = [];
      for (const { name = '' } of await indexedDB.databases()) {
        const db = await asked(indexedDB.open(name));
        if (db.objectStoreNames.contains('recipes'))
          rows.push(...(await asked(db.transaction('recipes').objectStore('recipes').getAll())));
        db.close();
      }
      const own = rows.filter(({ ownStyle }) => ownStyle !== undefined);
      return own.sort((a, b) => ((a.createdAt ?? '') < (b.createdAt ?? '') ? 1 : -1))[0]?.ownStyle;
    });
  }

  /** What is selected, as the page says it. */
  selected = () => this.#page.locator('.style-net [role=status]');
}
