import { recordFault } from './fault-record';
import { bare, keptWidths, layVersionOne } from './laid-database';
import { expect, test } from './maker';
import { keptRecipe } from './pages/kept-recipe';

const ROUNDS = 20;

test('two tabs that change one recipe at the same moment both keep what was typed, in one recipe', async ({
  page,
  context,
  baseURL,
}, info) => {
  const origin = baseURL ?? '';
  const here = keptRecipe(page);
  await here.make(origin);
  const second = await context.newPage();
  await second.goto(page.url());
  const there = keptRecipe(second);
  await expect(there.depth).toBeVisible();
  let lost = 0;
  for (let round = 0; round < ROUNDS; round++) {
    const [mine, theirs] = [60 + round, 30 + round];
    await Promise.all([here.width.fill(String(mine)), there.depth.fill(String(theirs))]);
    await Promise.all([here.saved(), there.saved()]);
    // What is on the screen says so a moment late: the database itself is asked, and then counted.
    const both = async () =>
      (await page.evaluate(keptWidths)).filter(({ width, depth }) => width === mine && depth === theirs)
        .length;
    await expect.poll(both).toBe(1);
    lost += (await page.evaluate(keptWidths)).length - 1;
    await expect(here.depth).toHaveValue(String(theirs));
    await expect(there.width).toHaveValue(String(mine));
  }
  recordFault(info, { fault: 'two tabs on one recipe in a real browser', tries: ROUNDS, lost, goal: 0 });
});

test('an old tab stops when a newer version takes the database over, and writes nothing any more', async ({
  page,
  context,
  baseURL,
}, info) => {
  const origin = baseURL ?? '';
  const recipe = keptRecipe(page);
  await recipe.make(origin);
  await recipe.width.fill('70');
  // What is on the screen says so a moment late: the database itself is asked.
  await expect.poll(() => page.evaluate(keptWidths)).toMatchObject([{ width: 70 }]);
  const newer = await context.newPage();
  await newer.goto(bare(origin));
  await newer.evaluate(raiseVersion, 1000);
  await expect(page.getByRole('alert').filter({ hasText: 'newer version open' })).toBeVisible();
  await recipe.width.fill('90');
  await expect(recipe.status).not.toHaveText('Saved');
  // Longer than the saver waits, so that it would have written.
  await page.waitForTimeout(1500);
  const widths = (await newer.evaluate(keptWidths)).map(({ width }) => width);
  recordFault(info, {
    fault: 'an old tab under a newer version',
    tries: 1,
    lost: widths.includes(70) && !widths.includes(90) ? 0 : 1,
    goal: 0,
  });
});

test('old code on a newer database shows what is there, says so, and writes nothing', async ({
  page,
  baseURL,
}, info) => {
  const origin = baseURL ?? '';
  const recipe = keptRecipe(page);
  await recipe.make(origin);
  await recipe.width.fill('70');
  // What is on the screen says so a moment late: the database itself is asked.
  await expect.poll(() => page.evaluate(keptWidths)).toMatchObject([{ width: 70 }]);
  const address = page.url();
  await page.goto(bare(origin));
  await page.evaluate(raiseVersion, 1000);
  await page.goto(address);
  await expect(page.getByRole('alert').filter({ hasText: 'newer version saved your work' })).toBeVisible();
  // 70 mm; what is salvaged is shown in inches, since settings are not.
  await expect(recipe.width).toHaveValue(/^2.7559/);
  await recipe.width.fill('3');
  await page.waitForTimeout(1500);
  const widths = (await page.evaluate(keptWidths)).map(({ width }) => width);
  recordFault(info, {
    fault: 'old code on a newer database',
    tries: 1,
    lost: widths.join() === '70' ? 0 : 1,
    goal: 0,
  });
});

test('while another tab holds an older version open the page says so, and goes on by itself', async ({
  page,
  context,
  baseURL,
}, info) => {
  const origin = baseURL ?? '';
  await page.goto(bare(origin));
  await page.evaluate(layVersionOne, 3);
  // Open, and deaf to being asked to close.
  await page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const asked = indexedDB.open('crease-and-count');
        asked.onsuccess = () => {
          Object.assign(window, { held: asked.result });
          resolve();
        };
      }),
  );
  const waiting = await context.newPage();
  await waiting.goto(origin);
  await expect(waiting.getByText('Another tab has an older version open')).toBeVisible();
  await page.close();
  await expect(waiting.getByRole('link', { name: /^Kept 2/ })).toBeVisible();
  const kept = await waiting.getByRole('link', { name: /^Kept / }).count();
  recordFault(info, { fault: 'an upgrade held up by another tab', tries: 3, lost: 3 - kept, goal: 0 });
});

test('without a database in the browser a maker works on, with the warning that goes with it', async ({
  page,
}, info) => {
  await page.addInitScript(() => {
    Reflect.deleteProperty(window, 'indexedDB');
    Reflect.defineProperty(window, 'indexedDB', { value: undefined });
  });
  await page.goto('./#/new');
  await page.getByRole('button', { name: /^Open-top box Treats/ }).click();
  const recipe = keptRecipe(page);
  await recipe.width.fill('4');
  await expect(page.getByRole('img', { name: /^Net of Box/ })).toBeVisible();
  await expect(recipe.status).toHaveText('Only until you close this tab');
  const shown = await recipe.width.inputValue();
  recordFault(info, { fault: 'no database in the browser', tries: 1, lost: shown === '4' ? 0 : 1, goal: 0 });
});

/** Takes the database over as a version of the app far in the future would; run in a page. */
async function raiseVersion(version: number): Promise<void> {
  await new Promise<void>((resolve, reject) => {
    const asked = indexedDB.open('crease-and-count', version);
    asked.onsuccess = () => {
      asked.result.close();
      resolve();
    };
    asked.onerror = () => reject(asked.error ?? new Error('not opened'));
  });
}
