import { describe, expect, it } from 'vitest';
import type { Dressing, DressingPiece, PieceFit } from '../../../shared/workbook';
import { fitPiece, insertCuts, withCells } from '../../../src/core/dress';
import { arrangeContents, cellsOf } from '../../../src/core/fit';
import { layNet } from '../../../src/core/net';
import { styleById } from '../../../src/core/styles';
import { inches, printLength, toInches, USUAL_FINEST } from '../../../src/core/units';
import { sayReason } from '../../../src/core/units/reason';

const mark = USUAL_FINEST.in;
const ruler = { unit: 'in', finest: mark } as const;
// a tray 4 × 3 × 1 1/2 in of .012 in card: inside 3.988 × 2.988
const net = layNet(styleById('tray')!, {
  sizes: { width: inches(4), depth: inches(3), height: inches(1, 1, 2) },
  caliperUm: 305,
});

const piece = (fit: PieceFit): DressingPiece => ({
  id: 'insert',
  kind: fit.rule === 'divides' ? 'divider' : 'raised-floor',
  name: 'Insert',
  widthMm: 50.8,
  heightMm: 25.4,
  perBox: 1,
  grain: 'free',
  paperId: null,
  fit,
});

const said = (of: DressingPiece): readonly string[] => {
  const size = fitPiece(net, of, mark);
  return size === null
    ? ['does not fit']
    : insertCuts(net, of, size, mark).map((cut) =>
        sayReason(cut, { length: (length) => printLength(length, ruler).text, money: String }),
      );
};

const divides = (runs: 'across' | 'deep', columns = 3, rows = 2, heightMm = 25.4): PieceFit => ({
  rule: 'divides',
  runs,
  columns,
  rows,
  heightMm,
  easeMm: 1.5875,
});

describe('dividers in halving joints', () => {
  it('cuts strips to the room less 1/16 in, on an even number of marks: 3 7/8 and 2 7/8', () => {
    // 4 − .012 − 1/16 = 3.9255, on eighths below 3 7/8; 3 − .0745 = 2.9255, 2 7/8
    expect(fitPiece(net, piece(divides('across')), mark)).toEqual({ across: inches(3, 7, 8), up: inches(1) });
    expect(fitPiece(net, piece(divides('deep')), mark)).toEqual({ across: inches(2, 7, 8), up: inches(1) });
  });

  it('slots them at equal cells, half-way from the top and from the bottom', () => {
    // 3 7/8 / 3 = 1.2917, on eighths 1 1/4; the first (3 7/8 − 1 1/4) / 2 = 1 5/16
    expect(said(piece(divides('across')))).toEqual([
      '2 slots from the top edge, 1/2 in deep: the first at 1 5/16 in from the left end, then every 1 1/4 in.',
      // .012 + 1/64 = .0276 in, which is nearest to two 64ths
      'Cut each slot 1/32 in wide: the thickness of the cardstock and a hair more.',
    ]);
    // 2 7/8 / 2 = 1 7/16
    expect(said(piece(divides('deep')))[0]).toBe(
      'Slot from the bottom edge at 1 7/16 in from the left end, 1/2 in deep.',
    );
  });

  it('slots both strips past the middle where half the height is no mark', () => {
    // 15/16 / 2 = 15/32, up to the mark 1/2
    expect(said(piece(divides('deep', 3, 2, 15 * 1.5875)))[0]).toContain('1/2 in deep');
  });

  it('needs as many strips as there are partings, and changes both families at once', () => {
    const dressing: Dressing = {
      id: 'd',
      name: 'D',
      pieces: [piece(divides('across')), { ...piece(divides('deep')), id: 'other' }],
    };
    const made = withCells(dressing, { columns: 5, rows: 4 });
    expect(made.pieces.map(({ perBox }) => perBox)).toEqual([3, 4]);
    expect(made.pieces.map(({ fit }) => fit?.rule === 'divides' && [fit.columns, fit.rows])).toEqual([
      [5, 4],
      [5, 4],
    ]);
  });

  it('does not stand higher than the room', () => {
    expect(fitPiece(net, piece(divides('across', 3, 2, 40)), mark)).toBeNull();
  });
});

describe('floors and pads', () => {
  const floor = (riseMm: number, holes?: Extract<PieceFit, { rule: 'on-floor' }>['holes']) =>
    piece({ rule: 'on-floor', easeMm: 1.5875, riseMm, ...(holes && { holes }) });

  it('lays a pad on the floor', () => {
    const size = fitPiece(net, floor(0), mark);
    expect(size && [size.across, size.up].map(toInches)).toEqual([3.875, 2.875]);
    expect(said(floor(0))).toEqual([]);
  });

  it('raises a floor on its sides, with a hole for each cup', () => {
    const six = { shape: 'round', acrossMm: 19.05, columns: 3, rows: 2 } as const;
    // 3 7/8 + 2 × 3/4 = 5 3/8; 2 7/8 + 1 1/2 = 4 3/8
    const size = fitPiece(net, floor(19.05, six), mark);
    expect(size && [size.across, size.up].map(toInches)).toEqual([5.375, 4.375]);
    // step 1 5/16, first (3 7/8 − 2 5/8) / 2 = 5/8 from the score; up 1 7/16, (2 7/8 − 1 7/16) / 2 = 23/32, to 3/4
    expect(said(floor(19.05, six))).toEqual([
      'Score 3/4 in from every edge, cut the four corners away, and fold the sides down.',
      '3 × 2 round holes, 3/4 in wide.',
      'Middles across: the first at 1 3/8 in, then every 1 5/16 in.',
      'Middles up: the first at 1 1/2 in, then every 1 7/16 in.',
    ]);
  });

  it('names one hole by its middle alone', () => {
    const one = { shape: 'square', acrossMm: 25.4, columns: 1, rows: 1 } as const;
    // 3 7/8 / 2 = 1 15/16; 2 7/8 / 2 = 1 7/16, no sides folded down
    expect(said(floor(0, one))).toEqual([
      'One square hole, 1 in wide.',
      'Middle across: 1 15/16 in.',
      'Middle up: 1 7/16 in.',
    ]);
  });

  it('refuses holes that leave less than 1/4 in of card, and a floor above the rim', () => {
    // 3 × (1 1/16 + 1/4) + 1/4 = 4 3/16 is more than 3 7/8
    const wide = { shape: 'square', acrossMm: 17 * 1.5875, columns: 3, rows: 2 } as const;
    expect(fitPiece(net, floor(19.05, wide), mark)).toBeNull();
    expect(fitPiece(net, floor(45), mark)).toBeNull();
  });
});

describe('slots and holes on the maker’s marks', () => {
  const places = (of: DressingPiece, head: string) => {
    const size = fitPiece(net, of, mark);
    const cut = size && insertCuts(net, of, size, mark).find(({ says }) => says.includes(head));
    const at = (name: string) =>
      ((cut?.facts[name] as { length: number } | undefined)?.length ?? 0) / inches(1);
    return cut ? { first: at('first'), step: at('step') } : null;
  };

  it('lie on the strip, with outer cells at least half as wide as the others, or the strip is refused', () => {
    let tried = 0;
    for (const runs of ['across', 'deep'] as const)
      for (let cells = 3; cells <= 12; cells++)
        for (const heightMm of [25.4, 30]) {
          const found = places(piece(divides(runs, cells, cells, heightMm)), 'slots');
          if (!found) continue;
          tried++;
          const long = runs === 'across' ? 3.875 : 2.875;
          const last = found.first + (cells - 2) * found.step;
          expect(found.first, `${cells} ${runs}`).toBeGreaterThanOrEqual(found.step / 2);
          expect(long - last, `${cells} ${runs}`).toBeGreaterThanOrEqual(found.step / 2);
        }
    expect(tried).toBeGreaterThan(20);
    // On marks of 1/2 in, eleven cells of 2 in would be rounded to none.
    expect(fitPiece(net, piece(divides('deep', 3, 11)), inches(0, 1, 2))).toBeNull();
  });

  it('leave 1/4 in between two holes and 1/8 in beside one, wherever rounding puts them', () => {
    let tried = 0;
    for (let columns = 1; columns <= 12; columns++)
      for (let across = 2; across <= 48; across++) {
        const holes = { shape: 'round', acrossMm: across * 1.5875, columns, rows: 1 } as const;
        const found = places(piece({ rule: 'on-floor', easeMm: 1.5875, riseMm: 0, holes }), 'across');
        if (!found) continue;
        tried++;
        const [wide, last] = [across / 16, found.first + (columns - 1) * found.step];
        if (columns > 1)
          expect(found.step - wide, `${columns} of ${across}/16`).toBeGreaterThanOrEqual(1 / 4);
        expect(Math.min(found.first, 3.875 - last) - wide / 2).toBeGreaterThanOrEqual(1 / 8);
      }
    expect(tried).toBeGreaterThan(50);
  });
});

describe('cells from what goes inside', () => {
  const thing = (count: number) => ({
    items: [
      {
        id: 'cup',
        name: 'Cup',
        size: { shape: 'cuboid', widthMm: 30, depthMm: 30, heightMm: 30 },
        count,
        wrapMm: 0,
        aboveRimMm: 0,
        thisWayUp: true,
        fragile: false,
        care: [],
        gramsEach: null,
      } as const,
    ],
  });

  it('counts the columns and rows things stand in, and gives none where they stand in one row', () => {
    const cells = arrangeContents(thing(6) as never).map(cellsOf);
    expect(cells).toContainEqual({ columns: 3, rows: 2 });
    expect(arrangeContents(thing(1) as never).map(cellsOf)).toEqual([null]);
  });
});
