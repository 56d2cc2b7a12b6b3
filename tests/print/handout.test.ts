import jsQr from 'jsqr';
import { describe, expect, it } from 'vitest';
import { codeOf, handoutContent, pdfOf, printBenchCard, printHandout } from '../../src/print';
import { inputOf, TIP } from './handout-input';
import { openTop, PAPERS } from './printed-boxes';
import { fonts, readPdf } from './read-pdf';

describe('the handout on paper', () => {
  it.each(PAPERS)('on %s says all there is to know, as text that another reader reads', async (paper) => {
    const document = printHandout({ ...inputOf(openTop), paper });
    const pages = await readPdf(await pdfOf(document, fonts));
    const text = pages.map((page) => page.texts.map((each) => each.text).join(' ')).join(' ');
    for (const words of [
      'Seed <box>',
      'You need',
      'Cut the blank 11 × 4½ in.',
      '279.4 mm',
      TIP,
      'Score twice, lightly.',
      '2 × Soap & salt',
      'The Tuesday table',
      'Take care',
    ])
      expect(text).toContain(words);
    expect(pages).toHaveLength(document.pages.length);
    expect(document.pages.length).toBeLessThan(8);
  });

  it('gives both units of the card it cuts', () => {
    expect(handoutContent(inputOf(openTop)).cuts).toEqual([
      { what: 'Card', size: '11 × 4½ in', otherSize: 'full 279 × full 114 mm' },
    ]);
    expect(handoutContent(inputOf(openTop)).effort).toContain('5 minutes');
  });
});

describe('the bench card', () => {
  it('tells the care that goes with what is inside, on the card of the last piece', () => {
    const { cards, net, stamp, ruler } = inputOf(openTop);
    const given = {
      recipeName: 'Seed box',
      styleName: openTop.name,
      inside: net.inside,
      cards,
      faceUp: 'inside',
      grain: null,
      ruler,
      paper: 'a4',
      notes: '',
      stamp,
    } as const;
    const textOf = (cautions: readonly string[]) =>
      printBenchCard({ ...given, cautions })
        .pages.flatMap(({ marks }) => marks)
        .flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []))
        .join(' ');
    expect(textOf(['Wrap food first.'])).toContain('Take care Wrap food first.');
    expect(textOf([])).not.toContain('Take care');
  });
});

describe('the link as a code', () => {
  // jsqr 1.4.0 is a reader that shares nothing with what drew the code.
  it('is read by another program as the link it was made from', () => {
    const { link } = inputOf(openTop);
    const code = codeOf(link ?? '');
    if (!code) throw new Error('no code');
    const SCALE = 4;
    const side = code.size * SCALE;
    const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
    for (const [, x0, y0, x1, y1] of code.path.matchAll(/M(\d+) (\d+)H(\d+)V(\d+)H\d+Z/g))
      for (let y = Number(y0) * SCALE; y < Number(y1) * SCALE; y++)
        for (let x = Number(x0) * SCALE; x < Number(x1) * SCALE; x++)
          pixels.fill(0, (y * side + x) * 4, (y * side + x) * 4 + 3);
    expect(jsQr(pixels, side, side)?.data).toBe(link);
  });

  it('is left out where it would be too long', () => {
    expect(codeOf('x'.repeat(3000))).toBeNull();
  });
});
