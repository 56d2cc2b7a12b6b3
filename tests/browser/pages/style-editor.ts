import { expect, type Locator, type Page } from '@playwright/test';

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

  /** Taps just inside an edge, where another panel’s edge may lie on the same line. */
  async tapInside(panel: string, edge: string): Promise<void> {
    const [band, face] = await Promise.all(
      [`[data-edge=${edge}]`, ':not([data-edge])'].map((place) =>
        this.#page.locator(`[data-panel=${panel}]${place}`).first().boundingBox(),
      ),
    );
    if (!band || !face) throw new Error(`no ${panel}.${edge}`);
    const [x, y] = [band.x + band.width / 2, band.y + band.height / 2];
    const way = [Math.sign(face.x + face.width / 2 - x), Math.sign(face.y + face.height / 2 - y)];
    const across = edge === 'left' || edge === 'right';
    await this.#page.mouse.click(x + (across ? 8 * (way[0] ?? 0) : 0), y + (across ? 0 : 8 * (way[1] ?? 0)));
    this.inputs++;
  }

  /** Says what a tap on the net does from now on. */
  async tapDoes(does: 'Selects' | 'Glues panels' | 'Joins edges'): Promise<void> {
    await this.#page.getByRole('radio', { name: does }).click();
    this.inputs++;
  }

  /** Adds a part on the edge that is selected. */
  add = (part: string): Promise<void> => this.press(new RegExp(`^${part}`));

  /** A tray with a hinged lid, from an empty floor: walls, corner tabs, the lid, its dust flaps and its tuck. */
  async drawLiddedTray(): Promise<void> {
    await this.start('floor');
    for (const edge of ['left', 'right', 'down', 'up']) {
      await this.tap('base', edge);
      await this.add('Wall');
    }
    for (const wall of ['front', 'back'])
      for (const edge of ['left', 'right']) {
        await this.tap(wall, edge);
        await this.add('Glue tab');
      }
    await this.tap('back', 'up');
    await this.add('Lid');
    for (const edge of ['left', 'right']) {
      await this.tap('lid', edge);
      await this.add('Dust flap');
    }
    await this.tap('lid', 'up');
    await this.add('Tuck');
  }

  /** The handle on an edge of what is selected. */
  grip = (edge: string): Locator => this.#page.getByRole('slider', { name: `Pull: ${edge}` });

  /** Drags a handle so many inches of the card, and looks before it is let go. */
  async drag(
    grip: Locator,
    { across = 0, up = 0 }: { readonly across?: number; readonly up?: number },
    look: () => Promise<unknown> = () => Promise.resolve(),
  ): Promise<void> {
    await grip.scrollIntoViewIfNeeded();
    const box = await grip.boundingBox();
    // one square of the mat is one inch
    const inch = await this.#page.locator('.style-net .drawing-svg').evaluate((svg) => {
      const steps =
        svg
          .querySelector('.mat-line')
          ?.getAttribute('d')
          ?.match(/M[\d.-]+/g) ?? [];
      const [first = 0, second = 0] = steps.map((step) => Number(step.slice(1)));
      return (second - first) * ((svg as SVGSVGElement).getScreenCTM()?.a ?? 1);
    });
    if (box === null) throw new Error('no such grip');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await this.#page.mouse.move(x, y);
    await this.#page.mouse.down();
    await this.#page.mouse.move(x + across * inch, y - up * inch, { steps: 4 });
    await look();
    await this.#page.mouse.up();
    this.inputs++;
  }

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
