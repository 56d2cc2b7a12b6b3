import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  inches,
  MARK_STEPS,
  markAbove,
  markBelow,
  markRoughness,
  millimetres,
  nearestMark,
  ticks,
  USUAL_FINEST,
} from '../../../src/core/units';
import { SEED } from '../../seed';

describe('marks of a ruler', () => {
  it('finds the mark below, above and nearest', () => {
    const length = ticks(inches(3, 1, 2) + 200);
    expect(markBelow(length, USUAL_FINEST.in)).toBe(inches(3, 1, 2));
    expect(markAbove(length, USUAL_FINEST.in)).toBe(inches(3, 9, 16));
    expect(nearestMark(length, USUAL_FINEST.in)).toBe(inches(3, 1, 2));
  });

  it('stays put on a mark, and takes the longer one from halfway', () => {
    const on = inches(3, 1, 16);
    expect([markBelow, markAbove, nearestMark].map((find) => find(on, USUAL_FINEST.in))).toEqual([
      on,
      on,
      on,
    ]);
    expect(nearestMark(millimetres(2.5), USUAL_FINEST.mm)).toBe(millimetres(3));
  });

  it('never moves a length by more than half a mark', () => {
    const finest = fc.constantFrom(...MARK_STEPS.in, ...MARK_STEPS.mm);
    const check = fc.property(fc.integer({ min: -700_000, max: 700_000 }), finest, (count, step) => {
      const mark = nearestMark(ticks(count), step);
      expect(Math.abs(mark - count) * 2).toBeLessThanOrEqual(step);
      expect([markBelow(ticks(count), step), markAbove(ticks(count), step)]).toContain(mark);
    });
    fc.assert(check, { seed: SEED });
  });

  it.each([
    ['in', inches(3), 0],
    ['in', inches(3, 1, 2), 1],
    ['in', inches(3, 3, 4), 2],
    ['in', inches(3, 7, 8), 3],
    ['in', inches(3, 7, 16), 4],
    ['in', inches(3, 7, 32), 5],
    ['in', inches(3, 7, 64), null],
    ['mm', millimetres(90), 0],
    ['mm', millimetres(85), 1],
    ['mm', millimetres(89), 2],
    ['mm', millimetres(88.5), 3],
    ['mm', millimetres(88.9), null],
  ] as const)('says how hard a length is to find: %s %i is %s', (unit, length, roughness) => {
    expect(markRoughness(length, unit)).toBe(roughness);
  });
});
