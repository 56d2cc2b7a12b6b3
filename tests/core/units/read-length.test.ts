import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  inches,
  LENGTH_REFUSALS,
  type LengthUnit,
  LONGEST_LENGTH,
  readLength,
  spellLength,
  type Ticks,
  ticks,
} from '../../../src/core/units';
import { SEED } from '../../seed';

interface Row {
  readonly typed: string;
  readonly field: LengthUnit;
  readonly expected: string;
}

const rows: readonly Row[] = readFileSync(new URL('spellings.txt', import.meta.url), 'utf8')
  .split('\n')
  .flatMap((line) => {
    const [, shown, field, expected] = /^\[(.*)\] (in|mm) => (.+)$/.exec(line) ?? [];
    if (shown === undefined || expected === undefined) return [];
    const typed = shown
      .replaceAll('\\t', '\t')
      .replace(/\\u([\da-f]{4})/g, (_, code: string) => String.fromCodePoint(Number.parseInt(code, 16)));
    return [{ typed, field: field as LengthUnit, expected }];
  });

/** What the reader made of a row, in the words of the fixture's last column; lengths stay ticks. */
function hear({ typed, field }: Row): string {
  const read = readLength(typed, field);
  if (!read.ok) return read.code;
  return [read.length, read.heard.echo].filter((part) => part !== null).join(' ');
}

/** The fixture's millimetres in ticks: 320 to the millimetre, to the nearest. */
const inTicks = ({ expected }: Row): string =>
  /^\d/.test(expected) ? expected.replace(/^[\d.]+/, (mm) => `${Math.round(Number(mm) * 320)}`) : expected;

const lengthOf = (text: string, unit: LengthUnit): Ticks => {
  const read = readLength(text, unit);
  if (!read.ok) throw new Error(`${text}: ${read.code}`);
  return read.length;
};

describe('reading a typed length', () => {
  it('has a table of at least 500 spellings, in which every refusal occurs', () => {
    expect(rows.length).toBeGreaterThanOrEqual(500);
    expect(LENGTH_REFUSALS.filter((code) => !rows.some((row) => row.expected === code))).toEqual([]);
  });

  it.each(rows)('reads [$typed] in a field of $field as $expected', (row) => {
    expect(hear(row)).toBe(inTicks(row));
  });

  it('keeps the text of everything it refuses, and says why and what to write instead', () => {
    for (const { typed, field } of rows) {
      const read = readLength(typed, field);
      if (read.ok) continue;
      expect(read.found).toBe(typed);
      expect(read.reason).toMatch(/^[A-Z].*\.$/);
      expect(read.remedy).toMatch(/^[A-Z].*[.?]$/);
    }
  });

  it('says by how much a length between ticks was rounded, and offers the nearest mark', () => {
    const read = readLength('3 1/5', 'in');
    // 3 1/5 in × 8128 = 26009.6 ticks, kept as 26010; the nearest 1/16 in is 3 3/16 = 25908 ticks
    expect(read).toMatchObject({ ok: true, length: 26010, heard: { nearestMark: inches(3, 3, 16) } });
    expect(read.ok && read.heard.offTicks).toBeCloseTo(-0.4, 12);
    expect(readLength('3 1/2', 'in')).toMatchObject({ heard: { offTicks: 0 } });
  });

  it('never throws, whatever is pasted into a field', () => {
    const lengthLike = fc.string({
      unit: fc.constantFrom(...'0123456789 ,./-+½¾⅛⁷⁄₁₆"′inmc−'.split('')),
      maxLength: 12,
    });
    const anything = fc.oneof(lengthLike, fc.string({ unit: 'binary', maxLength: 60 }));
    const check = fc.property(anything, fc.constantFrom('in' as const, 'mm' as const), (text, unit) => {
      const read = readLength(text, unit);
      return read.ok ? read.length >= 0 && read.length <= LONGEST_LENGTH : read.found === text;
    });
    fc.assert(check, { seed: SEED, numRuns: 100_000 });
  });

  it('reads every spelled length back to the same tick, in both units', () => {
    const check = fc.property(
      fc.integer({ min: 0, max: LONGEST_LENGTH }),
      fc.constantFrom('in' as const, 'mm' as const),
      fc.constantFrom('in' as const, 'mm' as const),
      (count, spelled, field) => lengthOf(spellLength(ticks(count), spelled), field) === count,
    );
    fc.assert(check, { seed: SEED, numRuns: 20_000 });
  });
});
