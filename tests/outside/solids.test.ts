import { describe, expect, it } from 'vitest';
import { foldPiece, insideOf, roomInside } from '../../src/core/fold';
import { layNet, nameValues, type PieceNet } from '../../src/core/net';
import type { BoxStyle } from '../../src/core/styles';
import { pillowPack } from '../../src/core/styles/boxes/pillow-pack';
import { squarePyramid } from '../../src/core/styles/boxes/square-pyramid';
import { trayLid } from '../../src/core/styles/boxes/tray-lid';
import { twistPouch } from '../../src/core/styles/boxes/twist-pouch';
import { millimetres, toMm } from '../../src/core/units/ticks';
import { facesArea } from '../styles/second-opinion';

/** Sizes in a unit of `mm` millimetres each. */
const piecesOf = (
  style: BoxStyle,
  sizes: Readonly<Record<string, number>>,
  mm: number,
): readonly PieceNet[] =>
  layNet(style, {
    sizes: Object.fromEntries(Object.entries(sizes).map(([name, size]) => [name, millimetres(size * mm)])),
    caliperUm: 300,
  }).pieces;
const first = (pieces: readonly PieceNet[]): PieceNet => {
  const [piece] = pieces;
  if (piece === undefined) throw new Error('no piece');
  return piece;
};
const roomOf = (piece: PieceNet, mm: number) => roomInside(foldPiece(piece), piece.shell, 0.05) / mm ** 3;
const IN = 25.4;

/**
 * The open box of the calculus textbooks: squares of side x cut from the corners of a sheet a × b hold x (a − 2x)(b − 2x), most at
 * x* = ((a + b) − √(a² − ab + b²)) / 6. Printed values from the textbook problems, re-derived; two public copies of them are wrong.
 */
describe('the textbook open box', () => {
  const tray = (a: number, b: number, x: number, mm: number) =>
    first(piecesOf(trayLid, { width: a - 2 * x, depth: b - 2 * x, height: x, lip: x }, mm));

  it.each([
    [12, 12, IN, 2, 128],
    [24, 36, IN, 4.7085, 1825.297],
    [18, 24, IN, 3.3944, 654.977],
    [8.5, 11, IN, 1.5854, 66.148],
    [15, 15, 10, 2.5, 250],
    [210, 297, 1, 40.4234, 1_128_495],
  ])('a sheet %d × %d holds most with corners of x*, and as much as is printed', (a, b, mm, best, most) => {
    const x = (a + b - Math.sqrt(a * a - a * b + b * b)) / 6;
    expect(x).toBeCloseTo(best, 3);
    const room = roomOf(tray(a, b, x, mm), mm);
    expect(room / most).toBeCloseTo(1, 4);
    for (const beside of [x * 0.97, x * 1.03]) expect(roomOf(tray(a, b, beside, mm), mm)).toBeLessThan(room);
    expect(toMm(tray(a, b, x, mm).blank.across) / mm).toBeCloseTo(a, 2); // a tick is .003 mm
  });

  it.each([
    [1, 100],
    [2, 128],
    [3, 108],
    [4, 64],
  ])('a 12 in square with %d in corners holds %d cubic inches', (x, room) =>
    expect(roomOf(tray(12, 12, x, IN), IN)).toBeCloseTo(room, 9),
  );
});

/** Square pyramids of the school books: base 6, slant 5 has surface 96; 5 and 8 has 105; the 5-12-13 triangle gives base 10, height 12, volume 400. */
describe('the textbook square pyramid', () => {
  const pyramid = (width: number, slant: number) =>
    first(piecesOf(squarePyramid, { width, slant, tab: 0.25 }, IN));

  it.each([
    [6, 5, 96, 48],
    [5, 8, 105, (25 * Math.sqrt(64 - 6.25)) / 3],
    [10, 13, 360, 400],
  ])('base %d and slant %d: surface %d', (width, slant, surface, volume) => {
    const piece = pyramid(width, slant);
    const tabs = piece.faces.filter(({ role }) => role === 'glueTab');
    const card = facesArea({ ...piece, faces: piece.faces.filter((face) => !tabs.includes(face)) }) / IN ** 2;
    // where a tab's score ends on a slanted edge, the edge gives way by a part of a tick: 1/320 mm over 8 edges
    expect(Math.abs(card - surface)).toBeLessThan(0.005);
    expect(roomOf(piece, IN)).toBeCloseTo(volume, 2);
    expect(piece.roomMm3 / IN ** 3).toBeCloseTo(volume, 6);
  });

  it('base 6, slant 5: height 4, edge 5.8310, sides at 53.130° to the base', () => {
    const piece = pyramid(6, 5);
    const values = nameValues(squarePyramid, {
      sizes: { width: millimetres(6 * IN), slant: millimetres(5 * IN) },
      caliperUm: 300,
    });
    expect((values.mm['height'] ?? 0) / IN).toBeCloseTo(4, 9);
    expect((values.mm['edge'] ?? 0) / IN).toBeCloseTo(5.831, 4);
    const pose = foldPiece(piece)[piece.faces.findIndex(({ name }) => name === 'front')]?.pose;
    if (pose === undefined) throw new Error('no front');
    // both insides look into the room: at a dihedral of 53.130° their directions are 126.870° apart
    expect((Math.acos(insideOf(pose)[2]) * 180) / Math.PI).toBeCloseTo(180 - 53.1301, 3);
  });
});

/** Pillow packs: flat width 3 in and rise .5 fold to 2.7441 wide and 1 thick; 4 and .75 to 3.543 and 1.5. Source: curved-crease pillow boxes, arXiv 2410.17593 and 2509.02049. */
describe('the published pillow pack', () => {
  it.each([
    [3, 5, 0.5, 2.7441, 1, 8.1417],
    [4, 6, 0.75, 3.543, 1.5, 18.3775],
  ])('flat width %d, length %d, rise %d', (width, height, rise, packed, thick, room) => {
    const piece = first(piecesOf(pillowPack, { width, height, rise, tab: 0.5 }, IN));
    const sizes = {
      width: millimetres(width * IN),
      height: millimetres(height * IN),
      rise: millimetres(rise * IN),
    };
    const formula = nameValues(pillowPack, { sizes, caliperUm: 300 }).mm['packedWidth'] ?? 0;
    expect(formula / IN).toBeCloseTo(packed, 3);
    expect(piece.roomMm3 / IN ** 3).toBeCloseTo(room, 3);
    const faces = foldPiece(piece);
    const strips = (panel: string) =>
      piece.faces.flatMap((face, at) => (face.panel === panel ? (faces[at]?.ring ?? []) : []));
    const [front, back] = [strips('front'), strips('back')];
    // tip to tip of the front, across the pack; chords within .2 mm of the arc make it wider by less than that
    const [start, end] = [front[0], front[front.length - 1]];
    if (start === undefined || end === undefined) throw new Error('no front');
    const [y, z] = [end[1] - start[1], end[2] - start[2]];
    const across = Math.hypot(y, z);
    expect(Math.abs(across / IN - packed)).toBeLessThan(0.012);
    // square to that, the two faces bulge one rise each way
    const heights = [...front, ...back].map((p) => (p[2] * y - p[1] * z) / across);
    expect((Math.max(...heights) - Math.min(...heights)) / IN).toBeCloseTo(thick, 3);
  });
});

/** The regular tetrahedron of the school book, edge a: a³ / (6 √2), from memory. A pouch whose triangles are equilateral is one. */
describe('the regular tetrahedron', () => {
  it.each([40, 60, 100])('a twist pouch of edge %d mm holds a³ / (6 √2)', (edge) => {
    const pouch = first(piecesOf(twistPouch, { width: edge, height: (edge * Math.sqrt(3)) / 2 }, 1));
    expect(roomOf(pouch, 1) / (edge ** 3 / (6 * Math.SQRT2))).toBeCloseTo(1, 4);
  });
});
