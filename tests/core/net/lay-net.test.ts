import { describe, expect, it } from 'vitest';
import { layNet } from '../../../src/core/net';
import { openTop } from '../../../src/core/styles/boxes/open-top';
import { inches, toInches } from '../../../src/core/units/ticks';

/**
 * The trade box: 3 1/2 wide, 1 1/2 deep, 3 high, tab 1, flaps 1 1/2 in. Common practice, no source. By hand:
 * across 3 1/2 + 1 1/2 + 3 1/2 + 1 1/2 + 1 = 11, up 3 + 1 1/2 = 4 1/2; running sums 3 1/2, 5, 8 1/2, 10. The tab
 * starts 1/16 above the bottom score; its ends slope by .27 of its width, on sixteenths 5/16.
 */
const box = layNet(openTop, { sizes: { flap: inches(1, 1, 2) }, caliperUm: 305 });
const [piece] = box.pieces;
if (piece === undefined) throw new Error('an open-top box is one piece');
const inInches = ({ x, y }: { x: number; y: number }) => [toInches(x), toInches(y)];
const lines = (kind: string) =>
  piece.edges
    .filter((edge) => edge.kind === kind)
    .map(({ a, b }) => [inInches(a), inInches(b)].sort(([p = 0, q = 0], [r = 0, s = 0]) => p - r || q - s));

describe('the trade box, flat', () => {
  it('is cut from an 11 × 4 1/2 in blank', () => {
    expect([piece.blank.across, piece.blank.up].map(toInches)).toEqual([11, 4.5]);
  });

  it('has its panels front, left, back, right and tab from left to right, inside up', () => {
    const feet = piece.faces
      .slice(0, 5)
      .map(({ name, ring }) => [name, toInches(Math.min(...ring.map(({ x }) => x)))]);
    expect(feet).toEqual([
      ['front', 0],
      ['left', 3.5],
      ['back', 5],
      ['right', 8.5],
      ['tab', 10],
    ]);
  });

  it('is scored at 3 1/2, 5, 8 1/2 and 10, and across at 1 1/2 above the bottom', () => {
    const scores = lines('score');
    const upright = scores.filter(([p, q]) => p?.[0] === q?.[0]);
    expect(upright.map(([p, q]) => [p?.[0], p?.[1], q?.[1]])).toEqual(
      [3.5, 5, 8.5, 10].map((x) => [x, x === 10 ? 1.5625 : 1.5, 4.5]),
    );
    const level = scores.filter(([p, q]) => p?.[1] === q?.[1]);
    expect(level.map(([p, q]) => [p?.[0], q?.[0], p?.[1]])).toEqual([
      [0, 3.5, 1.5],
      [3.5, 5, 1.5],
      [5, 8.5, 1.5],
      [8.5, 10, 1.5],
    ]);
  });

  it('is slit up from the bottom between the flaps, and loses the tab’s foot, 1 × 1 9/16 in, on a slope, and its upper corner', () => {
    expect(lines('slit')).toEqual(
      [3.5, 5, 8.5].map((x) => [
        [x, 0],
        [x, 1.5],
      ]),
    );
    expect(lines('cut')).toEqual([
      [
        [10, 0],
        [10, 1.5],
      ],
      [
        [10, 1.5],
        [10, 1.5625],
      ],
      [
        [10, 1.5625],
        [11, 1.875],
      ],
      [
        [10, 4.5],
        [11, 4.1875],
      ],
    ]);
    expect(piece.waste.map((ring) => ring.map(inInches))).toEqual([
      [
        [10, 4.5],
        [11, 4.1875],
        [11, 4.5],
      ],
      [
        [11, 1.875],
        [10, 1.5625],
        [10, 0],
        [11, 0],
      ],
    ]);
  });
});
