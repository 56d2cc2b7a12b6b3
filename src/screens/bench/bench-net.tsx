import { useCallback } from 'react';
import type { Recipe } from '../../../shared/workbook';
import { type BoxCard, type CardStep, drawnLie, placeAtBench, sizeAsItLies, toNet } from '../../core/bench';
import { drawNetToFit } from '../../core/draw/net/net-drawing';
import { leftKey, topKey } from '../../core/draw/net/net-table';
import { pictureOfStep } from '../../core/draw/step/step-picture';
import { type Ticks, ticks } from '../../core/units';
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

/**
 * The numbers of the net that a step works with, and no others: where it scores, slits or cuts away, and how far. The fence stands at another
 * edge once the card is turned, or for a left hand, so the same line has another number there.
 */
export function litNumbers(
  { piece, program }: BoxCard,
  { ops, lie }: CardStep,
  faceUp: 'inside' | 'outside',
): string[] {
  const { blank } = piece;
  const { across, up } = sizeAsItLies(blank, lie);
  const drawn = drawnLie(piece, faceUp);
  const none = ticks(0);
  const keyOf = (x: readonly [Ticks, Ticks], y: readonly [Ticks, Ticks]): string => {
    const [one, other] = [0, 1].map((end) => {
      const { x: netX, y: netY } = toNet(blank, lie, { x: x[end] ?? none, y: y[end] ?? none });
      return placeAtBench(blank, drawn, [netX, netY]);
    }) as [readonly [number, number], readonly [number, number]];
    return one[0] === other[0] ? leftKey(one[0]) : topKey(blank.up - one[1]);
  };
  const upright = (x: Ticks): string => keyOf([x, x], [none, up]);
  const level = (y: Ticks): string[] => (y > 0 && y < up ? [keyOf([none, across], [y, y])] : []);
  const keys = program.ops.slice(ops.from, ops.to).flatMap((op): string[] => {
    switch (op.op) {
      case 'blank':
        return [leftKey(op.across), topKey(op.up)];
      case 'score':
        return [upright(op.at), ...(op.span ? [op.span.from, op.span.to].flatMap(level) : [])];
      case 'slit':
        return [upright(op.at), ...[op.from, op.to].flatMap(level)];
      case 'corner':
        return [
          upright(op.corner.endsWith('left') ? op.across : ticks(across - op.across)),
          ...level(op.corner.startsWith('near') ? op.up : ticks(up - op.up)),
        ];
      default:
        return [];
    }
  });
  return [...new Set(keys)];
}
