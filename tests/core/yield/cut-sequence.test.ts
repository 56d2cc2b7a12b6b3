import { describe, expect, test } from 'vitest';
import { inches, ticks } from '../../../src/core/units/ticks';
import {
  type CutPiece,
  type CutSequence,
  countOnSheet,
  planSheets,
  type SheetPaper,
  sequenceCuts,
} from '../../../src/core/yield';
import { BLANK, LETTER, LINER, paperOf, partOf, SQUARE_12, TABLOID, toolOf } from './sheets-at-hand';

/** Cuts a sheet by the steps alone: each step's piece must lie on the bench, its fence must fit, and it goes into two. */
function replay({ steps }: CutSequence, paper: SheetPaper, kerf = 0): CutPiece[] {
  const bench = new Map<string, Pick<CutPiece, 'x' | 'y' | 'across' | 'up'>>([
    ['0', { x: ticks(0), y: ticks(0), across: paper.across, up: paper.up }],
  ]);
  const done: CutPiece[] = [];
  for (const { piece, way, fence, keep, other } of steps) {
    const card = bench.get(piece.name);
    if (card === undefined) throw new Error(`piece ${piece.name} is not on the bench`);
    bench.delete(piece.name);
    const [size, across] = way === 'upright' ? (['across', 'up'] as const) : (['up', 'across'] as const);
    expect(fence).toBe(keep[size]);
    expect(fence).toBeLessThan(card[size]);
    expect(keep[size] + other[size] + kerf).toBe(Math.max(card[size], keep[size] + kerf));
    expect([keep[across], other[across]]).toEqual([card[across], card[across]]);
    for (const cut of [keep, other]) {
      bench.set(cut.name, cut);
      if (cut.is !== 'piece') done.push(cut);
    }
  }
  return done;
}

const parts = (pieces: readonly CutPiece[]) =>
  pieces
    .filter(({ is }) => is === 'part')
    .map(({ part, x, y, across, up }) => [part, x, y, across, up].join(' '))
    .sort();

describe('the steps at the trimmer', () => {
  test('a letter sheet becomes a blank and a liner in three cuts', () => {
    // 8 1/2 × 11: cut at 4 1/2 along the 11 for the blank; of the 4 × 11 left take 3 1/2 × 6.
    const [layout] = planSheets(
      [
        { ...BLANK, count: 1 },
        { ...LINER, count: 1 },
      ],
      LETTER,
      toolOf(),
    ).layouts;
    const sequence = sequenceCuts(layout!, LETTER, toolOf());
    expect(sequence.steps).toHaveLength(3);
    expect([...sequence.fences].sort((a, b) => a - b)).toEqual([inches(3, 1, 2), inches(4, 1, 2), inches(6)]);
  });

  test('three sheets cut at once halve the strokes of six sheets cut in twos… and twenty in a stack of eight go in three rounds', () => {
    const { layout } = countOnSheet(BLANK, SQUARE_12, toolOf());
    const sequence = sequenceCuts({ ...layout!, sheets: 20 }, SQUARE_12, toolOf({ stack: 8 }));
    expect(sequence.rounds).toBe(3);
    expect(sequence.strokes).toBe(3 * sequence.steps.length);
  });

  test('squaring comes first, with the kept side against the fence', () => {
    const margin = inches(0, 1, 16);
    const paper = paperOf(inches(12), inches(12), {
      squaring: { left: margin, right: margin, near: margin, far: margin },
    });
    const { layout } = countOnSheet(LINER, paper, toolOf());
    const { steps } = sequenceCuts(layout!, paper, toolOf());
    expect(steps.slice(0, 4).map(({ why }) => why)).toEqual(['square', 'square', 'square', 'square']);
    expect(steps.slice(0, 4).map(({ fence }) => fence)).toEqual([inches(11, 15, 16), inches(11, 7, 8), inches(11, 15, 16), inches(11, 7, 8)]); // biome-ignore format: one line
    expect(steps.slice(0, 4).map(({ turn }) => turn)).toEqual([false, false, true, false]);
  });

  test.each([
    ['no kerf', 0],
    ['a saw of 1/32 in', 254],
  ])('cutting by the steps gives back every part where the drawing has it: %s', (_, kerf) => {
    const tool = toolOf({ kerf: ticks(kerf) });
    const tag = partOf('tag', inches(2), inches(1, 1, 4), 90);
    const plan = planSheets([BLANK, LINER, tag], TABLOID, tool);
    expect(plan.layouts.length).toBeGreaterThan(1);
    for (const layout of plan.layouts) {
      const pieces = replay(sequenceCuts(layout, TABLOID, tool), TABLOID, kerf);
      expect(parts(pieces)).toEqual(
        layout.parts.map(({ part, x, y, across, up }) => [part, x, y, across, up].join(' ')).sort(),
      );
    }
  });
});
