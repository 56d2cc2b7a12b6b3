import { expect, it } from 'vitest';
import { timeOfDay } from '../../../src/core/plan';

it('says the time as the reader’s clocks do: 12 hours in the United States, 24 in Britain', () => {
  // 14 × 60 + 30. Source: Unicode CLDR, short time of en-US (h:mm a) and en-GB (HH:mm).
  expect(timeOfDay(870)).toBe('2:30 PM');
  expect(timeOfDay(870, 'en-GB')).toBe('14:30');
  // Noon and midnight are 12 there; a sitting that runs past midnight ends on the clock, not at 25 o’clock.
  expect([0, 720, 1500].map((minute) => timeOfDay(minute))).toEqual(['12:00 AM', '12:00 PM', '1:00 AM']);
});
