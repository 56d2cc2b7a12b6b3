import { describe, expect, it } from 'vitest';
import { askPrice } from '../../../src/core/plan/event/asking';

describe('a price to ask', () => {
  it('adds hours at the rate and the margin on both, in whole minor units', () => {
    // materials 20.00; 3 h 30 min at 18.00 = 63.00; margin 25 % of 83.00 = 20.75; 103.75 / 40 = 2.59375
    expect(askPrice(2000, 12_600, 40, { hourlyMinor: 1800, marginPercent: 25 })).toMatchObject({
      workMinor: 6300,
      marginMinor: 2075,
      totalMinor: 10_375,
      perFavorMinor: 259,
    });
  });

  it('rounds every share up, never down', () => {
    expect(askPrice(1, 1, 1, { hourlyMinor: 1, marginPercent: 1 })).toMatchObject({
      workMinor: 1,
      marginMinor: 1,
    });
  });
});
