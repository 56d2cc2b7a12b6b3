import { expect, test } from '@playwright/test';
import { recordFault } from './fault-record';
import { bare, clearAll, layVersionOne, readBack } from './laid-database';
import { canKill, LivingBrowser } from './living-browser';
import { keptRecipe } from './pages/kept-recipe';

test.skip(!canKill, 'the browser is killed through the process list of Linux');

const HALVES = [0, 1];
/** In each half: 20 kills in all with every test, 50 by `KILLS=25 npx playwright test killed` in a night. source: our own */
const KILLS = Number(process.env['KILLS'] ?? 10);

for (const half of HALVES)
  test(`killed while it saves, the browser still has what it said was kept (${half + 1} of ${HALVES.length})`, async ({
    baseURL,
  }, info) => {
    const origin = baseURL ?? '';
    const browser = new LivingBrowser();
    let lost = 0;
    try {
      let page = await browser.start();
      await keptRecipe(page).make(origin);
      const address = page.url();
      let said = await keptRecipe(page).shown();
      for (let kill = 0; kill < KILLS; kill++) {
        const recipe = keptRecipe(page);
        const first = 60 + kill;
        await recipe.keep(first);
        said = first;
        // Typed on, and killed at another moment of its way to the disk each time: 0 to 600 ms, past the 250 ms that saving waits.
        await recipe.width.fill(String(first + 0.5));
        await page.waitForTimeout(((half * KILLS + kill) * 83) % 600);
        if ((await recipe.status.textContent()) === 'Saved') said = first + 0.5;
        await browser.kill();
        page = await browser.start();
        await page.goto(address);
        const now = await keptRecipe(page).shown();
        if (now !== said && now !== first + 0.5) lost++;
        // Rows and their count are written together: a difference would be said.
        if ((await page.getByRole('alert').count()) > 0) lost++;
      }
    } finally {
      await browser.end();
    }
    recordFault(info, { fault: 'the browser killed during a save', tries: KILLS, lost, goal: 0 });
  });

const UPGRADE_KILLS = 20;
const ROWS = 50;

test('killed in the middle of an upgrade, the database is as it was, and the upgrade is done the next time', async ({
  baseURL,
}, info) => {
  const origin = baseURL ?? '';
  const browser = new LivingBrowser();
  let lost = 0;
  try {
    let page = await browser.start();
    for (let kill = 0; kill < UPGRADE_KILLS; kill++) {
      await page.goto(bare(origin));
      await page.evaluate(layVersionOne, ROWS);
      // The upgrade is held open for far longer than the kill takes to come, so that it always lands inside.
      await page.addInitScript(() => {
        const create: (name: string) => IDBObjectStore = Reflect.get(
          IDBDatabase.prototype,
          'createObjectStore',
        );
        IDBDatabase.prototype.createObjectStore = new Proxy(create, {
          apply(real, database, given: [string]) {
            const store = Reflect.apply(real, database, given);
            document.title = 'upgrading';
            const until = performance.now() + 30_000;
            const hold = () => {
              if (performance.now() < until) store.count().onsuccess = hold;
            };
            hold();
            return store;
          },
        });
      });
      await page.goto(origin);
      await page.waitForFunction(() => document.title === 'upgrading');
      await page.waitForTimeout((kill * 37) % 400);
      await browser.kill();

      page = await browser.start();
      await page.goto(bare(origin));
      const before = await page.evaluate(readBack);
      if (before.version !== 10 || before.rows !== ROWS) lost++;
      await page.goto(origin);
      await expect(page.getByRole('link', { name: /^Kept 49/ })).toBeVisible();
      const after = await page.evaluate(readBack);
      if (after.version <= 10 || after.rows !== ROWS) lost++;
      await page.goto(bare(origin));
      await page.evaluate(clearAll);
      const fresh = await page.context().newPage();
      await page.close();
      page = fresh;
    }
  } finally {
    await browser.end();
  }
  recordFault(info, { fault: 'the browser killed during an upgrade', tries: UPGRADE_KILLS, lost, goal: 0 });
});
