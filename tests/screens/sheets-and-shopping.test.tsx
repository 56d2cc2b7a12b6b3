import { screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { openApp, workbookWithDemo } from './open-app';

describe('the sheets', () => {
  test('are counted, with the proof in words, and drawn with their cuts', async () => {
    await openApp('/event/seed-swap-supper/sheets');
    // Common practice, no source: a letter sheet gives one 11 × 4 1/2 in blank and one 3 1/2 × 6 in liner, so 44 need 44 sheets.
    expect(await screen.findByRole('heading', { name: '44 sheets of Oat cardstock, letter' })).toBeVisible();
    expect(screen.getByText('No plan uses fewer sheets of this paper.')).toBeVisible();
    expect(screen.getByRole('img', { name: /^Sheet/ })).toHaveAccessibleName(
      /1 × Seed box: Tall liner, 1 × Seed box: Box, 3 cuts/,
    );
    expect(screen.getByText('6 in from the near edge')).toBeVisible();
  });

  test('are compared paper by paper, and changed over by one press', async () => {
    const { workbook } = await openApp('/event/seed-swap-supper/sheets');
    const row = await screen.findByRole('row', { name: /Fern cardstock/ });
    await userEvent.setup().click(within(row).getByRole('button', { name: 'Use it' }));
    expect(workbook.getState().rows.events.get('seed-swap-supper')?.lines[0]?.paperId).toBe('fern-square');
    expect(await screen.findByRole('heading', { name: /sheets of Fern cardstock/ })).toBeVisible();
  });

  test('wait for a count, and say where it is made', async () => {
    const workbook = await workbookWithDemo();
    workbook.getState().edit('events', 'seed-swap-supper', 'Clear', (event) => ({ ...event, lines: [] }));
    await openApp('/event/seed-swap-supper/sheets', workbook);
    await userEvent.setup().click(await screen.findByRole('link', { name: 'Open the Event page' }));
    expect(await screen.findByRole('heading', { name: 'What is made' })).toBeVisible();
  });

  test('that lie across the grain are mended by letting it run either way', async () => {
    const workbook = await workbookWithDemo();
    workbook.getState().edit('recipes', 'seed-box', 'Grain', (recipe) => ({ ...recipe, grain: 'upright' }));
    await openApp('/event/seed-swap-supper/sheets', workbook);
    await userEvent
      .setup()
      .click(await screen.findByRole('button', { name: 'Let the grain run either way' }));
    expect(workbook.getState().rows.recipes.get('seed-box')?.grain).toBe('free');
  });
});

describe('the shopping list', () => {
  test('takes what is on hand off, buys the cheapest packs, and opens to its arithmetic', async () => {
    await openApp('/event/seed-swap-supper/shopping');
    const row = await screen.findByRole('row', { name: /Oat cardstock/ });
    // 44 sheets less 12 on hand is 32: a pack of 25 and one of 10 cost $10.90; four of 10 would cost $13.60, one of 50 $13.00.
    expect(row).toHaveTextContent('44 sheets');
    expect(row).toHaveTextContent('1 pack of 10');
    expect(row).toHaveTextContent('1 pack of 25');
    expect(row).toHaveTextContent('$10.90');
    await userEvent.setup().click(within(row).getByText('Oat cardstock, letter'));
    expect(within(row).getByText('Seed box: 40 ordered + 4 spare = 44')).toBeVisible();
  });

  test('goes to the printer, and to a spreadsheet', async () => {
    const { printer } = await openApp('/event/seed-swap-supper/shopping');
    const user = userEvent.setup();
    await user.click(await screen.findByRole('button', { name: 'Print the list' }));
    expect(printer.asked).toEqual(['shopping list on letter']);
  });
});
