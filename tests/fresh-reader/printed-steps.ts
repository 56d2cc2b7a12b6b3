import type { ReadPage } from '../print/read-pdf';
import type { PrintedStep } from './read-card';

/** Fractions as type, in plain figures: `3½` and `2¹⁵⁄₁₆` are `3 1/2` and `2 15/16`. */
function plain(text: string): string {
  const figures = (raised: string, from: string) =>
    Array.from(raised)
      .map((one) => from.indexOf(one))
      .join('');
  return text
    .replace(/(\d)?([½¼¾⅛⅜⅝⅞])/g, (_, whole: string | undefined, part: string) => {
      const said = ['1/2', '1/4', '3/4', '1/8', '3/8', '5/8', '7/8']['½¼¾⅛⅜⅝⅞'.indexOf(part)];
      return `${whole === undefined ? '' : `${whole} `}${said}`;
    })
    .replace(
      /(\d)?([⁰¹²³⁴⁵⁶⁷⁸⁹]+)⁄([₀₁₂₃₄₅₆₇₈₉]+)/g,
      (_, whole: string | undefined, over: string, under: string) =>
        `${whole === undefined ? '' : `${whole} `}${figures(over, '⁰¹²³⁴⁵⁶⁷⁸⁹')}/${figures(under, '₀₁₂₃₄₅₆₇₈₉')}`,
    );
}

const NUMBER_MM = 4.2;
const WORDS_MM = 3.2;
const BEFORE_WORDS_MM = 8;

/** The steps of a card of one piece on one page: each number with the lines right of it, left column first. Tips are left aside. */
export function printedSteps({ texts }: ReadPage): PrintedStep[] {
  const near = (a: number, b: number) => Math.abs(a - b) < 0.1;
  const numbers = texts.filter(({ text, sizeMm }) => near(sizeMm, NUMBER_MM) && /^\d+$/.test(text));
  const columns = [...new Set(numbers.map(({ at }) => at[0].toFixed(1)))].map(Number).sort((a, b) => a - b);
  const steps: string[][] = [];
  const top = Math.max(...numbers.map(({ at }) => at[1])) + 2;
  for (const left of columns) {
    const column = texts
      .filter(({ at }) => at[1] <= top)
      .filter(
        ({ at, sizeMm, text }) =>
          (near(sizeMm, NUMBER_MM) && /^\d+$/.test(text) && near(at[0], left)) ||
          (near(sizeMm, WORDS_MM) && near(at[0], left + BEFORE_WORDS_MM)),
      )
      // A number and its first line stand on one line; the number is the larger.
      .toSorted((a, b) => (Math.abs(a.at[1] - b.at[1]) < 1.5 ? b.sizeMm - a.sizeMm : b.at[1] - a.at[1]));
    for (const { text, sizeMm } of column)
      if (near(sizeMm, NUMBER_MM)) steps.push([]);
      else steps.at(-1)?.push(text);
  }
  return steps.map((lines) => ({
    headline: plain(lines.join(' ').replace(/ ?Tip: .*$/, '')),
    details: [],
    template: [],
  }));
}
