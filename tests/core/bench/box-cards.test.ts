import { describe, expect, it } from 'vitest';
import { boxCards } from '../../../src/core/bench';
import { layNet } from '../../../src/core/net';
import { boxBeside } from '../../../src/core/plan';
import { countBoxActs } from '../../../src/core/plan/run/hand-acts';
import { planGlue } from '../../../src/core/plan/supplies/plan-supplies';
import { STYLES, styleById } from '../../../src/core/styles';
import { readFixture, sizingOf } from '../../styles/fixture';
import { trimmer } from './bench-tools';

/** 3 1/2 × 1 1/2 × 3 in with 1 in tabs and bottom flaps of 1 1/2 in. */
const [trade] = readFixture('two-part-box').cases;
const halves = layNet(styleById('two-part-box') ?? expect.fail(), sizingOf(trade ?? expect.fail()));

describe('the cards of a box', () => {
  it('are one for each piece, and one more only where pieces are glued to one another', () => {
    for (const style of STYLES) {
      const box = layNet(style, { sizes: {}, caliperUm: 300 });
      const cards = boxCards(box, trimmer);
      expect(cards.filter(({ joins }) => !joins).map(({ piece }) => piece)).toEqual(box.pieces);
      expect(cards.filter(({ joins }) => joins).map(({ piece }) => piece)).toEqual(
        box.whole === undefined ? [] : [box.whole],
      );
    }
  });

  it('two halves: first one seam, then the other, then the bottom, each as a step with words', () => {
    const joined = boxCards(halves, trimmer).at(-1) ?? expect.fail();
    const glued = joined.program.ops.flatMap((op) => (op.op === 'glue' ? [`${op.panel} ${op.onto}`] : []));
    expect(glued.slice(0, 2)).toEqual(['frontTab back', 'backTab front']);
    expect(glued.slice(2)).not.toEqual([]);
    const said = joined.steps.flatMap(({ ops }) => joined.program.ops.slice(ops.from, ops.to));
    expect(said).toEqual(joined.program.ops);
    expect(joined.steps[0]?.headline).toMatch(/front tab.*back wall/is);
    for (const { headline } of joined.steps) expect(headline).not.toBe('');
  });

  it('joining counts: both seams and the bottom are glued in grams and in acts, and the box holds what it holds', () => {
    const glue = {
      id: 'glue',
      name: 'Glue',
      kind: 'glue',
      gramsPerSquareMetre: 1_000_000,
      bottleGrams: 1000,
    } as unknown as Parameters<typeof planGlue>[1];
    const line = { net: halves, making: 1 } as unknown as Parameters<typeof planGlue>[0][number];
    // Two seams of 1 × 3 in are 6 in², which at a gram on the square millimetre are 3,870.96 g; the bottom comes on top.
    expect(planGlue([line], glue).grams).toBeGreaterThan(6 * 25.4 ** 2);
    // Two seams, the front flap on both side flaps, the back flap on the front one.
    const acts = countBoxActs({ net: halves, dressing: null, pieces: [] }, trimmer, [], () => false);
    expect(acts).toMatchObject({ 'close-bottom': 1, glue: 5 });
    // 3 1/2 × 1 1/2 × 3 in
    const held = boxBeside(halves, trimmer, {} as never, null).roomMm3;
    expect((held ?? 0) / 25.4 ** 3).toBeCloseTo(15.75, 6);
  });
});
