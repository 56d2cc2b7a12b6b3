import { act, fireEvent, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, expect, test, vi } from 'vitest';
import { openApp } from './open-app';

const BENCH = '/event/seed-swap-supper/bench';
const press = (name: string | RegExp) => fireEvent.click(screen.getByRole('button', { name }));

afterEach(() => void vi.restoreAllMocks());

test('the first box is measured before the batch, then every tap counts, and undo takes back one tap', async () => {
  const { workbook } = await openApp(BENCH);
  const run = () => workbook.getState().rows.events.get('seed-swap-supper')?.run;
  expect(await screen.findByText('11 × 4½ in')).toBeVisible();
  press('Yes, it matches');
  expect(run()?.firstRight).toEqual(['guests']);

  press(/^Fold and burnish/);
  press('+5');
  press('+5');
  press('+1');
  press('Spoiled +1');
  expect(run()?.stages).toEqual([{ stage: 'guests/fold/box/1', done: 11, spoiled: 1, seconds: 0 }]);
  expect(screen.getByText('11 of 44 pieces')).toBeVisible();
  press('Undo');
  press('Undo');
  expect(run()?.stages).toMatchObject([{ done: 10, spoiled: 0 }]);

  // ten at a time never goes past what is there
  for (let i = 0; i < 6; i++) {
    const ten = screen.getByRole('button', { name: '+10' });
    if (!(ten as HTMLButtonElement).disabled) fireEvent.click(ten);
  }
  expect(run()?.stages).toMatchObject([{ done: 44 }]);
  expect(screen.getByRole('button', { name: '+1' })).toBeDisabled();
});

test('a line whose first box is not measured says so at every step', async () => {
  await openApp(BENCH);
  await screen.findByText('11 × 4½ in');
  press(/^Fold and burnish/);
  expect(screen.getByText('The first box isn’t measured yet.')).toBeVisible();
});

test('boxes timed from start to finish become the hours', async () => {
  const { workbook } = await openApp(BENCH);
  const user = userEvent.setup();
  await user.click(await screen.findByRole('radio', { name: 'Time' }));
  await screen.findByRole('button', { name: 'Start a box' });
  let now = Date.now();
  vi.spyOn(Date, 'now').mockImplementation(() => now);
  press('Start a box');
  now += 275_400;
  press('The box is finished');
  const pace = () => workbook.getState().rows.events.get('seed-swap-supper')?.pace;
  expect(pace()?.trialSeconds).toEqual([275]);
  expect(screen.getByText('Box 1: 4 min 35 s')).toBeVisible();
  // a plain box with a liner: cut, score, slit, fold, place, tape, close the bottom
  expect(await screen.findByText(/^Getting ready: 7 stages × 5 min = 35 min/)).toBeInTheDocument();
  press(/^Delete this time/);
  expect(pace()?.trialSeconds).toEqual([]);
});

test('what is ticked off and put in the cupboard is on hand, and one undo takes both back', async () => {
  const { workbook } = await openApp('/event/seed-swap-supper/shopping');
  const sheets = () => workbook.getState().rows.papers.get('oat-letter')?.onHandSheets;
  const bought = () => workbook.getState().rows.events.get('seed-swap-supper')?.bought;
  fireEvent.click(await screen.findByRole('checkbox', { name: 'Bought: Oat cardstock, letter' }));
  expect(bought()).toEqual([{ of: 'oat-letter', packs: 2, units: 35, received: false }]);
  press('Add to supplies: Oat cardstock, letter');
  expect([sheets(), bought()?.[0]?.received]).toEqual([12 + 35, true]);
  act(() => workbook.getState().undo());
  expect([sheets(), bought()?.[0]?.received]).toEqual([12, false]);
  act(() => workbook.getState().redo());
  const row = await screen.findByRole('row', { name: /Oat cardstock/ });
  expect(await within(row).findByText('enough on hand')).toBeVisible();
  press('Undo: Oat cardstock, letter');
  expect([sheets(), bought()?.[0]?.received]).toEqual([12, false]);
});
