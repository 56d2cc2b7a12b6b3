import { describe, expect, it } from 'vitest';
import type { Blank, Point } from '../../../src/core/net';
import { outerRing, ringsOf, wasteOf } from '../../../src/core/net/outline';
import { overlayEdges } from '../../../src/core/net/overlay';
import { netArea, pointAt } from '../../../src/core/net/point';
import { ticks } from '../../../src/core/units/ticks';

const ring = (...corners: [number, number][]): Point[] => corners.map(([x, y]) => pointAt(x, y));
const face = (...corners: [number, number][]) => ({
  ring: ring(...corners),
  curves: corners.map(() => null),
});
const blank = (across: number, up: number): Blank => ({ across: ticks(across), up: ticks(up) });
const wasteAround = (size: Blank, ...faces: ReturnType<typeof face>[]) =>
  wasteOf(size, ringsOf(overlayEdges(faces).filter(({ right }) => right === null)));
const areas = (rings: readonly (readonly Point[])[]) =>
  rings.map((points) => netArea(points)).sort((p, q) => p - q);

describe('edges of panels that lie beside one another', () => {
  it('are cut where either ends, so that each has one panel a side', () => {
    // a 10 × 4 panel with two 5 × 4 panels above it, the second set in by 2
    const stretches = overlayEdges([
      face([0, 0], [10, 0], [10, 4], [0, 4]),
      face([0, 4], [5, 4], [5, 8], [0, 8]),
      face([7, 4], [10, 4], [10, 8], [7, 8]),
    ]);
    const shared = stretches
      .filter(({ a, b }) => a.y === 4 && b.y === 4)
      .map(({ a, b, left, right }) => [Math.min(a.x, b.x), Math.max(a.x, b.x), left, right]);
    expect(shared).toEqual([
      [0, 5, 1, 0],
      [5, 7, 0, null],
      [7, 10, 2, 0],
    ]);
  });

  it('pair up on slanted lines too, exactly', () => {
    const stretches = overlayEdges([face([0, 0], [6, 0], [0, 9]), face([6, 0], [6, 9], [0, 9])]);
    expect(stretches.filter(({ right }) => right !== null)).toHaveLength(1);
  });
});

describe('what falls away from a blank', () => {
  it('nothing, when the piece fills it', () =>
    expect(wasteAround(blank(4, 3), face([0, 0], [4, 0], [4, 3], [0, 3]))).toEqual([]));

  it('four corners round a cross, counter-clockwise', () => {
    const cross = [
      face([1, 1], [3, 1], [3, 3], [1, 3]),
      face([0, 1], [1, 1], [1, 3], [0, 3]),
      face([3, 1], [4, 1], [4, 3], [3, 3]),
      face([1, 0], [3, 0], [3, 1], [1, 1]),
      face([1, 3], [3, 3], [3, 4], [1, 4]),
    ];
    expect(areas(wasteAround(blank(4, 4), ...cross))).toEqual([1, 1, 1, 1]);
  });

  it('a whole side, when the piece touches it at one corner only', () => {
    // triangle with its tip on the upper edge: two slivers, each half of the rest
    expect(areas(wasteAround(blank(6, 4), face([0, 0], [6, 0], [3, 4])))).toEqual([6, 6]);
  });

  it('a gap shut in between panels', () => {
    const frame = [
      face([0, 0], [4, 0], [4, 1], [0, 1]),
      face([0, 1], [1, 1], [1, 3], [0, 3]),
      face([3, 1], [4, 1], [4, 3], [3, 3]),
      face([0, 3], [4, 3], [4, 4], [0, 4]),
    ];
    const waste = wasteAround(blank(4, 4), ...frame);
    expect(areas(waste)).toEqual([4]);
  });

  it('leaves piece and waste as large as the blank', () => {
    const faces = [face([2, 0], [5, 0], [5, 2], [2, 2]), face([0, 2], [7, 2], [6, 5], [1, 5])];
    const rings = ringsOf(overlayEdges(faces).filter(({ right }) => right === null));
    const waste = areas(wasteOf(blank(7, 5), rings)).reduce((sum, area) => sum + area, 0);
    expect(netArea(outerRing(rings)) + waste).toBe(35);
  });
});
