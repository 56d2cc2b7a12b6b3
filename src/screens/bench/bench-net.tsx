import { useCallback } from 'react';
import type { Recipe } from '../../../shared/workbook';
import {
  type BoxCard,
  type CardMark,
  type CardStep,
  drawnLie,
  type Lie,
  placeAtBench,
  toNet,
} from '../../core/bench';
import { drawNetToFit } from '../../core/draw/net/net-drawing';
import { leftKey, topKey } from '../../core/draw/net/net-table';
import { pictureOfStep } from '../../core/draw/step/step-picture';
import type { PieceNet } from '../../core/net';
import { ticks } from '../../core/units';
import { DrawingView, type FittedDrawing, type Space } from '../../ui/drawing/drawing-view';
import { useRuler } from '../../ui/fields/measure';
import { RecipePicture } from '../../ui/folded/recipe-picture';

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
export function BenchNet({ card: { piece, joins }, step, recipe }: BenchNetProps) {
  const ruler = useRuler();
  const { faceUp } = recipe;
  const draw = useCallback(
    (space: Space) => drawNetToFit(piece, space, { ruler, textMm: 4.5, faceUp, show: { otherUnit: false } }),
    [piece, ruler, faceUp],
  );
  if (joins) return <RecipePicture recipe={recipe} />;
  const lit = step ? step.marks.flatMap((mark) => numberOf(mark, step.lie, piece, faceUp)) : [];
  return <DrawingView draw={draw} lit={lit} />;
}

/** The number of the drawing that a mark of the card is read as: the fence stands at another edge once the card is turned, or for a left hand. */
export function numberOf(
  { at, reads }: CardMark,
  lie: Lie,
  piece: PieceNet,
  faceUp: Recipe['faceUp'],
): string[] {
  if (reads === 'across') return [leftKey(at)];
  if (reads === 'up') return [topKey(at)];
  if (reads === 'off the near edge') return [];
  const { blank } = piece;
  const [near, far] = [0, 1].map((y) => toNet(blank, lie, { x: at, y: ticks(y) }));
  if (!near || !far) return [];
  const [left, above] = placeAtBench(blank, drawnLie(piece, faceUp), [near.x, near.y]);
  return [near.x === far.x ? leftKey(left) : topKey(blank.up - above)];
}
