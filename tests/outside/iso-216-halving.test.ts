import { describe, expect, it } from 'vitest';
import { SHEETS, sheetById } from '../../shared/catalogue';
import { toMm } from '../../src/core/units';

/** ISO 216 and ISO 217: each size is the one before, halved across its long side, the half millimetre dropped. */
const halved = ([short, long]: readonly [number, number]): readonly [number, number] => [
  Math.floor(long / 2),
  short,
];

/** Sizes as the standards print them, short by long in millimetres: the first and last of each series. */
const PRINTED = [
  ['a0', [841, 1189]],
  ['a4', [210, 297]],
  ['a8', [52, 74]],
  ['b0', [1000, 1414]],
  ['b8', [62, 88]],
  ['ra0', [860, 1220]],
  ['ra4', [215, 305]],
  ['sra0', [900, 1280]],
  ['sra3', [320, 450]],
] as const;

const sidesMm = (id: string): readonly [number, number] => {
  const sheet = sheetById(id);
  if (!sheet) throw new Error(`no sheet ${id}`);
  return [toMm(sheet.across), toMm(sheet.up)];
};

describe('ISO 216 (A, B) and ISO 217 (RA, SRA) sheet sizes', () => {
  it.each(PRINTED)('has %s as the standard prints it', (id, sides) => {
    expect(sidesMm(id)).toEqual(sides);
  });

  it.each([
    ['a', 8],
    ['b', 8],
    ['ra', 4],
    ['sra', 4],
  ])('halves every %s size into the next', (series, last) => {
    for (let n = 0; n < last; n++)
      expect(sidesMm(`${series}${n + 1}`)).toEqual(halved(sidesMm(`${series}${n}`)));
  });

  it('makes A0 one square metre with sides as 1 to the root of 2, to the rounding', () => {
    const [short, long] = sidesMm('a0');
    expect(Math.abs(short * long - 1_000_000)).toBeLessThan(1000);
    expect(Math.abs(long / short - Math.SQRT2)).toBeLessThan(0.001);
  });

  it('lists no size twice, every short side across, every row with its source', () => {
    expect(new Set(SHEETS.map(({ id }) => id)).size).toBe(SHEETS.length);
    expect(SHEETS.filter(({ across, up, source }) => across > up || source === '')).toEqual([]);
  });

  it('has letter as 215.9 by 279.4 mm (8 1/2 by 11 in of 25.4 mm; ASME Y14.1, from memory)', () => {
    expect(sidesMm('letter')).toEqual([215.9, 279.4]);
  });
});
