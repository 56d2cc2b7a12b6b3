import jsQr from 'jsqr';
import { describe, expect, it } from 'vitest';
import type { At } from '../../src/core/plane';
import { STYLES } from '../../src/core/styles';
import { codeOf, handoutContent, pdfOf, printBenchCard, printHandout } from '../../src/print';
import { inputOf, TIP } from './handout-input';
import { openTop, PAPERS } from './printed-boxes';
import { fonts, readPdf } from './read-pdf';

/** Eight by six grey pixels. */
const JPEG =
  '/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDABQODxIPDRQSEBIXFRQYHjIhHhwcHj0sLiQySUBMS0dARkVQWnNiUFVtVkVGZIhlbXd7gYKBTmCNl4x9lnN+gXz/wAALCAAGAAgBAREA/8QAFAABAAAAAAAAAAAAAAAAAAAABf/EABcQAAMBAAAAAAAAAAAAAAAAAAADFWH/2gAIAQEAAD8AfjLw/9k=';

/** A bench card of the same box. */
function cardInput() {
  const { cards, net, stamp, ruler } = inputOf(openTop);
  return {
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
}

describe('the handout on paper', () => {
  it.each(PAPERS)('on %s says all there is to know, as text that another reader reads', async (paper) => {
    const document = printHandout({ ...inputOf(openTop), paper });
    const pages = await readPdf(await pdfOf(document, fonts));
    const text = pages.map((page) => page.texts.map((each) => each.text).join(' ')).join(' ');
    for (const words of [
      'Seed <box>',
      'You need',
      'Cut 11 × 4½ in.',
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

  it('shows the first photo on page one and the others at the end, two beside each other, in their own proportions', async () => {
    const photos = ['On the table', 'In the hand', 'From below', 'Tied', 'In a row'].map((name) => ({
      name,
      jpeg: JPEG,
      widthPx: 800,
      heightPx: 600,
    }));
    const bare = printHandout({ ...inputOf(openTop), paper: 'letter' });
    const document = printHandout({ ...inputOf(openTop), paper: 'letter', photos });
    // Two rows of two, 94 mm wide and so 70 mm high each: less than a page.
    expect(document.pages.length).toBeLessThanOrEqual(bare.pages.length + 1);
    const shown = document.pages.map((page) => page.photos ?? []);
    expect(shown[0]).toHaveLength(1);
    expect(shown.flat()).toHaveLength(photos.length);
    const pages = await readPdf(await pdfOf(document, fonts));
    const wordsOf = (page: (typeof pages)[number] | undefined) => page?.texts.map(({ text }) => text) ?? [];
    expect(wordsOf(pages[0])).toContain('On the table');
    expect(pages[0]?.operators.has('paintImageXObject')).toBe(true);
    expect(pages.slice(1).flatMap(wordsOf)).toEqual(
      expect.arrayContaining(['In the hand', 'From below', 'Tied', 'In a row']),
    );
    for (const { at, widthMm, heightMm } of shown.flat()) {
      expect(widthMm / heightMm).toBeCloseTo(800 / 600, 9);
      expect(Math.min(...at)).toBeGreaterThanOrEqual(10);
      expect(at[0] + widthMm).toBeLessThanOrEqual(215.9 - 10 + 1e-9);
      expect(at[1] + heightMm).toBeLessThanOrEqual(279.4 - 10 + 1e-9);
    }
  });

  it.each(['straight-tuck', 'reverse-tuck', 'lid-flap'])('draws the net of %s large enough to read', (id) => {
    const style = STYLES.find((one) => one.id === id) ?? openTop;
    const strokes = printHandout({ ...inputOf(style), paper: 'letter' }).pages.flatMap(({ marks }) =>
      marks.flatMap((mark) => (mark.kind === 'line' && /^(?:cut|score)/.test(mark.ink) ? [mark.points] : [])),
    );
    // Its walls are 3 1/2 in of 11; on the pictures of steps the longest stroke is 27 mm, and the net is to be larger than those.
    const longest = Math.max(
      ...strokes.map((points) =>
        Math.hypot(points.at(-1)![0] - points[0]![0], points.at(-1)![1] - points[0]![1]),
      ),
    );
    expect(longest).toBeGreaterThan(30);
  });

  it('gives both units of the card it cuts', () => {
    expect(handoutContent(inputOf(openTop)).cuts).toEqual([
      { what: 'Cut size', size: '11 × 4½ in', otherSize: 'full 279 × full 114 mm' },
    ]);
    expect(handoutContent(inputOf(openTop)).effort).toContain('5 minutes');
  });
});

describe('the bench card', () => {
  it('tells the care that goes with what is inside, on the card of the last piece', () => {
    const textOf = (cautions: readonly string[]) =>
      printBenchCard({ ...cardInput(), cautions })
        .pages.flatMap(({ marks }) => marks)
        .flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []))
        .join(' ');
    expect(textOf(['Wrap food first.'])).toContain('Wrap food first.');
    expect(textOf([])).not.toContain('Wrap food');
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

  it('is read from the roomy card as it is read from the screen; too long, the card says what to do instead', () => {
    const { link = null } = inputOf(openTop);
    const cardWith = (given: string | null) =>
      printBenchCard({ ...cardInput(), edition: 'roomy', link: given }).pages.flatMap(({ marks }) => marks);
    const cells = cardWith(link).flatMap((mark) =>
      mark.kind === 'area' && mark.ink === 'code' ? [mark.ring] : [],
    );
    const PER_MM = 10;
    const [left, bottom] = [0, 1].map((axis) => Math.min(...cells.flat().map((at) => at[axis] ?? 0)) - 3);
    const side = 10 + Math.ceil((Math.max(...cells.flat().map(([x]) => x)) - left! + 3) * PER_MM);
    const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
    for (const [[x0, y0], , [x1, y1]] of cells as unknown as [At, At, At][])
      for (let y = Math.round((y0 - bottom!) * PER_MM); y < Math.round((y1 - bottom!) * PER_MM); y++)
        for (let x = Math.round((x0 - left!) * PER_MM); x < Math.round((x1 - left!) * PER_MM); x++)
          pixels.fill(0, ((side - 1 - y) * side + x) * 4, ((side - 1 - y) * side + x) * 4 + 3);
    expect(jsQr(pixels, side, side)?.data).toBe(link);
    const words = cardWith(null).flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
    expect(words.join(' ')).toContain('Keep its file');
  });

  it('is left out where it would be too long', () => {
    expect(codeOf('x'.repeat(3000))).toBeNull();
  });
});
