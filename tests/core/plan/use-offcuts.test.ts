import { expect, test } from 'vitest';
import type { Paper } from '../../../shared/workbook';
import type { PartOnPaper } from '../../../src/core/plan/event/event-parts';
import { takeOffcuts } from '../../../src/core/plan/event/plan-papers';
import { inches } from '../../../src/core/units';

const paper = (id: string, across: number, up: number, onHandSheets: number, offcutOfId?: string): Paper => ({
  id,
  rev: 0,
  createdAt: '2027-01-01T00:00:00Z',
  changedAt: '2027-01-01T00:00:00Z',
  name: id,
  colour: '#ffffff',
  acrossMm: across * 25.4,
  upMm: up * 25.4,
  grain: 'none',
  gsm: 200,
  caliperUm: 300,
  squaringMm: { left: 0, right: 0, near: 0, far: 0 },
  packs: [],
  onHandSheets,
  ...(offcutOfId === undefined ? {} : { offcutOfId }),
});
const part = (
  id: string,
  kind: 'box' | 'tag' | 'liner',
  across: number,
  up: number,
  count: number,
): PartOnPaper => ({
  paperId: 'oat',
  part: { id, name: id, lineId: 'line', kind, perBox: 1, across: inches(across), up: inches(up), count, grain: 'free' }, // biome-ignore format: one row
});
const told = (parts: readonly PartOnPaper[]) => parts.map(({ paperId, part }) => `${part.count} ${part.id} from ${paperId}`); // biome-ignore format: one row

test('tags come from the offcuts on hand, the rest from whole sheets, boxes always from whole sheets', () => {
  // A 4 × 3 offcut gives two 3 × 2 tags (2 + 2 = 4 along the 4, 3 along the 3); five of them give ten of the twelve.
  const papers = [paper('oat', 8.5, 11, 3), paper('oat-offcut', 4, 3, 5, 'oat')];
  const parts = [part('box', 'box', 3, 2, 10), part('tag', 'tag', 3, 2, 12)];
  expect(told(takeOffcuts(parts, papers, undefined))).toEqual([
    '10 box from oat',
    '10 tag from oat-offcut',
    '2 tag from oat',
  ]);
});

test('the smallest offcut that holds a part goes first, and one sheet is not used twice', () => {
  // The 6 × 4 liner takes the larger offcut's one sheet, so the tags have only the smaller: two of its sheets, two tags each.
  const papers = [paper('oat', 8.5, 11, 0), paper('large', 6, 4, 1, 'oat'), paper('small', 4, 3, 2, 'oat')];
  const parts = [part('tag', 'tag', 3, 2, 9), part('liner', 'liner', 6, 4, 1)];
  expect(told(takeOffcuts(parts, papers, undefined))).toEqual([
    '4 tag from small',
    '5 tag from oat',
    '1 liner from large',
  ]);
});

test('offcuts of another paper, and such as are used up, stay where they are', () => {
  const papers = [paper('oat', 8.5, 11, 0), paper('gone', 6, 4, 0, 'oat'), paper('other', 6, 4, 9, 'fern')];
  const parts = [part('tag', 'tag', 3, 2, 9)];
  expect(takeOffcuts(parts, papers, undefined)).toEqual(parts);
});
