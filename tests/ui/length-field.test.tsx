import { screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { useState } from 'react';
import { describe, expect, test } from 'vitest';
import { inches, millimetres, type Ruler, type Ticks } from '../../src/core/units';

import { LengthField, withFraction } from '../../src/ui/fields/length-field';
import { drawPart, INCHES, MILLIMETRES } from './in-words';

interface Start {
  readonly start?: Ticks;
  readonly ruler?: Ruler;
  readonly least?: Ticks;
}

/** A width field that remembers, and tells what it was told. */
function Held({ start, least, told }: { start: Ticks; least: Ticks | undefined; told: Ticks[] }) {
  const [width, setWidth] = useState(start);
  const tell = (length: Ticks) => {
    told.push(length);
    setWidth(length);
  };
  const bounds = least === undefined ? {} : { least };
  return (
    <LengthField
      label="Width"
      help="Front panel, score to score."
      value={width}
      onChange={tell}
      {...bounds}
    />
  );
}

function drawField({ start = inches(3), ruler = INCHES, least }: Start = {}) {
  const told: Ticks[] = [];
  drawPart(<Held start={start} least={least} told={told} />, ruler);
  return { told, box: screen.getByRole('textbox', { name: 'Width' }), user: userEvent.setup() };
}

describe('a length field', () => {
  test('shows its unit, the other unit and what the length is', () => {
    const { box } = drawField();
    expect(box).toHaveValue('3');
    expect(screen.getByText('in')).toBeVisible();
    expect(screen.getByRole('status')).toHaveTextContent('76.2 mm');
    expect(box).toHaveAccessibleDescription('Front panel, score to score.');
  });

  test('tells every keystroke that reads as a length, and waits through those that do not', async () => {
    const { box, told, user } = drawField();
    await user.clear(box);
    await user.type(box, '3 1/2');
    // "3" and "3 " are the 3 in that it held already; "3 1" and "3 1/" are no lengths; "3 1/2" is.
    expect(told).toEqual([inches(3, 1, 2)]);
  });

  test('keeps what it cannot read, says why and what to write', async () => {
    const { box, told, user } = drawField();
    await user.clear(box);
    await user.type(box, '1,234{Enter}');
    expect(box).toHaveValue('1,234');
    expect(box).toBeInvalid();
    expect(box).toHaveAccessibleDescription(/thousands or a decimal.*decimals with a point/);
    expect(told.at(-1)).not.toBe(inches(1234));
  });

  test('says 11/4 back loudly, since 1 1/4 looks the same to a tired hand', async () => {
    const { box, user } = drawField();
    await user.clear(box);
    await user.type(box, '11/4');
    expect(screen.getAllByRole('status')[0]).toHaveTextContent('2¾ in ≈ 69.9 mm');
    await user.tab();
    expect(box).toHaveAccessibleDescription(/We read 11\/4 as 2¾ in/);
  });

  test('keeps a length between the marks and offers the nearest mark', async () => {
    const { box, told, user } = drawField();
    await user.clear(box);
    await user.type(box, '3 1/5{Enter}');
    expect(told.at(-1)).toBe(26010); // 3.2 in × 8128, to the nearest tick
    // 3 3/16 in is 3.1875 in: 0.0125 in, 0.3 mm less.
    expect(box).toHaveAccessibleDescription(/nearest is 0.3 mm less/);
    await user.click(screen.getByRole('button', { name: 'Use 3³⁄₁₆ in' }));
    expect(told.at(-1)).toBe(inches(3, 3, 16));
    expect(box).toHaveValue('3 3/16');
  });

  test('refuses what is too short for the box, with the least length at a press', async () => {
    const { box, told, user } = drawField({ least: inches(0, 1, 2) });
    await user.clear(box);
    await user.type(box, '1/4{Enter}');
    expect(box).toBeInvalid();
    await user.click(screen.getByRole('button', { name: 'Use ½ in' }));
    expect(told.at(-1)).toBe(inches(0, 1, 2));
    expect(box).toBeValid();
  });

  test('steps along the ruler by arrows: one mark, or half an inch with Shift', async () => {
    const { box, told, user } = drawField({ start: inches(3, 1, 32) });
    await user.click(box);
    await user.keyboard('{ArrowUp}');
    expect(told.at(-1)).toBe(inches(3, 1, 16));
    await user.keyboard('{Shift>}{ArrowDown}{/Shift}');
    expect(told.at(-1)).toBe(inches(3));
    await user.keyboard('{ArrowDown}');
    expect(told.at(-1)).toBe(inches(2, 15, 16));
  });

  test('gives the old length back on Escape', async () => {
    const { box, told, user } = drawField();
    await user.clear(box);
    await user.type(box, '7');
    expect(told.at(-1)).toBe(inches(7));
    await user.keyboard('{Escape}');
    expect(told.at(-1)).toBe(inches(3));
    expect(box).toHaveValue('3');
  });

  test('takes millimetres in an inch field, and says which unit it heard', async () => {
    const { box, told, user } = drawField();
    await user.clear(box);
    await user.type(box, '89mm{Enter}');
    expect(told.at(-1)).toBe(millimetres(89));
    expect(box).toHaveValue('89mm');
    expect(box).toHaveAccessibleDescription(/in the other unit/);
  });

  test('is as much at home in millimetres', async () => {
    const { box, told, user } = drawField({ start: millimetres(89), ruler: MILLIMETRES });
    expect(box).toHaveValue('89');
    await user.click(box);
    await user.keyboard('{ArrowUp}');
    expect(told.at(-1)).toBe(millimetres(90));
  });
});

test.each([
  ['', '1/2', '1/2'],
  ['3', '1/2', '3 1/2'],
  ['3 1/4', '7/8', '3 7/8'],
  ['1/4', '7/8', '7/8'],
  ['12 ', '1/16', '12 1/16'],
])('the key after "%s" and %s gives %s', (text, key, typed) => {
  expect(withFraction(text, key)).toBe(typed);
});
