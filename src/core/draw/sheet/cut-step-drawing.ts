import { type At, type Box, boxRing } from '../../plane';
import type { Ruler } from '../../units';
import { toMm } from '../../units/ticks';
import type { CutPiece, CutSequence, CutStep, SheetPaper } from '../../yield';
import { drawDimension } from '../strokes/dimension';
import { lengthText, lengthWords, sizeWords } from '../strokes/length-text';
import { areaMark, centredText, frameMarks, lineMark } from '../strokes/marks';
import { fitsInside, stackText } from '../strokes/text-stack';
import type { Mark } from '../strokes/types';
import type { LayoutDrawing, NamedPart } from './sheet-drawing';

export interface CutStepOptions {
  readonly parts: readonly NamedPart[];
  readonly ruler: Ruler;
  readonly textMm: number;
}

type Lying = Pick<CutPiece, 'x' | 'y' | 'across' | 'up'>;
const FENCE_MM = 2.2; // how deep the fence is drawn, mm on paper

/** Every piece that lies on the bench before a step, the one in hand last. */
function benchBefore({ steps }: CutSequence, at: number, paper: SheetPaper): readonly CutPiece[] {
  const first = steps[0];
  if (first === undefined) return [];
  const whole = { x: 0, y: 0, across: paper.across, up: paper.up } as Lying;
  const bench = new Map<string, CutPiece>([[first.piece.name, { ...first.piece, ...whole }]]);
  for (const { piece, keep, other } of steps.slice(0, at)) {
    bench.delete(piece.name);
    bench.set(keep.name, keep);
    bench.set(other.name, other);
  }
  const inHand = steps[at]?.piece.name;
  return [...bench.values()].sort((a, b) => Number(a.name === inHand) - Number(b.name === inHand));
}

/** One cut of a sequence: what lies on the bench, the piece in hand with the fence along its kept edge, the cut, and what comes off. */
export function drawCutStep(
  sequence: CutSequence,
  at: number,
  paper: SheetPaper,
  space: { readonly widthMm: number; readonly heightMm: number },
  options: CutStepOptions,
): LayoutDrawing {
  const step = sequence.steps[at];
  const left = 8 + 4 * options.textMm; // the setting of a level cut
  const below = 8 + 1.5 * options.textMm; // the setting of an upright cut
  const scale = Math.max(
    0.01,
    Math.min(
      (space.widthMm - left - 2 * FENCE_MM) / toMm(paper.across),
      (space.heightMm - below - 2 * FENCE_MM) / toMm(paper.up),
    ),
  );
  const box = ({ x, y, across, up }: Lying): Box => {
    const [left, bottom] = [toMm(x) * scale, toMm(y) * scale];
    return { left, bottom, right: left + toMm(across) * scale, top: bottom + toMm(up) * scale };
  };
  const whole = boxRing(box({ x: 0, y: 0, across: paper.across, up: paper.up } as Lying));
  const marks: Mark[] = [areaMark('guide', whole)];
  if (step === undefined) return { ...frameMarks(marks, 'Sheet', 'An uncut sheet.'), scale };
  for (const piece of benchBefore(sequence, at, paper))
    if (piece.name !== step.piece.name) marks.push(...drawPiece(piece, box(piece), options));
  marks.push(areaMark('paper', boxRing(box(step.piece))), areaMark('edge', boxRing(box(step.piece))));
  if (step.other.is === 'offcut') marks.push(areaMark(step.why === 'square' ? 'waste' : 'offcut', boxRing(shrink(box(step.other))))); // biome-ignore format: one row
  for (const half of [step.keep, step.other]) marks.push(...labelPiece(half, box(half), options));
  marks.push(...drawFence(step, box(step.piece), box(step.keep), options));
  const framed = frameMarks(
    marks,
    `The cut at ${lengthWords(step.fence, options.ruler)}`,
    sentenceOf(step, options),
  );
  return { ...framed, scale };
}

const shrink = ({ left, bottom, right, top }: Box): Box => {
  const by = Math.min(0.8, (right - left) / 4, (top - bottom) / 4);
  return { left: left + by, bottom: bottom + by, right: right - by, top: top - by };
};

function drawPiece(piece: CutPiece, box: Box, options: CutStepOptions): Mark[] {
  if (piece.is === 'offcut') return [areaMark('offcut', boxRing(shrink(box)))];
  return [areaMark('paper', boxRing(box)), areaMark(piece.is === 'part' ? 'part' : 'guide', boxRing(box)), ...labelPiece(piece, box, options)]; // biome-ignore format: one row
}

function labelPiece(piece: CutPiece, box: Box, { parts, textMm }: CutStepOptions): Mark[] {
  const middle: At = [(box.left + box.right) / 2, (box.bottom + box.top) / 2];
  const mark = parts.find(({ id }) => id === piece.part)?.mark;
  if (mark !== undefined) return [centredText(mark, middle, textMm, { bold: true })];
  const words = piece.is === 'offcut' ? 'offcut' : 'cut again';
  const label = stackText([{ text: words, sizeMm: textMm }], middle);
  return label.every((text) => fitsInside(text, [boxRing(box)], 0.8)) ? label : [];
}

/** The fence along the kept edge, its setting in words, and the cut. */
function drawFence(
  { way, fence }: CutStep,
  piece: Box,
  keep: Box,
  { ruler, textMm }: CutStepOptions,
): Mark[] {
  const words = `${lengthText(fence, ruler).number} ${ruler.unit}`;
  if (way === 'upright') {
    const first = keep.left <= piece.left;
    const at = first ? keep.right : keep.left;
    const edge = first ? keep.left - FENCE_MM : keep.right;
    return [
      areaMark(
        'shade',
        boxRing({ left: edge, right: edge + FENCE_MM, bottom: piece.bottom, top: piece.top }),
      ),
      lineMark('cut', [[at, piece.bottom], [at, piece.top]]), // biome-ignore format: one stroke
      ...drawDimension([keep.left, piece.bottom], [keep.right, piece.bottom], [0, -1], words, textMm),
    ];
  }
  const first = keep.bottom <= piece.bottom;
  const at = first ? keep.top : keep.bottom;
  const edge = first ? keep.bottom - FENCE_MM : keep.top;
  return [
    areaMark('shade', boxRing({ left: piece.left, right: piece.right, bottom: edge, top: edge + FENCE_MM })),
    lineMark('cut', [[piece.left, at], [piece.right, at]]), // biome-ignore format: one stroke
    ...drawDimension([piece.left, keep.bottom], [piece.left, keep.top], [-1, 0], words, textMm),
  ];
}

function sentenceOf({ piece, way, fence, keep, other }: CutStep, { parts, ruler }: CutStepOptions): string {
  const name = (half: CutPiece) =>
    parts.find(({ id }) => id === half.part)?.name ?? (half.is === 'offcut' ? 'an offcut' : 'a piece to cut again'); // biome-ignore format: one row
  return `A piece ${sizeWords(piece.across, piece.up, ruler)} is cut ${way === 'upright' ? 'upright' : 'across'} with the fence at ${lengthWords(fence, ruler)}, into ${name(keep)} and ${name(other)}.`;
}
