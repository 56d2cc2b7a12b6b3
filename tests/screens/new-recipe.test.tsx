import { screen, waitFor } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { openApp } from './open-app';

test('sizes pasted to compare styles are those the chosen box begins with', async () => {
  const { workbook } = await openApp('/new');
  const user = userEvent.setup();
  const recipes = () => [...workbook.getState().rows.recipes.values()];
  const before = recipes().map(({ id }) => id);
  const width = await screen.findByRole('textbox', { name: 'Width' });
  await user.clear(width);
  await user.paste('2 x 2 x 3');
  // A style stands in every family it belongs to.
  await user.click(screen.getAllByRole('button', { name: /^Open-top box/ })[0] as HTMLElement);
  await waitFor(() => expect(recipes().length).toBeGreaterThan(before.length));
  // 2 × 2 × 3 in at 25.4 mm an inch.
  expect(recipes().find(({ id }) => !before.includes(id))).toMatchObject({
    styleId: 'open-top',
    sizesMm: { width: 50.8, depth: 50.8, height: 76.2 },
  });
});
