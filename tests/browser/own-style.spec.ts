import { readFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import { STYLES } from '../../src/core/styles';
import { expect, test } from './maker';
import { madeFile } from './pages/made-file';
import { shelf } from './pages/shelf';
import { workbook } from './pages/workbook';

const FILE = 'tests/fixtures/own-styles/deep-tray.json';
const text = readFileSync(FILE, 'utf8');

/** The field for style files, on the page of a new box. */
async function styleFiles(page: Page): Promise<Locator> {
  await page.goto('./#/new');
  const files = page.locator('section', { hasText: 'Import a style file' }).locator('input[type=file]');
  await files.waitFor({ state: 'attached' });
  return files;
}

test('a style somebody sent is checked, makes a box that changes size, and is there after a reload', async ({
  page,
}) => {
  await shelf(page).lookAtDemo();
  await shelf(page).addPaper('Cream card, letter');
  const files = await styleFiles(page);
  await files.setInputFiles(FILE);
  await expect(page.getByText(/^Deep tray folds well at all \d+ sizes we tried\.$/)).toBeVisible();
  await page.getByRole('button', { name: 'Make a box in this style' }).click();

  // A style of hers is a style: its sizes are fields, and the net follows them.
  await expect(page.getByRole('img', { name: /^Net of / })).toContainText('a piece 8 × 7 in');
  const width = page.getByRole('textbox', { name: 'Width' });
  await width.fill('5 in');
  await width.press('Enter');
  await expect(page.getByRole('img', { name: /^Net of / })).toContainText('a piece 9 × 7 in');
  for (const name of ['contents', 'fold', 'marks', 'dressing', 'handout', 'bench'] as const) {
    await workbook(page).turnTo(name);
    await expect(page.getByText('This page didn’t load')).toHaveCount(0);
  }
  await expect(page.getByText(/^Cut 9 × /).first()).toBeVisible();

  // The planner is a worker of its own, which has to know the style too: 9 × 7 in fits once on a letter sheet, and a tenth of 12 is 2 spares.
  await workbook(page).planBatch('12', 'Cream card, letter');
  await workbook(page).turnTo('sheets');
  await expect(page.getByRole('heading', { name: '14 sheets of Cream card, letter' })).toBeVisible();

  await page.reload();
  await workbook(page).turnTo('box');
  await expect(page.getByRole('img', { name: /^Net of / })).toContainText('a piece 9 × 7 in');

  await page.goto('./#/new');
  await page.getByRole('button', { name: /^Deep tray/ }).click();
  await expect(page.getByRole('img', { name: /^Net of / })).toContainText('a piece 8 × 7 in');
});

test('a style that does not close shows its problem with the size, and one that is no box is refused', async ({
  page,
}) => {
  const files = await styleFiles(page);
  const style = (change: (panels: Record<string, { fold?: number; size: string[] }>) => void) => {
    const file = JSON.parse(text);
    change(file.style.pieces.tray.panels);
    return { name: 'mine.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(file)) };
  };
  await files.setInputFiles(
    style(({ left }) => {
      if (left) left.fold = 80;
    }),
  );
  const alert = page.getByRole('alert');
  await expect(alert).toContainText(/Deep tray has \d+ problems?\./);
  await expect(alert).toContainText('apart where they should meet');
  await expect(alert).toContainText(/At Width 4 in, Depth 3 in, Height 2 in/);
  await expect(alert.locator('svg').first()).toBeVisible();

  await files.setInputFiles(
    style(({ left }) => {
      if (left) left.size = ['height - 1/2 in', 'depth'];
    }),
  );
  await expect(alert).toContainText('We couldn’t use this style');
  await expect(alert).toContainText('The left is height - 1/2 in long, which is');
  await expect(page.getByRole('button', { name: 'Make a box in this style' })).toHaveCount(0);
});

test('a style that folds well though no tab holds one of its corners names that corner before it is used', async ({
  page,
}) => {
  const file = JSON.parse(text);
  const tray = file.style.pieces.tray;
  const [name, tab] = Object.entries<{ role: string; on: string }>(tray.panels).find(
    ([, { role }]) => role === 'glueTab',
  ) ?? ['', { on: '' }];
  tray.panels = Object.fromEntries(Object.entries(tray.panels).filter(([panel]) => panel !== name));
  tray.joints = tray.joints.filter(({ panel }: { panel: string }) => panel !== name);
  tray.closing = tray.closing.flatMap((step: { panel?: string; panels?: string[] }) => {
    if (step.panel === name) return [];
    return [step.panels ? { ...step, panels: step.panels.filter((each) => each !== name) } : step];
  });
  const buffer = Buffer.from(JSON.stringify(file));
  await (await styleFiles(page)).setInputFiles({ name: 'loose.json', mimeType: 'application/json', buffer });
  await expect(
    page.getByText(/^Deep tray folds well at all \d+ sizes we tried\. Still check this before you cut/),
  ).toBeVisible();
  const loose = page.getByRole('list', { name: 'Not finished' });
  await expect(loose.getByRole('listitem')).toHaveCount(1);
  await expect(loose).toContainText('No tab holds the');
  await expect(loose).toContainText(tab.on.split('.')[0] ?? '');
  await expect(loose).toContainText('Add a glue tab on one of these edges');
});

test('a style of hers stands among ours: front door, filters, comparisons; and its file makes the same box again', async ({
  page,
}) => {
  test.setTimeout(test.info().timeout * 2);
  await shelf(page).lookAtDemo();
  await (await styleFiles(page)).setInputFiles(FILE);
  await page.getByRole('button', { name: 'Make a box in this style' }).click();
  const net = page.getByRole('img', { name: /^Net of / });
  await expect(net).toContainText('a piece 8 × 7 in');
  const box = page.url();

  // Its file is the same text again, but for blank space.
  const bytes = await madeFile(page, () => page.getByRole('button', { name: 'Save the style file' }).click());
  const saved = Buffer.from(bytes).toString('utf8');
  expect(JSON.parse(saved)).toEqual(JSON.parse(text));

  // The picker: in a group of its own, under the same filters. A tray is not tall.
  await page.goto('./#/new');
  const yours = page.getByRole('region', { name: 'Your styles (1)' });
  await expect(yours.getByRole('button', { name: /^Deep tray/ })).toBeVisible();
  await expect(page.getByText(`All ${STYLES.length + 1} styles.`)).toBeVisible();
  await expect(yours).toContainText(/per sheet|per box/);
  await page.getByRole('checkbox', { name: 'Tall' }).click();
  await expect(yours).toHaveCount(0);
  await page.getByRole('checkbox', { name: 'Tall' }).click();
  await page.getByRole('checkbox', { name: 'Fits on one sheet' }).click();
  await expect(yours).toBeVisible();

  // The same file makes a box of the same style: one style still, in two boxes.
  const files = page.locator('section', { hasText: 'Import a style file' }).locator('input[type=file]');
  await files.setInputFiles({ name: 'again.json', mimeType: 'application/json', buffer: Buffer.from(saved) });
  await page.getByRole('button', { name: 'Make a box in this style' }).click();
  await expect(net).toContainText('a piece 8 × 7 in');
  expect(page.url()).not.toBe(box);
  await page.goto('./#/new');
  await expect(page.getByText(`All ${STYLES.length + 1} styles.`)).toBeVisible();

  // A box of ours: hers is among the other styles, and among those of the same room.
  await page.getByRole('button', { name: /^Tray with lift-off lid/ }).click();
  await workbook(page).turnTo('marks');
  await page.getByRole('button', { name: 'Compare every style' }).click();
  await page.getByRole('button', { name: 'Use this style Deep tray' }).click({ timeout: 120_000 });
  await workbook(page).turnTo('box');
  await expect(page.getByRole('button', { name: 'Save the style file' })).toBeVisible();
  await page.getByRole('button', { name: 'Another style' }).click();
  await page.getByRole('button', { name: 'Book-style wallet' }).click();
  await expect(page.getByRole('button', { name: 'Save the style file' })).toHaveCount(0);
  await page.getByRole('button', { name: 'Another style' }).click();
  await page.getByRole('button', { name: 'Deep tray' }).click();
  await expect(page.getByRole('button', { name: 'Save the style file' })).toBeVisible();

  // The front door finds it, and makes it.
  await page.goto('./#/start');
  await page.getByLabel('Its size').fill('3 x 2 x 1');
  await page.getByLabel('Your paper').fill('12x12, 65 lb, white, $12.99 for 25');
  await page.getByRole('button', { name: /^Make this box ?: Deep tray/ }).click({ timeout: 120_000 });
  await expect(page).toHaveURL(/event\/.*box/);
  await expect(page.getByRole('button', { name: 'Save the style file' })).toBeVisible();
  await workbook(page).turnTo('sheets');
  await expect(page.getByRole('main')).toContainText(/\d+ sheets? of/);
});
