import { readFileSync } from 'node:fs';
import { workbookFile } from '../../shared/workbook';
import { planSeason } from '../../src/core/plan';
import { readPdf } from '../print/read-pdf';
import { expect, test } from './maker';
import { madeFile } from './pages/made-file';
import { workbook } from './pages/workbook';

const saved = workbookFile.parse(JSON.parse(readFileSync('demo-data/orchard-season.json', 'utf8')));
const supper = saved.events.find(({ id }) => id === 'harvest-supper')!;

test('a season opens in one click: names on tags, one shopping list, and an event again with what it taught', {
  tag: ['@phone'],
}, async ({ page }) => {
  await page.goto('./#/season');
  await page.getByRole('button', { name: 'Open the example season' }).click();
  for (const { name } of saved.events)
    await expect(page.getByRole('checkbox', { name: new RegExp(`^${name}`) })).toBeChecked();

  // Every row of the one list, as the core plans the same file here without a page.
  const list = page.getByRole('table', { name: 'One shopping list' });
  const planned = planSeason(
    saved,
    saved.events.map(({ id }) => id),
  );
  for (const { name, toBuy, need } of planned.rows.filter((row) => row.toBuy > 0))
    await expect(list.getByRole('row', { name: new RegExp(`^${name}`) })).toContainText(
      new RegExp(`\\) ?${toBuy}\\s*${need}`),
    );
  const shared = page.getByRole('table', { name: 'Paper cut together' });
  await expect(shared.getByRole('row', { name: /^Russet/ })).toContainText('saves 1 sheet');

  const onPaper = await madeFile(page, () => page.getByRole('button', { name: 'Print the season' }).click());
  expect((await readPdf(onPaper)).flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ')).toContain(
    'One shopping list',
  );

  await page.getByRole('button', { name: 'Make it yours' }).click();
  await page.getByRole('link', { name: 'Open Harvest supper' }).click();
  const tags = await madeFile(page, () => page.getByRole('button', { name: 'Print the names' }).click());
  const printed = (await readPdf(tags)).flatMap(({ texts }) => texts.map(({ text }) => text));
  // A name over two lines is read back as it was set, one line after the other.
  const said = printed.join(' ').replaceAll('- ', '-');
  const missing = supper.guests!.filter(({ name }) => !said.includes(name));
  expect(supper.guests).toHaveLength(60);
  expect(missing).toEqual([]);

  await page.goto('./#/season');
  await page.getByRole('link', { name: 'Open Apple day' }).click();
  await page.getByRole('button', { name: 'Repeat this event' }).click();
  await expect(page.getByRole('heading', { name: /Apple day, again/ }).first()).toBeAttached();
  // It took nine seconds a fold at the bench, in place of the usual five.
  await page.getByText('Helpers and timing', { exact: true }).click();
  await expect(page.getByRole('textbox', { name: 'Fold' })).toHaveValue('9');
  await workbook(page).saved();
  await page.goto('./#/season');
  await expect(page.getByRole('checkbox', { name: /^Apple day, again/ })).toBeChecked();
});
