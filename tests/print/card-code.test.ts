import { afterAll, describe, expect, it } from 'vitest';
import { STYLES } from '../../src/core/styles';
import { printBenchCard } from '../../src/print';
import { inputOf } from './handout-input';

const found: string[] = [];

/** The compact card of a box with its code; how many pages it has without. */
function cardOf(style: (typeof STYLES)[number], paper: 'letter' | 'a4') {
  const { cards, net, stamp, ruler, link = null } = inputOf(style);
  const input = {
    recipeName: 'Seed box',
    styleName: style.name,
    inside: net.inside,
    cards,
    faceUp: 'outside',
    grain: 'up',
    ruler,
    paper,
    notes: '',
    stamp,
  } as const;
  const pages = printBenchCard({ ...input, link }).pages;
  const codes = pages.map(({ marks }) =>
    marks.flatMap((mark) => (mark.kind === 'area' && mark.ink === 'code' ? mark.ring : [])),
  );
  return {
    pages: pages.length,
    bare: printBenchCard(input).pages.length,
    codes: codes.filter(({ length }) => length > 0),
    widthMm: pages[0]?.widthMm ?? 0,
  };
}

describe('the code of the box on its compact card', () => {
  it('stands on the card of most styles, and never takes a page of its own', { timeout: 300_000 }, () => {
    let [shown, all] = [0, 0];
    for (const style of STYLES) {
      const paper = 'letter';
      const { pages, bare, codes, widthMm } = cardOf(style, paper);
      expect(pages, style.id).toBe(bare);
      expect(codes.length).toBeLessThanOrEqual(1);
      all++;
      shown += codes.length;
      if (codes.length === 0) found.push(`${style.id} ${paper}`);
      for (const ring of codes)
        for (const [x, y] of ring) {
          expect(x).toBeGreaterThan(10);
          expect(x).toBeLessThan(widthMm - 10);
          // Above the foot.
          expect(y).toBeGreaterThan(17.9);
        }
    }
    found.unshift(`Cards with their code: ${shown} of ${all}; without`);
    expect(shown / all).toBeGreaterThan(0.7);
  });

  afterAll(() => {
    console.info(found.join('\n'));
  });
});
