import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { workbookFile } from '../../shared/workbook';
import { planEvent } from '../../src/core/plan';
import { pdfOf, printCuttingSheets, printShoppingList, shoppingCsv } from '../../src/print';
import { inch, metric, stamp } from './printed-boxes';
import { fonts, type ReadPage, readPdf } from './read-pdf';

const workbook = workbookFile.parse(JSON.parse(readFileSync('demo-data/seed-swap-supper.json', 'utf8')));
const plan = planEvent(workbook, workbook.events[0]!.id)!;
const wordsOn = (pages: readonly ReadPage[]) => pages.flatMap(({ texts }) => texts.map(({ text }) => text));

describe('the cutting sheets of the supper', () => {
  it('give every paper its sheets, its parts and its cuts', async () => {
    const words = wordsOn(
      await readPdf(await pdfOf(printCuttingSheets({ plan, ruler: inch, paper: 'letter', stamp }), fonts)),
    );
    for (const { name, plan: sheets } of plan.papers) {
      expect(words).toContain(name);
      expect(words.some((text) => text.startsWith(`${sheets.sheets} sheets of`))).toBe(true);
    }
    // 44 boxes 4 1/2 × 11 and 44 liners 3 1/2 × 6: the fence stands at each of these once a sheet (reference arithmetic of the trade box).
    expect(words).toEqual(expect.arrayContaining(['3½ in', '4½ in', '6 in']));
  });

  it('are set in black, with nothing smaller than 9 points', async () => {
    for (const page of await readPdf(
      await pdfOf(printCuttingSheets({ plan, ruler: metric, paper: 'a4', stamp }), fonts),
    )) {
      expect([...page.colours].filter((colour) => !['0 0 0', '255 255 255'].includes(colour))).toEqual([]);
      expect(Math.min(...page.texts.map(({ sizeMm }) => sizeMm))).toBeGreaterThanOrEqual((9 * 25.4) / 72);
    }
  });
});

describe('the shopping list of the supper', () => {
  it('names every row, what it costs, and what it comes to', async () => {
    const list = printShoppingList({ plan, ruler: inch, paper: 'letter', locale: 'en-US', stamp });
    const words = wordsOn(await readPdf(await pdfOf(list, fonts)));
    const dollars = (minor: number) => `$${(minor / 100).toFixed(2)}`;
    for (const row of plan.shopping) if (row.short > 0) expect(words).toContain(dollars(row.priceMinor!));
    const sum = plan.shopping.reduce((total, { priceMinor }) => total + (priceMinor ?? 0), 0);
    expect(words.join(' ')).toContain(`Total: ${dollars(sum)}`);
  });

  it('goes to a spreadsheet with the same numbers', () => {
    const [head, ...rows] = shoppingCsv({ plan, locale: 'en-US' }).trim().split('\r\n');
    expect(head).toContain('minor units');
    expect(rows.length).toBe(plan.shopping.length);
    rows.forEach((row, i) => {
      const { need, priceMinor } = plan.shopping[i]!;
      expect(row).toContain(`,${need},`);
      expect(row.endsWith(`,${priceMinor ?? ''}`)).toBe(true);
    });
  });
});
