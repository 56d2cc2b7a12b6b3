import type { BoxCard, CardStep } from '../core/bench';
import { drawFolded } from '../core/draw/folded-drawing';
import { drawStepToFit } from '../core/draw/step/step-drawing';
import type { Drawing } from '../core/draw/strokes/types';
import { TYPE_MM } from './print-document';

/** The room a step's picture has beside its words. */
export const STEP_PICTURE_MM = { widthMm: 62, heightMm: 46 } as const;
const FOLDED_MM = { widthMm: 62, heightMm: 36 } as const;

/** How far a closing act has got in its picture: far enough to see where it goes, not yet flat on what it covers. */
const UNDER_WAY = 0.65;

/** A step as a picture: on the flat card while it is worked, folding up while it is closed. Null for a flat step with nothing to show. */
export function stepPicture({ piece, program, tool, joins }: BoxCard, step: CardStep): Drawing | null {
  if (step.kind !== 'close' && !joins)
    return drawStepToFit({ piece, program, tool }, step, STEP_PICTURE_MM, TYPE_MM.number);
  const isClosing = (op: string) => op === 'close' || op === 'glue';
  const acts = program.ops.slice(0, step.ops.from).filter(({ op }) => isClosing(op)).length;
  return drawFolded(piece, { acts, part: UNDER_WAY, from: 'bench', space: FOLDED_MM });
}
