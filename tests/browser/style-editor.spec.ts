import { emptyBase } from '../../src/core/draft/first-draft';
import { changeSize } from '../../src/core/draft/sizes';
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
  for (const wall of ['front', 'left', 'back', 'right']) {
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
  await editor.drawLiddedTray();
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
  await page.getByRole('combobox', { name: 'Fold', exact: true }).selectOption('Down, at a right angle');
  await page.getByRole('button', { name: 'Try 50 sizes' }).click();
  const alert = page.getByRole('alert');
  await expect(alert).toContainText(/We found \d+ problems?\./);
  await expect(alert).toContainText(/At Width 4 in, Depth 3 in, Height 2 in/);
  await expect(alert.locator('svg').first()).toBeVisible();
});

test('an edge is pulled with the mouse and by keys: the length is on a mark, shown while it is pulled, and one step to undo', async ({
  page,
}) => {
  await shelf(page).lookAtDemo();
  const editor = new StyleEditor(page);
  await editor.start('floor');
  await editor.tap('base', 'left');
  await editor.add('Wall');
  await editor.tap('base');
  const net = page.getByRole('img', { name: /^Net of / });
  await expect(net).toContainText('a piece 6 × 3 in');

  // The floor is 4 in wide. A third of an inch more lands on the nearest sixteenth, 5/16.
  const right = editor.grip('Right edge of base');
  await editor.drag(right, { across: 1 / 3 }, async () => {
    await expect(page.locator('.style-ghost-length')).toHaveText('4⁵⁄₁₆ in');
    await expect(page.getByText('Width becomes 4⁵⁄₁₆ in, in every panel that uses it.')).toBeVisible();
    await expect(net).toContainText('a piece 6 × 3 in');
  });
  await expect(net).toContainText('a piece 6⁵⁄₁₆ × 3 in');
  await expect(page.locator('.style-ghost-length')).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo: Change Width' }).click();
  await expect(net).toContainText('a piece 6 × 3 in');

  // The wall alone: its height is a sum after the pull, and the page says so.
  await editor.tap('left');
  await page.getByRole('radio', { name: 'Pull this panel only' }).click();
  const rim = editor.grip('Left edge of left');
  await editor.drag(rim, { across: -1 / 8 }, async () => {
    await expect(page.getByText('2⅛ in long: height + 1/8 in. No other panel changes.')).toBeVisible();
  });
  await expect(page.getByRole('textbox', { name: 'Across' })).toHaveValue('height + 1/8 in');

  // Keys do the same, an arrow a mark; typing stays beside them.
  await rim.focus();
  await page.keyboard.press('ArrowLeft');
  await expect(page.getByRole('textbox', { name: 'Across' })).toHaveValue('height + 3/16 in');
  await page.keyboard.press('Shift+ArrowDown');
  await expect(page.getByRole('textbox', { name: 'Across' })).toHaveValue('height - 5/16 in');
  await expect(rim).toHaveAttribute('aria-valuetext', '1¹¹⁄₁₆ in');
  await page.getByRole('textbox', { name: 'Across' }).fill('height');
  await page.keyboard.press('Enter');
  await expect(net).toContainText('a piece 6 × 3 in');

  // Escape lets an edge go where it was.
  await editor.drag(rim, { across: -1 }, () => page.keyboard.press('Escape'));
  await expect(page.getByRole('textbox', { name: 'Across' })).toHaveValue('height');
});

test('a slit is set on a panel, moved and made longer by its grips and by keys, each one step to undo', async ({
  page,
}) => {
  await shelf(page).lookAtDemo();
  const editor = new StyleEditor(page);
  await editor.start('floor');
  await editor.tap('base', 'down');
  await editor.add('Wall');
  await editor.tap('front');
  await page.getByText('Openings', { exact: true }).click();
  await editor.press('Add a slit');
  const length = page.getByRole('textbox', { name: 'Length', exact: true });
  await expect(length).toHaveValue('1 in');

  // The wall is 4 in wide, so the slit runs from 1 1/2 to 2 1/2 in. Half an inch more at its right end.
  await editor.drag(page.getByRole('slider', { name: 'Pull: right or upper end of slit 1 of front' }), {
    across: 1 / 2,
  });
  await expect(length).toHaveValue('1 1/2 in');
  const whole = page.getByRole('slider', { name: 'Move: slit 1 of front' });
  await whole.focus();
  await page.keyboard.press('ArrowLeft');
  await expect(whole).toHaveAttribute('aria-valuetext', /^1⁷⁄₁₆ in from the left/);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(whole).toHaveAttribute('aria-valuetext', /^1½ in from the left/);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(length).toHaveValue('1 in');
  await page.getByRole('button', { name: 'Remove slit' }).click();
  await expect(length).toHaveCount(0);
});

test('a tray with a hinged lid is made with taps and pulls alone, in at most 50 inputs, and folds well at 50 sizes', async ({
  page,
}) => {
  await shelf(page).lookAtDemo();
  const editor = new StyleEditor(page);
  await editor.drawLiddedTray();

  // The tuck is 3/4 in long, the floor 4 in wide.
  await editor.drag(editor.grip('Upper edge of tuck'), { up: 1 / 4 });
  await editor.tap('base');
  await editor.drag(editor.grip('Right edge of base'), { across: 1 });

  // A joint is taken out by its number, and made again: tab, then wall. Its step comes last and is moved before the lid.
  await editor.tapDoes('Glues panels');
  await editor.press('4: back right tab is glued to right');
  await editor.press('Remove back right tab is glued to right');
  await expect(page.getByText('The back right tab isn’t glued to anything')).toBeVisible();
  await editor.tap('backRightTab');
  await expect(page.getByText('Now tap the panel that back right tab is glued to.')).toBeVisible();
  await editor.tap('right');
  await expect(page.getByText('The back right tab isn’t glued to anything')).toHaveCount(0);
  await page.getByText('Folding order').click();
  editor.inputs++;
  await editor.press('Earlier: Glue back right tab to right');
  await editor.press('Earlier: Glue back right tab to right');

  // The same with two edges that meet, one on each side of a slit.
  await editor.tapDoes('Joins edges');
  await editor.press(/^4: Upper edge of right meets Right edge of back$/i);
  await editor.press(/^Remove Upper edge of right meets/);
  await editor.tapInside('right', 'up');
  await editor.tapInside('back', 'right');
  await expect(page.getByRole('button', { name: /^4: Upper edge of right meets/ })).toBeVisible();

  expect(editor.inputs).toBeLessThanOrEqual(50);
  const wanted = drawn(emptyBase('floor', 'My style'), [
    ...HINGED_LID,
    changeSize('width', { default: '5 in' }),
    changeSize('tuck', { default: '1 in' }),
  ]);
  expect(JSON.parse((await editor.keptText()) ?? '')).toEqual(JSON.parse(wanted));
  await page.getByRole('button', { name: 'Try 50 sizes' }).click();
  await expect(page.getByText('It folds well at all 50 sizes we tried.')).toBeVisible();
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
