import { expect, test } from 'vitest';
import type { EasyRow } from '../../src/core/fit';
import { inches, type Ticks } from '../../src/core/units';
import { apartWords } from '../../src/screens/marks/row-words';

const row = (width: number, tab: Ticks, tabAt: string) =>
  ({ sizes: { width: inches(width), depth: inches(1), height: inches(3), tab }, options: { tabAt } }) as unknown as EasyRow; // biome-ignore format: one row

test('rows of the same sizes say what tells them apart, a row that stands alone says nothing', () => {
  const rows = [row(3, inches(1), 'right'), row(3, inches(0, 3, 4), 'right'), row(4, inches(1), 'right')];
  expect(apartWords('open-top', rows, { unit: 'in', finest: inches(0, 1, 16) }, (text) => text)).toEqual([
    'glue tab 1 in',
    'glue tab ¾ in',
    '',
  ]);
});
