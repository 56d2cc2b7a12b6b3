import type { BenchOp } from '../types';
import { type BenchCard, faceUpOf, type Outcome } from './bench-card';
import { spellAct } from './canonical-form';

/** Crease every score. A flat card is creased once, inside up, and only if there is a score on it. */
export function creaseScores(card: BenchCard, { over }: Extract<BenchOp, { op: 'crease' }>): Outcome {
  if (card.creased) return 'folded-already';
  if (faceUpOf(card) === 'outside') return 'outside-is-up';
  return card.scores.length > 0 ? { ...card, creased: over } : 'no-score-to-fold';
}

/** Put adhesive on, press panels together, or turn them: only on creased card, unless it has nothing to crease and is rolled. */
export const foldUp = (
  card: BenchCard,
  act: Extract<BenchOp, { op: 'stick' | 'glue' | 'close' }>,
): Outcome =>
  card.creased || card.scores.length === 0
    ? { ...card, acts: [...card.acts, spellAct(act)] }
    : 'card-is-flat';
