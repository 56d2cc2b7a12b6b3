import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readWorkbook } from '../../shared/read-workbook';
import { boxCards } from '../../src/core/bench';
import { benchToolOf, netOfRecipe, planEvent } from '../../src/core/plan';
import { inches, USUAL_FINEST } from '../../src/core/units';
import { printBenchCard, printDecorateMap, printKitLabels } from '../../src/print';
import type { PrintDocument } from '../../src/print/print-document';

const reading = readWorkbook(readFileSync('demo-data/lantern-evening.json', 'utf8'));
if (!reading.ok) throw new Error('the demo is refused');
const { file } = reading;
const [recipe] = file.recipes;
const net = netOfRecipe(recipe!)!;
const ruler = { unit: 'in', finest: USUAL_FINEST.in } as const;
const shared = {
  recipeName: 'Toffee box',
  grain: null,
  ruler,
  paper: 'letter',
  stamp: { madeAt: '2027-01-01T00:00:00Z', code: 'toffee' },
} as const;
const textsOf = ({ pages }: PrintDocument): string[] =>
  pages.flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])));

describe('the dressing on paper', () => {
  it('gives every piece, ribbon and counted thing a line on the card', () => {
    const cards = boxCards(net, benchToolOf(undefined)).map((card) => ({ ...card, steps: [] }));
    const texts = textsOf(
      printBenchCard({
        ...shared,
        faceUp: 'inside',
        styleName: 'Open-top box',
        inside: net.inside,
        cards,
        notes: '',
        dressed: { net, dressings: recipe!.dressings, mark: inches(0, 1, 16) },
      }),
    );
    for (const { pieces, ties = [], counted = [] } of recipe!.dressings)
      for (const { name } of [...pieces, ...ties, ...counted])
        expect(texts.some((text) => text.startsWith(name))).toBe(true);
    // 22 in round, 8 calipers of .012, and 14 1/2 for the bow (common practice): 36.596 in
    expect(texts).toContain('Front layer, 3¼ × 2¾ in');
    expect(texts).toContain('Ribbon both ways, 36⅝ in');
    // Each look with its own steps below its own list.
    const [autumn, liner, plain] = [
      'Decorations: Autumn',
      '1. Slide Tall liner in behind',
      'Decorations: Plain',
    ].map((start) => texts.findIndex((text) => text.startsWith(start)));
    expect(autumn).toBeGreaterThan(0);
    expect(liner).toBeGreaterThan(autumn!);
    expect(plain).toBeGreaterThan(liner!);
  });

  it('prints the map outside up at true size, the front with its layer within it', () => {
    const map = printDecorateMap({ ...shared, pieces: net.pieces });
    expect(textsOf(map)).toEqual(expect.arrayContaining(['front', 'seam', 'leave plain']));
    expect(textsOf(map).some((text) => text.endsWith('outside face up'))).toBe(true);
  });

  it('prints a label for each of twelve kits and two spare ones, with what it holds', () => {
    const plan = planEvent(file, 'folding-class')!;
    const texts = textsOf(printKitLabels({ ...shared, plan, kit: plan.kit! }));
    expect(texts.filter((text) => /^Kit \d+ of 14/.test(text))).toHaveLength(14);
    expect(texts.filter((text) => text.endsWith(', spare'))).toHaveLength(2);
    // Two boxes to a kit, fourteen kits.
    expect(texts).toContain('28');
  });
});
