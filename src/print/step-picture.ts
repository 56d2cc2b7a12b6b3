import type { BoxCard, CardStep } from '../core/bench';
import { pictureOfStep } from '../core/draw/step/step-picture';
import type { Drawing } from '../core/draw/strokes/types';
import { TYPE_MM } from './print-document';

/** The room a step's picture has beside its words. */
export const STEP_PICTURE_MM = { widthMm: 62, heightMm: 46 } as const;

/** A step as a picture beside its words; null for a flat step with nothing to show. */
export const stepPicture = (card: BoxCard, step: CardStep): Drawing | null =>
  pictureOfStep(card, step, STEP_PICTURE_MM, { textMm: TYPE_MM.number });
