import { screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { useState } from 'react';
import { expect, test } from 'vitest';
import { CountStepper } from '../../src/ui/fields/count-stepper';
import { recordFault } from '../setup/fault-record';
import { drawPart } from './in-words';

function Held() {
  const [count, setCount] = useState(40);
  return (
    <>
      <CountStepper label="How many" value={count} least={1} most={5000} onChange={setCount} />
      <output>{count}</output>
    </>
  );
}

test('a count keeps only a whole number it can be, and says so of everything else while it is typed', async (context) => {
  let lies = 0;
  const typings = ['40.5', '1e9', '-5', '999999', '0', '12', '4 0'];
  for (const typed of typings) {
    const { unmount } = drawPart(<Held />);
    const field = screen.getByRole('textbox', { name: 'How many' });
    await userEvent.clear(field);
    await userEvent.type(field, typed);
    const kept = screen.getByRole('status').textContent;
    const told = screen.queryByRole('alert') !== null;
    // What stands in the field is what is kept, or the field says that it is not.
    if ((field as HTMLInputElement).value !== kept && !told) lies++;
    if ((field as HTMLInputElement).value !== typed) lies++;
    unmount();
  }
  recordFault(context, {
    fault: 'a count that shows what is not kept',
    tries: typings.length,
    lost: lies,
    goal: 0,
  });
});

test('a count refused stays to be mended, and a step puts it right', async () => {
  drawPart(<Held />);
  const field = screen.getByRole('textbox', { name: 'How many' });
  await userEvent.clear(field);
  await userEvent.type(field, '9999');
  await userEvent.tab();
  expect(screen.getByRole('alert')).toHaveTextContent('1 to 5000');
  await userEvent.click(screen.getByRole('button', { name: 'How many: one more' }));
  expect(screen.queryByRole('alert')).toBeNull();
});
