import { expect, test } from 'vitest';
import { withGuests } from '../../src/core/plan';
import { fileOf } from '../../src/state/keeping/export-file';
import { workbookWithDemo } from '../screens/open-app';

test('a guest list is in a backup, and in a file for others only once it is ticked', async () => {
  const workbook = await workbookWithDemo();
  const id = 'seed-swap-supper';
  const guest = { id: 'guest-1', name: 'Ana Lindqvist', table: '1', needs: 'no nuts', lineId: null };
  const { edit } = workbook.getState();
  edit('events', id, 'Guests', (event) => withGuests(event, [guest]));
  const event = () => JSON.stringify(fileOf(workbook.getState().rows, { kind: 'event', id }));
  expect(event()).not.toMatch(/Lindqvist|no nuts/);
  expect(JSON.stringify(fileOf(workbook.getState().rows, { kind: 'everything' }))).toContain('Lindqvist');
  edit('events', id, 'Share', (before) => ({ ...before, shareGuests: true }));
  expect(event()).toContain('Lindqvist');
});
