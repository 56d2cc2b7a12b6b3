import { describe, expect, it } from 'vitest';
import { readTape } from '../../shared/read-tape';

describe('a roll of tape as its label has it', () => {
  // An inch is 25.4 mm, a yard 914.4 mm (international yard and pound agreement, 1959).
  it.each([
    ['1/4 in x 27 yd, $3.99', 6.35, 24_688.8, 399],
    ['1/4" x 27 yards $3.99', 6.35, 24_688.8, 399],
    ['27 yd x 1/4 in', 6.35, 24_688.8, 0],
    ['1 1/2 in by 10 ft', 38.1, 3048, 0],
    ['0.25 inch x 50 feet, 4.50', 6.35, 15_240, 450],
    ['1/8 x 25yd', 3.175, 22_860, 0],
    ['6 mm x 25 m, €2,50', 6, 25_000, 250],
  ])('%s', (text, widthMm, rollMm, priceMinor) => {
    const heard = readTape(text, 'in');
    expect(heard?.widthMm).toBeCloseTo(widthMm, 6);
    expect(heard?.rollMm).toBeCloseTo(rollMm, 6);
    expect(heard?.priceMinor).toBe(priceMinor);
  });

  it('reads a width without a unit in the maker’s', () => {
    expect(readTape('6 x 25 m', 'mm')?.widthMm).toBe(6);
  });

  it.each([
    '',
    'tape',
    '1/4 in',
    '27 yd',
    '12 x 12',
    '1/0 in x 27 yd',
    '1/4 in x 27 yd x 2 in',
    '1/4 in x 1 in',
  ])('refuses “%s”', (text) => {
    expect(readTape(text, 'in')).toBeNull();
  });
});
