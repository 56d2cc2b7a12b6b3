import { describe, expect, test } from 'vitest';
import { readPaper } from '../../shared/read-paper';
import { inches, readSizes } from '../../src/core/units';

describe('a paper as a wrapper has it', () => {
  test('size, weight, colour and price in one line', () => {
    // 65 lb cover: 65 × 2.704 = 175.8 g/m² (published basis-weight table); × 1.25 cm³/g = 220 µm.
    expect(readPaper('12x12, 65 lb, white, $12.99 for 25', 'in')).toEqual({
      paper: {
        name: '12x12, 65 lb, white, $12.99 for 25',
        colour: '#ffffff',
        acrossMm: 304.8,
        upMm: 304.8,
        gsm: 176,
        caliperUm: 220,
        packs: [{ sheets: 25, priceMinor: 1299 }],
      },
      heard: { weight: true, caliper: false, price: true },
    });
  });

  test.each([
    ['8 1/2 x 11 in, 80 lb cover', { acrossMm: 215.9, upMm: 279.4, gsm: 216 }],
    ['a4, 250 gsm', { acrossMm: 210, upMm: 297, gsm: 250 }],
    ['12 by 12, 12 pt', { acrossMm: 304.8, caliperUm: 305 }],
    ['12x12, 0.012 in', { caliperUm: 305 }],
    ['12x12; $6; pack of 10', { packs: [{ sheets: 10, priceMinor: 600 }] }],
    ['30 x 30 cm, kraft', { acrossMm: 300, upMm: 300, colour: '#c9a579' }],
  ])('%s', (text, has) => {
    expect(readPaper(text, 'in')?.paper).toMatchObject(has);
  });

  test('no sheet size, no paper', () => {
    expect(readPaper('white cardstock', 'in')).toBeNull();
    expect(readPaper('12', 'in')).toBeNull();
  });
});

describe('a size in one go', () => {
  test.each([
    ['2 x 2 x 3', [inches(2), inches(2), inches(3)]],
    ['3 1/2 × 1 1/2 × 3 in', [inches(3, 1, 2), inches(1, 1, 2), inches(3)]],
    ['2by3"', [inches(2), inches(3)]],
    ['5 x 5 x 8 cm', [16000, 16000, 25600]],
    ['40 mm', [12800]],
  ])('%s', (text, lengths) => {
    expect(readSizes(text, 'in')).toEqual(lengths);
  });

  test.each(['', '2 x', '2 x two', '0 x 2'])('%s does not read', (text) => {
    expect(readSizes(text, 'in')).toBeNull();
  });
});
