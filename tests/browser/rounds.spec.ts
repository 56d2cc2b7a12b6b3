import type { CDPSession } from '@playwright/test';
import { recordFault } from './fault-record';
import { expect, test } from './maker';
import { shelf } from './pages/shelf';
import { PAGES, workbook } from './pages/workbook';

/** Ten with all tests; `SOAK_ROUNDS=200` for an evening's work. */
const ROUNDS = Number(process.env['SOAK_ROUNDS'] ?? 10);
/** Until every page was open and the undo list has its steps. source: our own */
const WARM = 4;
/** What a page may hold on to by chance, whatever the rounds: a hint, a notice, a row of a table. source: our own */
const SLACK_NODES = 50;

// What records the page for a failed run holds on to nodes itself.
test.use({ trace: 'off' });

/** Everything that is still held, in the page or not. */
async function held(devtools: CDPSession) {
  await devtools.send('HeapProfiler.collectGarbage');
  const { nodes, jsEventListeners } = await devtools.send('Memory.getDOMCounters');
  return { nodes, listeners: jsEventListeners };
}

test('nodes that are out of the page and still held are counted', async ({ page }) => {
  await shelf(page).lookAtDemo();
  const devtools = await page.context().newCDPSession(page);
  const before = await held(devtools);
  await page.evaluate((many) => {
    const kept = document.createElement('div');
    for (let n = 0; n < many; n++) kept.append(document.createElement('i'));
    Object.assign(window, { kept });
  }, 2 * SLACK_NODES);
  expect((await held(devtools)).nodes - before.nodes).toBeGreaterThan(SLACK_NODES);
});

test('pages turned and edited over and over leave no nodes behind', async ({ page }, info) => {
  test.setTimeout(60_000 + ROUNDS * 20_000);
  await shelf(page).openDemo();
  const devtools = await page.context().newCDPSession(page);
  const round = async (n: number) => {
    for (const name of PAGES) {
      await workbook(page).turnTo(name);
      if (name === 'box') {
        const width = page.getByRole('textbox', { name: 'Width', exact: true });
        await width.fill(`${2 + (n % 3)} ${1 + (n % 7)}/8`);
        await width.blur();
        await page.keyboard.press('ControlOrMeta+z');
        await width.fill(`3 ${1 + (n % 7)}/8`);
        await width.blur();
      }
      if (name === 'event') {
        const count = page.getByRole('textbox', { name: /^How many|^Count/ }).first();
        if (await count.isVisible()) await count.fill(`${40 + (n % 9)}`);
      }
    }
    await page.getByRole('link', { name: /Go to the shelf/ }).click();
    await expect(page.getByRole('link', { name: /^Seed box/ })).toBeVisible();
    const now = await held(devtools);
    await page.getByRole('link', { name: /^Village seed-swap/ }).click();
    await page.locator('.workbook').waitFor();
    return now;
  };
  for (let n = 0; n < WARM; n++) await round(n);
  const seen: Awaited<ReturnType<typeof held>>[] = [];
  for (let n = 0; n < ROUNDS; n++) seen.push(await round(WARM + n));
  // A page on its way out may still be held at one look, and is let go of by the next.
  const least = (some: typeof seen) => Math.min(...some.map(({ nodes }) => nodes));
  const grown = least(seen.slice(-4)) - least(seen.slice(0, 4));
  info.annotations.push({
    type: 'measured',
    description: `${ROUNDS} rounds: ${seen.map(({ nodes }) => nodes).join(' ')} nodes, ${seen[0]?.listeners} to ${seen.at(-1)?.listeners} listeners`,
  });
  recordFault(info, {
    fault: 'nodes left behind over rounds of all pages',
    tries: ROUNDS,
    lost: Math.max(0, grown - SLACK_NODES),
    goal: 0,
  });
});
