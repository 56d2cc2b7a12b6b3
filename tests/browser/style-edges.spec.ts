import { setPanelTaper } from '../../src/core/draft/change-panel';
import { setCut } from '../../src/core/draft/cuts';
import { emptyBase } from '../../src/core/draft/first-draft';
import { drawn, HINGED_LID } from '../core/draft/drawn-styles';
import { findBarriers } from './barriers';
import { expect, test } from './maker';
import { shelf } from './pages/shelf';
import { StyleEditor } from './pages/style-editor';

// `tests/core/draft/cuts.test.ts` measures such corners and curves, and proves the box; the fresh reader makes it of its card.

test('corners of a tuck are rounded and slanted, its edge arched and straight again, each as one step', async ({
  page,
}) => {
  await shelf(page).lookAtDemo();
  const tuck = { piece: 'box', panel: 'tuck' };
  const square = drawn(emptyBase('floor', 'Mine'), [...HINGED_LID, setPanelTaper(tuck, '')]);
  await page.goto('./#/new');
  const files = page.locator('section', { hasText: 'Import a style file' }).locator('input[type=file]');
  await files.setInputFiles({ name: 'lid.json', mimeType: 'application/json', buffer: Buffer.from(square) });
  await page.getByRole('button', { name: 'Make a box in this style' }).click();
  await page.getByRole('link', { name: 'Change this style' }).click();
  const editor = new StyleEditor(page);
  await editor.tap('tuck', 'up');
  await page.getByText('Edge and corners').click();
  const net = page.getByRole('img', { name: /^Net of / });
  const arcs = () => net.locator('path[d*="A"]').count();
  expect(await arcs()).toBe(0);
  await page.getByRole('combobox', { name: 'Left corner' }).selectOption('Round');
  await expect(page.getByRole('textbox', { name: 'Radius' })).toHaveValue('1/4 in');
  await expect.poll(arcs).toBeGreaterThan(0);
  await page.getByRole('textbox', { name: 'Radius' }).press('ArrowUp');
  await expect(page.getByRole('textbox', { name: 'Radius' })).toHaveValue('5/16 in');
  await page.getByRole('combobox', { name: 'Right corner' }).selectOption('Slanted');
  await expect(page.getByRole('textbox', { name: 'Cut off each edge' })).toHaveValue('1/4 in');
  const cut = drawn(square, [
    setCut(tuck, 'left', 'round', 'corner', '5/16 in'),
    setCut(tuck, 'up', 'slant', 'corner'),
  ]);
  expect(await editor.keptText()).toBe(cut);
  expect(await findBarriers(page)).toEqual([]);

  // Too large: said with the panel, its number and what to do.
  await page.getByRole('textbox', { name: 'Radius' }).fill('3 in');
  await page.getByRole('textbox', { name: 'Radius' }).press('Enter');
  await expect(page.getByText(/The slanted or cut ends of the tuck cross/).first()).toBeVisible();
  await page.getByRole('button', { name: /^Undo/ }).click();
  expect(await editor.keptText()).toBe(cut);

  // A curve takes the place of both corners: first they are square again.
  await expect(page.getByRole('combobox', { name: 'Edge', exact: true })).toHaveCount(0);
  for (const corner of ['Left corner', 'Right corner'])
    await page.getByRole('combobox', { name: corner }).selectOption('Square');
  await page.getByRole('combobox', { name: 'Edge', exact: true }).selectOption('Arched');
  await expect(page.getByRole('textbox', { name: 'Height of the curve' })).toHaveValue('1/4 in');
  expect(await editor.keptText()).toBe(drawn(square, [setCut(tuck, 'up', 'arch', 'edge')]));
  await page.getByRole('button', { name: /^Undo/ }).click();
  expect(await editor.keptText()).toBe(square);
});
