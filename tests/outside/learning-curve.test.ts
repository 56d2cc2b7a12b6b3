import { describe, expect, it } from 'vitest';
import { learnedTotal, unitTime } from '../../src/core/plan/run/hours';

/**
 * Unit theory, Wright 1936, as told on a space agency's learning-curve page: each doubling of the count takes the rate's share of the time.
 * Figures derived from that definition to four places, apart from the program.
 */
describe('the learning curve', () => {
  it.each([
    [75, 0.3846, 0.2884, 0.2163, 13.7232, 8.6526],
    [80, 0.4765, 0.3812, 0.305, 17.1935, 12.1987],
    [85, 0.5828, 0.4954, 0.4211, 21.4252, 16.8435],
    [90, 0.7047, 0.6342, 0.5708, 26.5427, 22.8319],
    [95, 0.8433, 0.8012, 0.7611, 32.6838, 30.4443],
  ])(
    'at %i percent: the 10th, 20th and 40th piece, the sum of 40, and 40 by the average theory',
    (rate, ...expected) => {
      const found = [
        unitTime(10, rate),
        unitTime(20, rate),
        unitTime(40, rate),
        learnedTotal(40, rate),
        learnedTotal(40, rate, 'average'),
      ];
      expect(found.map((value) => value.toFixed(4))).toEqual(expected.map((value) => value.toFixed(4)));
    },
  );

  it('takes the rate’s share of the time at every doubling', () => {
    for (const n of [1, 3, 10, 25]) expect(unitTime(2 * n, 90) / unitTime(n, 90)).toBeCloseTo(0.9, 12);
  });

  it('learns nothing at 100 %', () => {
    expect(learnedTotal(40, 100)).toBe(40);
    expect(learnedTotal(0, 90, 'average')).toBe(0);
  });
});
