import { screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { openApp } from './open-app';

test('the cheapest mix is found, used in one step that undo takes back, and left again', async () => {
  const { workbook } = await openApp('/event/seed-swap-supper/sheets');
  const user = userEvent.setup();
  const panel = within(await screen.findByRole('region', { name: 'The cheapest mix of papers' }));
  const lines = () => workbook.getState().rows.events.get('seed-swap-supper')!.lines;

  await user.click(panel.getByRole('checkbox', { name: /Fern/ }));
  await user.click(panel.getByRole('button', { name: 'Find the cheapest mix' }));
  expect(
    await panel.findByText(
      /^Cheapest with these papers: \$[\d.]+, (no mix costs less|at most \$[\d.]+ less could exist)\.$/,
    ),
  ).toBeVisible();
  const any = panel.getByRole('row', { name: /^Any mix/ });
  await user.click(within(any).getByRole('button', { name: 'Use this mix' }));
  // 44 boxes and their liners, whichever paper they come from.
  const boxes = lines()[0]!.mix!.filter(({ piece }) => piece === 'box');
  expect(boxes.reduce((sum, { count }) => sum + count, 0)).toBe(44);
  expect(await panel.findByText(/^A mix is in use/)).toBeVisible();
  workbook.getState().undo();
  expect(lines()[0]!.mix).toBeUndefined();
  workbook.getState().redo();
  await user.click(panel.getByRole('button', { name: 'Stop using the mix' }));
  expect(lines()[0]!.mix).toBeUndefined();
});

test('a line may come from every paper that is checked, and from its own always', async () => {
  const { workbook } = await openApp('/event/seed-swap-supper/sheets');
  const user = userEvent.setup();
  const papers = within(await screen.findByRole('group', { name: /may come from/ }));
  const boxes = papers.getAllByRole('checkbox');
  expect(boxes.filter((box) => (box as HTMLInputElement).disabled)).toHaveLength(1);
  expect(papers.getByRole('checkbox', { name: /Oat/ })).toBeChecked();
  await user.click(papers.getByRole('checkbox', { name: /Fern/ }));
  expect(workbook.getState().rows.events.get('seed-swap-supper')!.lines[0]!.anyOf).toEqual([{ paperId: 'fern-square' }]); // biome-ignore format: one row
});
