import { screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { openApp } from './open-app';

const BOX = '/recipe/seed-box/box';
const field = (name: string) => screen.findByRole('textbox', { name });

test('a size typed is a size drawn, and kept with the recipe', async () => {
  const { workbook } = await openApp(BOX);
  const user = userEvent.setup();
  const width = await field('Width');
  await user.clear(width);
  await user.type(width, '4');
  // 2 × 4 + 2 × 1 1/2 + 1 in tab is 12 in; 3 + 1 1/2 is 4 1/2 in.
  expect(screen.getByRole('img', { name: /a piece 12 × 4½ in/ })).toBeVisible();
  expect(workbook.getState().rows.recipes.get('seed-box')?.sizesMm['width']).toBe(101.6);
});

test('three sizes pasted into one field fill all three, as one step of undo', async () => {
  const { workbook } = await openApp(BOX);
  const user = userEvent.setup();
  const sizes = () => workbook.getState().rows.recipes.get('seed-box')?.sizesMm;
  const before = sizes();
  const depth = await field('Depth');
  await user.clear(depth);
  await user.paste('2 x 2 1/2 x 3 in');
  expect(await field('Width')).toHaveValue('2');
  expect(depth).toHaveValue('2 1/2');
  expect(await field('Height')).toHaveValue('3');
  // 25.4 mm an inch.
  expect(sizes()).toMatchObject({ width: 50.8, depth: 63.5, height: 76.2 });
  expect(depth).toHaveAccessibleDescription(/We filled in Width, Depth, Height: 2 × 2½ × 3 in\./);
  await user.tab();
  await user.keyboard('{Control>}z{/Control}');
  expect(sizes()).toEqual(before);
});

test('undo takes back what is said of a paste, also in a field whose own length stays', async () => {
  const { workbook } = await openApp(BOX);
  const user = userEvent.setup();
  const height = await field('Height');
  await user.clear(height);
  // The box is 3 in high already.
  await user.paste('2 x 2 1/2 x 3 in');
  expect(height).toHaveAccessibleDescription(/We filled in/);
  await user.tab();
  await user.keyboard('{Control>}z{/Control}');
  expect(workbook.getState().rows.recipes.get('seed-box')?.sizesMm['width']).toBe(88.9);
  expect(height).toHaveValue('3');
  expect(height).not.toHaveAccessibleDescription(/We filled in/);
});

test('two sizes pasted where a box has three are not taken, and it says what to write', async () => {
  const { workbook } = await openApp(BOX);
  const user = userEvent.setup();
  const before = workbook.getState().rows.recipes.get('seed-box')?.sizesMm['height'];
  const height = await field('Height');
  await user.clear(height);
  await user.paste('4 x 6');
  expect(height).toHaveAccessibleDescription(
    /We read 2 lengths here\. Write one, or one each for Width, Depth, Height\./,
  );
  expect(workbook.getState().rows.recipes.get('seed-box')?.sizesMm['height']).toBe(before);
});

test('what is wrong is said with its remedy, and mended by one press', async () => {
  const { workbook } = await openApp(BOX);
  const user = userEvent.setup();
  await user.click(await screen.findByText('Flaps, tabs and allowances'));
  const flap = await field('Bottom flap');
  await user.clear(flap);
  await user.type(flap, '5/8');
  const finding = screen.getByRole('list', { name: 'Checks on this box' });
  // Flaps of 5/8 in on a box 1 1/2 in deep: 1 1/2 − 2 × 5/8 = 1/4 in is left open.
  expect(finding).toHaveTextContent('Bottom flaps ⅝ in leave a hole ¼ in wide.');
  await user.click(within(finding).getByRole('button', { name: 'Bottom flap to ¾ in' }));
  expect(screen.queryByText(/leave a hole/)).toBeNull();
  expect(workbook.getState().rows.recipes.get('seed-box')?.sizesMm['flap']).toBe(19.05);
});

test('undo takes a whole word of typing back, once its field is left', async () => {
  const { workbook } = await openApp(BOX);
  const user = userEvent.setup();
  const height = await field('Height');
  await user.clear(height);
  await user.type(height, '12');
  expect(workbook.getState().rows.recipes.get('seed-box')?.sizesMm['height']).toBeCloseTo(304.8);
  await user.tab();
  await user.keyboard('{Control>}z{/Control}');
  expect(workbook.getState().rows.recipes.get('seed-box')?.sizesMm['height']).toBe(76.2);
  expect(height).toHaveValue('3');
});

test('another style is a picture away, and keeps the sizes it has a name for', async () => {
  const { workbook } = await openApp(BOX);
  const user = userEvent.setup();
  await user.click(await screen.findByRole('button', { name: 'Another style' }));
  await user.click(screen.getByRole('button', { name: /^Tray with lift-off lid/ }));
  expect(workbook.getState().rows.recipes.get('seed-box')?.styleId).toBe('tray-lid');
  expect(await field('Width')).toHaveValue('3 1/2');
  expect(
    within(screen.getByRole('radiogroup', { name: 'Piece' })).getByRole('radio', { name: 'Lid' }),
  ).toBeVisible();
});

test('a label on the right stays on the right in another style, and comes back with the box', async () => {
  const { workbook } = await openApp(BOX);
  const user = userEvent.setup();
  const boxNow = () => workbook.getState().rows.recipes.get('seed-box');
  // an open-top box saves its right wall under the name it once had
  const label = {
    id: 'label',
    kind: 'layer',
    name: 'Label',
    widthMm: 20,
    heightMm: 20,
    perBox: 1,
    grain: 'free',
    paperId: null,
    fit: { rule: 'on-panel', panel: 'left', part: 'box', revealMm: 3 },
  } as const;
  workbook.getState().edit('recipes', 'seed-box', 'label', (recipe) => ({
    ...recipe,
    dressings: [{ id: 'look', name: 'Look', pieces: [label] }],
  }));
  const on = () => boxNow()?.dressings[0]?.pieces[0]?.fit;
  await user.click(await screen.findByRole('button', { name: 'Another style' }));
  await user.click(screen.getByRole('button', { name: /^Tray with lift-off lid/ }));
  expect(on()).toMatchObject({ panel: 'right', part: 'tray' });
  await user.click(await screen.findByRole('button', { name: 'Another style' }));
  await user.click(screen.getByRole('button', { name: /^Straight tuck box/ }));
  expect(on()).toMatchObject({ panel: 'left', part: 'box' });
});

test('the same box in millimetres, everywhere at once', async () => {
  await openApp(BOX);
  const user = userEvent.setup();
  await screen.findByRole('textbox', { name: 'Width' });
  // On a phone it stands behind a button; this window has no width to tell.
  await user.click(screen.getByRole('radio', { name: 'Millimeters', hidden: true }));
  expect(await field('Width')).toHaveValue('88.9');
  expect(screen.getByRole('table', { name: /in millimeters/ })).toBeVisible();
});

test('the card goes to the printer on the paper that is in it', async () => {
  const { printer } = await openApp(BOX);
  const user = userEvent.setup();
  await user.click(await screen.findByRole('radio', { name: 'A4' }));
  await user.click(screen.getByRole('button', { name: 'Print the step card' }));
  await user.click(screen.getByRole('button', { name: 'Print a full-size template' }));
  expect(printer.asked).toEqual(['bench card on a4', 'template on a4']);
});

test('the net goes to other programs in three formats', async () => {
  const { printer } = await openApp(BOX);
  const user = userEvent.setup();
  await user.click(await screen.findByText('Export the net (SVG, DXF, FOLD)'));
  for (const name of ['Save as FOLD', 'Save as SVG', 'Save as DXF'])
    await user.click(screen.getByRole('button', { name }));
  expect(printer.asked).toEqual(['net as fold', 'net as svg', 'net as dxf']);
});

test('what is built in another way says what that means, and is one undo step', async () => {
  const { workbook } = await openApp(BOX);
  const user = userEvent.setup();
  await user.click(await screen.findByText('Construction'));
  const before = workbook.getState().history.done.length;
  const groups = screen.getAllByRole('radiogroup');
  expect(groups.length).toBeGreaterThan(3);
  await user.click(screen.getByRole('radio', { name: 'Side first, seam at the back' }));
  expect(workbook.getState().history.done.length).toBe(before + 1);
});

test('a size that only one way of building needs stands under that choice, and goes with it', async () => {
  await openApp(BOX);
  const user = userEvent.setup();
  await user.click(await screen.findByRole('button', { name: 'Another style' }));
  await user.click(screen.getByRole('button', { name: /^Square pyramid/ }));
  const head = await screen.findByText('Construction');
  await user.click(head);
  const built = head.closest('details');
  if (built === null) throw new Error('nothing opens');
  // a new pyramid is tied
  expect(within(built).getByRole('textbox', { name: 'Hole' })).toBeVisible();
  expect(within(built).getByRole('textbox', { name: 'Hole below tip' })).toBeVisible();
  expect(screen.queryByRole('textbox', { name: 'Glue tab' })).toBeNull();
  await user.click(within(built).getByRole('radio', { name: 'Glued with tabs' }));
  expect(within(built).getByRole('textbox', { name: 'Glue tab' })).toBeVisible();
  expect(screen.queryByRole('textbox', { name: 'Hole' })).toBeNull();
});
