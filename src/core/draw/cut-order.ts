import { type Ticks, ticks } from '../units/ticks';
import type { CutTree, Layout, SheetPaper } from '../yield/types';

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
  /** Where the fence stands: from the piece's own left (upright) or near (level) edge. */
  readonly fence: Ticks;
  readonly piece: CardPiece;
  readonly first: CardPiece;
  readonly second: CardPiece;
  /** Leaves that come off at this cut, ready: ids of parts, and offcuts. */
  readonly frees: readonly FreedPiece[];
}

export type FreedPiece =
  | { readonly kind: 'part'; readonly part: string; readonly piece: CardPiece }
  | { readonly kind: 'offcut'; readonly piece: CardPiece };

/** The sheet once its edges are squared. */
export const squaredSheet = ({ across, up, squaring }: SheetPaper): CardPiece => ({
  x: squaring.left,
  y: squaring.near,
  across: ticks(across - squaring.left - squaring.right),
  up: ticks(up - squaring.near - squaring.far),
});

/** The cuts of one layout in order: each piece is finished, its first half before its second, before the next is picked up. */
export function cutOrder(layout: Layout, paper: SheetPaper, kerf: Ticks): CutStep[] {
  const steps: CutStep[] = [];
  const visit = (tree: CutTree, piece: CardPiece): void => {
    if (tree.kind !== 'cut') return;
    const [first, second] = halves(tree, piece, kerf);
    const frees = [freed(tree.first, first), freed(tree.second, second)].flatMap((found) => found ?? []);
    const fence = ticks(tree.at - (tree.way === 'upright' ? piece.x : piece.y));
    steps.push({ number: steps.length + 1, way: tree.way, fence, piece, first, second, frees });
    visit(tree.first, first);
    visit(tree.second, second);
  };
  visit(layout.tree, squaredSheet(paper));
  return steps;
}

function halves(
  { way, at }: Extract<CutTree, { kind: 'cut' }>,
  piece: CardPiece,
  kerf: Ticks,
): [CardPiece, CardPiece] {
  const [start, size] = way === 'upright' ? (['x', 'across'] as const) : (['y', 'up'] as const);
  const near = ticks(at - piece[start]);
  return [
    { ...piece, [size]: near },
    { ...piece, [start]: ticks(at + kerf), [size]: ticks(Math.max(0, piece[size] - near - kerf)) },
  ];
}

const freed = (tree: CutTree, piece: CardPiece): FreedPiece | null =>
  tree.kind === 'part'
    ? { kind: 'part', part: tree.part, piece }
    : tree.kind === 'offcut'
      ? { kind: 'offcut', piece }
      : null;
