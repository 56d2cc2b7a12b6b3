import { readFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import { expect, test } from './maker';
import { slowness } from './pace';
import { madeFile } from './pages/made-file';
import { shelf } from './pages/shelf';
import { PAGES } from './pages/workbook';

/** Counts what hands do: a press, or a field filled. */
function hands(page: Page) {
  let inputs = 0;
  const press = async (target: Locator) => {
    inputs++;
    await target.click();
  };
  return {
    press,
    fill: async (label: string, text: string) => {
      inputs++;
      await page.getByLabel(label).fill(text);
    },
    choose: async (label: string, choice: string) => {
      inputs++;
      await page.getByLabel(label).selectOption({ label: choice });
    },
    count: () => inputs,
  };
}

const isPdf = (bytes: Uint8Array) => String.fromCharCode(...bytes.slice(0, 5)) === '%PDF-';

/** From a box just opened to its step card and the shopping list on paper. */
async function printBoth(page: Page, press: (target: Locator) => Promise<void>): Promise<void> {
  await expect(page).toHaveURL(/event\/.*box/);
  expect(
    isPdf(await madeFile(page, () => press(page.getByRole('button', { name: 'Print the step card' })))),
  ).toBe(true);
  await press(page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: /^Cut & buy/ }));
  await press(page.getByRole('navigation', { name: 'Pages' }).getByRole('link', { name: /^Shopping/ }));
  const print = page.getByRole('button', { name: /^Print the (shopping )?list/ });
  await expect(page.getByRole('main')).toContainText('sheets');
  expect(isPdf(await madeFile(page, () => press(print)))).toBe(true);
}

const hashOf = (page: Page) => new URL(page.url()).hash;

const place = { viewport: { width: 390, height: 844 } } as const;

test.describe('from four answers to paper', () => {
  test.use(place);

  test('a first-time maker, one candle, 48 guests, her own priced paper: in at most 14 inputs', async ({
    page,
  }) => {
    const { press, fill, count } = hands(page);
    await shelf(page).lookAtDemo();
    await press(page.getByRole('link', { name: 'Start a box of your own' }));
    await fill('Its size', '2 x 2 x 3');
    await fill('How many favors?', '48');
    await fill('Your paper', '12x12, 65 lb, white, $12.99 for 25');
    await page
      .getByRole('status')
      .filter({ hasText: /all \d+ styles/i })
      .waitFor({ timeout: 40_000 });
    expect(await page.locator('.answer').count()).toBeGreaterThanOrEqual(5);
    await press(page.locator('.answer').first().getByRole('button'));
    await printBoth(page, press);
    // 53 boxes from 12 × 12, three to a sheet, fewest possible: 18 sheets, one pack of 25 at $12.99. Nothing of the example counts.
    await expect(page.getByRole('main')).toContainText('$12.99');
    expect(count()).toBeLessThanOrEqual(14);
  });

  test('the same with a listed paper: in at most 10 inputs', async ({ page }) => {
    const { press, fill, choose, count } = hands(page);
    await shelf(page).lookAtDemo();
    await press(page.getByRole('link', { name: 'Start a box of your own' }));
    await fill('Its size', '2 x 2 x 3');
    await fill('How many favors?', '48');
    await choose('What paper?', 'Square 12 × 12, 80 lb cover');
    await press(page.locator('.answer').first().getByRole('button'));
    await printBoth(page, press);
    expect(count()).toBeLessThanOrEqual(10);
  });
});

test('a maker who comes back has her list on paper in at most 3 inputs', async ({ page }) => {
  await shelf(page).openDemo();
  await expect(page.getByRole('banner').getByRole('status')).toHaveText(/saved/i);
  await page.goto('about:blank');
  await page.goto('./');
  const { press, count } = hands(page);
  await press(page.getByRole('link', { name: /^Village seed-swap supper/ }));
  await page.waitForURL(/\/event$/);
  await press(page.getByRole('banner').getByRole('button', { name: 'Print' }));
  const print = page.getByRole('dialog').getByRole('button', { name: 'Print the shopping list' });
  await print.waitFor();
  expect(isPdf(await madeFile(page, () => press(print)))).toBe(true);
  expect(count()).toBeLessThanOrEqual(3);
});

test('the first boxes and all styles come soon, and the first boxes four times slowed', async ({ page }) => {
  await page.goto('./#/start');
  await page.getByLabel('Your paper').fill('12x12, 65 lb');
  const took = async (size: string, spread: number) => {
    const session = await page.context().newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: spread });
    await page.getByLabel('Its size').fill('');
    await expect(page.locator('.answer')).toHaveCount(0);
    const from = Date.now();
    await page.getByLabel('Its size').fill(size);
    await page.locator('.answer').first().waitFor();
    const first = Date.now() - from;
    await page
      .getByRole('status')
      .filter({ hasText: /all \d+ styles/i })
      .waitFor();
    return { first, all: Date.now() - from };
  };
  const slow = await slowness(page);
  await took('2 x 2 x 2', 1);
  const plain = await took('2 x 2 x 3', 1);
  const slowed = await took('3 x 1 x 2', 4);
  test.info().annotations.push({ type: 'measured', description: JSON.stringify({ plain, slowed, slow }) });
  // Goals on a quiet machine: 500, 2000 and 1500 ms. Three times that is held here, beside other tests.
  expect(plain.first).toBeLessThan(1500 * slow);
  expect(plain.all).toBeLessThan(6000 * slow);
  expect(slowed.first).toBeLessThan(4500 * slow);
});

/** Opens everything on the page that opens, and what opens within. */
async function openAll(page: Page): Promise<void> {
  const closed = page.locator('main details:not([open]) > summary');
  for (let round = 0; round < 4 && (await closed.count()) > 0; round++) {
    await closed.evaluateAll((heads) => {
      for (const head of heads as HTMLElement[]) head.click();
    });
    await expect(page.locator('main').first()).not.toBeEmpty();
  }
}

/** By how much the page is wider than the screen, and which tables are cut at their edge. */
function overflowIn(name: string): readonly string[] {
  document.documentElement.dataset['theme'] = name;
  const over = document.documentElement.scrollWidth - innerWidth;
  const cut = [...document.querySelectorAll('main table')].flatMap((table) => {
    const box = table.closest('.table-box, .wide-box, .line-table-box, .marks-table, .beside') ?? table;
    const by = box.scrollWidth - box.clientWidth;
    return by > 1 && box.clientWidth > 0 ? [`${table.className || box.className} is cut by ${by}`] : [];
  });
  return over > 0 ? [`wider by ${over}`, ...cut] : cut;
}

/** Every address of the app, with work behind it; a line of `routes.tsx` without one fails. */
async function everyAddress(page: Page): Promise<readonly string[]> {
  await shelf(page).openDemo();
  const workbook = hashOf(page).replace(/\/event$/, '');
  await page.goto('./#/?door=supplies');
  const inSupplies = async (table: string) =>
    (await page.locator(`a[href*="stock/${table}/"]`).first().getAttribute('href')) ?? '';
  const stock = [await inSupplies('papers'), await inSupplies('supplies'), await inSupplies('tools')];
  await page.goto('./#/new');
  await page.getByRole('button', { name: 'Start with a floor' }).click();
  await page.waitForURL(/box\/style/);
  const drawn = hashOf(page);
  const byRoute: Readonly<Record<string, readonly string[]>> = {
    start: ['#/start'],
    new: ['#/new'],
    keeping: ['#/keeping'],
    'join/:code': ['#/join/none'],
    season: ['#/season'],
    help: ['#/help'],
    'stock/:table/:id': stock,
    ':kind/:id': PAGES.map((name) => `${workbook}/${name}`),
    'box/style': [drawn],
    ':sent': ['#/none'],
    'bench/:code': ['#/bench/none'],
    'class/:code': ['#/class/none'],
  };
  const routes = readFileSync(new URL('../../src/app/routes.tsx', import.meta.url), 'utf8');
  const named = [...routes.matchAll(/<Route\b[^>]*? path="([^"*]+)"/g)].map(([, path]) => path ?? '');
  expect(named.toSorted()).toEqual(Object.keys(byRoute).toSorted());
  return ['#/', '#/?door=supplies', '#/?door=backup', ...Object.values(byRoute).flat()];
}

test('no page is wider than the screen in any theme, from 320 to 1440 px', async ({ page }) => {
  const wide: string[] = [];
  for (const address of await everyAddress(page)) {
    await page.goto(`./${address}`);
    await expect(page.locator('main').first()).not.toBeEmpty();
    for (const width of [320, 390, 600, 820, 1024, 1366, 1440]) {
      await page.setViewportSize({ width, height: 800 });
      for (const theme of ['light', 'dark', 'contrast'])
        for (const fault of await page.evaluate(overflowIn, theme))
          wide.push(`${address} at ${width}, ${theme}: ${fault}`);
    }
  }
  expect(wide).toEqual([]);
});

test('nor with everything on it opened', async ({ page }) => {
  const wide: string[] = [];
  for (const address of await everyAddress(page)) {
    await page.goto(`./${address}`);
    await expect(page.locator('main').first()).not.toBeEmpty();
    await openAll(page);
    for (const width of [320, 390, 820, 1366]) {
      await page.setViewportSize({ width, height: 800 });
      for (const fault of await page.evaluate(overflowIn, 'light'))
        wide.push(`${address} at ${width}: ${fault}`);
    }
  }
  expect(wide).toEqual([]);
});
