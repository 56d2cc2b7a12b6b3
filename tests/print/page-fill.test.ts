import { afterAll, describe, expect, it } from 'vitest';
import { STYLES } from '../../src/core/styles';
import { printHandout } from '../../src/print';
import type { PrintDocument } from '../../src/print/print-document';
import { inputOf } from './handout-input';
import { inch, metric } from './printed-boxes';

/** The column of a page: its margins of 10 mm and the foot of 8 mm are off. */
const [MARGIN_MM, FOOT_MM] = [10, 8];

/** How far down its column each page is filled, by the lowest mark above its foot. */
const fills = ({ pages }: PrintDocument): number[] =>
  pages.map(({ heightMm, marks, photos = [] }) => {
    const columnMm = heightMm - 2 * MARGIN_MM - FOOT_MM;
    const lowest = Math.min(
      ...marks.flatMap((mark) => {
        if (mark.kind === 'text') return mark.at[1] > MARGIN_MM + 1 ? [mark.at[1]] : [];
        if (mark.kind === 'arc') return [mark.centre[1] - mark.radius];
        return (mark.kind === 'line' ? mark.points : mark.ring).map(([, y]) => y);
      }),
      ...photos.map(({ at }) => at[1]),
    );
    return (heightMm - MARGIN_MM - lowest) / columnMm;
  });

const found: string[] = [];
const least: number[] = [];

describe('no page of a handout is half empty, but for the last', () => {
  for (const style of STYLES)
    it(style.name, { timeout: 240_000 }, () => {
      const worst = (
        [
          ['letter', inch],
          ['a4', metric],
        ] as const
      ).map(([paper, ruler]) => {
        const each = fills(printHandout({ ...inputOf(style, ruler), paper }));
        found.push(`${style.id} ${paper}: ${each.map((fill) => Math.round(100 * fill)).join(' ')}`);
        return Math.min(...each.slice(0, -1));
      });
      least.push(...worst);
      expect(Math.min(...worst)).toBeGreaterThan(0.55);
    });

  it('four in five have no page under two thirds', () => {
    const full = least.filter((fill) => fill > 2 / 3).length;
    expect(full / least.length).toBeGreaterThan(0.8);
  });

  afterAll(() => {
    console.info(['Handouts, how full their pages are in hundredths', ...found].join('\n'));
  });
});
