import { fireEvent, screen } from '@testing-library/react';
import { expect, test } from 'vitest';
import { recordFault } from '../setup/fault-record';
import { openApp } from './open-app';
import '../../src/screens/handout/handout-screen';

test('a note that is full says so, since a browser cuts what is pasted beyond it', async (context) => {
  await openApp('/recipe/seed-box/handout');
  const [note] = await screen.findAllByRole('textbox', { name: 'Tip' });
  if (!note) throw new Error('no tip on this page');
  // As a browser leaves it after a paste of 4,500: the first 4,000.
  fireEvent.change(note, { target: { value: 'x'.repeat(4000) } });
  const told = screen.queryByText(/4,000/) !== null;
  recordFault(context, { fault: 'a paste cut without a word', tries: 1, lost: told ? 0 : 1, goal: 0 });
  fireEvent.change(note, { target: { value: 'x'.repeat(3999) } });
  expect(screen.queryByText(/4,000/)).toBeNull();
});
