import { screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { openApp, workbookWithDemo } from './open-app';

const BENCH = '/recipe/seed-box/bench';

test('the bench card goes a step at a time, by button and by arrow', async () => {
  await openApp(BENCH);
  const user = userEvent.setup();
  expect(await screen.findByText(/^Step 1 of/)).toBeVisible();
  await user.click(screen.getByRole('button', { name: 'Next' }));
  // Common practice, no source: scores at 3 1/2, 5, 8 1/2 and 10 in.
  expect(screen.getByText(/Score at 3½, 5, 8½ and 10 in/)).toBeVisible();
  await user.keyboard('{ArrowLeft}');
  expect(screen.getByText(/^Step 1 of/)).toBeVisible();
  expect(screen.getByRole('button', { name: 'Back' })).toBeDisabled();
});

test('the whole card is a list, with its cautions where a blade is used', async () => {
  await openApp(BENCH);
  await userEvent.setup().click(await screen.findByRole('radio', { name: 'As a list' }));
  expect(screen.getAllByRole('listitem').length).toBeGreaterThan(6);
  expect(screen.getAllByText(/cut away from your fingers/).length).toBeGreaterThan(0);
});

test('a box that does not close gets no card, but the way to mend it', async () => {
  const workbook = await workbookWithDemo();
  workbook.getState().edit('recipes', 'seed-box', 'Flap', (recipe) => ({
    ...recipe,
    sizesMm: { ...recipe.sizesMm, flap: 12.7 },
  }));
  await openApp(BENCH, workbook);
  await userEvent.setup().click(await screen.findByRole('link', { name: 'Open the Size page' }));
  expect(await screen.findByText(/leave a hole/)).toBeVisible();
});
