import type { BoxCard, CardStep } from '../../bench';
import type { PieceNet } from '../../net/types';
import { drawFolded, type PictureSpace } from '../folded-drawing';
import type { Drawing } from '../strokes/types';
import { drawStepToFit, type StepDrawingOptions } from './step-drawing';

/** How far a closing act has got in its picture: far enough to see where it goes, not yet flat on what it covers. */
const UNDER_WAY = 0.65;

/**
 * A step as a picture: the card as it lies against the fence while it is flat, folding up while it is closed, adhesive
 * hatched. Where one step folds several
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
  const from = closesTop(piece, acts) ? 'standing' : 'bench';
  const glue = program.ops
    .slice(step.ops.from, step.ops.to)
    .flatMap((op) => (op.op === 'stick' ? [{ panel: op.panel, face: op.face }] : []));
  return drawFolded(piece, { acts, part: isClosing ? UNDER_WAY : 0, from, space, glue });
}

/** Leaves that close the top last are out of sight from the bench: the box stands by then. */
const closesTop = ({ closing, faces }: PieceNet, act: number): boolean => {
  const last = closing[act];
  if (last === undefined || last.do !== 'fold' || act < closing.length - 1 || last.through === undefined)
    return false;
  return last.panels.every((panel) => faces.find((face) => face.panel === panel)?.role === 'lid');
};
