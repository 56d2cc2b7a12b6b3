import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  inches,
  type LengthUnit,
  MARK_STEPS,
  millimetres,
  printLength,
  type Ruler,
  readLength,
  rulerBeside,
  spellLength,
  type Ticks,
  ticks,
  USUAL_FINEST,
} from '../../../src/core/units';
import { SEED } from '../../seed';

const sixteenths: Ruler = { unit: 'in', finest: USUAL_FINEST.in };
const wholeMm: Ruler = { unit: 'mm', finest: USUAL_FINEST.mm };

describe('printing a length on the maker’s marks', () => {
  it.each([
    [inches(3, 1, 2), '3 1/2 in', '3½ in', '88.9 mm'],
    [inches(8, 7, 16), '8 7/16 in', '8⁷⁄₁₆ in', '≈ 214.3 mm'],
    [inches(0, 1, 16), '1/16 in', '¹⁄₁₆ in', '≈ 1.6 mm'],
    [inches(11), '11 in', '11 in', '279.4 mm'],
    [ticks(0), '0 in', '0 in', '0 mm'],
    [inches(0, -1, 2), '-1/2 in', '-½ in', '-12.7 mm'],
  ])('prints %i ticks as %s', (length, text, typographic, other) => {
    expect(printLength(length, sixteenths)).toEqual({ text, typographic, exact: true, lean: null, other });
  });

  it.each([
    // 3/64 in over four marks is 95 ticks, 0.298 mm; 1/64 in is 127
    [ticks(95), sixteenths, '1/64 in', 'scant'],
    [ticks(130), sixteenths, '1/64 in', 'full'],
    [ticks(250), sixteenths, '1/32 in', 'scant'],
    [ticks(40), sixteenths, '0.0049 in', null],
    [ticks(95), wholeMm, '0.3 mm', null],
    [ticks(-130), wholeMm, '-0.4 mm', null],
    [ticks(14), wholeMm, '0.044 mm', null],
  ])('never prints %i ticks as nothing', (length, ruler, text, lean) => {
    expect(printLength(length, ruler)).toMatchObject({ text, lean });
  });

  it('says scant just under a mark and full just over it', () => {
    expect(printLength(ticks(inches(3, 1, 2) - 40), sixteenths)).toMatchObject({
      text: '3 1/2 in',
      lean: 'scant',
    });
    expect(printLength(ticks(inches(3, 1, 2) + 40), sixteenths)).toMatchObject({
      text: '3 1/2 in',
      lean: 'full',
    });
    // 3 1/2 in is 88.9 mm: a little less than the 89 mark
    expect(printLength(inches(3, 1, 2), wholeMm)).toEqual({
      text: '89 mm',
      typographic: '89 mm',
      exact: false,
      lean: 'scant',
      other: '3 1/2 in',
    });
  });

  it.each([
    // A board with a groove every centimetre: 245.4 is 4.6 mm off the 250 and 5.4 off the 240.
    [millimetres(245.4), '245.4 mm', null],
    [millimetres(128.1), '128.1 mm', null],
    [millimetres(65.4), '65.4 mm', null],
    [millimetres(63.5), '63.5 mm', null],
    [millimetres(249.2), '250 mm', 'scant'],
    [millimetres(250.8), '250 mm', 'full'],
    [millimetres(1), '1 mm', null],
    [millimetres(1.1), '1.1 mm', null],
  ])('on a board marked every centimetre prints %i ticks as %s', (length, text, lean) => {
    const { exact, ...printed } = printLength(length, { unit: 'mm', finest: millimetres(10) });
    expect(printed).toMatchObject({ text, lean });
    expect(exact).toBe(lean === null);
  });

  it.each([
    // A board marked every half inch.
    [inches(3, 1, 2), '3 1/2 in', null],
    [ticks(inches(3, 1, 2) + 200), '3 1/2 in', 'full'], // 200 ticks are 0.6 mm, under 1/32 in (254)
    [inches(3, 9, 16), '3 9/16 in', null],
    [inches(2, 7, 32), '2 7/32 in', null],
    [ticks(inches(2, 1, 4) + 40), '2 1/4 in', 'full'],
  ])('on a board marked every half inch prints %i ticks as %s', (length, text, lean) => {
    expect(printLength(length, { unit: 'in', finest: inches(0, 1, 2) })).toMatchObject({ text, lean });
  });

  it('never says scant or full of a length farther off than 1 mm or 1/32 in', () => {
    const any = fc.tuple(
      fc.constantFrom<Ruler>(
        ...([10, 5, 1, 0.5] as const).map((mm) => ({ unit: 'mm' as const, finest: millimetres(mm) })),
        ...([1, 2, 4, 8, 16, 32] as const).map((n) => ({ unit: 'in' as const, finest: inches(0, 1, n) })),
      ),
      fc.nat({ max: 320 * 500 }).map(ticks),
    );
    const check = fc.property(any, ([ruler, length]) => {
      const { text, exact, lean } = printLength(length, ruler);
      const read = readLength(text, ruler.unit);
      const off = read.ok ? Math.abs(read.length - length) : Number.POSITIVE_INFINITY;
      // A true length in millimetres is rounded to a tenth: half of that is 16 ticks.
      expect(off).toBeLessThanOrEqual(exact ? 0 : lean === null ? 16 : ruler.unit === 'mm' ? 320 : 254);
    });
    fc.assert(check, { seed: SEED, numRuns: 5_000 });
  });

  it('reads contents on the usual marks beside a coarse board, and on a fine trimmer’s own', () => {
    expect(rulerBeside('mm', millimetres(10)).finest).toBe(millimetres(1));
    expect(rulerBeside('in', inches(0, 1, 32)).finest).toBe(inches(0, 1, 32));
    expect(rulerBeside('in').finest).toBe(inches(0, 1, 16));
  });

  it('prints halves of a millimetre on a ruler that has them', () => {
    const halves: Ruler = { unit: 'mm', finest: ticks(160) };
    expect(printLength(millimetres(88.5), halves)).toMatchObject({ text: '88.5 mm', exact: true });
  });

  it('spells an exact length as short as it can be', () => {
    expect(spellLength(millimetres(88.9), 'mm')).toBe('88.9 mm');
    expect(spellLength(inches(1, 1, 64), 'in')).toBe('1 1/64 in');
    expect(spellLength(millimetres(89), 'in')).toBe('3.5039 in');
  });

  it('reads every printed mark back to the same tick, plain and typographic', () => {
    const onAMark = fc
      .constantFrom<LengthUnit>('in', 'mm')
      .chain((unit) =>
        fc
          .tuple(fc.constantFrom(...MARK_STEPS[unit]), fc.nat({ max: 78 }))
          .chain(([finest, most]) =>
            fc
              .nat({ max: Math.floor((most * 8128) / finest) })
              .map((n) => ({ unit, finest, length: ticks(n * finest) })),
          ),
      );
    const readBack = (text: string, unit: LengthUnit): Ticks | null => {
      const read = readLength(text, unit);
      return read.ok ? read.length : null;
    };
    const check = fc.property(onAMark, ({ unit, finest, length }) => {
      const printed = printLength(length, { unit, finest });
      expect(printed.exact).toBe(true);
      expect(readBack(printed.text, unit)).toBe(length);
      expect(readBack(printed.typographic, unit)).toBe(length);
    });
    fc.assert(check, { seed: SEED, numRuns: 20_000 });
  });
});
