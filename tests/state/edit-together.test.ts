import { expect, test } from 'vitest';
import { paperRow } from '../storage/sample-rows';
import { openTab, World } from './open-tab';

test('several rows change in one step, and one undo takes all of it back', async () => {
  const store = await openTab(new World());
  const { create, editTogether, undo } = store.getState();
  const { id: _id, rev: _rev, createdAt: _made, changedAt: _changed, ...content } = paperRow('any');
  const ids = ['First paper', 'Second paper'].map((name) => {
    const made = create('papers', { ...content, name, onHandSheets: 3 }, 'New paper');
    if (!made.ok) throw new Error('refused');
    return made.id;
  });
  const onHand = () => ids.map((id) => store.getState().rows.papers.get(id)?.onHandSheets);
  const put = (id: string, more: number) => ({
    table: 'papers' as const,
    id,
    change: (paper: ReturnType<typeof paperRow>) => ({
      ...paper,
      onHandSheets: paper.onHandSheets + more,
    }),
  });
  expect(
    editTogether(
      'Received',
      ids.map((id) => put(id, 25)),
    ),
  ).toEqual([]);
  expect(onHand()).toEqual([28, 28]);
  undo();
  expect(onHand()).toEqual([3, 3]);

  // one refused change keeps the others from being made
  expect(editTogether('Received', [put(ids[0]!, 25), put(ids[1]!, -25)])).toHaveLength(1);
  expect(editTogether('Received', [put(ids[0]!, 25), put('nowhere', 1)])).toHaveLength(1);
  expect(onHand()).toEqual([3, 3]);
});
