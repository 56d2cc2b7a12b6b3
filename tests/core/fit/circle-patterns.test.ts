import { describe, expect, it } from 'vitest';
import { packCircles } from '../../../src/core/fit/circle-patterns';

/**
 * Least squares that hold n unit circles. Source: "Circle packing in a square", encyclopedia table; closed forms n = 2..9 also OEIS A281065.
 * n = 11, 13, 17, 19: from memory of the same table (each the reciprocal of the radius in a unit square), used only as lower bounds and within 5 %.
 */
const KNOWN = [
  2, 3.41421, 3.93185, 4, 4.82843, 5.3282, 5.73205, 5.8637, 6, 6.74744, 7.0225, 7.14496, 7.46304, 7.73205,
  7.8637, 8, 8.53266, 8.6564, 8.90746, 8.97808,
];
const LEAST_HERE = [1, 2, 3, 4, 5, 6, 7, 8, 9, 12, 16, 18];

const squareFor = (count: number) =>
  Math.min(...packCircles(2, count).map((p) => Math.max(p.width, p.depth)));

describe('circles in a square', () => {
  it.each(KNOWN.map((known, i) => [i + 1, known] as const))(
    '%i circles need a square of side %f, or at most 5 %% more',
    (count, known) => {
      const side = squareFor(count);
      expect(side).toBeGreaterThan(known - 6e-6);
      expect(side).toBeLessThan(known * 1.05);
      if (LEAST_HERE.includes(count)) expect(side).toBeCloseTo(known, 5);
    },
  );

  it('no two circles of any pattern overlap, and none leaves its rectangle', () => {
    for (let count = 1; count <= 24; count++)
      for (const { width, depth, centres } of packCircles(2, count)) {
        expect(centres).toHaveLength(count);
        for (const [i, [x, y]] of centres.entries()) {
          expect(Math.min(x, y, width - x, depth - y)).toBeGreaterThan(1 - 1e-9);
          for (const [u, v] of centres.slice(0, i))
            expect(Math.hypot(x - u, y - v)).toBeGreaterThan(2 - 1e-9);
        }
      }
  });
});
