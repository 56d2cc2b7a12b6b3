import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { turnToFit } from '../../../src/core/fit/packet-diagonal';
import { SEED } from '../../seed';

/** Independent: turn the packet degree by fine degree and look whether its shadow fits both ways. */
function scan(p: number, q: number, a: number, b: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i <= 9000; i++) {
    const turn = (i / 9000) * (Math.PI / 2);
    const across = p * Math.cos(turn) + q * Math.sin(turn);
    const up = p * Math.sin(turn) + q * Math.cos(turn);
    least = Math.min(least, Math.max(across - a, up - b));
  }
  return least;
}

describe('a flat packet laid across the corners', () => {
  it('agrees with turning it by hand, in 3,000 random floors', () => {
    const side = fc.double({ min: 1, max: 10, noNaN: true });
    fc.assert(
      fc.property(side, side, side, side, (p, q, a, b) => {
        const miss = scan(p, q, a, b);
        if (Math.abs(miss) < 2e-3) return; // closer than the scan can tell
        expect(turnToFit([p, q], [a, b]) !== null).toBe(miss < 0);
      }),
      { seed: SEED, numRuns: 3000 },
    );
  });

  it('turned as told, it stays inside', () => {
    const turn = ((turnToFit([10, 1], [9, 6.5]) ?? Number.NaN) * Math.PI) / 180;
    expect(10 * Math.cos(turn) + Math.sin(turn)).toBeLessThanOrEqual(9 + 1e-9);
    expect(10 * Math.sin(turn) + Math.cos(turn)).toBeLessThanOrEqual(6.5);
  });
});
