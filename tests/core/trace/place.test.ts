import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Corner,
  firstPlace,
  moveBy,
  placeByPoints,
  placeByWidth,
  type TracePlace,
  widthOf,
} from '../../../src/core/trace';
import { SEED } from '../../seed';

const scan = { widthPx: 300, heightPx: 200 };
const flat: TracePlace = { middle: [150, 100], mmPerPx: 1, turnDeg: 0, strength: 0.4, shown: true };

/** Where a pixel of the picture lies on the card; written apart from the code: scale, turn, move. */
function onCard(place: TracePlace, [across, down]: Corner): Corner {
  const [x, y] = [(across - scan.widthPx / 2) * place.mmPerPx, (scan.heightPx / 2 - down) * place.mmPerPx];
  const turn = (place.turnDeg * Math.PI) / 180;
  return [
    place.middle[0] + x * Math.cos(turn) - y * Math.sin(turn),
    place.middle[1] + x * Math.sin(turn) + y * Math.cos(turn),
  ];
}

/** The picture as it lies flat, sized by the points (10, 10) and (right, 10) that are so far apart in truth. */
const sized = (right: number, trueMm: number) =>
  placeByPoints(
    flat,
    scan,
    [
      [10, 10],
      [right, 10],
    ],
    trueMm,
  );

describe('a picture under a net', () => {
  test('begins over the whole net, in its middle', () => {
    // A net of 120 × 90 mm: 300 pixels in 120 mm are 0.4 mm each, 200 in 90 mm 0.45; the smaller fits both ways.
    expect(firstPlace(scan, 120, 90)).toMatchObject({
      middle: [60, 45],
      mmPerPx: 0.4,
      turnDeg: 0,
      shown: true,
    });
  });

  test('is made true by two points: the first stays, the distance between them is the one that was typed', () => {
    // From (10, 10) to (60, 10) are 50 mm, in truth 100: twice as large. The middle was 140 right of the first and 90 above it.
    expect(sized(60, 100)).toEqual({ ...flat, mmPerPx: 2, middle: [290, 190] });
  });

  test('is made true by its width, and moved', () => {
    expect(placeByWidth(flat, scan, 216)).toEqual({ ...flat, mmPerPx: 0.72 });
    expect(widthOf(placeByWidth(flat, scan, 216), scan)).toBeCloseTo(216, 9);
    expect(moveBy(flat, -3, 4).middle).toEqual([147, 104]);
  });

  test('keeps what it is where two points make no size', () => {
    expect(sized(10, 100)).toBeNull();
    expect(sized(60, 0)).toBeNull();
    expect(sized(60, Number.NaN)).toBeNull();
    // 300 mm wide grown a hundred times is no table any more.
    expect(sized(60, 5000)).toBeNull();
  });

  test('however it is turned and placed, the pixel under the first point stays, and both are as far apart as was said', () => {
    const near = fc.double({ min: -200, max: 200, noNaN: true });
    const pixel = fc.tuple(fc.integer({ min: 0, max: 300 }), fc.integer({ min: 0, max: 200 }));
    fc.assert(
      fc.property(
        pixel,
        pixel,
        near,
        near,
        near,
        fc.integer({ min: 20, max: 400 }),
        (p, q, x, y, turnDeg, trueMm) => {
          const place = { ...flat, middle: [x, y] as const, turnDeg };
          const [a, b] = [onCard(place, p), onCard(place, q)];
          const next = placeByPoints(place, scan, [a, b], trueMm);
          if (next === null) return;
          const [c, d] = [onCard(next, p), onCard(next, q)];
          expect(Math.hypot(c[0] - a[0], c[1] - a[1])).toBeLessThan(1e-6);
          expect(Math.hypot(d[0] - c[0], d[1] - c[1])).toBeCloseTo(trueMm, 6);
        },
      ),
      { seed: SEED },
    );
  });
});
