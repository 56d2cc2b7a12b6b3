import { describe, expect, it } from 'vitest';
import type { BoxSize } from '../../../src/core/dress';
import { bowLength, crossWrap, ringWrap, tieLength } from '../../../src/core/dress';
import { inches, millimetres, toInches, toMm } from '../../../src/core/units';

const box = (
  width: number,
  depth: number,
  height: number,
  unit: typeof inches | typeof millimetres,
): BoxSize => ({
  width: unit(width),
  depth: unit(depth),
  height: unit(height),
});

/** Loop 2 in, tail 2 1/2 in, knot 1 1/2 in. */
const bow = { loops: 2, loopMm: 50.8, tailMm: 63.5, knotMm: 38.1 };

describe('ribbon for a box (worked examples of common practice, no source)', () => {
  it.each([
    [11.5, 5.5, 4, 50],
    [5, 4, 5, 38],
  ])('takes %d × %d × %d in both ways with %d in', (width, depth, height, length) => {
    expect(toInches(crossWrap(box(width, depth, height, inches)))).toBe(length);
  });

  it('takes 96 cm both ways round 19 × 11 × 9 cm, and 164 cm with a 24 cm bow round 30 × 20 × 10', () => {
    expect(toMm(crossWrap(box(190, 110, 90, millimetres)))).toBe(960);
    const simple = { loops: 0, loopMm: 0, tailMm: 120, knotMm: 0 };
    const each = tieLength(box(300, 200, 100, millimetres), { wrap: 'cross', bow: simple });
    expect(toMm(each)).toBe(1640);
    expect(toMm(80 * each)).toBe(131_200); // 80 boxes: 131.2 m
  });

  it('takes 36 1/2 in for the 3 1/2 × 1 1/2 × 3 box: 22 both ways and 14 1/2 for the bow', () => {
    const favor = box(3.5, 1.5, 3, inches);
    expect([crossWrap(favor), bowLength(bow), ringWrap(favor)].map(toInches)).toEqual([22, 14.5, 10]);
    expect(toInches(tieLength(favor, { wrap: 'cross', bow }))).toBe(36.5);
    expect(toInches(tieLength(favor, { wrap: 'ring', bow }))).toBe(24.5);
    expect(toInches(tieLength(favor, { wrap: 'none', bow }))).toBe(14.5);
    expect(tieLength(favor, { wrap: 'none', bow: null })).toBe(0);
  });
});
