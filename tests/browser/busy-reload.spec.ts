import { recordFault } from './fault-record';
import { bare, keepBusy, keptWidths } from './laid-database';
import { test } from './maker';
import { keptRecipe } from './pages/kept-recipe';

test.use({ trace: 'off' });

const RELOADS = 5;
/** How long another tab holds the database at a time: longer than five letters take. */
const BURST_MS = 900;

test('loaded again and again in the middle of typing, while another tab keeps the database busy, a box is one box and shows its newest size', async ({
  page,
  baseURL,
}, info) => {
  const origin = baseURL ?? '';
  const recipe = keptRecipe(page);
  await recipe.make(origin);
  const other = await page.context().newPage();
  await other.goto(bare(origin));
  await other.evaluate(keepBusy, BURST_MS);
  await page.bringToFront();
  const lost: string[] = [];
  let typed = '';
  for (let reload = 0; reload < RELOADS; reload++) {
    typed = `${60 + reload}.25`;
    await recipe.width.fill('');
    await recipe.width.pressSequentially(typed);
    await page.reload({ waitUntil: 'commit' });
    await recipe.width.waitFor({ timeout: 30_000 });
    const shown = await recipe.shown();
    if (![typed, typed.slice(0, -1)].map(Number).includes(shown)) lost.push(`${typed}: ${shown}`);
  }
  await other.close();
  await recipe.saved();
  const ghosts = (await page.evaluate(keptWidths)).length - 1;
  recordFault(info, {
    fault: 'loaded again and again on a disk that lags behind',
    tries: RELOADS,
    lost: lost.length + ghosts,
    goal: 0,
    what: lost.join('; '),
  });
});
