import { type BlankSide, tabEndOf } from '../net/tab-end';
import type { PieceNet } from '../net/types';
import { type Lie, quartersOf } from './equal/card-lie';
import type { CardFace } from './types';

/**
 * How a piece lies before it is turned: upright, or upside down where its tab would else end at the edges that are measured from, the left
 * and the top. So body scores are measured from the edge opposite the tab, and an error of the blank falls into the tab.
 */
export const firstLie = (tabEnd: BlankSide | null, mirrored: boolean): Lie => ({
  quarters: tabEnd === 'top' || tabEnd === (mirrored ? 'right' : 'left') ? 2 : 0,
  mirrored,
});

/** How a piece lies in its drawing, with this face up. */
export const drawnLie = (piece: PieceNet, faceUp: CardFace): Lie =>
  firstLie(tabEndOf(piece), faceUp === 'outside');

const QUARTERS_FROM_RIGHT: Readonly<Record<BlankSide, number>> = { right: 0, top: 1, left: 2, bottom: 3 };

/** Does this side of the blank lie against the fence? */
export function isAtFence(side: BlankSide | null, { quarters, mirrored }: Lie): boolean {
  if (side === null) return false;
  const from = QUARTERS_FROM_RIGHT[side];
  return quartersOf((mirrored ? 2 - from : from) + quarters) === QUARTERS_FROM_RIGHT.left;
}
