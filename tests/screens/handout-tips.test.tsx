import { fireEvent, screen } from '@testing-library/react';
import { expect, test } from 'vitest';
import { openApp } from './open-app';
import '../../src/screens/handout/handout-screen';

test('a tip is hung on a step by what the step says, and stays there', async () => {
  await openApp('/recipe/seed-box/handout');
  fireEvent.click(await screen.findByRole('button', { name: 'Add a tip' }));
  const places = await screen.findAllByRole('combobox', { name: 'Show it' });
  const place = places.at(-1) as HTMLSelectElement;
  const choice = [...place.options].find(({ text }) => /Tape the/.test(text));
  if (!choice) throw new Error('no step with tape');
  fireEvent.change(place, { target: { value: choice.value } });
  const after = (await screen.findAllByRole('combobox', { name: 'Show it' })).at(-1) as HTMLSelectElement;
  expect(after.selectedOptions[0]?.text).toBe(choice.text);
});
