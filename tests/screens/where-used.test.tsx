import { expect, test } from 'vitest';
import { whereUsed } from '../../src/state/results/where-used';
import { workbookWithDemo } from '../screens/open-app';

test('a paper, a tool and a box say which events and boxes name them', async () => {
  const { rows } = (await workbookWithDemo()).getState();
  expect(whereUsed(rows, 'oat-letter')).toEqual(expect.arrayContaining(['Seed box']));
  expect(whereUsed(rows, 'seed-box')).toEqual(['Village seed-swap supper']);
  expect(whereUsed(rows, 'nobody')).toEqual([]);
  // A row does not use itself.
  expect(whereUsed(rows, 'bean-pillow')).not.toContain('Bean pillow');
});

test('what only the example names is not in use', async () => {
  const { rows } = (await workbookWithDemo()).getState();
  const marked = new Map([...rows.recipes].map(([id, row]) => [id, { ...row, example: true as const }]));
  const events = new Map([...rows.events].map(([id, row]) => [id, { ...row, example: true as const }]));
  expect(whereUsed({ ...rows, recipes: marked, events }, 'oat-letter')).toEqual([]);
});
