import { screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { openApp, workbookWithDemo } from './open-app';

const EVENT = '/event/seed-swap-supper/event';

test('forty favors and one in ten to spare are forty-four boxes', async () => {
  await openApp(EVENT);
  expect(await screen.findByText('to make: 40 needed + 4 spares')).toBeVisible();
  const [boxes] = screen.getAllByText('How we got this');
  expect(boxes).toHaveTextContent('How we got this, Boxes');
  await userEvent.setup().click(boxes!);
  expect(screen.getByText('40 needed + 4 spares = 44 to make.')).toBeVisible();
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
  expect(await screen.findByText('to make: 60 needed + 6 spares')).toBeVisible();
});

test('an order of favors turned to kits stays as large, and back', async () => {
  const { workbook } = await openApp(EVENT);
  const user = userEvent.setup();
  const order = () => workbook.getState().rows.events.get('seed-swap-supper');
  const box = await screen.findByRole('textbox', { name: 'How many of Seed box' });
  await user.clear(box);
  await user.type(box, '24');
  await user.click(screen.getByText('Kits for a class', { exact: true }));
  await user.click(screen.getByRole('radio', { name: 'kits for a class' }));
  // Twelve kits of two boxes are the 24 boxes asked for; 24 in each were 288.
  expect(order()).toMatchObject({ kits: 12, lines: [{ count: 2 }] });
  await user.click(screen.getByRole('radio', { name: 'finished favors' }));
  expect(order()).toMatchObject({ kits: null, lines: [{ count: 24 }] });
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
  await user.click(screen.getByRole('button', { name: 'Plan the batch' }));
  const made = [...workbook.getState().rows.events.values()].find(({ name }) =>
    name.startsWith('Bean pillow'),
  );
  expect(made?.lines).toMatchObject([{ recipeId: 'bean-pillow', count: 25 }]);
  // 25 and 10 % in whole boxes: 3 spares.
  expect(await screen.findByText('to make: 25 needed + 3 spares')).toBeVisible();
});

test('guests are counted by the table, and the same box is made in another colour', async () => {
  const { workbook } = await openApp(EVENT);
  const user = userEvent.setup();
  const lines = () => workbook.getState().rows.events.get('seed-swap-supper')?.lines ?? [];
  await user.click(await screen.findByText('Count by tables and guests'));
  await user.click(screen.getByRole('button', { name: 'Tables: Seed box: one more' }));
  // Five tables of eight made forty.
  expect(lines()[0]).toMatchObject({ count: 48, byTable: { tables: 6, guests: 8 } });
  await user.click(screen.getByRole('button', { name: 'Add Seed box in another color' }));
  expect(lines().map(({ recipeId, count }) => [recipeId, count])).toEqual([
    ['seed-box', 48],
    ['seed-box', 48],
  ]);
});

test('spares go by what each act spoils, one upon the other', async () => {
  await openApp(EVENT);
  const user = userEvent.setup();
  await user.click(await screen.findByText('More about spares'));
  const act = within(screen.getByText('Mistakes at each step').parentElement!);
  const spoil = async (name: string, percent: string) => {
    const field = act.getByRole('textbox', { name });
    await user.clear(field);
    await user.type(field, percent);
  };
  await spoil('Cut all', '10');
  await spoil('Fold and burnish', '10');
  // 40 ÷ (0.9 × 0.9) = 49.4, so 50 are begun.
  expect(await screen.findByText('to make: 40 needed + 10 spares')).toBeVisible();
});

describe('an event whose box has no paper', () => {
  test('asks for one, and counts and prices nothing until it is there', async () => {
    const workbook = await workbookWithDemo();
    const state = workbook.getState();
    const [recipe] = [...state.rows.recipes.values()];
    const made = state.createEvent({
      name: 'Without paper',
      lines: [{ id: 'a', recipeId: recipe?.id ?? '', dressingId: null, paperId: 'gone', count: 10 }],
    });
    if (!made.ok) throw new Error('no event');
    await openApp(`/event/${made.id}/event`, workbook);
    const sum = await screen.findByRole('region', { name: 'Totals' });
    await within(sum).findByLabelText('New paper');
    expect(sum).not.toHaveTextContent('$0.00');
    const user = userEvent.setup();
    await user.type(within(sum).getByLabelText('New paper'), '12x12, 65 lb, $12.99 for 25');
    await user.click(within(sum).getByRole('button', { name: 'Use it' }));
    expect(await within(sum).findByText('$12.99')).toBeVisible();
  });
});

/** The event's page, its box of this style at the style's own sizes. */
async function openEventOf(styleId: string) {
  const workbook = await workbookWithDemo();
  workbook.getState().edit('recipes', 'seed-box', 'Style', (recipe) => ({ ...recipe, styleId, sizesMm: {} }));
  await openApp(EVENT, workbook);
  return workbook;
}

test('spares are counted from how true the marks are, said in full, and taken back', async () => {
  const workbook = await openEventOf('star-box');
  const user = userEvent.setup();
  const spares = () => workbook.getState().rows.events.get('seed-swap-supper')?.spares;
  const from = await screen.findByRole('combobox', { name: 'Count spares from' });
  expect(from).toHaveDisplayValue('a percentage');
  await user.selectOptions(from, 'my accuracy, ±1/32 in');
  expect(spares()).toMatchObject({ percent: 10, offByMm: 0.79375 });
  expect(from).toHaveAccessibleDescription(/95 of 100 batches/);
  // 23 of 24 stars close there, said as 95 of 100: of 44 at least 40 close in 93.2 of 100 batches, of 45 in 97.6 (SciPy 1.17.1).
  expect(await screen.findByText('to make: 40 needed + 5 spares')).toBeVisible();
  await user.click(screen.getAllByText('How we got this')[0]!);
  expect(
    screen.getByText(/95 of 100 close\. Of 45, at least 40 close in 95 of 100 batches, so 5 more\./),
  ).toBeVisible();
  await user.selectOptions(from, 'a percentage');
  expect(spares()).not.toHaveProperty('offByMm');
  expect(await screen.findByText('to make: 40 needed + 4 spares')).toBeVisible();
});

test('a box whose fit is not known keeps the percentage, and the page says so', async () => {
  await openEventOf('tray');
  const from = await screen.findByRole('combobox', { name: 'Count spares from' });
  await userEvent.setup().selectOptions(from, 'my accuracy, ±1/64 in');
  expect(await screen.findByText(/We know no fit of this style/)).toBeVisible();
  expect(screen.getByText('to make: 40 needed + 4 spares')).toBeVisible();
});
