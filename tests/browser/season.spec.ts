import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { recordFault } from './fault-record';
import { keptWidths } from './laid-database';
import { expect, test } from './maker';
import { slowness } from './pace';
import { keptRecipe } from './pages/kept-recipe';
import { shelf } from './pages/shelf';

// What records the page for a failed run would be timed and weighed along with it.
test.use({ trace: 'off' });

/** A reload of the whole app takes a second; a hundred of them are the unit tests’ (`tests/state/reload.test.ts`). */
const RELOADS = 25;

test('a page loaded again in the middle of typing has lost one keystroke at most', async ({
  page,
  baseURL,
}, info) => {
  const recipe = keptRecipe(page);
  await recipe.make(baseURL ?? '');
  const lost: string[] = [];
  for (let reload = 0; reload < RELOADS; reload++) {
    const typed = `${60 + reload}.25`;
    await recipe.width.fill('');
    await recipe.width.pressSequentially(typed);
    // What the page took of the keys is what it must still show.
    const stood = await recipe.width.inputValue();
    await page.reload({ waitUntil: 'commit' });
    // Each of the last keys makes another number, so that one lost and two lost are told apart.
    const shown = await recipe.shown();
    if (stood !== typed || ![typed, typed.slice(0, -1)].map(Number).includes(shown))
      lost.push(`typed ${typed}, stood ${stood}, after the reload ${shown} (${reload})`);
  }
  recordFault(info, {
    fault: 'loaded again in the middle of typing, more than a key lost',
    tries: RELOADS,
    lost: lost.length,
    goal: 0,
    what: lost.join('; '),
  });
});

test('undo goes on where it was after the page is loaded again; a file read in replaces nothing; a copy is asked for in time', async ({
  page,
  baseURL,
}, info) => {
  const recipe = keptRecipe(page);
  await recipe.make(baseURL ?? '');
  const STEPS = 50;
  const depth = page.getByRole('textbox', { name: 'Depth', exact: true });
  const height = page.getByRole('textbox', { name: 'Height', exact: true });
  const nudge = page.getByText(/Time for a backup/);
  // Twenty saves are due for a copy; keystrokes near one another are one save, and one step.
  for (let more = 0; more < 60 && (await nudge.count()) === 0; more++) {
    await height.fill(String(50 + more));
    await page.waitForTimeout(400);
  }
  await expect(nudge).toHaveCount(1);
  const shows = async () => `${await recipe.width.inputValue()} × ${await depth.inputValue()}`;
  const before: string[] = [];
  for (let step = 0; step < STEPS; step++) {
    before.push(await shows());
    await (step % 2 === 0 ? recipe.width : depth).fill(String(60 + step));
  }
  const typed = await shows();
  await expect.poll(() => page.evaluate(keptWidths)).toMatchObject([{ width: 60 + STEPS - 2 }]);
  await recipe.saved();
  await page.reload();
  await expect.poll(shows).toBe(typed);
  let lost = 0;
  for (const was of before.toReversed()) {
    await page.keyboard.press('ControlOrMeta+z');
    if ((await shows()) !== was) lost++;
  }
  recordFault(info, { fault: 'undo after a reload', tries: STEPS, lost, goal: 0 });
  await recipe.saved();

  await page.getByRole('link', { name: /Go to the shelf/ }).click();
  await door(page, /^Backup/);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save everything to a file' }).click();
  const file = await readFile(await (await download).path());
  await door(page, /^Boxes/);
  await page.getByRole('link', { name: /^My open-top box/ }).click();
  await recipe.keep(99);
  await page.getByRole('link', { name: /Go to the shelf/ }).click();
  await expect(page.getByRole('link', { name: /^My open-top box/ })).toHaveCount(1);
  await door(page, /^Backup/);
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'kept.json', mimeType: 'application/json', buffer: file });
  await expect(page.getByText(/1 differs/)).toBeVisible();
  await page.getByRole('button', { name: 'Import', exact: true }).click();
  await door(page, /^Boxes/);
  await expect(page.getByRole('link', { name: /^My open-top box/ })).toHaveCount(2);
  await expect.poll(async () => (await page.evaluate(keptWidths)).length).toBe(2);
  const widths = (await page.evaluate(keptWidths)).map(({ width }) => width);
  recordFault(info, {
    fault: 'a file read in over what is here',
    tries: 1,
    lost: widths.includes(99) ? 0 : 1,
    goal: 0,
  });
});

const recipes = (count: number, from = 0) =>
  Buffer.from(
    JSON.stringify({
      format: 'crease-and-count',
      schema: 2,
      kind: 'everything',
      recipes: Array.from({ length: count }, (_, index) => ({
        id: `many-${from + index}`,
        rev: 0,
        createdAt: '2026-01-10T09:00:00.000Z',
        changedAt: '2026-01-12T18:30:00.000Z',
        name: `Season ${from + index}`,
        styleId: ['open-top', 'tray', 'straight-tuck', 'pillow-pack'][index % 4],
        sizesMm: {},
        options: {},
        caliperUm: 300,
        paperId: null,
        faceUp: 'inside',
        grain: 'upright',
        dressings: [],
        notes: '',
      })),
      events: [],
      papers: [],
      supplies: [],
      tools: [],
      photos: [],
    }),
  );

/** Milliseconds of the best of three, since a neighbour's work can only lengthen one. */
async function bestOf(rounds: number, act: () => Promise<number>): Promise<number> {
  const times: number[] = [];
  for (let round = 0; round < rounds; round++) times.push(await act());
  return Math.min(...times);
}

const door = (page: Page, name: RegExp) =>
  page.getByRole('navigation', { name: 'Shelf' }).getByRole('link', { name }).click();

const readIn = async (page: Page, file: Buffer) => {
  await door(page, /^Backup/);
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'season.json', mimeType: 'application/json', buffer: file });
  await page.getByRole('button', { name: 'Import', exact: true }).click();
  await expect(page.getByRole('banner').locator('.save-state')).toHaveText('Saved', { timeout: 30_000 });
  await door(page, /^Boxes/);
};

test('a thousand recipes are listed and saved to a file, and two hundred open, without a wait', async ({
  page,
}, info) => {
  await shelf(page).lookAtDemo();
  await page.getByRole('link', { name: /Go to the shelf/ }).click();
  const slow = await slowness(page);
  await readIn(page, recipes(200));
  const cold = await bestOf(3, async () => {
    await page.reload({ waitUntil: 'commit' });
    await page.getByRole('link', { name: /^Season 0 / }).waitFor();
    return page.evaluate(() => performance.now());
  });
  await readIn(page, recipes(800, 200));
  const list = await bestOf(3, async () => {
    await page.getByRole('link', { name: 'New box' }).click();
    await page.getByRole('link', { name: 'I know the style' }).click();
    await page.getByText(/^All \d+ styles\.$/).waitFor();
    return page.evaluate(async () => {
      const start = performance.now();
      document.querySelector<HTMLElement>('.frame-mark')?.click();
      const told = () => document.querySelector('.shelf-find [role=status]')?.textContent ?? '';
      while (!document.querySelector('.recipe-card') || !told().startsWith('1,002 boxes'))
        await new Promise((resolve) => requestAnimationFrame(resolve));
      await new Promise((resolve) => requestAnimationFrame(resolve));
      return performance.now() - start;
    });
  });
  let file = '';
  await door(page, /^Backup/);
  const saved = await bestOf(3, async () => {
    const download = page.waitForEvent('download');
    const start = performance.now();
    await page.getByRole('button', { name: 'Save everything to a file' }).click();
    file = await (await download).path();
    return performance.now() - start;
  });
  const names = await readFile(file, 'utf8');
  const missing = Array.from({ length: 1000 }, (_, at) => `"Season ${at}"`).filter(
    (name) => !names.includes(name),
  );
  info.annotations.push({
    type: 'measured',
    description: `200 open ${cold.toFixed(0)} ms, 1,000 listed ${list.toFixed(0)} ms, saved ${saved.toFixed(0)} ms`,
  });
  // The promise is 1,500, 500 and 3,000 ms; here another worker has the machine’s other core, so three times that is let pass.
  expect(cold).toBeLessThanOrEqual(4500 * slow);
  expect(list).toBeLessThanOrEqual(1500 * slow);
  expect(saved).toBeLessThanOrEqual(9000 * slow);
  recordFault(info, { fault: 'a thousand recipes', tries: 1000, lost: missing.length, goal: 0 });
});

test('typing on and on leaves no heap behind: hundreds of edits, as an hour of work has', async ({
  page,
  baseURL,
}, info) => {
  const recipe = keptRecipe(page);
  await recipe.make(baseURL ?? '');
  const devtools = await page.context().newCDPSession(page);
  const used = async () => {
    await devtools.send('HeapProfiler.collectGarbage');
    return (await devtools.send('Runtime.getHeapUsage')).usedSize;
  };
  const type = async (times: number) => {
    for (let n = 0; n < times; n++) await recipe.width.fill(String(50 + (n % 90)));
    await recipe.saved();
  };
  // The undo list is full, and everything compiled, before the first look.
  await type(100);
  const before = await used();
  await type(300);
  const after = await used();
  const growth = after / before - 1;
  info.annotations.push({
    type: 'measured',
    description: `${(before / 1e6).toFixed(1)} to ${(after / 1e6).toFixed(1)} MB`,
  });
  recordFault(info, {
    fault: 'heap kept after 300 edits, in tenths of it',
    tries: 300,
    lost: Math.max(0, Math.floor(growth * 10)),
    goal: 0,
  });
});
