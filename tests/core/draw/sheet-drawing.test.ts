import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutOrder } from '../../../src/core/draw/sheet/cut-order';
import { drawLayoutToFit } from '../../../src/core/draw/sheet/sheet-drawing';
import { inches, ticks } from '../../../src/core/units/ticks';
import type { CutTree, Layout, SheetPaper } from '../../../src/core/yield/types';
import { SEED } from '../../seed';
import { textCollisions } from './text-collisions';

const none = ticks(0);
const paper = (across: number, up: number, squaring = none): SheetPaper => ({
  id: 'card',
  across: inches(across),
  up: inches(up),
  grain: 'up',
  squaring: { left: squaring, right: none, near: squaring, far: none },
  onHand: 10,
});
const options = {
  parts: [
    { id: 'box', mark: 'A', name: 'box' },
    { id: 'liner', mark: 'B', name: 'liner' },
  ],
  ruler: { unit: 'in', finest: inches(0, 1, 16) },
  textMm: 5.2,
} as const;

/** Lays a cut tree out the plain way: what `cutOrder` and the drawing are checked against. */
function layOut(tree: CutTree, x: number, y: number, across: number, up: number, into: Layout): void {
  const piece = { x: ticks(x), y: ticks(y), across: ticks(across), up: ticks(up) };
  if (tree.kind === 'offcut') (into.offcuts as (typeof piece)[]).push(piece);
  else if (tree.kind === 'part') (into.parts as object[]).push({ ...piece, part: tree.part, turned: false });
  else if (tree.way === 'upright') {
    layOut(tree.first, x, y, tree.at - x, up, into);
    layOut(tree.second, tree.at, y, x + across - tree.at, up, into);
  } else {
    layOut(tree.first, x, y, across, tree.at - y, into);
    layOut(tree.second, x, tree.at, across, y + up - tree.at, into);
  }
}

const part = (id: string): CutTree => ({ kind: 'part', part: id, turned: false });
const offcut: CutTree = { kind: 'offcut' };
const cut = (way: 'upright' | 'level', at: number, first: CutTree, second: CutTree): CutTree => ({
  kind: 'cut',
  way,
  at: ticks(at),
  first,
  second,
});

// Letter: cut 4 1/2 across off the sheet 8 1/2 × 11 for the box; the rest is 4 × 11, of which 3 1/2 × 6 is the liner.
const letterTree = cut(
  'upright',
  inches(4, 1, 2),
  part('box'),
  cut('level', inches(6), cut('upright', inches(8), part('liner'), offcut), offcut),
);
const layoutOf = (tree: CutTree, sheet: SheetPaper): Layout => {
  const layout: Layout = { sheets: 1, parts: [], offcuts: [], tree };
  const { left, near, right, far } = sheet.squaring;
  layOut(tree, left, near, sheet.across - left - right, sheet.up - near - far, layout);
  return layout;
};

describe('the cuts of a letter sheet with one box and one liner', () => {
  const sheet = paper(8.5, 11);
  const steps = cutOrder(layoutOf(letterTree, sheet), sheet, none);

  it('set the fence by the piece in hand: 4 1/2, then 6, then 3 1/2', () => {
    expect(steps.map(({ way, fence }) => [way, fence])).toEqual([
      ['upright', inches(4, 1, 2)],
      ['level', inches(6)],
      ['upright', inches(3, 1, 2)], // at 8 in the sheet's frame, 4 1/2 of it cut off already
    ]);
  });

  it('say which cut frees which part', () => {
    expect(
      steps.map(({ frees }) => frees.map((free) => (free.kind === 'part' ? free.part : free.kind))),
    ).toEqual([['box'], ['offcut'], ['liner', 'offcut']]);
  });

  it('start from the squared sheet', () => {
    const trimmed = paper(8.5, 11, inches(0, 1, 8));
    const tree = cut('upright', inches(0, 1, 8) + inches(4), part('box'), offcut);
    expect(cutOrder(layoutOf(tree, trimmed), trimmed, none)[0]?.fence).toBe(inches(4));
  });

  it('are all drawn, with their numbers and fence settings', () => {
    const { marks, description } = drawLayoutToFit(
      layoutOf(letterTree, sheet),
      sheet,
      { widthMm: 120, heightMm: 150 },
      options,
    );
    const texts = marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
    expect(texts).toEqual(
      expect.arrayContaining(['1', '2', '3', '4½', '6', '3½', 'A', 'B', 'offcut', 'grain']),
    );
    expect(
      new Set(marks.flatMap((mark) => (mark.kind === 'line' && mark.ink === 'cut' ? (mark.key ?? []) : []))),
    ).toEqual(new Set(['cut 1', 'cut 2', 'cut 3']));
    expect(description).toBe(
      'A sheet 8½ × 11 in: 1 × box, 1 × liner, 3 cuts, offcuts ½ × 6 in and 4 × 5 in.',
    );
  });
});

describe('words and numbers on a sheet', () => {
  const way = fc.constantFrom('upright' as const, 'level' as const);
  /** Any guillotine cutting of a sheet down to pieces of at least 2 in, at most four cuts deep. */
  const anyTree = (
    x: number,
    y: number,
    across: number,
    up: number,
    depth: number,
  ): fc.Arbitrary<CutTree> => {
    const leaf = fc.constantFrom(part('box'), part('liner'), offcut);
    const least = inches(4);
    if (depth === 0 || (across < least && up < least)) return leaf;
    const split = fc
      .tuple(way, fc.integer({ min: 2, max: 64 }))
      .chain(([wanted, share]): fc.Arbitrary<CutTree> => {
        const upright = across < least ? false : up < least ? true : wanted === 'upright';
        const size = upright ? across : up;
        const near = Math.round((inches(2) + ((size - least) * share) / 64) / 508) * 508;
        const [first, second] = upright
          ? [anyTree(x, y, near, up, depth - 1), anyTree(x + near, y, across - near, up, depth - 1)]
          : [anyTree(x, y, across, near, depth - 1), anyTree(x, y + near, across, up - near, depth - 1)];
        return fc
          .tuple(first, second)
          .map(([a, b]) => cut(upright ? 'upright' : 'level', (upright ? x : y) + near, a, b));
      });
    return fc.oneof({ weight: 1, arbitrary: leaf }, { weight: 4, arbitrary: split });
  };

  it('never touch, whatever the cuts', () => {
    const sheet = paper(12, 12);
    fc.assert(
      fc.property(anyTree(0, 0, inches(12), inches(12), 4), (tree) => {
        const drawing = drawLayoutToFit(
          layoutOf(tree, sheet),
          sheet,
          { widthMm: 150, heightMm: 160 },
          options,
        );
        expect(textCollisions(drawing)).toEqual([]);
      }),
      { seed: SEED, numRuns: 120 },
    );
  });
});
