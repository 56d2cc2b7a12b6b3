import { samePoint } from '../../net/point';
import type { BenchOp } from '../types';
import { type BenchCard, edgesOfCard, type FoldedScore, type Outcome } from './bench-card';
import { spellAct } from './canonical-form';
import { cutStretches, shareStretches } from './exact-intervals';
import { byLine, insideAlong, laySegment } from './line-stretches';

type Op<Name extends BenchOp['op']> = Extract<BenchOp, { op: Name }>;

/** Give scores their sense and angle. A fold needs a score along its whole length, on card that is still whole there, and takes it once. */
export function foldScores(card: BenchCard, { panel, deg, lines }: Op<'fold'>): Outcome {
  if (Math.abs(deg) > 180) return 'angle-too-far';
  const scored = byLine(card.scores);
  const slit = byLine(card.slits);
  const folded = byLine(card.folds);
  const edges = edgesOfCard(card);
  const folds: FoldedScore[] = [];
  for (const { a, b } of lines) {
    if (samePoint(a, b)) return 'no-score-to-fold';
    const fold = laySegment({ a, b });
    const onCard = shareStretches(scored.get(fold.key)?.stretches ?? [], insideAlong(fold.line, edges));
    const whole = cutStretches(onCard, slit.get(fold.key)?.stretches ?? []);
    if (cutStretches([fold.stretch], whole).length > 0) return 'no-score-to-fold';
    if (shareStretches([fold.stretch], folded.get(fold.key)?.stretches ?? []).length > 0)
      return 'folded-already';
    folds.push({ ...fold, deg, panel });
  }
  return { ...card, folds: [...card.folds, ...folds] };
}

const knowsPanel = (card: BenchCard, panel: string): boolean =>
  card.folds.some((fold) => fold.panel === panel);

/** Glue one panel to another. Only the panel that stays on the bench has no fold of its own. */
export function gluePanels(card: BenchCard, act: Op<'glue'>): Outcome {
  if (card.folds.length === 0) return 'card-is-flat';
  if (!knowsPanel(card, act.panel)) return 'no-such-panel';
  return { ...card, acts: [...card.acts, spellAct(act)] };
}

/** Turn creased panels to an angle. */
export function closePanels(card: BenchCard, act: Op<'close'>): Outcome {
  if (card.folds.length === 0) return 'card-is-flat';
  if (!act.panels.some((panel) => knowsPanel(card, panel))) return 'no-such-panel';
  return { ...card, acts: [...card.acts, spellAct(act)] };
}
