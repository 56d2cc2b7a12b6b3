import { screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { benchOfRecipe } from '../../src/state/results/bench-result';
import { openApp, workbookWithDemo } from './open-app';

const EVENT = 'seed-swap-supper';

test('taped boxes without a tape: a new roll is typed in place, and is counted and bought', async () => {
  const workbook = await workbookWithDemo();
  workbook.getState().edit('events', EVENT, 'Tape', (event) => ({ ...event, tapeId: null }));
  await openApp(`/event/${EVENT}/shopping`, workbook);
  const user = userEvent.setup();
  const offer = within(await screen.findByRole('region', { name: 'Choose a tape' }, { timeout: 40_000 }));
  await user.click(offer.getByRole('button', { name: 'Use it' }));
  expect(offer.getByText(/We need the width and the length/)).toBeVisible();
  await user.type(offer.getByLabelText('New tape'), '1/4 in x 27 yd, $3.99');
  // A yard is 36 in, a meter 39.37: 27 yd are 24.7 m.
  expect(offer.getByText('¼ in wide, 27 yd (25 m) on a roll. $3.99 a roll.')).toBeVisible();
  await user.click(offer.getByRole('button', { name: 'Use it' }));
  const { rows } = workbook.getState();
  const tape = rows.supplies.get(rows.events.get(EVENT)?.tapeId ?? '');
  expect(tape).toMatchObject({
    kind: 'tape',
    widthMm: 6.35,
    rollMm: 24_688.8,
    priceMinor: 399,
    onHandRolls: 0,
  });
  expect(await screen.findByRole('rowheader', { name: /Double-sided tape, ¼ in/ })).toBeVisible();
  expect(screen.queryByRole('region', { name: 'Choose a tape' })).toBeNull();
});

test('hot glue is cautioned where glue is not named, and not once the event has its tape', async () => {
  const workbook = await workbookWithDemo();
  const { rows } = workbook.getState();
  const event = rows.events.get(EVENT);
  const recipe = rows.recipes.get(event?.lines[0]?.recipeId ?? '');
  if (!event || !recipe) throw new Error('the example has no box');
  const ruler = { unit: 'in', finest: 508 } as never;
  const warns = (tapeId: string | null) =>
    benchOfRecipe(recipe, undefined, ruler, [{ ...event, tapeId }])?.cards.some(({ steps }) =>
      steps.some(({ cautions }) => cautions.includes('hot-glue')),
    );
  expect(warns(null)).toBe(true);
  expect(warns('a-tape')).toBe(false);
});
