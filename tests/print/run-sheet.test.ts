import { readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { workbookFile } from '../../shared/workbook';
import { listRunSheet, planEvent } from '../../src/core/plan';
import { calendarOf, pdfOf, printRunSheet, printShoppingList, shoppingText } from '../../src/print';
import { longDate } from '../../src/print/long-date';
import { inch, stamp } from './printed-boxes';
import { fonts, readPdf } from './read-pdf';

const workbook = workbookFile.parse(JSON.parse(readFileSync('demo-data/lantern-evening.json', 'utf8')));
const plan = planEvent(workbook, 'lantern-evening')!;
const sheet = listRunSheet(plan, workbook, workbook.tools[0]);

describe('the run sheet on paper', () => {
  it('has every stage, the first box and every step, with nothing smaller than 9 points', async () => {
    const document = printRunSheet({ plan, sheet, ruler: inch, paper: 'letter', stamp });
    const pages = await readPdf(await pdfOf(document, fonts));
    const words = pages.flatMap(({ texts }) => texts.map(({ text }) => text));
    for (const stage of [
      'When',
      'Cut all',
      'Score all',
      'Glue the sides',
      'Close the bottoms',
      'Fill',
      'Tie',
    ])
      expect(words).toContain(stage);
    // Both colors are scored at one setting: one row, with a count for each.
    expect(words.filter((text) => text.startsWith('Set the fence to 3½ in.'))).toHaveLength(1);
    expect(words).toContain('Cut size: 11 in × 4½ in');
    expect(words.filter((text) => text === 'of 23')).toHaveLength(
      sheet.steps.filter(({ lineId }) => lineId === 'dusk').length,
    );
    for (const { texts } of pages)
      expect(Math.min(...texts.map(({ sizeMm }) => sizeMm))).toBeGreaterThanOrEqual((9 * 25.4) / 72);
  });
});

describe('the timetable as a calendar (RFC 5545)', () => {
  it('holds every sitting at its time and as long, and the day itself', async () => {
    const calendar = await calendarOf(plan, stamp);
    const sittings = plan.timetable?.sittings ?? [];
    const unfolded = calendar.replaceAll('\r\n\t', '').replaceAll('\r\n ', '').split('\r\n');
    const values = (name: string) =>
      unfolded.filter((line) => line.startsWith(`${name}:`)).map((line) => line.slice(name.length + 1));
    const two = (count: number) => `${count}`.padStart(2, '0');
    expect(values('DTSTART')).toEqual(
      sittings.map(
        ({ date, startMinute }) =>
          `${date.replaceAll('-', '')}T${two(Math.floor(startMinute / 60))}${two(startMinute % 60)}00`,
      ),
    );
    const minutes = values('DURATION').map((duration) => {
      const [, hours = 0, rest = 0] =
        /^PT(?:(\d+)H)?(?:(\d+)M)?/.exec(duration)?.map((part) => Number(part)) ?? [];
      return (hours || 0) * 60 + (rest || 0);
    });
    expect(minutes.slice(0, sittings.length)).toEqual(sittings.map((sitting) => sitting.minutes));
    expect(unfolded).toContain('DTSTART;VALUE=DATE:20271105');
    expect(new Set(values('UID')).size).toBe(sittings.length + 1);
    expect(await calendarOf(plan, stamp)).toBe(calendar);
  });

  it('is empty without a date', async () => {
    expect(await calendarOf({ ...plan, date: null, timetable: null }, stamp)).toBe('');
  });
});

describe('the list to send', () => {
  it('names every pack to buy and what the till asks, discount and tax named', () => {
    const text = shoppingText({ plan, ruler: inch, locale: 'en-US' });
    for (const { name } of plan.shopping) expect(text).toContain(`- ${name}: `);
    // goods 95.19, less 10 % rounded down 9.51, tax 7 % of 85.68 = 6.00, free shipping from 95.00: 91.68
    expect(text).toContain('Total: $91.68\nThat is goods $95.19, 10 % discount −$9.51, tax $6.00.');
  });

  it('is on paper with the same sum', async () => {
    const list = printShoppingList({ plan, ruler: inch, paper: 'letter', locale: 'en-US', stamp });
    const pages = await readPdf(await pdfOf(list, fonts));
    const words = pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ');
    expect(words).toContain('Total: $91.68');
  });

  it('says when nothing is to be bought', () => {
    const shopping = plan.shopping.map((row) => ({ ...row, short: 0 }));
    expect(shoppingText({ plan: { ...plan, shopping }, ruler: inch, locale: 'en-US' })).toContain(
      'nothing to buy',
    );
  });
});

/** A language without letters: what has some was not put into it. Names, and sentences of the bench card, are the workbook's and the sheet's own. */
test('a language given for the words of the core is heard on paper', () => {
  const say = (template: string) => template.replace(/[^{}]+(?![^{]*\})/g, '·');
  const own =
    `${JSON.stringify(workbook)} ${JSON.stringify(sheet)} ${stamp.code} ${longDate(plan.date ?? '')} page`.toLowerCase();
  const stray = (texts: readonly string[]) =>
    texts
      .flatMap((text) => text.match(/\p{L}{3,}/gu) ?? [])
      .filter((word) => !own.includes(word.toLowerCase()));
  const ruler = { ...inch, leans: { scant: '·', full: '·' } };
  const given = { plan, ruler, paper: 'letter', stamp, locale: 'en-US' } as const;
  const said = (language: { readonly say?: typeof say }) => [
    shoppingText({ ...given, ...language }),
    ...[printRunSheet({ ...given, sheet, ...language }), printShoppingList({ ...given, ...language })]
      .flatMap(({ pages }) => pages.flatMap(({ marks }) => marks))
      .map((mark) => (mark.kind === 'text' ? mark.text : '')),
  ];
  expect(stray(said({ say }))).toEqual([]);
  expect(stray(said({}))).toContain('needed');
});
