import { screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { openApp } from './open-app';

const CONTENTS = '/recipe/seed-box/contents';

test('a box that is too small is made large enough by one press, as one step of undo', async () => {
  const { workbook } = await openApp(CONTENTS);
  const user = userEvent.setup();
  const sizes = () => workbook.getState().rows.recipes.get('seed-box')?.sizesMm;
  const before = sizes();
  await user.click(await screen.findByRole('button', { name: 'Add an item I measured' }));
  await user.click(screen.getByText('My item: size and care'));
  const width = screen.getAllByRole('textbox', { name: 'Width' }).at(-1) as HTMLElement;
  await user.clear(width);
  await user.paste('4 × 2 × 3');
  await user.click(await screen.findByRole('button', { name: 'Make the box fit' }));
  const after = sizes();
  expect(after).not.toEqual(before);
  // 4 in and more, and the card of half a wall at each side
  for (const [name, least] of [['width', 2], ['depth', 2], ['height', 2]] as const) // biome-ignore format: one row
    expect(after?.[name]).toBeGreaterThan(least * 25.4);
  // on a sixteenth
  for (const mm of Object.values(after ?? {}))
    expect((mm / 25.4) * 16).toBeCloseTo(Math.round((mm / 25.4) * 16), 6);
  expect(screen.queryByRole('button', { name: 'Make the box fit' })).toBeNull();
  await user.keyboard('{Control>}z{/Control}');
  expect(sizes()).toEqual(before);
});

test('an item of one’s own begins on the marks of an inch ruler, and takes three sizes in one paste', async () => {
  const { workbook } = await openApp(CONTENTS);
  const user = userEvent.setup();
  await user.click(await screen.findByRole('button', { name: 'Add an item I measured' }));
  await user.click(screen.getByText('My item: size and care'));
  const width = screen.getAllByRole('textbox', { name: 'Width' }).at(-1) as HTMLElement;
  // 63.5 mm is 2 1/2 in, on a whole sixteenth.
  expect(width).toHaveValue('2 1/2');
  await user.clear(width);
  await user.paste('2 × 2 × 3');
  const size = () => workbook.getState().rows.recipes.get('seed-box')?.contents?.items.at(-1)?.size;
  expect(size()).toMatchObject({ widthMm: 50.8, depthMm: 50.8, heightMm: 76.2 });
  expect(screen.getAllByRole('textbox', { name: 'Height' }).at(-1)).toHaveValue('3');
});
