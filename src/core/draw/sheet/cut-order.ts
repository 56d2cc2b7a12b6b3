import { type Ticks, ticks } from '../../units/ticks';
import { type CutPiece, type CutStep as SequencedCut, sequenceCuts } from '../../yield/cut-sequence';
import type { Layout, SheetPaper } from '../../yield/types';

/** A rectangle of card in the sheet's own frame, ticks: x across, y up. */
export interface CardPiece {
  readonly x: Ticks;
  readonly y: Ticks;
  readonly across: Ticks;
  readonly up: Ticks;
}

/** One cut from edge to edge of the piece in hand. */
export interface CutStep {
  /** From 1, in the order the hands go. */
  readonly number: number;
  readonly way: 'upright' | 'level';
  /** From fence to blade, with the kept piece against the fence. */
  readonly fence: Ticks;
  /** A quarter turn before the cut. */
  readonly turn: boolean;
  readonly piece: CardPiece;
  readonly first: CardPiece;
  readonly second: CardPiece;
  readonly keep: CardPiece;
  /** Leaves that come off at this cut, ready: ids of parts, and offcuts. */
  readonly frees: readonly FreedPiece[];
}

type FreedPiece =
  | { readonly kind: 'part'; readonly part: string; readonly piece: CardPiece }
  | { readonly kind: 'offcut'; readonly piece: CardPiece };

/** The sheet once its edges are squared. */
export const squaredSheet = ({ across, up, squaring }: SheetPaper): CardPiece => ({
  x: squaring.left,
  y: squaring.near,
  across: ticks(across - squaring.left - squaring.right),
  up: ticks(up - squaring.near - squaring.far),
});

/** The cuts of one layout, squaring apart, in the order and with the fence settings of `sequenceCuts`. */
export function cutOrder(layout: Layout, paper: SheetPaper, kerf: Ticks): CutStep[] {
  const { steps } = sequenceCuts(layout, paper, { longestCut: null, kerf, stack: 1, stages: 'free' });
  return steps.filter(({ why }) => why !== 'square').map(numberCut);
}

function numberCut({ way, fence, piece, keep, other, turn }: SequencedCut, at: number): CutStep {
  const [first, second] = keep.x <= other.x && keep.y <= other.y ? [keep, other] : [other, keep];
  const frees = [first, second].flatMap(freed);
  return { number: at + 1, way, fence, turn, piece, first, second, frees, keep };
}

const freed = (piece: CutPiece): FreedPiece[] => {
  if (piece.is === 'part') return [{ kind: 'part', part: piece.part ?? '', piece }];
  return piece.is === 'offcut' ? [{ kind: 'offcut', piece }] : [];
};
