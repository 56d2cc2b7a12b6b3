import { screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { openApp } from './open-app';

const EVENT = '/event/seed-swap-supper/event';

test('forty favors and one in ten to spare are forty-four boxes', async () => {
  await openApp(EVENT);
  expect(await screen.findByText('to make: 40 ordered, 4 spares')).toBeVisible();
});

test('a count is stepped, typed and undone', async () => {
  const { workbook } = await openApp(EVENT);
  const user = userEvent.setup();
  const count = () => workbook.getState().rows.events.get('seed-swap-supper')?.lines[0]?.count;
  await user.click(await screen.findByRole('button', { name: 'How many of Seed box: one more' }));
  expect(count()).toBe(41);
  const box = screen.getByRole('textbox', { name: 'How many of Seed box' });
  await user.clear(box);
  await user.type(box, '60');
  expect(count()).toBe(60);
  expect(await screen.findByText('to make: 60 ordered, 6 spares')).toBeVisible();
});

test('another box is put on the list by one press', async () => {
  const { workbook } = await openApp(EVENT);
  await userEvent.setup().click(await screen.findByRole('button', { name: 'Bean pillow' }));
  expect(
    workbook
      .getState()
      .rows.events.get('seed-swap-supper')
      ?.lines.map(({ recipeId }) => recipeId),
  ).toEqual(['seed-box', 'bean-pillow']);
});

test('a recipe becomes a batch: how many, and it is planned', async () => {
  const { workbook } = await openApp('/recipe/bean-pillow/event');
  const user = userEvent.setup();
  const count = await screen.findByRole('textbox', { name: 'How many favors' });
  await user.clear(count);
  await user.type(count, '25');
  await user.click(screen.getByRole('button', { name: 'Plan them' }));
  const made = [...workbook.getState().rows.events.values()].find(({ name }) =>
    name.startsWith('Bean pillow'),
  );
  expect(made?.lines).toMatchObject([{ recipeId: 'bean-pillow', count: 25 }]);
  // 25 and 10 % in whole boxes: 3 spares.
  expect(await screen.findByText('to make: 25 ordered, 3 spares')).toBeVisible();
});
