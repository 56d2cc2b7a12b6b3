import { asSeen, type BenchOp, type BenchTool, type CardStep, drawnLie, type Lie } from '../../bench';
import type { PieceNet } from '../../net/types';
import type { HandAct } from '../../rows/hand-times';

/** How a card lies: which face is up, and how it is turned from the drawing of that face. */
export interface CardLies {
  readonly flipped: boolean;
  readonly turned: 'not' | 'counter-clockwise' | 'half round' | 'clockwise';
}

/** `lie`: as the bench measures it. */
export function cardLies(piece: PieceNet, lie: Lie, { fence = 'left' }: BenchTool): CardLies {
  const ways = ['not', 'counter-clockwise', 'half round', 'clockwise'] as const;
  const { quarters, mirrored } = asSeen(lie, fence);
  const drawn = drawnLie(piece, mirrored ? 'outside' : 'inside');
  return { flipped: mirrored, turned: ways[(quarters - drawn.quarters + 4) % 4] ?? 'not' };
}

/** Steps of the bench card done one after the other on each piece. */
export interface CardWork {
  readonly do: 'card';
  readonly pieceId: string;
  readonly steps: readonly CardStep[];
  /** Null where the steps say it themselves. */
  readonly lies: CardLies | null;
}

/** A flat step by itself: in a batch the card may come from anywhere, so how it lies is said whole, and its turns are neither said nor drawn. */
export function flatWork(
  piece: PieceNet,
  step: CardStep,
  ops: readonly BenchOp[],
  tool: BenchTool,
): CardWork {
  const { from, to } = step.ops;
  const moves = ops.slice(from, to).filter(({ op }) => op === 'turn' || op === 'flip').length;
  return {
    do: 'card',
    pieceId: piece.id,
    steps: [{ ...step, headline: step.alone, ops: { from: from + moves, to } }],
    lies: cardLies(piece, step.lie, tool),
  };
}

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
  piece: PieceNet,
  tool: BenchTool,
): StagedCard[] {
  const { id, faces } = piece;
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
    ...cut.map((step, i) => ({
      act: 'slit' as const,
      place: i + 1,
      work: flatWork(piece, step, ops, tool),
    })),
    ...folds.map((step, i) => ({ act: 'fold' as const, place: i + 1, work: work([step]) })),
    ...(walls > 0 ? [{ act: 'glue' as const, place: 1, work: work(closing.slice(0, walls)) }] : []),
    ...(rest.length > 0 ? [{ act: last, place: 1, work: work(rest) }] : []),
  ];
}
