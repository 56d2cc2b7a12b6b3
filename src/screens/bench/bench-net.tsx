import { useCallback } from 'react';
import type { Recipe } from '../../../shared/workbook';
import type { CardStep } from '../../core/bench';
import { drawNetToFit } from '../../core/draw/net-drawing';
import { leftKey, topKey } from '../../core/draw/net-table';
import type { BenchCardOfPiece } from '../../state/bench-result';
import { DrawingView, type Space } from '../../ui/drawing-view';
import { useRuler } from '../../ui/measure';

interface BenchNetProps {
  readonly card: BenchCardOfPiece;
  readonly step: CardStep | undefined;
  readonly recipe: Pick<Recipe, 'faceUp' | 'grain'>;
}

/** The whole net beside the step, with the numbers of this step lit. */
export function BenchNet({ card: { piece }, step, recipe: { faceUp } }: BenchNetProps) {
  const ruler = useRuler();
  const draw = useCallback(
    (space: Space) => drawNetToFit(piece, space, { ruler, textMm: 4.5, faceUp, show: { otherUnit: false } }),
    [piece, ruler, faceUp],
  );
  const lit = (step?.marks ?? []).flatMap(({ at }) => [leftKey(at), topKey(at)]);
  return <DrawingView draw={draw} lit={lit} />;
}
