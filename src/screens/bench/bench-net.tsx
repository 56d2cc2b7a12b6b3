import { useCallback } from 'react';
import type { Recipe } from '../../../shared/workbook';
import type { BoxCard, CardStep } from '../../core/bench';
import { drawNetToFit } from '../../core/draw/net/net-drawing';
import { pictureOfStep } from '../../core/draw/step/step-picture';
import { DrawingView, type FittedDrawing, type Space } from '../../ui/drawing/drawing-view';
import { useRuler } from '../../ui/fields/measure';
import { RecipePicture } from '../../ui/folded/recipe-picture';
import { litNumbers } from './lit-numbers';

interface StepViewProps {
  readonly card: BoxCard;
  readonly step: CardStep;
}

/** The step in hand as a picture, for their hand: the card as it lies against the fence with its numbers, or as it folds up. */
export function StepView({ card, step }: StepViewProps) {
  const draw = useCallback(
    (space: Space): FittedDrawing => {
      const picture = pictureOfStep(card, step, space, { textMm: 4.5 });
      if (picture) return { ...picture, scale: 1, origin: [0, 0] };
      const { unit, finestMark: finest } = card.tool;
      return drawNetToFit(card.piece, space, { ruler: { unit, finest }, textMm: 4.5 });
    },
    [card, step],
  );
  return <DrawingView draw={draw} still />;
}

interface BenchNetProps {
  readonly card: BoxCard;
  readonly step: CardStep | undefined;
  readonly recipe: Recipe;
}

/** The whole net beside the step, with the numbers of this step lit; where pieces are joined, what they make. */
export function BenchNet({ card, step, recipe }: BenchNetProps) {
  const { piece, joins } = card;
  const ruler = useRuler();
  const { faceUp } = recipe;
  const draw = useCallback(
    (space: Space) => drawNetToFit(piece, space, { ruler, textMm: 4.5, faceUp, show: { otherUnit: false } }),
    [piece, ruler, faceUp],
  );
  if (joins) return <RecipePicture recipe={recipe} />;
  return <DrawingView draw={draw} lit={step ? litNumbers(card, step, faceUp) : []} />;
}
