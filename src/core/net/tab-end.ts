import type { NetEdge, PieceNet } from './types';

/** A side of the blank in the net's own frame. */
export type BlankSide = 'left' | 'right' | 'bottom' | 'top';

const SIDES = ['left', 'right', 'bottom', 'top'] as const;
const ACROSS: Readonly<Record<BlankSide, BlankSide>> = {
  left: 'right',
  right: 'left',
  bottom: 'top',
  top: 'bottom',
};

/**
 * The side of the blank at which a glue tab ends and nothing else does, so that an error of the blank may fall into it: a tab a little
 * narrower or wider glues as well. Null where no side or two opposite ones are such.
 */
export function tabEndOf(piece: PieceNet): BlankSide | null {
  const isTabs = (side: BlankSide): boolean => {
    const on = piece.edges.filter((edge) => edge.kind === 'edge' && liesOn(edge, side, piece));
    return on.length > 0 && on.every(({ left }) => piece.faces[left]?.role === 'glueTab');
  };
  return SIDES.find((side) => isTabs(side) && !isTabs(ACROSS[side])) ?? null;
}

function liesOn({ a, b }: NetEdge, side: BlankSide, { blank }: PieceNet): boolean {
  if (side === 'left' || side === 'right') return a.x === b.x && a.x === (side === 'left' ? 0 : blank.across);
  return a.y === b.y && a.y === (side === 'bottom' ? 0 : blank.up);
}
