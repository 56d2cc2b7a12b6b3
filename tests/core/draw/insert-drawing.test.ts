import { describe, expect, it } from 'vitest';
import type { DressingPiece, PieceFit } from '../../../shared/workbook';
import { drawInsert } from '../../../src/core/draw/sheet/insert-drawing';
import { fitPiece, insertPlan } from '../../../src/core/dress';
import { layNet } from '../../../src/core/net';
import { styleById } from '../../../src/core/styles';
import { inches } from '../../../src/core/units';

const net = layNet(styleById('tray')!, {
  sizes: { width: inches(6), depth: inches(4), height: inches(2) },
  caliperUm: 305,
});
const mark = inches(0, 1, 16);
const ruler = { unit: 'in', finest: mark } as const;
const within = { widthMm: 120, heightMm: 70 };

const drawn = (fit: PieceFit) => {
  const piece: DressingPiece = {
    id: 'insert', kind: 'divider', name: 'Insert', widthMm: 10, heightMm: 10, perBox: 1, grain: 'free', paperId: null, fit,
  }; // biome-ignore format: one row
  const size = fitPiece(net, piece, mark)!;
  const plan = insertPlan(net, piece, size, mark)!;
  return { plan, size, drawing: drawInsert(plan, 'Insert', ruler, within) };
};
const wordsIn = ({ drawing }: ReturnType<typeof drawn>) =>
  drawing.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));

describe('the picture of an insert', () => {
  const divides = {
    rule: 'divides',
    runs: 'across',
    columns: 3,
    rows: 2,
    heightMm: 38.1,
    easeMm: 1.5875,
  } as const;

  it('shows both slots of a strip for three cells with their places, and how deep they are', () => {
    const strip = drawn(divides);
    // 6 in less a caliper of .012 and 1/16 of ease, on an even number of sixteenths: 5 7/8. In three cells a middle one of 2 in (an even number
    // of sixteenths nearest 1 23/24) leaves 1 15/16 at each end: slots at 1 15/16 and 3 15/16, half of 1 1/2 deep.
    expect(strip.size.across).toBe(inches(5, 7, 8));
    expect(wordsIn(strip)).toEqual(
      expect.arrayContaining(['1¹⁵⁄₁₆ in', '3¹⁵⁄₁₆ in', '¾ in', '5⅞ in', '1½ in']),
    );
    const cuts = strip.drawing.marks.filter((each) => each.kind === 'line' && each.ink === 'cut');
    expect(cuts).toHaveLength(2);
    expect(strip.drawing.description).toContain('slots at');
  });

  it('shows slots of the other family from below', () => {
    const { plan } = drawn({ ...divides, runs: 'deep' });
    expect(plan.slots).toMatchObject({ from: 'bottom', deep: inches(0, 3, 4) });
    expect(plan.slots!.at).toHaveLength(1);
  });

  it('shows a floor with its four scores, its corners off, and every hole', () => {
    const floor = drawn({
      rule: 'on-floor',
      easeMm: 1.5875,
      riseMm: 19.05,
      holes: { shape: 'round', acrossMm: 25.4, columns: 3, rows: 2 },
    });
    const { marks } = floor.drawing;
    expect(marks.filter((each) => each.kind === 'arc')).toHaveLength(6);
    expect(marks.filter((each) => each.kind === 'line' && each.ink === 'score-mountain')).toHaveLength(4);
    expect(
      marks.flatMap((each) => (each.kind === 'area' && each.ink === 'cut' ? [each.ring.length] : [])),
    ).toEqual([12]);
  });

  it('keeps within the space it is given', () => {
    for (const { drawing } of [drawn(divides), drawn({ ...divides, runs: 'deep' })]) {
      expect(drawing.widthMm).toBeLessThanOrEqual(within.widthMm);
      expect(drawing.heightMm).toBeLessThanOrEqual(within.heightMm);
    }
  });

  it('is not drawn for a plain pad', () => {
    const pad = { rule: 'on-floor', easeMm: 1.5875, riseMm: 0 } as const;
    const piece = { id: 'pad', kind: 'cushion', name: 'Pad', widthMm: 10, heightMm: 10, perBox: 1, grain: 'free', paperId: null, fit: pad } as const; // biome-ignore format: one row
    expect(insertPlan(net, piece, fitPiece(net, piece, mark)!, mark)).toBeNull();
  });
});
