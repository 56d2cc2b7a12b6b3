import type { BoxCard, CardStep } from '../../bench';
import { drawFolded, type PictureSpace } from '../folded-drawing';
import type { Drawing } from '../strokes/types';
import { drawStepToFit, type StepDrawingOptions } from './step-drawing';

/** How far a closing act has got in its picture: far enough to see where it goes, not yet flat on what it covers. */
const UNDER_WAY = 0.65;

/**
 * A step as a picture: the card as it lies against the fence while it is flat, folding up while it is closed. Where one step folds several
 * times, the last of them. Null where the bench cannot do the program.
 */
export function pictureOfStep(
  { piece, program, tool, joins }: BoxCard,
  step: CardStep,
  space: PictureSpace,
  options: Pick<StepDrawingOptions, 'textMm' | 'plain'>,
): Drawing | null {
  const fold = program.ops.slice(0, step.ops.to).findLastIndex(({ op }) => op === 'close');
  const isClosing = fold >= step.ops.from;
  if (!isClosing && !joins) return drawStepToFit({ piece, program, tool }, step, space, options);
  const before = program.ops.slice(0, isClosing ? fold : step.ops.from);
  const acts = before.filter(({ op }) => op === 'close' || op === 'glue').length;
  return drawFolded(piece, { acts, part: isClosing ? UNDER_WAY : 0, from: 'bench', space });
}
