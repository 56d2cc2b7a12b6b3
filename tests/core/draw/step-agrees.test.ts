import { describe, expect, it } from 'vitest';
import { type BenchOp, boxCards, type CardStep, sizeAsItLies } from '../../../src/core/bench';
import { pictureOfStep } from '../../../src/core/draw/step/step-picture';
import type { Drawing, Mark } from '../../../src/core/draw/strokes/types';
import { layNet } from '../../../src/core/net';
import { STYLES } from '../../../src/core/styles';
import { trimmer } from '../bench/bench-tools';

/**
 * The picture of a step against the act of the program, read off its marks alone: on which side the fence stands, which way the card was turned,
 * and where each straight score and slit lies as a share of the card's width.
 */
const HANDS = { right: trimmer, left: { ...trimmer, fence: 'right' as const } };
const FLAT = new Set<CardStep['kind']>(['score', 'slit', 'cut']);
const SPACE = { widthMm: 500, heightMm: 400 };

const textsOf = ({ marks }: Drawing) => marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []));
const extent = (values: readonly number[]) => ({ least: Math.min(...values), most: Math.max(...values) });
const paperOf = ({ marks }: Drawing) =>
  extent(
    marks.flatMap((mark) =>
      mark.kind === 'area' && (mark.ink === 'paper' || mark.ink === 'waste') ? mark.ring.map(([x]) => x) : [],
    ),
  );

/** Upright strokes of an ink, by their distance from an edge, in thousandths of the card's width. */
const uprights = (marks: readonly Mark[], inks: readonly string[]) =>
  marks.flatMap((mark) => {
    if (mark.kind !== 'line' || !inks.includes(mark.ink)) return [];
    const [first] = mark.points;
    return first && mark.points.every(([x]) => Math.abs(x - first[0]) < 1e-6) ? [first[0]] : [];
  });

const degreesOf = (op: BenchOp, hand: 'right' | 'left'): number[] => {
  if (op.op === 'flip') return [-180];
  if (op.op !== 'turn') return [];
  const left = op.quarters === 3 ? -90 : op.quarters * 90;
  return [hand === 'right' ? left : -left];
};

describe.each(['right', 'left'] as const)('pictures for a %s-handed maker', (hand) => {
  it.each(STYLES.map((style) => [style.id, style] as const))(
    '%s: fence, turn and lines are the program’s',
    (_, style) => {
      const net = layNet(style, { sizes: {}, caliperUm: 300 });
      let seen = 0;
      // The pictures of page and run sheet, and the plain ones of the card.
      for (const plain of [false, true])
        for (const faceUp of ['inside', 'outside'] as const)
          for (const card of boxCards(net, HANDS[hand], { faceUp }))
            for (const step of card.steps.filter(({ kind }) => FLAT.has(kind))) {
              const picture = pictureOfStep(card, step, SPACE, { textMm: 3, plain });
              if (!picture) throw new Error(`${step.id} has no picture`);
              const ops = card.program.ops.slice(step.ops.from, step.ops.to);
              const atFence = ops.flatMap((op) => (op.op === 'score' || op.op === 'slit' ? [op] : []));
              const paper = paperOf(picture);
              const fences = textsOf(picture).filter(({ text }) => text === 'fence');
              expect(fences.length, step.headline).toBe(atFence.length > 0 ? 1 : 0);
              for (const { at } of fences)
                if (hand === 'right') expect(at[0]).toBeLessThan(paper.least);
                else expect(at[0]).toBeGreaterThan(paper.most);

              const turns = picture.marks.flatMap((mark) =>
                mark.kind === 'arc' && mark.ink === 'move' ? [mark.sweepDeg] : [],
              );
              // The words of the card have the turns.
              expect(turns, step.headline).toEqual(plain ? [] : ops.flatMap((op) => degreesOf(op, hand)));

              const wide = sizeAsItLies(card.piece.blank, step.lie).across;
              const drawn = uprights(picture.marks, ['score-mountain', 'score-valley', 'slit']).map((x) =>
                Math.round(
                  (1000 * (hand === 'right' ? x - paper.least : paper.most - x)) / (paper.most - paper.least),
                ),
              );
              for (const { at } of atFence) {
                expect(
                  drawn.some((place) => Math.abs(place - (1000 * at) / wide) <= 1),
                  `${step.headline} at ${at}`,
                ).toBe(true);
                seen++;
              }
            }
      if (style.id === 'open-top') expect(seen).toBeGreaterThan(10);
    },
  );
});
