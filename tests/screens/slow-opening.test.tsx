import { act, screen } from '@testing-library/react';
import { expect, test } from 'vitest';
import { frameMessages } from '../../src/ui/words/english/frame';
import { recordFault } from '../setup/fault-record';
import { newTab, World } from '../state/open-tab';
import { openApp } from './open-app';

const { frame } = frameMessages;

test('a first read that takes long says how far it is, and then gives way to the page', async (context) => {
  let hear: (read: number, of: number) => void = () => undefined;
  let go: () => void = () => undefined;
  const held = new Promise<void>((resolve) => {
    go = resolve;
  });
  const workbook = newTab(new World(), 'slow', (storage) => ({
    ...storage,
    async load(progress = () => undefined) {
      hear = progress;
      await held;
      return storage.load();
    },
  }));
  void workbook.getState().boot();
  const { unmount } = await openApp('/keeping', workbook);
  expect(screen.queryByText(frame.openingWork)).toBeNull();
  const told = [
    await screen.findByText(frame.openingWaits).then(
      () => true,
      () => false,
    ),
  ];
  for (const [read, of, words] of [
    [1200, 5500, '1,200 of 5,500 items read.'],
    [5499, 5500, '5,499 of 5,500 items read.'],
  ] as const) {
    act(() => hear(read, of));
    const bar = screen.queryByRole('progressbar');
    told.push(screen.queryByText(words) !== null && bar?.getAttribute('value') === `${read}`);
  }
  // Nothing that looks like an empty shelf, and nothing said of what is saved.
  told.push(screen.queryByText(/Saved/) === null);
  recordFault(context, {
    fault: 'a slow first read that says nothing',
    tries: told.length,
    lost: told.filter((one) => !one).length,
    goal: 0,
  });
  go();
  expect(await screen.findByRole('heading', { name: 'Backup' })).toBeVisible();
  expect(screen.queryByText(frame.openingWork)).toBeNull();
  unmount();
});
