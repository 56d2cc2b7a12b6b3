import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import { STYLES } from '../../src/core/styles';
import { PAPER_MM, pdfOf } from '../../src/print';
import { benchCardOf, inch, metric, openTop, PAPERS, templateOf } from './printed-boxes';
import { fonts, readPdf } from './read-pdf';

const POINT_MM = 25.4 / 72;

describe('every page of a bench card and a template', { timeout: 30_000 }, () => {
  // Card and template of one style on different papers, so that both are read on both without reading everything twice.
  STYLES.forEach((style, i) => {
    const [one, other] = i % 2 === 0 ? (['letter', 'a4'] as const) : (['a4', 'letter'] as const);
    const documents = [
      [one, benchCardOf(style, one, one === 'a4' ? metric : inch)],
      [other, templateOf(style, other)],
    ] as const;
    for (const [paper, document] of documents)
      it(`is vector, black, legible and clear of the printer's margins: ${document.name}, ${style.id} on ${paper}`, async () => {
        const pages = await readPdf(await pdfOf(document, fonts));
        expect(pages.length).toBe(document.pages.length);
        for (const page of pages) {
          const sides = [page.widthMm, page.heightMm].sort((a, b) => a - b);
          expect(sides[0]).toBeCloseTo(PAPER_MM[paper].widthMm, 3);
          expect(sides[1]).toBeCloseTo(PAPER_MM[paper].heightMm, 3);
          expect([...page.operators].filter((name) => /image|shading|xobject/i.test(name))).toEqual([]);
          expect([...page.colours].filter((colour) => !['0 0 0', '255 255 255'].includes(colour))).toEqual(
            [],
          );
          expect(Math.min(...page.texts.map(({ sizeMm }) => sizeMm))).toBeGreaterThanOrEqual(9 * POINT_MM);
          const points = [...page.texts.map(({ at }) => at), ...page.paths.flatMap((path) => path.points)];
          expect(Math.min(...points.flat())).toBeGreaterThanOrEqual(9.5);
          expect(Math.max(...points.map(([x]) => x))).toBeLessThanOrEqual(page.widthMm - 9.5);
          expect(Math.max(...points.map(([, y]) => y))).toBeLessThanOrEqual(page.heightMm - 9.5);
        }
      });
  });
});

describe('the bench card of the box 3 1/2 wide, 1 1/2 deep, 3 high', () => {
  it('prints on one page of either paper', () => {
    for (const paper of PAPERS) expect(benchCardOf(openTop, paper).pages.length).toBe(1);
  });

  it('keeps its fractions when its text is copied', async () => {
    const pages = await readPdf(await pdfOf(benchCardOf(openTop, 'letter', inch, 'roomy'), fonts));
    const texts = pages.flatMap((page) => page.texts.map(({ text }) => text));
    for (const number of ['3½', '5', '8½', '10', '4½', '1½']) expect(texts).toContain(number);
    expect(texts.join('\n')).toContain('Cut size 11 × 4½ in');
    expect(texts.join('\n')).toContain('2¹⁵⁄₁₆'); // the inside height, 3 in less the caliper
  });

  it('prints the numbers of the tool at 14 points or more', async () => {
    const pages = await readPdf(await pdfOf(benchCardOf(openTop, 'a4', inch, 'roomy'), fonts));
    for (const number of ['3½', '5', '8½', '10']) {
      const sizes = pages.flatMap((page) =>
        page.texts.filter(({ text }) => text === number).map(({ sizeMm }) => sizeMm),
      );
      expect(sizes.length).toBeGreaterThanOrEqual(2); // on the net and in its step
      expect(Math.min(...sizes)).toBeGreaterThanOrEqual(14 * POINT_MM);
    }
  });

  it('says which side lies up', async () => {
    const [page] = await readPdf(await pdfOf(benchCardOf(openTop, 'a4'), fonts));
    expect(page?.texts.map(({ text }) => text).join(' ')).toContain('Good side up.');
  });
});

describe('a PDF', () => {
  it('is the same bytes every time, and others when it is made at another time', async () => {
    const document = templateOf(openTop, 'a4');
    const [once, again] = [await pdfOf(document, fonts), await pdfOf(document, fonts)];
    expect(Buffer.from(once).equals(Buffer.from(again))).toBe(true);
    const later = await pdfOf(
      { ...document, stamp: { ...document.stamp, madeAt: '2027-01-10T10:00:00Z' } },
      fonts,
    );
    expect(Buffer.from(once).equals(Buffer.from(later))).toBe(false);
  });

  it('asks the viewer not to scale it, and embeds its letters', async () => {
    const bytes = await pdfOf(templateOf(openTop, 'a4'), fonts);
    const pdf = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
    expect(await pdf.getViewerPreferences()).toMatchObject({ PrintScaling: 'None' });
    const raw = Buffer.from(bytes).toString('latin1');
    expect(raw.match(/\/BaseFont/g)?.length).toBe(raw.match(/\/FontFile2/g)!.length * 2); // each once as itself, once as its descendant
    expect(raw).not.toMatch(/\/(Helvetica|Times|Courier)/);
    await pdf.destroy();
  });

  it('prints a letter the face lacks without its accent, or as a question mark, never as nothing', async () => {
    const document = templateOf(openTop, 'a4', { recipeName: 'Ǎbc 箱' });
    const [page] = await readPdf(await pdfOf(document, fonts));
    expect(page!.texts.map(({ text }) => text).join('\n')).toContain('Abc ?');
  });
});
