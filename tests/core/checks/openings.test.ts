import { describe, expect, it } from 'vitest';
import { checkBox } from '../../../src/core/checks';
import { checkOpenings } from '../../../src/core/checks/check-openings';
import { closePiece } from '../../../src/core/fold';
import {
  type BoxNet,
  dxfOf,
  filmPatches,
  foldFileOf,
  layNet,
  type PieceNet,
  svgOf,
} from '../../../src/core/net';
import type { BoxStyle, Chosen } from '../../../src/core/styles';
import { openTop } from '../../../src/core/styles/boxes/open-top';
import { squarePyramid } from '../../../src/core/styles/boxes/square-pyramid';
import { inches, type Ticks, ticks } from '../../../src/core/units/ticks';

const boxWith = (
  options: Chosen,
  sizes: Readonly<Record<string, Ticks>> = {},
  style: BoxStyle = openTop,
): BoxNet =>
  layNet(style, {
    sizes: { ...(style === openTop ? { flap: inches(1, 1, 2) } : {}), ...sizes },
    options,
    caliperUm: 305,
  });
const only = ({ pieces: [piece] }: BoxNet): PieceNet => {
  if (piece === undefined) throw new Error('no piece');
  return piece;
};
const holesOf = (piece: PieceNet) => piece.faces.flatMap(({ holes }) => holes);
const found = (piece: PieceNet) => checkOpenings(closePiece(piece)).map(({ code }) => code);

/** The piece with another ring for the one opening of a panel. */
const withHole = (
  piece: PieceNet,
  panel: string,
  ring: readonly (readonly [number, number])[],
): PieceNet => ({
  ...piece,
  faces: piece.faces.map((face) =>
    face.panel === panel ? { ...face, holes: [ring.map(([x, y]) => ({ x: ticks(x), y: ticks(y) }))] } : face,
  ),
});

describe('openings of the trade box, 3 1/2 × 1 1/2 × 3 in', () => {
  it('a window in the back with a margin of 1/2 in is 2 1/2 × 2 in, its film 3 × 2 1/2 in', () => {
    // the back lies from 5 to 8 1/2 in across and 1 1/2 to 4 1/2 up; 3 1/2 − 1 and 3 − 1; a lap of 1/4 all round
    const box = boxWith({ window: 'back' });
    expect(holesOf(only(box))).toEqual([
      [
        { x: inches(5, 1, 2), y: inches(2) },
        { x: inches(5, 1, 2), y: inches(4) },
        { x: inches(8), y: inches(4) },
        { x: inches(8), y: inches(2) },
      ],
    ]);
    expect(filmPatches(box)).toEqual([
      {
        piece: 'box',
        panel: 'back',
        across: inches(3),
        up: inches(2, 1, 2),
        at: { x: inches(5, 1, 4), y: inches(1, 3, 4) },
      },
    ]);
    expect(checkBox(openTop, box).filter(({ severity }) => severity !== 'note')).toEqual([]);
  });

  it('a window is four lines of boundary in FOLD, and cut lines in SVG and DXF', () => {
    const count = (options: Chosen) => {
      const box = boxWith(options);
      const { edges_assignment } = foldFileOf(box, 'box') as { edges_assignment: string[] };
      return [
        edges_assignment.filter((kind) => kind === 'B').length,
        /<g id="cut"><path d="([^"]*)"/.exec(svgOf(box, 'box'))?.[1]?.split('M').length,
        dxfOf(box).split(/LINE\r\n8\r\nCUT/).length,
      ] as number[];
    };
    const [plain, cut] = [count({}), count({ window: 'back' })];
    expect(cut.map((n, at) => n - (plain[at] ?? 0))).toEqual([4, 4, 4]);
  });

  it('a window over the glue tab asks for a margin as wide as the tab, 1 in, which a front 3 in high takes', () => {
    const [finding] = checkBox(openTop, boxWith({ window: 'front' }));
    expect(finding).toMatchObject({
      code: 'window-over-glue',
      fix: { symbol: 'windowMargin', value: inches(1) },
    });
    const mended = boxWith({ window: 'front' }, { windowMargin: inches(1) });
    expect(checkBox(openTop, mended).map(({ code }) => code)).not.toContain('window-over-glue');
    expect(found(only(mended))).toEqual([]);
  });

  it('the finished box itself shows the tab behind the window, by as much as it is too wide', () => {
    // limits aside: tab 1 in, margin 1/2 in, so the tab reaches 1/2 in into the opening
    const [finding] = checkOpenings(closePiece(only(boxWith({ window: 'front' }))));
    expect(finding).toMatchObject({
      code: 'opening-glued-over',
      where: 'front',
      facts: { deep: inches(0, 1, 2) },
    });
  });

  it('an opening that crosses a score, or comes too near one, is caught', () => {
    const piece = only(boxWith({ window: 'back' }));
    const [left, right, low, high] = [inches(5, 1, 2), inches(8), inches(2), inches(4)];
    const to = (edge: number) =>
      [
        [left, low],
        [left, high],
        [edge, high],
        [edge, low],
      ] as const;
    expect(found(withHole(piece, 'back', to(right)))).toEqual([]);
    expect(found(withHole(piece, 'back', to(inches(8, 3, 4))))).toEqual(['opening-crosses-edge']);
    expect(found(withHole(piece, 'back', to(inches(8, 1, 4))))).toEqual(['opening-near-edge']);
  });

  it('a hole that is tied to three others may lie near its edge, one that stands alone may not', () => {
    const sizes = { holeBelow: inches(0, 3, 8) };
    const tied = layNet(squarePyramid, { sizes, caliperUm: 300, options: { edges: 'ribbon' } });
    const told = (box: BoxNet) => checkBox(squarePyramid, box).map(({ code }) => code);
    expect(told(tied)).not.toContain('opening-near-edge');
    const [piece] = tied.pieces;
    if (piece === undefined) throw new Error('no piece');
    const faces = piece.faces.map((face) => (face.panel === 'front' ? face : { ...face, holes: [] }));
    expect(told({ ...tied, pieces: [{ ...piece, faces }] })).toContain('opening-near-edge');
  });

  it('a hang tab 1 1/4 in high makes the blank 2 1/2 in taller, and its two holes lie on one another', () => {
    const piece = only(boxWith({ hangTab: 'back' }));
    expect(piece.blank).toEqual({ across: inches(11), up: inches(7) }); // 4 1/2 + 2 × 1 1/4
    expect(holesOf(piece)).toHaveLength(2);
    expect(found(piece)).toEqual([]);
    const one = piece.faces.map((face) => (face.panel === 'headerLap' ? { ...face, holes: [] } : face));
    expect(found({ ...piece, faces: one })).toEqual(['opening-glued-over']);
  });

  it('a thumb notch of radius 3/8 in reaches 3/8 in down the middle of the front, on chords within .2 mm of the round', () => {
    const piece = only(boxWith({ notch: 'front' }));
    const radius = inches(0, 3, 8);
    const [cx, cy] = [inches(1, 3, 4), inches(4, 1, 2)];
    const round = piece.edges.filter(({ curve }) => curve !== null);
    expect(round.length).toBeGreaterThan(3);
    for (const { a, b } of round) {
      const middle = Math.hypot((a.x + b.x) / 2 - cx, (a.y + b.y) / 2 - cy);
      expect(radius - middle).toBeGreaterThan(0);
      expect(radius - middle).toBeLessThan(0.2 * 320 + 2); // and a tick each way for rounding
    }
    expect(Math.min(...round.map(({ a }) => a.y))).toBe(cy - radius);
  });

  it('two openings in one panel, and a notch under a hang tab, are told apart before they are cut', () => {
    const codes = (options: Chosen) => checkBox(openTop, boxWith(options)).map(({ code }) => code);
    expect(codes({ window: 'back', notch: 'back' })).toContain('window-meets-notch');
    expect(codes({ window: 'left', slot: 'sides' })).toContain('window-meets-slot');
    expect(codes({ notch: 'left', slot: 'sides' })).toContain('slot-meets-notch');
    expect(codes({ notch: 'back', hangTab: 'back' })).toContain('notch-meets-hang-tab');
    expect(codes({ window: 'back', notch: 'right' })).not.toContain('window-meets-notch');
  });
});
