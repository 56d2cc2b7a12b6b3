import type { BenchProgram, BenchTool, CardStep, StepKind } from '../../bench';
import { faceUpOf, sizeAsItLies } from '../../bench';
import type { PieceNet } from '../../net/types';
import { sizeWords } from '../strokes/length-text';
import { frameMarks } from '../strokes/marks';
import type { Drawing } from '../strokes/types';
import { drawClosingStep } from './closing-step';
import { drawFlatStep, type StepPicture } from './flat-step';
import { type StepState, stateOfStep } from './step-state';

/** A program and the tool it is for; `piece` is what it makes. */
export interface StepsToDraw {
  readonly piece: PieceNet;
  readonly program: BenchProgram;
  readonly tool: BenchTool;
}

export interface StepDrawingOptions {
  /** Paper millimeters for one millimeter of card. */
  readonly scale: number;
  /** Type size of the numbers, mm on paper. */
  readonly textMm: number;
  /** Only how the card lies and what is done to it: no numbers and no arrows, which the words have. */
  readonly plain?: boolean;
}

/**
 * One step of the card as a picture: the card as it lies, taken from the virtual bench, with fence, marks, cuts and turn; or, for folding
 * and closing, the flat net with the panels and glue that the step is about. Null if the bench cannot do the program.
 */
export function drawStep(steps: StepsToDraw, step: CardStep, options: StepDrawingOptions): Drawing | null {
  const state = stateOfStep(steps.program, step, steps.tool);
  return state && drawState(state, steps, step, options);
}

/** The same at the largest scale that fits a space on paper, numbers and all. */
export function drawStepToFit(
  steps: StepsToDraw,
  step: CardStep,
  space: { readonly widthMm: number; readonly heightMm: number },
  { textMm, plain = false }: Pick<StepDrawingOptions, 'textMm' | 'plain'>,
): Drawing | null {
  const state = stateOfStep(steps.program, step, steps.tool);
  if (!state) return null;
  // Numbers and arrows keep their size while the card shrinks, so a few rounds settle the scale.
  let scale = 1;
  let drawing = drawState(state, steps, step, { scale, textMm, plain });
  for (let round = 0; round < 24; round++) {
    const fit = Math.min(space.widthMm / drawing.widthMm, space.heightMm / drawing.heightMm);
    if (fit >= 1 && (fit < 1.02 || round > 5)) break;
    scale *= round > 5 ? Math.min(fit, 0.9) : fit;
    drawing = drawState(state, steps, step, { scale, textMm, plain });
  }
  // Where the numbers alone take more than the space, the words have to do.
  const isTooLarge = drawing.widthMm > space.widthMm * 1.001 || drawing.heightMm > space.heightMm * 1.001;
  return isTooLarge && !plain ? drawStepToFit(steps, step, space, { textMm, plain: true }) : drawing;
}

function drawState(
  state: StepState,
  { piece, program, tool }: StepsToDraw,
  step: CardStep,
  options: StepDrawingOptions,
): Drawing {
  const picture: StepPicture = { program, tool, step, ...options };
  const isFlat = FLAT.has(step.kind);
  const marks = isFlat ? drawFlatStep(state, picture) : drawClosingStep(piece, state, picture);
  const { across, up } = isFlat ? sizeAsItLies(piece.blank, step.lie) : piece.blank;
  const size = sizeWords(across, up, { unit: tool.unit, finest: tool.finestMark });
  const face = faceUpOf({ lie: step.lie, fence: tool.fence ?? 'left' });
  const description = `The piece ${size}, ${face} face up. ${step.headline}`;
  const { origin: _, ...drawing } = frameMarks(marks, step.headline, description);
  return drawing;
}

/** Steps done with the card flat on the bench. */
const FLAT: ReadonlySet<StepKind> = new Set<StepKind>(['blank', 'score', 'slit', 'cut']);
