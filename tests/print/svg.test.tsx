import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawNet } from '../../src/core/draw/net/net-drawing';
import { STYLES } from '../../src/core/styles';
import { toMm } from '../../src/core/units';
import { svgOf } from '../../src/print';
import { SEED } from '../seed';
import { boxOf, inch } from './printed-boxes';

const parse = (svg: string) => new DOMParser().parseFromString(svg, 'image/svg+xml');

describe('a drawing as SVG', () => {
  it('keeps whatever a maker typed as text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (typed) => {
        const text = `<script>alert(1)</script>&${typed}`;
        const svg = svgOf({
          widthMm: 10,
          heightMm: 10,
          title: text,
          description: text,
          marks: [{ kind: 'text', at: [1, 1], text, sizeMm: 3, anchor: 'start', key: text }],
        });
        const page = parse(svg);
        expect(page.querySelector('parsererror, script')).toBeNull();
        expect(page.querySelector('text')!.textContent).toContain('<script>alert(1)</script>&');
        expect(page.querySelector('title')!.textContent).toBe(page.querySelector('text')!.textContent);
      }),
      { seed: SEED, numRuns: 500 },
    );
  });

  for (const style of STYLES)
    it(`is as large as the card at true size: ${style.id}`, () => {
      for (const piece of boxOf(style).pieces) {
        const net = drawNet(piece, { ruler: inch, scale: 1, textMm: 5, show: { numbers: false } });
        const page = parse(svgOf(net)).documentElement;
        const points = [...page.querySelectorAll('path[stroke]')].flatMap((path) =>
          [...path.getAttribute('d')!.matchAll(/[ML]([\d.-]+) ([\d.-]+)/g)].map(
            ([, x, y]) => [Number(x), Number(y)] as const,
          ),
        );
        const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
        expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(toMm(piece.blank.across), 2);
        expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(toMm(piece.blank.up), 2);
        expect(page.getAttribute('width')).toBe(`${page.getAttribute('viewBox')!.split(' ')[2]}mm`);
      }
    });

  it('names itself to those who cannot see it', () => {
    const page = parse(svgOf(drawNet(boxOf(STYLES[0]!).pieces[0]!, { ruler: inch, scale: 1, textMm: 5 })));
    const named = page.documentElement
      .getAttribute('aria-labelledby')!
      .split(' ')
      .map((id) => page.getElementById(id)!.textContent);
    expect(named[0]).toMatch(/^Net of /);
    expect(named[1]).toMatch(/scores/);
  });
});
