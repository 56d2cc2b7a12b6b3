import type { BenchOp, CardStep, Lie } from '../../bench';
import type { PieceNet } from '../../net/types';
import type { HandAct } from '../../rows/hand-times';

/** How a card lies, counted from how it lay when it was cut: first flipped left to right, then turned. */
export interface CardLies {
  readonly flipped: boolean;
  readonly turned: 'not' | 'counter-clockwise' | 'half round' | 'clockwise';
}

/** `mirrored`: the fence stands on the right, where everything is measured in a mirror and a turn runs the other way. */
export function cardLies({ quarters, mirrored }: Lie, mirroredAtFirst: boolean): CardLies {
  const ways = ['not', 'counter-clockwise', 'half round', 'clockwise'] as const;
  const way = mirroredAtFirst ? (4 - quarters) % 4 : quarters;
  return { flipped: mirrored !== mirroredAtFirst, turned: ways[way] ?? 'not' };
}

/** Steps of the bench card done one after the other on each piece. */
export interface CardWork {
  readonly do: 'card';
  readonly pieceId: string;
  readonly steps: readonly CardStep[];
  /** Null where the steps say it themselves. */
  readonly lies: CardLies | null;
}

/** A flat step by itself: in a batch the card may come from anywhere, so how it lies is said whole and its turns are not. */
export const flatWork = (pieceId: string, step: CardStep, mirrored: boolean): CardWork => ({
  do: 'card',
  pieceId,
  steps: [{ ...step, headline: step.alone }],
  lies: cardLies(step.lie, mirrored),
});

interface StagedCard {
  readonly act: HandAct;
  readonly place: number;
  readonly work: CardWork;
}

/**
 * The card of one piece after scoring, as stages of a batch: what is cut, step by step; the folds; the joints of the walls; the bottom, or
 * whatever else closes it. A wall joint comes before any flap of the bottom is touched.
 */
export function stageCard(
  steps: readonly CardStep[],
  ops: readonly BenchOp[],
  { id, faces }: PieceNet,
  mirrored: boolean,
): StagedCard[] {
  const work = (which: readonly CardStep[]): CardWork => ({
    do: 'card',
    pieceId: id,
    steps: which,
    lies: null,
  });
  const cut = steps.filter(({ kind }) => kind === 'slit' || kind === 'cut');
  const folds = steps.filter(({ kind }) => kind === 'fold');
  const bottoms = new Set(faces.filter(({ role }) => role === 'bottomFlap').map(({ panel }) => panel));
  const closing = steps.filter(({ kind }) => kind === 'close' || kind === 'glue');
  const touchesBottom = ({ ops: { from, to } }: CardStep) =>
    ops.slice(from, to).some((op) => {
      if (op.op === 'glue') return bottoms.has(op.panel) || bottoms.has(op.onto);
      return op.op === 'close' && op.panels.some((panel) => bottoms.has(panel));
    });
  const firstBottom = closing.findIndex(touchesBottom);
  const isGlued = (from: number) => closing.slice(from).some(({ kind }) => kind === 'glue');
  const end = firstBottom < 0 ? closing.length : firstBottom;
  const walls = closing.slice(0, end).findLastIndex(({ kind }) => kind === 'glue') + 1;
  const rest = closing.slice(walls);
  const last: HandAct = firstBottom >= 0 && isGlued(walls) ? 'close-bottom' : 'tuck';
  return [
    ...cut.map((step, i) => ({ act: 'slit' as const, place: i + 1, work: flatWork(id, step, mirrored) })),
    ...folds.map((step, i) => ({ act: 'fold' as const, place: i + 1, work: work([step]) })),
    ...(walls > 0 ? [{ act: 'glue' as const, place: 1, work: work(closing.slice(0, walls)) }] : []),
    ...(rest.length > 0 ? [{ act: last, place: 1, work: work(rest) }] : []),
  ];
}
