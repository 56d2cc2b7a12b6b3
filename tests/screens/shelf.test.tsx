import { readFileSync } from 'node:fs';
import { act, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { describe, expect, test, vi } from 'vitest';
import { openTab, World } from '../state/open-tab';
import { openApp, workbookWithDemo } from './open-app';

describe('an empty shelf', () => {
  test('offers the demo, and a box of one’s own in one press', async () => {
    const { workbook } = await openApp('/', await openTab(new World()));
    const user = userEvent.setup();
    expect(await screen.findByRole('button', { name: 'Open the example' })).toBeVisible();
    await user.click(screen.getByRole('link', { name: 'Start a box of your own' }));
    await user.click(await screen.findByRole('link', { name: 'I know the style' }));
    await user.click(await screen.findByRole('button', { name: /^Square pyramid/ }));
    expect([...workbook.getState().rows.recipes.values()]).toMatchObject([{ styleId: 'square-pyramid' }]);
    expect(await screen.findByRole('img', { name: /^Net of/ })).toBeVisible();
  });
});

test('a first visitor who goes to a box of her own before the example has come is left there', async () => {
  let answer: (isFresh: boolean) => void = () => undefined;
  const fresh = new Promise<boolean>((resolve) => {
    answer = resolve;
  });
  const fetched = vi.fn(() => Promise.resolve(new Response(readFileSync('demo-data/seed-swap-supper.json'))));
  vi.stubGlobal('fetch', fetched);
  const workbook = await openTab(new World());
  workbook.setState({ fresh: true, isStillFresh: () => fresh });
  const { go } = await openApp('/', workbook);
  act(() => go('/start'));
  const size = await screen.findByLabelText('Its size', undefined, { timeout: 20_000 });
  answer(true);
  // Long enough for the example to come and open, had it been asked for.
  await act(() => new Promise((resolve) => setTimeout(resolve, 300)));
  expect(size).toBeVisible();
  expect(workbook.getState().rows.recipes.size).toBe(0);
  expect(fetched).not.toHaveBeenCalled();
  vi.unstubAllGlobals();
});

describe('the shelf', () => {
  test('shows what was asked for alone where spares go by accuracy, which only the plan counts', async () => {
    const workbook = await workbookWithDemo();
    workbook.getState().edit('events', 'seed-swap-supper', 'Spares', (event) => ({
      ...event,
      spares: { percent: 10, atLeast: 0, offByMm: 0.79375 },
    }));
    await openApp('/', workbook);
    expect(
      await screen.findByRole('link', { name: /^Village seed-swap supper March 20, 2027 40$/ }),
    ).toBeVisible();
  });

  test('shows boxes, events, paper, tape and tools', async () => {
    await openApp('/');
    expect(await screen.findByRole('link', { name: /^Seed box Open-top box/ })).toBeVisible();
    expect(
      screen.getByRole('link', { name: /^Village seed-swap supper March 20, 2027 40 \+ 4 spares/ }),
    ).toBeVisible();
    await userEvent.setup().click(screen.getByRole('link', { name: /^Supplies/ }));
    expect(screen.getByRole('link', { name: /^Oat cardstock, letter.*12 sheets/ })).toBeVisible();
    expect(screen.getByRole('link', { name: /^Trimmer and scoring board/ })).toBeVisible();
  });

  test('counts the kits of a class: 12 kits of 3 and 2 spare kits are 36 and 6', async () => {
    const { workbook } = await openApp('/');
    const [event] = workbook.getState().rows.events.values();
    act(() => {
      void workbook.getState().edit('events', event!.id, 'kits', (old) => ({
        ...old,
        kits: 12,
        lines: old.lines.map((line) => ({ ...line, count: 3 })),
      }));
    });
    expect(await screen.findByRole('link', { name: /seed-swap supper .* 36 \+ 6 spares/ })).toBeVisible();
  });

  test('Back from a paper that was only begun leaves none behind; a name typed keeps it', async () => {
    const { workbook } = await openApp('/?door=supplies');
    const user = userEvent.setup();
    const papers = workbook.getState().rows.papers.size;
    await user.click(await screen.findByRole('button', { name: 'Add a paper' }));
    await screen.findByRole('textbox', { name: 'Name' });
    expect(workbook.getState().rows.papers.size).toBe(papers + 1);
    act(() => void window.dispatchEvent(new PopStateEvent('popstate')));
    expect(workbook.getState().rows.papers.size).toBe(papers);
    act(() => workbook.getState().redo());
    await user.type(screen.getByRole('textbox', { name: 'Name' }), ' in blue');
    act(() => void window.dispatchEvent(new PopStateEvent('popstate')));
    expect(workbook.getState().rows.papers.size).toBe(papers + 1);
  });

  test('lets go of a thing at a press, and gives that one back', async () => {
    const { workbook } = await openApp('/');
    const user = userEvent.setup();
    await user.click(await screen.findByRole('button', { name: 'Delete Bean pillow' }));
    expect(workbook.getState().rows.recipes.has('bean-pillow')).toBe(false);
    await user.click(screen.getByRole('button', { name: 'Delete Seed box' }));
    const note = screen.getByText('Bean pillow is in the trash.').parentElement!;
    await user.click(within(note).getByRole('button', { name: 'Undo' }));
    expect(workbook.getState().rows.recipes.has('bean-pillow')).toBe(true);
    expect(workbook.getState().rows.recipes.has('seed-box')).toBe(false);
  });

  test('says why a file is not read in, and leaves everything as it was', async () => {
    const { workbook } = await openApp('/?door=backup');
    const before = workbook.getState().rows;
    const user = userEvent.setup();
    await screen.findByRole('button', { name: 'Import a file' });
    const chooser = document.querySelector<HTMLInputElement>('input[type=file]')!;
    await user.upload(
      chooser,
      new File(['{"format":"elsewhere"}'], 'other.json', { type: 'application/json' }),
    );
    expect(await screen.findByText(/We couldn’t open this file/)).toBeVisible();
    expect(workbook.getState().rows).toBe(before);
  });

  test('on a full shelf has a field that finds boxes and events, and none on a small one', async () => {
    const { workbook } = await openApp('/');
    await screen.findByRole('link', { name: /^Seed box/ });
    expect(screen.queryByRole('searchbox')).toBeNull();
    act(() => {
      for (let more = 0; more < 30; more++) {
        workbook.getState().createRecipe({ name: `Winter ${more}`, styleId: 'tray' });
        workbook.getState().createEvent({ name: `Fair ${more}` });
      }
    });
    const user = userEvent.setup();
    expect(screen.getByText(/^\d+ boxes and 31 events\.$/)).toBeVisible();
    // Many events do not keep the boxes out of sight: twelve stand, one of them not a fair.
    expect(screen.getAllByRole('link', { name: /^Fair/ })).toHaveLength(11);
    await user.click(screen.getByRole('button', { name: 'Show all 31 events' }));
    expect(screen.getAllByRole('link', { name: /^Fair/ })).toHaveLength(30);
    const find = screen.getByRole('searchbox', { name: 'Find on the shelf' });
    await user.type(find, 'tray 7');
    expect(await screen.findByText('3 boxes and 0 events found.')).toBeVisible();
    expect(screen.getByRole('link', { name: /^Winter 27/ })).toBeVisible();
    expect(screen.queryByRole('link', { name: /^Seed box/ })).toBeNull();
    await user.type(find, ' nowhere');
    expect(await screen.findByText('Nothing matches. Try fewer words.')).toBeVisible();
  });

  test('writes everything to a file', async () => {
    const create = vi.fn((_: Blob) => 'blob:made');
    vi.stubGlobal('URL', Object.assign(URL, { createObjectURL: create, revokeObjectURL: vi.fn() }));
    await openApp('/?door=backup');
    await userEvent.setup().click(await screen.findByRole('button', { name: 'Save everything to a file' }));
    // The backup is read from the database and read back first.
    await vi.waitFor(() => expect(create).toHaveBeenCalled());
    expect(await create.mock.calls[0]![0].text()).toContain('"kind": "everything"');
  });
});

test('a paper is changed where it stands', async () => {
  const { workbook } = await openApp('/stock/papers/oat-letter');
  const user = userEvent.setup();
  const price = (await screen.findAllByRole('textbox', { name: 'Price per pack' }))[0]!;
  await user.clear(price);
  await user.type(price, '3,75');
  expect(workbook.getState().rows.papers.get('oat-letter')?.packs[0]?.priceMinor).toBe(375);
  const gsm = screen.getByRole('textbox', { name: 'Weight' });
  await user.clear(gsm);
  await user.type(gsm, '5');
  expect(gsm).toHaveAccessibleDescription('Type a number from 30 to 1000.');
  expect(workbook.getState().rows.papers.get('oat-letter')?.gsm).toBe(216);
});

test('an address that leads nowhere says so, and where to go', async () => {
  await openApp('/recipe/gone/box');
  expect(await screen.findByText('Nothing is at this address')).toBeVisible();
});
