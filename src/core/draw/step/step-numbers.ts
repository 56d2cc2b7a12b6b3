import type { BenchOp, BenchTool } from '../../bench';
import type { Blank } from '../../net/types';
import type { At } from '../../plane';
import type { Ruler } from '../../units';
import { type Ticks, ticks, toMm } from '../../units/ticks';
import { drawDimension } from '../strokes/dimension';
import { lengthWords, sizeWords } from '../strokes/length-text';
import { boxOfMarks } from '../strokes/marks';
import { marksAbove, marksAboveFromRight } from '../strokes/running-marks';
import type { Mark } from '../strokes/types';
import type { StepPicture } from './flat-step';

type CornerOp = Extract<BenchOp, { op: 'corner' }>;

/** The numbers a step is set by: from the fence above the card, off the near edge beside it, and the sizes of what is cut. */
export function drawStepNumbers(
  acts: readonly BenchOp[],
  size: Blank,
  card: At,
  { tool, scale, textMm, step }: StepPicture,
): Mark[] {
  const ruler = { unit: tool.unit, finest: tool.finestMark };
  const measured = (from: At, to: At, out: At, length: Ticks): Mark[] =>
    drawDimension(from, to, out, lengthWords(length, ruler), 0.8 * textMm);
  const [across, up] = card;
  const farSide = tool.fence === 'right' ? 0 : across;
  const outwards: At = tool.fence === 'right' ? [-1, 0] : [1, 0];

  const places = unique(acts.flatMap((op) => (op.op === 'score' || op.op === 'slit' ? [op.at] : [])));
  const marks = places.map((distance) => ({ distance, key: step.id, leading: true }));
  const style = { ruler, textMm, otherUnit: false };
  const fromFence =
    places.length === 0
      ? []
      : tool.fence === 'right'
        ? marksAboveFromRight(marks, [across, up], across, scale, style)
        : marksAbove(marks, [0, up], across, scale, style);

  const spans = acts.flatMap((op) =>
    op.op === 'slit' ? [op] : op.op === 'score' && op.span ? [op.span] : [],
  );
  const ends = unique(spans.flatMap(({ from, to }) => (from > 0 ? [from, to] : [to])));
  // Each stands outside of the one before it.
  let side = farSide;
  const offNear = ends.flatMap((end) => {
    const marks = measured([side, 0], [side, toMm(end) * scale], outwards, end);
    const { left, right } = boxOfMarks(marks);
    side = tool.fence === 'right' ? left - CLEAR_MM : right + CLEAR_MM;
    return marks;
  });

  const blank = acts.flatMap((op) =>
    op.op === 'blank'
      ? [...measured([0, up], card, [0, 1], size.across), ...measured([across, 0], card, [1, 0], size.up)]
      : [],
  );
  const corners = oneOfEachSize(acts, ruler).flatMap((op) => {
    const at = cornerPlace(op, card, tool);
    const [wide, high] = [toMm(op.across) * scale, toMm(op.up) * scale];
    const inwards: At = [at[0] === 0 ? 1 : -1, at[1] === 0 ? 1 : -1];
    return [
      ...measured(at, [at[0] + inwards[0] * wide, at[1]], [0, -inwards[1]], op.across),
      ...measured(at, [at[0], at[1] + inwards[1] * high], [-inwards[0], 0], op.up),
    ];
  });
  return [...fromFence, ...offNear, ...blank, ...corners];
}

const CLEAR_MM = 1; // between two numbers off the near edge, mm on paper

const unique = (lengths: readonly Ticks[]): readonly Ticks[] =>
  [...new Set(lengths)].sort((a, b) => a - b).map(ticks);

/** Corners whose sizes read alike are measured once. */
const oneOfEachSize = (acts: readonly BenchOp[], ruler: Ruler): readonly CornerOp[] => {
  const corners = acts.filter((op): op is CornerOp => op.op === 'corner');
  const said = corners.map(({ across, up }) => sizeWords(across, up, ruler));
  return corners.filter((_, i) => said.indexOf(said[i] ?? '') === i);
};

/** A corner of the card on paper; with the fence on the right, measured left is seen right. */
function cornerPlace({ corner }: CornerOp, [across, up]: At, { fence = 'left' }: BenchTool): At {
  const seenLeft = corner.endsWith('left') === (fence === 'left');
  return [seenLeft ? 0 : across, corner.startsWith('near') ? 0 : up];
}
