import { expect, test } from 'vitest';
import { distinctNames } from '../../src/screens/marks/family-content';

test('names stay as typed, a second of the same or one of the shelf gets a number', () => {
  const names = distinctNames(
    ['Tea box', ' Tea box ', 'Soap box', 'Tea box'],
    new Set(['Soap box', 'Tea box 2']),
  );
  expect(names).toEqual(['Tea box', 'Tea box 3', 'Soap box 2', 'Tea box 4']);
});
