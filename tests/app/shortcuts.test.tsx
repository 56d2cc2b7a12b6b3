import { createEvent, fireEvent, render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { useState } from 'react';
import { expect, test } from 'vitest';
import type { Asked } from '../../src/app/asked';
import { useShortcuts } from '../../src/app/shortcuts';
import { WorkbookContext } from '../../src/state/use-workbook';
import type { WorkbookStore } from '../../src/state/workbook-store';
import { openTab, World } from '../state/open-tab';

function Page({ ask }: { ask: (what: Asked) => void }) {
  useShortcuts(ask);
  const [text, setText] = useState('bean');
  return (
    <>
      <input aria-label="Name" value={text} onChange={({ target }) => setText(target.value)} />
      <button type="button" onClick={() => setText('put there')}>
        Elsewhere
      </button>
    </>
  );
}

async function openPage() {
  const store = await openTab(new World());
  store.getState().createRecipe({ name: 'Bean pillow', styleId: 'pillow-pack' });
  const asked: Asked[] = [];
  render(
    <WorkbookContext value={store}>
      <Page ask={(what) => asked.push(what)} />
    </WorkbookContext>,
  );
  return { store, asked, user: userEvent.setup(), field: screen.getByRole('textbox', { name: 'Name' }) };
}

/** Whether the page kept a key from the browser. */
function press(at: Element, key: string, held: Partial<KeyboardEventInit> = { ctrlKey: true }): boolean {
  const event = createEvent.keyDown(at, { key, ...held });
  fireEvent(at, event);
  return event.defaultPrevented;
}
const steps = (store: WorkbookStore) => store.getState().history.done.length;

test('the save key never reaches the browser, wherever the focus is, on any alphabet', async () => {
  const { field } = await openPage();
  for (const at of [document.body, field, screen.getByRole('button')]) {
    expect(press(at, 's')).toBe(true);
    expect(press(at, 's', { metaKey: true })).toBe(true);
    expect(press(at, 'ы', { ctrlKey: true, code: 'KeyS' })).toBe(true);
  }
  expect(press(field, 's', {})).toBe(false);
});

test('undo in a text field takes back the typing first, then the last step', async () => {
  const { store, user, field } = await openPage();
  await user.click(field);
  expect(press(field, 'z')).toBe(true);
  expect(steps(store)).toBe(0);
  expect(press(field, 'y')).toBe(true);
  expect(steps(store)).toBe(1);

  await user.type(field, 's');
  expect(press(field, 'z'), 'the browser takes the letter back').toBe(false);
  expect(steps(store)).toBe(1);
  // As the browser does it.
  fireEvent.input(field, { target: { value: 'bean' }, inputType: 'historyUndo' });
  expect(press(field, 'y'), 'and can do it again').toBe(false);
  expect(press(field, 'z')).toBe(true);
  expect(steps(store)).toBe(0);
});

test('a text that was put into the field is not typing', async () => {
  const { store, user, field } = await openPage();
  await user.type(field, 's');
  fireEvent.click(screen.getByRole('button'));
  expect(field).toHaveValue('put there');
  expect(press(field, 'z')).toBe(true);
  expect(steps(store)).toBe(0);
});

test('keys without Ctrl are letters while she types', async () => {
  const { asked, field } = await openPage();
  press(field, '/', {});
  press(field, '?', { shiftKey: true });
  expect(asked).toEqual([]);
  press(document.body, '/', {});
  press(document.body, '?', { shiftKey: true });
  press(field, 'k');
  expect(asked).toEqual(['commands', 'keys', 'commands']);
});
