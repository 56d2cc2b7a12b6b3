import { emptyBase } from '../../src/core/draft/first-draft';
import { writeStyle } from '../../src/core/style-file/write-style';
import { type BoxStyle, styleById } from '../../src/core/styles';
import { drawn, HINGED_LID, OPEN_TOP } from '../core/draft/drawn-styles';
import { findBarriers, overflow, smallTargets } from './barriers';
import { expect, test } from './maker';
import { shelf } from './pages/shelf';
import { StyleEditor } from './pages/style-editor';
import { workbook } from './pages/workbook';

// `tests/core/draft` proves the texts that these presses make: their nets are those of our own styles to the tick, and they pass the
// published proof at 200 sizes.

test('an open-top box is drawn from one wall in at most 25 inputs, and folds well at 50 sizes', async ({
  page,
}) => {
  await shelf(page).lookAtDemo();
  const editor = new StyleEditor(page);
  await editor.start('wall');
  await editor.tap('front', 'right');
  await editor.add('Wall');
  await editor.add('Wall');
  await editor.add('Wall');
  await editor.add('Glue tab');
  for (const wall of ['front', 'right', 'back', 'left']) {
    await editor.tap(wall, 'down');
    await editor.add('Bottom flap');
  }
  expect(editor.inputs).toBeLessThanOrEqual(25);
  expect(await editor.keptText()).toBe(drawn(emptyBase('wall', 'My style'), OPEN_TOP));

  await page.getByRole('button', { name: 'Try 50 sizes' }).click();
  await expect(page.getByText('It folds well at all 50 sizes we tried.')).toBeVisible();

  // It is a style like the others: its sizes are fields on Size, and the net follows.
  await page.getByRole('link', { name: 'Back to Size' }).click();
  await page.getByRole('textbox', { name: 'Width', exact: true }).fill('5 in');
  await expect(page.getByRole('img', { name: /^Net of / })).toContainText('a piece 15 × 4¼ in');
  await page.getByRole('link', { name: 'Change this style' }).click();
  await expect(page.getByRole('img', { name: /^Net of / })).toContainText('a piece 15 × 4¼ in');
});

test('a tray with a hinged lid is drawn from a floor, saved as it grows, and undone step by step', async ({
  page,
}) => {
  await shelf(page).lookAtDemo();
  const editor = new StyleEditor(page);
  await editor.start('floor');
  for (const edge of ['left', 'right', 'down', 'up']) {
    await editor.tap('base', edge);
    await editor.add('Wall');
  }
  for (const wall of ['front', 'back'])
    for (const edge of ['left', 'right']) {
      await editor.tap(wall, edge);
      await editor.add('Glue tab');
    }
  await editor.tap('back', 'up');
  await editor.add('Lid');
  for (const edge of ['left', 'right']) {
    await editor.tap('lid', edge);
    await editor.add('Dust flap');
  }
  await editor.tap('lid', 'up');
  await editor.add('Tuck');
  const whole = drawn(emptyBase('floor', 'My style'), HINGED_LID);
  expect(await editor.keptText()).toBe(whole);

  await page.reload();
  await expect(page.getByRole('combobox', { name: 'Panel' }).first()).toContainText('tuck');
  await page.getByRole('button', { name: /^Undo/ }).click();
  expect(await editor.keptText()).toBe(drawn(emptyBase('floor', 'My style'), HINGED_LID.slice(0, -1)));
  await page.getByRole('button', { name: /^Redo/ }).click();
  expect(await editor.keptText()).toBe(whole);

  // What does not fold is shown with its size; nothing is in the way of drawing on.
  await editor.tap('left');
  await page.getByRole('combobox', { name: 'Fold' }).selectOption('Down, at a right angle');
  await page.getByRole('button', { name: 'Try 50 sizes' }).click();
  const alert = page.getByRole('alert');
  await expect(alert).toContainText(/We found \d+ problems?\./);
  await expect(alert).toContainText(/At Width 4 in, Depth 3 in, Height 2 in/);
  await expect(alert.locator('svg').first()).toBeVisible();
});

test('by keyboard alone: an edge is chosen, a wall added, its size written and refused', async ({ page }) => {
  await shelf(page).lookAtDemo();
  const editor = new StyleEditor(page);
  await editor.start('floor');
  const net = page.getByRole('img', { name: /^Net of / });
  await net.focus();
  await expect(editor.selected()).toHaveText('Left edge of base');
  await page.keyboard.press('ArrowUp');
  await expect(editor.selected()).toHaveText('Upper edge of base');
  await page.keyboard.press('ArrowLeft');
  await expect(editor.selected()).toHaveText('Left edge of base');
  await page.getByRole('button', { name: /^Wall/ }).focus();
  await page.keyboard.press('Enter');
  await expect(editor.selected()).toHaveText('Left edge of left');
  await net.focus();
  await page.keyboard.press('ArrowRight');
  await expect(editor.selected()).toHaveText('left');
  const across = page.getByRole('textbox', { name: 'Across' });
  await across.fill('hight + 1/8 in');
  await across.press('Enter');
  await expect(
    page.getByText(/No size here is called hight\. Use one of these: width, depth, height/),
  ).toBeVisible();
  await across.fill('height + 1/8 in');
  await across.press('Enter');
  await expect(page.getByText('Now 2⅛ in')).toBeVisible();
  await across.press('ArrowUp');
  await expect(across).toHaveValue('height + 3/16 in');
  await across.fill('depth - 3 in');
  await across.press('Enter');
  await expect(page.getByText(/The left is depth - 3 in long, which is/)).toBeVisible();
});

test(
  'the page has no barriers, no control too small, and is never wider than the window',
  { tag: ['@phone'] },
  async ({ page }, { project }) => {
    await shelf(page).lookAtDemo();
    const editor = new StyleEditor(page);
    await editor.start('floor');
    await editor.tap('base', 'left');
    await editor.add('Wall');
    for (const head of await page.locator('.style-lists summary').all()) await head.click();
    expect(await findBarriers(page)).toEqual([]);
    await editor.tap('left');
    for (const head of await page.locator('.style-in-hand summary').all()) await head.click();
    expect(await findBarriers(page)).toEqual([]);
    const usual = project.name === 'phone' ? [320, 360, 390] : [320, 360, 600, 820, 1024, 1366, 1440];
    for (const width of usual) {
      await page.setViewportSize({ width, height: 900 });
      await expect.poll(() => overflow(page), { message: `at ${width} px` }).toBeLessThanOrEqual(0);
    }
    await page.setViewportSize({ width: 360, height: 800 });
    expect(
      await smallTargets(
        page,
        44,
        '.style-page button, .style-page a[href], .style-page input, .style-page select',
      ),
    ).toEqual([]);
    // A band along each edge is at least 24 px wide (WCAG 2.2, 2.5.8).
    const bands = await page.locator('.style-edge').evaluateAll((edges) =>
      edges.map((edge) => {
        const { width, height } = edge.getBoundingClientRect();
        return Math.round(Math.min(width, height));
      }),
    );
    expect(Math.min(...bands)).toBeGreaterThanOrEqual(24);
    await page.setViewportSize({ width: 390, height: 844 });
    await workbook(page).turnTo('fold');
    await expect(page.getByText('This page didn’t load')).toHaveCount(0);
  },
);

test('drawing starts from a style in the list, with all its pieces, and from one way of a style that somebody sent', async ({
  page,
}) => {
  await shelf(page).lookAtDemo();
  const editor = new StyleEditor(page);
  for (const style of ['Gable box with handle strip', 'Little house', 'Tray with lift-off lid']) {
    await page.goto('./#/new');
    await page.getByText('Start from a style').click();
    await page.getByRole('combobox', { name: 'Style' }).selectOption(style);
    await page.getByRole('button', { name: 'Draw from this one' }).click();
    await expect(page.getByRole('heading', { name: 'Draw your style' })).toBeVisible();
    await expect(page.locator('.style-edge').first()).toBeVisible();
  }
  await page.getByRole('radio', { name: 'Lid', exact: true }).click();
  await expect(page.getByRole('img', { name: /^Net of Lid/ })).toBeVisible();
  await editor.tap('base');
  await page.getByRole('textbox', { name: 'Name', exact: true }).first().fill('Top');
  await page.keyboard.press('Enter');
  await expect(editor.selected()).toHaveText('top');

  const writing = writeStyle(styleById('open-top') as BoxStyle);
  await page.goto('./#/new');
  const files = page.locator('section', { hasText: 'Import a style file' }).locator('input[type=file]');
  const file = writing.ok ? writing.text.replace('"Open-top box"', '"Sent box"') : '';
  await files.setInputFiles({ name: 'sent.json', mimeType: 'application/json', buffer: Buffer.from(file) });
  await page.getByRole('button', { name: 'Make a box in this style' }).click();
  await page.getByRole('link', { name: 'Change this style' }).click();
  await page.getByRole('button', { name: 'Keep this way' }).click();
  await editor.tap('front', 'up');
  await expect(editor.selected()).toHaveText('Upper edge of front');
});
