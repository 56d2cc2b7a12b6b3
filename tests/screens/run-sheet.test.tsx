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

test('the timer of a stage runs on over a reload, at the step it was started at', async () => {
  const { workbook, unmount } = await openApp(BENCH);
  await screen.findByText('11 × 4½ in');
  let now = Date.parse('2027-03-01T10:00:00Z');
  vi.spyOn(Date, 'now').mockImplementation(() => now);
  press(/^Fold and burnish/);
  press('Start the timer');
  now += 90_000;
  unmount();

  await openApp(BENCH, workbook);
  expect(await screen.findByRole('timer')).toHaveTextContent('1:30');
  expect(screen.getByRole('button', { name: /^Fold and burnish/ })).toHaveAttribute('aria-current', 'step');
  press('Stop the timer');
  const stages = workbook.getState().rows.events.get('seed-swap-supper')?.run?.stages;
  expect(stages).toEqual([{ stage: 'guests/fold/box/1', done: 0, spoiled: 0, seconds: 90 }]);
  expect(workbook.getState().settings.clocks).toEqual([]);
});

test('a timer that was forgotten overnight does not count the night', async () => {
  const { workbook, unmount } = await openApp(BENCH);
  await screen.findByText('11 × 4½ in');
  press(/^Fold and burnish/);
  press('Start the timer');
  unmount();
  const later = Date.now() + 13 * 3_600_000;
  vi.spyOn(Date, 'now').mockImplementation(() => later);
  await openApp(BENCH, workbook);
  expect(await screen.findByRole('button', { name: 'Start the timer' })).toBeVisible();
});

test('+ counts one, arrows turn the steps, and nothing is heard while a name is typed', async () => {
  const { workbook } = await openApp(BENCH);
  await screen.findByText('11 × 4½ in');
  const user = userEvent.setup();
  press(/^Fold and burnish/);
  await user.keyboard('++');
  const done = () => workbook.getState().rows.events.get('seed-swap-supper')?.run?.stages.at(-1);
  expect(done()).toMatchObject({ stage: 'guests/fold/box/1', done: 2 });
  await user.keyboard('{ArrowLeft}');
  expect(screen.getByRole('button', { name: /^Slit/ })).toHaveAttribute('aria-current', 'step');
  await user.click(screen.getByRole('textbox', { name: /Name/i }));
  await user.keyboard('+');
  expect(done()).toMatchObject({ stage: 'guests/fold/box/1', done: 2 });
});

test('buttons keep their places, and one bar stands for the batch', async () => {
  await openApp(BENCH);
  await screen.findByText('11 × 4½ in');
  const places = () =>
    [...document.querySelectorAll('.bench-acts button')].map((button) => button.textContent);
  const bar = () => screen.getAllByRole('progressbar', { name: 'Whole batch' });
  expect(places()).toEqual(['Yes, it matches', 'Back', 'Next']);
  press(/^Cut all/);
  const counters = ['+1', '+5', '+10', 'Back', 'Spoiled +1', '', 'Next'];
  for (const stage of [/^Score all/, /^Slit/, /^Fold and/, /^Glue/]) {
    expect(places()).toEqual(counters);
    expect(bar()).toHaveLength(1);
    press(stage);
  }
});

test('a step is read aloud only when asked for, by a voice of the device alone', async () => {
  const spoken: string[] = [];
  const cancel = vi.fn();
  const voice = (name: string, lang: string, localService: boolean) => ({ name, lang, localService });
  let voices = [voice('far', 'en-US', false)];
  class Utterance {
    voice: { name: string } | null = null;
    lang = '';
    readonly text: string;
    constructor(text: string) {
      this.text = text;
    }
  }
  vi.stubGlobal('SpeechSynthesisUtterance', Utterance);
  vi.stubGlobal('speechSynthesis', {
    getVoices: () => voices,
    speak: ({ voice: by, text }: Utterance) => spoken.push(`${by?.name}: ${text}`),
    cancel,
  });
  await openApp(BENCH);
  await screen.findByText('11 × 4½ in');
  press(/^Score all/);
  const button = () => screen.getByRole('button', { name: 'Read aloud' });
  expect(button()).toHaveAttribute('aria-pressed', 'false');
  fireEvent.click(button());
  expect(await screen.findByText(/no voice of its own/)).toBeVisible();
  expect(button()).toHaveAttribute('aria-pressed', 'false');

  voices = [...voices, voice('near', 'en-GB', true), voice('home', 'en-US', true)];
  fireEvent.click(button());
  await vi.waitFor(() => expect(spoken).toHaveLength(1));
  expect(spoken[0]).toBe(
    'home: Set the fence to 3 inches. Score edge to edge. Lay the piece good side up, a quarter turn clockwise from the drawing. It is 4 and a half inches across, 11 inches up.',
  );
  press('Next');
  await vi.waitFor(() => expect(spoken).toHaveLength(2));
  expect(cancel).toHaveBeenCalled();
  vi.unstubAllGlobals();
});
