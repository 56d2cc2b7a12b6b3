import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Guest, workbookFile } from '../../shared/workbook';
import { usualCards, withGuests } from '../../src/core/plan';
import { lettersLost, namesTooLong, pdfOf, placesOn, printNameCards, printTableList } from '../../src/print';
import { fitName } from '../../src/print/fit-name';
import { stamp } from './printed-boxes';
import { fonts, readPdf } from './read-pdf';

const LETTER = { widthMm: 215.9, heightMm: 279.4 };
const saved = workbookFile.parse(JSON.parse(readFileSync('demo-data/seed-swap-supper.json', 'utf8')));
const guests: Guest[] = Array.from({ length: 23 }, (_, at) => ({
  id: `g${at}`,
  name: ['Ana Lindqvist', 'Örjan Ó Súilleabháin', 'Chiara Montgomery-Wetherington', 'Bo'][at % 4]!,
  table: `${1 + (at % 3)}`,
  needs: at === 2 ? 'no nuts' : '',
  lineId: null,
}));
const event = withGuests(saved.events[0]!, guests);

describe('names on cards', () => {
  it('are all in the PDF, each inside its own card at true size', async () => {
    const cards = { ...usualCards('in'), showTable: true };
    const document = printNameCards({ event, cards, sheet: LETTER, stamp });
    const pages = await readPdf(await pdfOf(document, fonts));
    const said = pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ');
    const count = (name: string) => said.split(name).length - 1;
    expect(count('Ana Lindqvist') + count('Örjan Ó Súilleabháin') + count('Bo ')).toBe(6 + 6 + 5);
    // 3 × 1 1/2 in on letter less 10 mm margins: 2 across, 6 down.
    expect(placesOn(cards, LETTER)).toHaveLength(12);
    expect(pages).toHaveLength(2);
    const frames = pages[0]!.paths.filter(({ points }) => points.length >= 4);
    expect(frames).toHaveLength(12);
    for (const { points } of frames) {
      const xs = points.map(([x]) => x);
      const ys = points.map(([, y]) => y);
      expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(76.2, 2);
      expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(38.1, 2);
    }
  });

  it('lie where the labels of a sheet are', async () => {
    const cards = usualCards('in', 'label');
    const [page] = await readPdf(await pdfOf(printNameCards({ event, cards, sheet: LETTER, stamp }), fonts));
    // Two columns, the second 5/32 + 4 3/16 in from the left; the second row’s middle is 1/2 + 2 + 1 in from the top.
    const bo = page!.texts.find(({ text }) => text === 'Bo')!;
    const middle = 279.4 - 12.7 - 50.8 - 25.4 - bo.at[1];
    // The capital’s middle is half a capital above the baseline.
    expect(Math.abs(middle - (0.7275 * bo.sizeMm) / 2)).toBeLessThan(0.1);
    expect(bo.at[0]).toBeGreaterThan(4 + 106.4);
    expect(bo.at[0]).toBeLessThan(4 + 106.4 + 101.6);
    expect(placesOn({ ...cards, widthMm: 120 }, LETTER)).toEqual([]);
    expect(placesOn({ ...cards, heightMm: 60 }, LETTER)).toEqual([]);
  });

  it('shrink to fit and no further than 9 points; those that do not fit are named', () => {
    const room = { widthMm: 40, heightMm: 20, mostMm: 10, leastMm: 3.175 };
    expect(fitName('Bo', room)).toEqual({ lines: ['Bo'], sizeMm: 10 });
    const long = fitName('Chiara Montgomery-Wetherington', room)!;
    expect(long.lines).toEqual(['Chiara', 'Montgomery-', 'Wetherington']);
    expect(long.sizeMm).toBeLessThan(10);
    expect(fitName('M'.repeat(80), room)).toBeNull();
    const cards = { ...usualCards('in'), widthMm: 30 };
    expect(namesTooLong([{ ...guests[0]!, name: 'M'.repeat(60) }, guests[3]!], cards)).toEqual([
      'M'.repeat(60),
    ]);
  });

  it('tell of letters that the face lacks', () => {
    const hebrew = { ...guests[0]!, name: 'נועה' };
    const document = printNameCards({
      event: { ...event, guests: [hebrew] },
      cards: usualCards('in'),
      sheet: LETTER,
      stamp,
    });
    expect(lettersLost(document)).toEqual(['נ', 'ו', 'ע', 'ה']);
  });
});

it('the packing list has every table with its guests, what they need, and how many of what', async () => {
  const names = new Map(event.lines.map(({ id }) => [id, 'Seed box']));
  const pages = await readPdf(await pdfOf(printTableList({ event, names, paper: 'letter', stamp }), fonts));
  const said = pages.flatMap(({ texts }) => texts.map(({ text }) => text));
  for (const table of ['Table 1: 8', 'Table 2: 8', 'Table 3: 7']) expect(said).toContain(table);
  expect(said.filter((text) => text === '8 × Seed box')).toHaveLength(2);
  expect(said).toContain('no nuts');
  expect(said.filter((text) => text === 'Ana Lindqvist')).toHaveLength(6);
});
