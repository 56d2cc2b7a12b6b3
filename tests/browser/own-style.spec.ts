import { readFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import { expect, test } from './maker';
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
  await expect(page.getByText(/^Cut a piece 9 × /).first()).toBeVisible();

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
