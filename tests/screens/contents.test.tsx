import { screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { openApp } from './open-app';

const CONTENTS = '/recipe/seed-box/contents';

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
