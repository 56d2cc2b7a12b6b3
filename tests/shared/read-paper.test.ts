import { describe, expect, test } from 'vitest';
import { readPaper } from '../../shared/read-paper';
import { inches, readSizes } from '../../src/core/units';

describe('a paper as a wrapper has it', () => {
  test('size, weight, colour and price in one line', () => {
    // 65 lb cover: 65 × 2.704 = 175.8 g/m² (published basis-weight table); × 1.25 cm³/g = 220 µm.
    expect(readPaper('12x12, 65 lb, white, $12.99 for 25', 'in')).toEqual({
      paper: {
        name: '12x12, 65 lb, white',
        colour: '#ffffff',
        acrossMm: 304.8,
        upMm: 304.8,
        gsm: 176,
        caliperUm: 220,
        packs: [{ sheets: 25, priceMinor: 1299 }],
      },
      heard: { weight: true, caliper: false, price: true },
      unread: [],
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

  // Ways that shops and makers write it; common practice, no source. Pounds by the published basis-weight table: 65, 80, 100, 110 lb cover are
  // 176, 216, 270, 297 g/m²; 110 lb index is 199, 100 lb text 148.
  test.each<[string, number, number | null, string]>([
    ['12x12 65lb white cardstock 25 sheets $12.99', 176, 1299 / 25, '12x12 65lb white cardstock'],
    ['12x12, 3 per pack $12.99', 216, 1299 / 3, '12x12'],
    ['3 per pack $12.99, 12x12', 216, 1299 / 3, '12x12'],
    ['12" x 12" 80# cover, kraft, $0.59 each', 216, 59, '12" x 12" 80# cover, kraft'],
    ['12x12 12 pt $.59/sheet', 216, 59, '12x12 12 pt'],
    ['12 inch square, 216 gsm, 59¢', 216, 59, '12 inch square, 216 gsm'],
    ['letter 110 lb index 250 ct $14', 199, 1400 / 250, 'letter 110 lb index'],
    ['8.5x11, 65 lb, $9.99/50', 176, 999 / 50, '8.5x11, 65 lb'],
    ['8½ x 11, 100 lb text, 50 sheets for $7.50', 148, 750 / 50, '8½ x 11, 100 lb text'],
    ['25-pack 12x12 navy 100lb $15', 270, 1500 / 25, '12x12 navy 100lb'],
    ['A4 160gsm white 50 sheets £7', 160, 700 / 50, 'A4 160gsm white'],
    ['$12.99 for a pack of 25, 12x12, 65 lb', 176, 1299 / 25, '12x12, 65 lb'],
    ['25 for $12.99, 12x12, 65 lb', 176, 1299 / 25, '12x12, 65 lb'],
    ['12x12 65lb, 25 sheets for 12.99', 176, 1299 / 25, '12x12 65lb'],
    ['12x12, 12.99 per pack of 25', 216, 1299 / 25, '12x12'],
    ['12x12, 300 g/m², 10 sheets, 4,50 €', 300, 450 / 10, '12x12, 300 g/m²'],
    ['12x12, 65lb (176 gsm), white, 25 pk, $12.99', 176, 1299 / 25, '12x12, 65lb (176 gsm), white'],
    ['12 x 12 #80 card stock, black, 20 pcs $8', 216, 800 / 20, '12 x 12 #80 card stock, black'],
    ['12x12,65lb,white,$12.99,25ct', 176, 1299 / 25, '12x12,65lb,white'],
    ['12 x 12 in. 65 lb. White Pack - 25 Sheets - $12.99', 176, 1299 / 25, '12 x 12 in. 65 lb. White Pack'],
    ['12x12 110# $10/ream of 250', 297, 1000 / 250, '12x12 110#'],
    ['12x12 65 lb - 1000 sheets, $1,299.00', 176, 129.9, '12x12 65 lb'],
    ['12x12, 80 lb', 216, null, '12x12, 80 lb'],
  ])('%s', (text, gsm, minorASheet, name) => {
    const { paper, unread } = readPaper(text, 'in')!;
    const [pack] = paper.packs;
    expect(paper.gsm).toBe(gsm);
    expect(pack ? pack.priceMinor / pack.sheets : null).toBe(minorASheet);
    expect(paper.name).toBe(name);
    expect(unread).toEqual([]);
  });

  test('a thickness in inches needs no unit', () => {
    // 0.012 in × 25400 µm/in = 304.8 µm.
    expect(readPaper('12x12, 0.012', 'in')?.paper.caliperUm).toBe(305);
  });

  test('figures that no reading fits are told', () => {
    expect(readPaper('12x12 65 lb white 12.99', 'in')?.unread).toEqual(['12.99']);
    expect(readPaper('2 packs of 25, $12.99, 12x12', 'in')?.unread).toEqual(['2']);
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
