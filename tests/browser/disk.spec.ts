import { closeSync, ftruncateSync, openSync, rmSync, statSync, writeSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { recordFault } from './fault-record';
import { canKill, LivingBrowser } from './living-browser';
import { slowness } from './pace';
import { keptRecipe } from './pages/kept-recipe';

test('with the disk full, the page says so within two seconds, never says saved, and keeps what was typed', async ({
  baseURL,
}, info) => {
  const origin = baseURL ?? '';
  const browser = new LivingBrowser();
  let falseSaves = 0;
  try {
    const before = keptRecipe(await browser.start());
    await before.make(origin);
    await before.keep(70);
    const address = before.width.page().url();
    await browser.stop();

    // A browser reckons its room at the first write and remembers it for a while: the quota stands before that.
    const page = await browser.start();
    const recipe = keptRecipe(page);
    const cdp = await page.context().newCDPSession(page);
    await cdp.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
    await page.goto(address);
    await expect(recipe.width).toHaveValue('70');
    await page.evaluate(() => {
      const seen: string[] = [];
      Object.assign(window, { seen });
      const look = () => seen.push(document.querySelector('header .save-state')?.textContent ?? '');
      new MutationObserver(look).observe(document.body, {
        subtree: true,
        childList: true,
        characterData: true,
      });
    });
    const soon = 2000 * (await slowness(page));
    const typed = performance.now();
    await recipe.width.fill('80');
    await expect(recipe.status).toHaveText('Not saved');
    expect(performance.now() - typed).toBeLessThan(soon);
    await page.waitForTimeout(500);
    const seen = await page.evaluate(() => (window as unknown as { seen: string[] }).seen);
    // It was saved until the key was struck, and saving after that.
    falseSaves = seen.slice(seen.indexOf('Saving')).filter((word) => word === 'Saved').length;
    await cdp.send('Storage.overrideQuotaForOrigin', { origin });
    // Room again: what was typed is there, and is kept.
    await page.reload();
    await expect(recipe.width).toHaveValue('80');
    // The browser reckons its room anew after a while; the save is tried again until then.
    await expect(recipe.status).toHaveText('Saved', { timeout: 40_000 });
  } finally {
    await browser.end();
  }
  recordFault(info, { fault: 'a full disk in a real browser', tries: 1, lost: falseSaves, goal: 0 });
});

test('where the database was cleared away but the count beside it was not, the loss is said', async ({
  page,
  baseURL,
}, info) => {
  const recipe = keptRecipe(page);
  await recipe.make(baseURL ?? '');
  await recipe.keep(70);
  await page.goto(new URL('mark.svg', baseURL).href);
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const asked = indexedDB.deleteDatabase('crease-and-count');
        asked.onsuccess = () => resolve();
        asked.onerror = () => reject(new Error('not deleted'));
      }),
  );
  await page.goto(baseURL ?? '');
  const said = page.getByRole('alert').filter({ hasText: 'has lost' });
  await said.waitFor().catch(() => undefined);
  recordFault(info, { fault: 'site data cleared', tries: 1, lost: 1 - (await said.count()), goal: 0 });
});

test.describe('a profile on disk', () => {
  test.skip(!canKill, 'the files of the database are reached through a profile on Linux');
  const TRIES = 20;

  test('whose log was cut is found short at the next start', async ({ baseURL }, info) => {
    const whole = new LivingBrowser();
    let missed = 0;
    try {
      const recipe = keptRecipe(await whole.start());
      await recipe.make(baseURL ?? '');
      for (const mm of [70, 71, 72, 73]) await recipe.keep(mm);
      await whole.stop();
      for (let attempt = 0; attempt < TRIES; attempt++) {
        const browser = whole.twin();
        try {
          for (const log of browser.databaseFiles(/\.log$/)) {
            const file = openSync(log, 'r+');
            ftruncateSync(file, Math.floor(statSync(log).size * (0.3 + 0.02 * attempt)));
            closeSync(file);
          }
          const page = await browser.start();
          await page.goto(baseURL ?? '');
          await expect(page.getByRole('main')).toBeVisible();
          const said = page.getByRole('alert').filter({ hasText: /has lost|older version/ });
          await said.waitFor({ timeout: 60_000 }).catch(() => undefined);
          if ((await said.count()) === 0) missed++;
        } finally {
          await browser.end();
        }
      }
      // The same profile, whole, says nothing: or the check would find a loss everywhere.
      const page = await whole.start();
      await page.goto(baseURL ?? '');
      await expect(page.getByRole('link', { name: /Open-top box/ })).toBeVisible();
      await expect(page.getByRole('alert')).toHaveCount(0);
    } finally {
      await whole.end();
    }
    recordFault(info, { fault: 'part of the database gone', tries: TRIES, lost: missed, goal: 0 });
  });

  const harms = [
    {
      how: 'whose first file is gone',
      to: (browser: LivingBrowser) => {
        for (const file of browser.databaseFiles(/^MANIFEST/)) rmSync(file);
      },
    },
    {
      how: 'with bytes changed in the middle of its files',
      to: (browser: LivingBrowser) => {
        for (const path of browser.databaseFiles(/\.(log|ldb)$/)) {
          const file = openSync(path, 'r+');
          const { size } = statSync(path);
          for (let at = 40; at < size; at += 97) writeSync(file, Buffer.from([0xa5]), 0, 1, at);
          closeSync(file);
        }
      },
    },
  ];
  for (const { how, to } of harms)
    test(`${how} never gives a white page, says what is the matter, and takes work again in three presses`, async ({
      baseURL,
    }, info) => {
      const browser = new LivingBrowser();
      let lost = 0;
      try {
        const recipe = keptRecipe(await browser.start());
        await recipe.make(baseURL ?? '');
        await recipe.keep(70);
        await browser.stop();
        to(browser);
        const page = await browser.start();
        await page.goto(baseURL ?? '');
        await expect(page.getByRole('main')).toBeVisible();
        const alarm = page.getByRole('alert').filter({ has: page.getByRole('button') });
        await alarm.getByRole('button').last().click();
        await page.getByRole('link', { name: 'Start a box of your own' }).click();
        await page.getByRole('link', { name: 'I know the style' }).click();
        await page.getByRole('button', { name: /^Open-top box Treats/ }).click();
        await expect(page.getByRole('img', { name: /^Net of Box/ })).toBeVisible();
      } catch (error) {
        lost++;
        throw error;
      } finally {
        await browser.end();
      }
      recordFault(info, { fault: 'a damaged database', tries: 1, lost, goal: 0 });
    });
});
