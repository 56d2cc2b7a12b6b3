import { describe, expect, it } from 'vitest';
import {
  anglesDuring,
  closingStates,
  foldPiece,
  insideOf,
  restAngles,
  roomInside,
  type Vector,
} from '../../../src/core/fold';
import { layNet, type PieceNet } from '../../../src/core/net';
import { openTop } from '../../../src/core/styles/boxes/open-top';
import { pillowPack } from '../../../src/core/styles/boxes/pillow-pack';
import { inches } from '../../../src/core/units/ticks';

const pieceOf = (...args: Parameters<typeof layNet>): PieceNet => {
  const [piece] = layNet(...args).pieces;
  if (piece === undefined) throw new Error('no piece');
  return piece;
};
const box = pieceOf(openTop, { sizes: { flap: inches(1, 1, 2) }, caliperUm: 305 });
const at = (piece: PieceNet, name: string) => piece.faces.findIndex((face) => face.name === name);
const IN = 25.4;
/** Corners of a face in inches, to a millionth, as a set. */
const corners = (ring: readonly Vector[]) =>
  ring.map((p) => p.map((mm) => Math.round((mm / IN) * 1e6) / 1e6 + 0).join(' ')).sort();

describe('the trade box, folded', () => {
  const faces = foldPiece(box);

  it('leaves the front on the bench, inside up', () => {
    expect(corners(faces[at(box, 'front')]?.ring ?? [])).toEqual([
      '0 1.5 0',
      '0 4.5 0',
      '3.5 1.5 0',
      '3.5 4.5 0',
    ]);
    expect(insideOf(faces[at(box, 'front')]?.pose ?? ([] as never))).toEqual([0, 0, 1]);
  });

  it('stands the left side up at 3 1/2, the back 1 1/2 above the front, the tab back on the front', () => {
    expect(corners(faces[at(box, 'left')]?.ring ?? [])).toEqual([
      '3.5 1.5 0',
      '3.5 1.5 1.5',
      '3.5 4.5 0',
      '3.5 4.5 1.5',
    ]);
    expect(corners(faces[at(box, 'back')]?.ring ?? [])).toEqual([
      '0 1.5 1.5',
      '0 4.5 1.5',
      '3.5 1.5 1.5',
      '3.5 4.5 1.5',
    ]);
    expect(corners(faces[at(box, 'tab')]?.ring ?? [])).toEqual([
      '0 1.5625 0',
      '0 4.5 0',
      '1 1.875 0',
      '1 4.1875 0',
    ]);
  });

  it('turns all four bottom flaps into the plane of the bottom score', () => {
    for (const flap of ['frontFlap', 'leftFlap', 'backFlap', 'rightFlap'])
      for (const [, y] of faces[at(box, flap)]?.ring ?? []) expect(y).toBeCloseTo(1.5 * IN, 9);
  });

  it('holds 3 1/2 × 1 1/2 × 3 = 15 3/4 cubic inches', () => {
    expect(roomInside(faces, box.shell, 0.01) / IN ** 3).toBeCloseTo(15.75, 9);
  });

  it('holds less than nothing when folded inside out', () => {
    const inside = foldPiece(
      box,
      restAngles(box).map((angle) => -angle),
    );
    expect(roomInside(inside, box.shell, 0.01) / IN ** 3).toBeCloseTo(-15.75, 9);
  });

  it('closes a tube of any two sizes at every part of the way open: the last side keeps meeting the front', () => {
    const states = closingStates(box);
    const opening = box.closing.findIndex((act) => act.do === 'fold' && act.panels.includes('back'));
    for (const part of [0, 0.2, 0.5, 0.9, 1]) {
      const [last, front] = ['right', 'front'].map(
        (name) => foldPiece(box, anglesDuring(states, opening, part))[at(box, name)]?.ring ?? [],
      );
      const gap = Math.min(
        ...(last ?? []).map((p) => Math.hypot(...p.map((value, axis) => value - (front?.[0]?.[axis] ?? 0)))),
      );
      expect(gap).toBeLessThan(1e-9);
    }
  });
});

describe('a pillow pack, folded', () => {
  const pack = pieceOf(pillowPack, { sizes: {}, caliperUm: 305 });

  it('has a fold at every crease that the folded faces really make, on the tree and off it', () => {
    const faces = foldPiece(pack);
    for (const { a, b, left, right, foldDeg, kind } of pack.edges) {
      if (right === null || kind === 'slit') continue;
      const [p, q] = [faces[left]?.pose, faces[right]?.pose];
      if (p === undefined || q === undefined) continue;
      const [u, v] = [insideOf(p), insideOf(q)];
      const [dx, dy] = [b.x - a.x, b.y - a.y];
      const long = Math.hypot(dx, dy);
      const axis = [0, 1, 2].map(
        (row) => ((p[row * 4] ?? 0) * dx + (p[row * 4 + 1] ?? 0) * dy) / long,
      ) as unknown as Vector;
      const sine =
        axis[0] * (u[1] * v[2] - u[2] * v[1]) +
        axis[1] * (u[2] * v[0] - u[0] * v[2]) +
        axis[2] * (u[0] * v[1] - u[1] * v[0]);
      const cosine = u[0] * v[0] + u[1] * v[1] + u[2] * v[2];
      // the child turns clockwise seen along its parent's edge, so a valley reads negative here
      expect(-(Math.atan2(sine, cosine) * 180) / Math.PI).toBeCloseTo(foldDeg, 6);
    }
  });
});
