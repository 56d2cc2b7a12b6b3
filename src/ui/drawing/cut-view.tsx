import { useCallback } from 'react';
import { drawCutStep } from '../../core/draw/sheet/cut-step-drawing';
import type { NamedPart } from '../../core/draw/sheet/sheet-drawing';
import type { CutSequence, SheetPaper } from '../../core/yield';
import { useRuler } from '../fields/measure';
import { DrawingView, type Space } from './drawing-view';

interface CutViewProps {
  readonly sequence: CutSequence;
  readonly at: number;
  readonly paper: SheetPaper;
  readonly parts: readonly NamedPart[];
}

const LETTER_MM = 4.5;

/** One cut of a sheet: the piece in hand, the fence along its kept edge, where the blade goes. */
export function CutView({ sequence, at, paper, parts }: CutViewProps) {
  const ruler = useRuler();
  const draw = useCallback(
    (space: Space) => drawCutStep(sequence, at, paper, space, { parts, ruler, textMm: LETTER_MM }),
    [sequence, at, paper, parts, ruler],
  );
  return <DrawingView draw={draw} still />;
}
