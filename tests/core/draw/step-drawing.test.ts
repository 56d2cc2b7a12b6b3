import { describe, expect, test } from 'vitest';
import { type BenchTool, type CardStep, cardSteps, deriveProgram } from '../../../src/core/bench';
import { drawStep, drawStepToFit, type StepsToDraw } from '../../../src/core/draw/step/step-drawing';
import type { Drawing, Mark } from '../../../src/core/draw/strokes/types';
import { type BoxNet, layNet } from '../../../src/core/net';
import type { At } from '../../../src/core/plane';
import { type BoxStyle, STYLES, styleById } from '../../../src/core/styles';
import { inches } from '../../../src/core/units';
import { board, metricTrimmer, trimmer } from '../bench/bench-tools';

interface Card extends StepsToDraw {
  readonly steps: readonly CardStep[];
}

function cardsOf(
  box: BoxNet,
  tool: BenchTool = trimmer,
  faceUp: 'inside' | 'outside' = 'inside',
): readonly Card[] {
  return box.pieces.map((piece) => {
    const program = deriveProgram(piece, tool, { faceUp });
    return { piece, program, tool, steps: cardSteps(program, piece, box, tool) };
  });
}

const boxOf = (id: string): BoxNet =>
  layNet(styleById(id) as BoxStyle, { sizes: { flap: inches(1, 1, 2) }, caliperUm: 300 });

function picture(id: string, step: string, tool = trimmer, faceUp: 'inside' | 'outside' = 'inside'): Drawing {
  const [card] = cardsOf(boxOf(id), tool, faceUp);
  const found = card?.steps.find((one) => one.id === step);
  const drawing = card && found && drawStep(card, found, { scale: 1, textMm: 4 });
  if (!drawing) throw new Error(`no picture of ${step}`);
  return drawing;
}

const inkOf = (drawing: Drawing, ink: string): readonly Mark[] =>
  drawing.marks.filter((mark) => mark.kind !== 'text' && mark.ink === ink);
const texts = (drawing: Drawing) => drawing.marks.filter((mark) => mark.kind === 'text');
const xs = (marks: readonly Mark[]): readonly number[] =>
  marks.flatMap((mark) => (mark.kind === 'line' ? mark.points.map(([x]) => x) : []));

/** Area of a ring in mm² by the shoelace formula. */
const areaOf = (ring: readonly At[]): number =>
  Math.abs(
    ring.reduce((sum, [x, y], i) => {
      const [nextX, nextY] = ring[(i + 1) % ring.length] ?? [x, y];
      return sum + x * nextY - nextX * y;
    }, 0) / 2,
  );

describe('the trade box, step by step', () => {
  test('scores stand at their distances from the fence, with their numbers above', () => {
    const drawing = picture('open-top', 'score-1');
    const fence = texts(drawing).find((mark) => mark.text === 'fence');
    expect(fence).toBeDefined();
    const edges = xs(inkOf(drawing, 'edge'));
    const left = Math.min(...edges);
    // 3 1/2, 5, 8 1/2 and 10 in, at 25.4 mm each, true size.
    const scores = [...new Set(xs(inkOf(drawing, 'score-valley')).map((x) => (x - left).toFixed(3)))];
    expect(scores).toEqual(['88.900', '127.000', '215.900', '254.000']);
    expect(texts(drawing).map((mark) => mark.text)).toEqual(
      expect.arrayContaining(['0', '3½', '5', '8½', '10']),
    );
  });

  test('turning is shown by an arrow the way hands turn it', () => {
    const sweep = (step: string, tool = trimmer): number[] =>
      inkOf(picture('open-top', step, tool), 'move').flatMap((mark) =>
        mark.kind === 'arc' ? [mark.sweepDeg] : [],
      );
    expect(sweep('score-1')).toEqual([]);
    expect(sweep('score-2')).toEqual([90]);
    expect(sweep('slit-1')).toEqual([-90]);
    expect(sweep('score-2', { ...trimmer, fence: 'right' })).toEqual([90]);
  });

  test('the tab’s foot is hatched: 1 × 1 9/16 in falls away, and two corners 1 × 5/16', () => {
    const waste = inkOf(picture('open-top', 'cut-1'), 'waste');
    const areas = waste.map((mark) => (mark.kind === 'area' ? areaOf(mark.ring) / 25.4 ** 2 : 0));
    for (const [at, area] of [1.5625, 0.15625, 0.15625].entries()) expect(areas[at]).toBeCloseTo(area, 6);
    expect(areas).toHaveLength(3);
  });

  test('slits run up from the near edge to the cross score', () => {
    const slits = inkOf(picture('open-top', 'slit-1'), 'slit').flatMap((mark) =>
      mark.kind === 'line' ? [Math.abs((mark.points[1]?.[1] ?? 0) - (mark.points[0]?.[1] ?? 0))] : [],
    );
    expect(slits.map((length) => length.toFixed(3))).toEqual(['38.100', '38.100', '38.100']);
  });

  test('glue is hatched on the tab, on the face below since it ends up inside', () => {
    const drawing = picture('open-top', 'glue-1');
    const [glue] = inkOf(drawing, 'glue-below');
    expect(glue?.kind === 'area' && areaOf(glue.ring)).toBeCloseTo(25.4 ** 2 * (2.9375 - 0.3125), 6);
  });
});

describe('the other face, the other hand', () => {
  const placesFromLeft = (drawing: Drawing, ink: string): readonly string[] => {
    const left = Math.min(...xs(inkOf(drawing, 'edge')));
    return [...new Set(xs(inkOf(drawing, ink)).map((x) => (x - left).toFixed(1)))].sort(
      (a, b) => Number(a) - Number(b),
    );
  };

  test('outside up the card is mirrored, and the same scores are mountains', () => {
    // Measured from the edge opposite the tab all the same: 3 1/2, 5, 8 1/2 and 10 in.
    expect(placesFromLeft(picture('open-top', 'score-1', trimmer, 'outside'), 'score-mountain')).toEqual([
      '88.9',
      '127.0',
      '215.9',
      '254.0',
    ]);
  });

  test('with the fence on the right the card is turned, so that the tab lies away from the fence again', () => {
    const drawing = picture('open-top', 'score-1', { ...trimmer, fence: 'right' });
    // 11 − 10, 11 − 8 1/2, 11 − 5 and 11 − 3 1/2 in from the left, which are 10, 8 1/2, 5 and 3 1/2 from the fence.
    expect(placesFromLeft(drawing, 'score-valley')).toEqual(['25.4', '63.5', '152.4', '190.5']);
    const zero = texts(drawing).find((mark) => mark.text === '0');
    expect(zero?.at[0]).toBeGreaterThan(Math.max(...xs(inkOf(drawing, 'score-valley'))));
  });
});

describe('every step of every style', () => {
  const tools = [trimmer, board, metricTrimmer, { ...trimmer, fence: 'right' as const }];
  test.each(STYLES.map((style) => [style.name, style] as const))(
    '%s has a picture that fits its space',
    (_, style) => {
      const space = { widthMm: 90, heightMm: 60 };
      for (const tool of tools)
        for (const card of cardsOf(layNet(style, { sizes: {}, caliperUm: 300 }), tool))
          for (const step of card.steps) {
            const drawing = drawStepToFit(card, step, space, { textMm: 4 });
            expect(drawing, step.headline).not.toBeNull();
            expect(drawing?.widthMm).toBeLessThanOrEqual(space.widthMm + 1e-6);
            expect(drawing?.heightMm).toBeLessThanOrEqual(space.heightMm + 1e-6);
            expect(drawing?.description).toContain(step.headline);
          }
    },
  );

  test('a program the bench cannot do has no picture', () => {
    const [card] = cardsOf(boxOf('open-top'));
    const step = card?.steps.at(-1);
    if (!card || !step) throw new Error('no card');
    const broken = { ...card, program: { ...card.program, ops: card.program.ops.slice(1) } };
    expect(drawStep(broken, step, { scale: 1, textMm: 4 })).toBeNull();
  });
});
