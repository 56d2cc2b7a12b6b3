import { screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { expect, test, vi } from 'vitest';
import type { Finding } from '../../src/core/checks';
import { inches } from '../../src/core/units';
import { Findings } from '../../src/ui/frame/findings';
import { drawPart, MILLIMETRES } from './in-words';

const hole: Finding = {
  code: 'bottom-leaves-hole',
  severity: 'stop',
  where: 'flap',
  facts: { flap: inches(0, 3, 4), hole: inches(0, 1, 4), limit: inches(0, 7, 8) },
  says: 'Bottom flaps {flap} leave a hole {hole} wide.',
  remedy: 'Make them at least {limit}.',
  fix: { symbol: 'flap', value: inches(0, 7, 8) },
};
const draft: Finding = { ...hole, code: 'tip', severity: 'note', says: 'A tip.', remedy: 'Mind it.' };

const draw = (findings: readonly Finding[], onFix = vi.fn(), ruler?: typeof MILLIMETRES) => {
  drawPart(
    <Findings findings={findings} nameOf={() => 'Bottom flap'} onFix={onFix} sound="Nothing to mend." />,
    ruler,
  );
  return onFix;
};

test('a finding says value, reason and remedy, and mends itself at a press', async () => {
  const onFix = draw([hole]);
  expect(screen.getByText('Bottom flaps ¾ in leave a hole ¼ in wide.')).toBeVisible();
  expect(screen.getByText('Make them at least ⅞ in.')).toBeVisible();
  await userEvent.setup().click(screen.getByRole('button', { name: 'Bottom flap to ⅞ in' }));
  expect(onFix).toHaveBeenCalledWith(hole.fix);
});

test('the worst stands first', () => {
  draw([draft, hole]);
  const [first] = screen.getAllByRole('listitem');
  expect(first).toHaveTextContent('Bottom flaps');
});

test('lengths are said on the maker’s own marks', () => {
  draw([hole], vi.fn(), MILLIMETRES);
  // 3/4 in is 19.05 mm: a little over the 19 mm mark.
  expect(screen.getByText(/Bottom flaps full 19 mm/)).toBeVisible();
});

test('a sound box is called sound', () => {
  draw([]);
  expect(screen.getByText('Nothing to mend.')).toBeVisible();
});
