import { screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { openApp } from './open-app';

const PAGE = '/recipe/seed-box/dressing';
type Opened = Awaited<ReturnType<typeof openApp>>;
const dressingsOf = ({ workbook }: Opened) =>
  workbook.getState().rows.recipes.get('seed-box')?.dressings ?? [];

test('a layer is put on, another one upon it, and both are undone', async () => {
  const app = await openApp(PAGE);
  const user = userEvent.setup();
  await user.click(await screen.findByRole('radio', { name: 'Bare' }));
  await user.click(screen.getByRole('button', { name: 'Layer' }));
  const bare = () => dressingsOf(app).find(({ id }) => id === 'bare');
  expect(bare()?.pieces).toMatchObject([{ fit: { rule: 'on-panel', panel: 'front', revealMm: 3.175 } }]);
  // 3 1/2 × 3 in less 1/8 in all round; then as much again.
  const row = screen.getByText('cut 3¼ × 2¾ in').closest('li')!;
  await user.click(within(row).getByRole('button', { name: 'Add a layer on top', hidden: true }));
  expect(screen.getByText('cut 3 × 2½ in')).toBeVisible();
  await user.click(screen.getAllByRole('button', { name: /^Undo/ })[0]!);
  expect(bare()?.pieces).toHaveLength(1);
});

test('dividers are put in as two sets that change together, and say how they are slotted', async () => {
  const app = await openApp(PAGE);
  const user = userEvent.setup();
  await user.click(await screen.findByRole('radio', { name: 'Bare' }));
  await user.click(screen.getByRole('button', { name: 'Dividers' }));
  const pieces = () => dressingsOf(app).find(({ id }) => id === 'bare')?.pieces ?? [];
  expect(pieces().map(({ name, perBox }) => [name, perBox])).toEqual([
    ['Divider, left to right', 1],
    ['Divider, front to back', 1],
  ]);
  const row = screen.getByText('Divider, left to right', { selector: 'strong' }).closest('li')!;
  const columns = within(row).getByLabelText('Left to right: Divider, left to right');
  await user.clear(columns);
  await user.type(columns, '3{Enter}');
  expect(pieces().map(({ perBox }) => perBox)).toEqual([1, 2]);
  expect(within(row).getByText(/^2 slots from the top edge/)).toBeInTheDocument();
  // the same in its picture
  expect(within(row).getByText(/: slots at .+, .+ from the left end, .+ deep\.$/)).toBeInTheDocument();
  // put in again, they take the place of the first
  await user.click(screen.getByRole('button', { name: 'Dividers' }));
  expect(pieces()).toHaveLength(2);
});

test('a raised floor has holes until they are taken off, and a pad is plain', async () => {
  const app = await openApp(PAGE);
  const user = userEvent.setup();
  await user.click(await screen.findByRole('radio', { name: 'Bare' }));
  await user.click(screen.getByRole('button', { name: 'Raised floor' }));
  await user.click(screen.getByRole('button', { name: 'Cushion pad' }));
  const fits = () =>
    dressingsOf(app)
      .find(({ id }) => id === 'bare')
      ?.pieces.map(({ fit }) => fit);
  expect(fits()).toMatchObject([{ holes: { shape: 'round' } }, { rule: 'on-floor', riseMm: 0 }]);
  await user.selectOptions(screen.getAllByLabelText(/^Holes/)[0]!, 'none');
  expect(fits()?.[0]).not.toHaveProperty('holes');
});

test('one recipe carries several dressings: one is copied, renamed and deleted', async () => {
  const app = await openApp(PAGE);
  const user = userEvent.setup();
  await user.click(await screen.findByRole('radio', { name: 'Harvest' }));
  await user.click(screen.getByRole('button', { name: 'Copy' }));
  const name = screen.getByRole('textbox', { name: 'Name of this look' });
  await user.clear(name);
  await user.type(name, 'Midwinter');
  const copy = dressingsOf(app).at(-1);
  const first = dressingsOf(app).find(({ id }) => id === 'harvest');
  expect(copy).toMatchObject({ name: 'Midwinter', pieces: first?.pieces, ties: first?.ties });
  await user.click(screen.getByRole('button', { name: 'Delete' }));
  expect(dressingsOf(app).map(({ id }) => id)).toEqual(['spring', 'bare', 'harvest']);
});

test('a piece that no longer fits says so and what to do', async () => {
  const app = await openApp(PAGE);
  const user = userEvent.setup();
  await user.click(await screen.findByRole('radio', { name: 'Bare' }));
  await user.click(screen.getByRole('button', { name: 'Window film' }));
  expect(dressingsOf(app).find(({ id }) => id === 'bare')?.pieces[0]?.fit?.rule).toBe('over-window');
  expect(screen.getByText('doesn’t fit')).toBeVisible();
});

test('the map is printed with the dressing that is looked at', async () => {
  const { printer } = await openApp(PAGE);
  await userEvent
    .setup()
    .click(await screen.findByRole('button', { name: 'Print the decorating map, full size' }));
  expect(printer.asked).toEqual(['map for decorating on letter']);
});

test('a supply becomes twine, glue, or something counted, and keeps its name', async () => {
  const { workbook } = await openApp('/stock/supplies/tape-quarter');
  const user = userEvent.setup();
  const supply = () => workbook.getState().rows.supplies.get('tape-quarter');
  const { name } = supply()!;
  await user.selectOptions(await screen.findByRole('combobox', { name: 'Kind' }), 'liquid glue');
  expect(supply()).toMatchObject({ kind: 'glue', name, dryMinutes: 30 });
  await user.selectOptions(screen.getByRole('combobox', { name: 'Kind' }), 'seal or clip');
  await user.click(screen.getByRole('button', { name: 'Add a pack' }));
  const free = screen.getByRole('textbox', { name: 'Get free' });
  await user.clear(free);
  await user.type(free, '1');
  expect(supply()).toMatchObject({ kind: 'closure', packs: [{ pieces: 20, offer: { buy: 1, free: 1 } }] });
});
