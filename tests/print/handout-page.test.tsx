import { describe, expect, it } from 'vitest';
import { type BenchOp, panelLabels } from '../../src/core/bench';
import { spellAct } from '../../src/core/bench/equal/canonical-form';
import { tabEndOf } from '../../src/core/net/tab-end';
import { STYLES } from '../../src/core/styles';
import { handoutPage } from '../../src/print';
import { readCard } from '../core/bench/card-reader/read-card';
import { expectMakes } from '../core/bench/expect-makes';
import { inputOf } from './handout-input';
import { inch, metric, openTop } from './printed-boxes';

const parsed = (html: string) => new DOMParser().parseFromString(html, 'text/html');

/** Set fractions as they are typed: `4½` is `4 1/2`. */
const asTyped = (text: string | null | undefined): string =>
  (text ?? '')
    .replace(/(\d)(?=[½⅓⅔¼¾⅛⅜⅝⅞⁰¹²³⁴⁵⁶⁷⁸⁹])/g, '$1 ')
    .normalize('NFKD')
    .replace(/⁄/g, '/');

/** Joining acts as the bench spells them; joints of one go have no order. */
const spelled = (ops: readonly BenchOp[]): readonly string[] =>
  ops
    .flatMap((op) => (op.op === 'stick' || op.op === 'glue' || op.op === 'close' ? [spellAct(op)] : []))
    .sort();

describe('the handout as a page', () => {
  it('is one file with every step and picture, and stays text whatever a maker typed', () => {
    const input = inputOf(openTop);
    const html = handoutPage({
      ...input,
      photos: [{ name: '"On" <it>', jpeg: '/9j/2Q==', widthPx: 64, heightPx: 48 }],
    });
    const page = parsed(html);
    expect(page.querySelector('h1')?.textContent).toBe('Seed <box>');
    expect(page.querySelectorAll('ol > li')).toHaveLength(input.cards[0]?.steps.length ?? 0);
    expect(page.querySelector('img')?.alt).toBe('"On" <it>');
    expect(page.querySelectorAll('script, link, iframe')).toHaveLength(0);
    const ids = [...page.querySelectorAll('[id]')].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const svg of page.querySelectorAll('svg')) {
      const names = (svg.getAttribute('aria-labelledby') ?? '').split(' ');
      expect(names.map((name) => page.getElementById(name)?.tagName)).toEqual(['title', 'desc']);
    }
  });

  it('warns of the blade at the first step that cuts, and once more below all steps', () => {
    const page = parsed(handoutPage(inputOf(openTop)));
    const said = [...page.querySelectorAll('p, li')].filter(
      ({ textContent, children }) => children.length === 0 && textContent.startsWith('Blade:'),
    );
    expect(said.map(({ tagName, className }) => `${tagName} ${className}`.trim())).toEqual(['P care', 'LI']);
    expect(page.querySelector('.care')?.closest('li')?.querySelector('h3')?.textContent).toMatch(/^Cut /);
  });

  it('lists what goes on, with its cut sizes, where it points to that list', () => {
    const { recipe, ...input } = inputOf(openTop);
    // 3 1/2 × 6 in at 25.4 mm an inch
    const size = { widthMm: 88.9, heightMm: 152.4 };
    const liner = { id: 'a', name: 'Blue liner', perBox: 1, grain: 'free', paperId: null, ...size } as const;
    const pieces = [{ kind: 'liner', ...liner } as const];
    const look = { id: 'autumn', name: 'Autumn', pieces };
    const page = parsed(handoutPage({ ...input, recipe: { ...recipe, dressings: [look] } }));
    const head = [...page.querySelectorAll('h2')].find((one) => one.textContent === 'Decorations: Autumn');
    const rows = [...(head?.nextElementSibling?.querySelectorAll('tr') ?? [])].map(({ cells }) =>
      [...cells].map(({ textContent }) => textContent),
    );
    expect(rows).toEqual([
      ['Decorations', 'Cut', 'Per box'],
      ['Blue liner', '3½ × 6 in', '1'],
    ]);
    expect(page.body.textContent).toContain('The list “Decorations: Autumn” says what goes on.');
  });

  // A reader who has only these words makes the same net: they are read back into a bench program.
  for (const ruler of [inch, metric])
    it.each(STYLES.map((style) => [style.id, style] as const))(
      `holds all of %s in ${ruler.unit}`,
      (_id, style) => {
        const input = inputOf(style, ruler);
        const page = parsed(handoutPage(input));
        const lists = [...page.querySelectorAll('main > ol')];
        expect(lists).toHaveLength(input.cards.length);
        for (const [index, { piece, program, tool, joins }] of input.cards.entries()) {
          const steps = [...(lists[index]?.querySelectorAll(':scope > li') ?? [])].map((step) => ({
            headline: asTyped(step.querySelector('h3')?.textContent),
            details: [...step.querySelectorAll('.detail')].map((line) => asTyped(line.textContent)),
            template: [...step.querySelectorAll('.point')].map((line) => asTyped(line.textContent)),
          }));
          const read = readCard(steps, {
            unit: ruler.unit,
            fence: 'left',
            tabEnd: tabEndOf(piece),
            labels: panelLabels(piece),
          });
          if (!read.ok) throw new Error(read.sentence);
          if (joins) expect(spelled(read.ops)).toEqual(spelled(program.ops));
          else expectMakes(read.ops, piece, tool);
        }
      },
    );
});
