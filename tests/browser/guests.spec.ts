import { readPdf } from '../print/read-pdf';
import { expect, test } from './maker';
import { madeFile } from './pages/made-file';
import { shelf } from './pages/shelf';
import { workbook } from './pages/workbook';

const FIRST = ['Ana', 'Börje', 'Chloé', 'Dmytro', 'Esther', 'Faisal', 'Grete', 'Hana', 'Iñigo', 'Zoë'];
const LAST = ['Lindqvist', 'Okafor', 'Montgomery-Wetherington', 'Ó Súilleabháin', 'Li', 'van der Meer'];
/** Sixty people nobody knows: every first name with every last. */
const NAMES = LAST.flatMap((last) => FIRST.map((first) => `${first} ${last}`));
const LIST = [
  'Guest\tTable\tDiet',
  ...NAMES.map((name, at) => `${name}\t${1 + (at % 8)}\t${at === 7 ? 'no nuts' : ''}`),
].join('\n');

test('a pasted guest list sets the count, and every name is on the tags and the packing list', {
  tag: ['@phone'],
}, async ({ page }) => {
  await shelf(page).openDemo();
  await workbook(page).turnTo('event');
  await page.getByText('Guest list', { exact: true }).click();
  await page.getByRole('textbox', { name: 'Paste a list' }).fill(LIST);
  await page.getByRole('button', { name: 'Read the list' }).click();
  await expect(page.getByText('60 guests, 8 tables, 1 with needs.')).toBeVisible();
  await page.getByRole('button', { name: 'Use this list' }).click();
  await expect(page.getByRole('textbox', { name: 'How many of Seed box' })).toHaveValue('60');
  await expect(page.getByText('to make: 60 needed + 6 spares')).toBeVisible();
  await expect(page.getByText('from the guest list')).toBeVisible();

  const read = async (button: string) => {
    const bytes = await madeFile(page, () => page.getByRole('button', { name: button }).click());
    return (await readPdf(bytes)).flatMap(({ texts }) => texts.map(({ text }) => text));
  };
  // A name over two lines is read back as it was set, one line after the other.
  const said = (await read('Print the names')).join(' ').replaceAll('- ', '-');
  for (const name of NAMES) expect(said).toContain(name);
  const packing = (await read('Print the packing list by table')).join(' ').replaceAll('- ', '-');
  for (const name of NAMES) expect(packing).toContain(name);
  expect(packing).toContain('no nuts');
});
