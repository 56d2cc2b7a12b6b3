import type { BenchCard, FoldedScore, Outcome } from './bench-card';
import { spellAct } from './canonical-form';
import { runsAlong, samePoint } from './card-outline';
import { carrierOf, stretchOf } from './carrier';
import { shareStretches } from './exact-intervals';
import type { BenchOp } from './types';

type Op<Name extends BenchOp['op']> = Extract<BenchOp, { op: Name }>;

/** Give scores their sense and angle. A fold needs a score along its whole length, and takes it once. */
export function foldScores(card: BenchCard, { panel, deg, lines }: Op<'fold'>): Outcome {
  if (Math.abs(deg) > 180) return 'angle-too-far';
  const folds: FoldedScore[] = [...card.folds];
  for (const { a, b } of lines) {
    if (samePoint(a, b) || !runsAlong(card.scores, { a, b })) return 'no-score-to-fold';
    if (folds.some((fold) => overlap(fold, { a, b }))) return 'folded-already';
    folds.push({ a, b, deg, panel });
  }
  return { ...card, folds };
}

function overlap(fold: FoldedScore, line: Op<'fold'>['lines'][number]): boolean {
  const carrier = carrierOf(line);
  if (carrierOf(fold).key !== carrier.key) return false;
  return shareStretches([stretchOf(carrier, fold)], [stretchOf(carrier, line)]).length > 0;
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
  if (!act.panels.every((panel) => knowsPanel(card, panel))) return 'no-such-panel';
  return { ...card, acts: [...card.acts, spellAct(act)] };
}
