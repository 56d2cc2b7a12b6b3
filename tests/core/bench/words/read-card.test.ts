import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type BenchTool, cardSteps, deriveProgram, panelLabels } from '../../../../src/core/bench';
import { type BoxNet, layNet, type PieceNet } from '../../../../src/core/net';
import { tabEndOf } from '../../../../src/core/net/tab-end';
import { type BoxStyle, STYLES } from '../../../../src/core/styles';
import type { Ticks } from '../../../../src/core/units';
import { SEED } from '../../../seed';
import { board, metricTrimmer, trimmer } from '../bench-tools';
import { readCard } from '../card-reader/read-card';
import { expectMakes } from '../expect-makes';
import { notched, pierced, slanted } from '../hand-laid-nets';
import { randomBox } from '../random-boxes';

interface Case {
  readonly name: string;
  readonly tool: BenchTool;
  readonly faceUp: 'inside' | 'outside';
  /** The marks the box was sized on, where they are not the tool's. */
  readonly mark?: Ticks;
}

function expectSame(piece: PieceNet, box: BoxNet, tool: BenchTool, faceUp: 'inside' | 'outside'): void {
  const steps = cardSteps(deriveProgram(piece, tool, { faceUp }), piece, box, tool);
  const read = readCard(steps, {
    unit: tool.unit,
    fence: tool.fence ?? 'left',
    tabEnd: tabEndOf(piece),
    labels: panelLabels(piece),
  });
  if (!read.ok) expect(read.sentence).toBeUndefined();
  else expectMakes(read.ops, piece, tool);
}

describe('the printed words alone make the box', () => {
  const cards: readonly Case[] = [
    { name: 'in inches', tool: trimmer, faceUp: 'inside' },
    { name: 'in millimetres', tool: metricTrimmer, faceUp: 'inside' },
    {
      name: 'in millimetres, outside up, fence on the right',
      tool: { ...metricTrimmer, fence: 'right' },
      faceUp: 'outside',
    },
    { name: 'in inches on a grooved board, outside up', tool: board, faceUp: 'outside' },
    {
      name: 'an inch box on a metric trimmer',
      tool: metricTrimmer,
      faceUp: 'inside',
      mark: trimmer.finestMark,
    },
    { name: 'in inches, fence on the right', tool: { ...trimmer, fence: 'right' }, faceUp: 'inside' },
  ];
  for (const style of STYLES)
    test.each(cards)(
      `${style.name}, $name`,
      ({ tool, faceUp, mark = tool.finestMark }) => {
        fc.assert(
          fc.property(randomBox(style, mark), (box) => {
            for (const piece of box.pieces) expectSame(piece, box, tool, faceUp);
          }),
          { seed: SEED, numRuns: 12 },
        );
      },
      60_000,
    );

  test.each([
    ['windows, a slot and a slit that no edge opens', pierced],
    ['notches, tapers and a slit on the slant', notched],
    ['a mountain fold on the slant', slanted],
  ])('%s', (_, piece) => {
    const box = layNet(STYLES[0] as BoxStyle, { sizes: {}, caliperUm: 300 });
    for (const { tool, faceUp } of cards) expectSame(piece, box, tool, faceUp);
  });

  test('a card that says nothing known is refused, with the sentence', () => {
    const key = { unit: 'in', fence: 'left', tabEnd: null, labels: new Map() } as const;
    const card = (headline: string, details: string[] = [], template: string[] = []) =>
      readCard([{ headline, details, template }], key);
    expect(card('Cut 11 × 4 1/2 in. Wish it luck.')).toEqual({
      ok: false,
      sentence: 'Wish it luck.',
    });
    expect(card('Score at 3 1/0 in.')).toMatchObject({ ok: false });
    expect(card('', ['Cut 3, from here to there.'])).toMatchObject({ ok: false });
    expect(card('Press the tab to the inside of the moon.')).toMatchObject({ ok: false });
    expect(card('Cut 11 × 4 1/2 in. Snip from 1 × 0 to 0 × 1; the same on the moon.')).toMatchObject({
      ok: false,
    });
    expect(card('', [], ['Curve 1 runs through 3 by 4 mm.'])).toMatchObject({ ok: false });
  });
});
