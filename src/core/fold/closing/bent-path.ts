import type { ClosingAct, PieceNet } from '../../net/types';
import type { Collision, LookAt } from '../collisions';
import { anglesDuring } from './closing-states';
import { loopPairs, type Pair, pairsApart, STAYS_CLOSED } from './loop-path';
import { movedBy } from './tuck-path';

/** Steps in which a bend is followed. source: our choice */
const FRAMES = 6;

/**
 * Card that bends as it closes, as chords: the scores of the act and the bends between them all turn evenly. Both faces of a pillow bulge so
 * without stretch, their ends straight on. Null where the chords of one panel part by more than `STAYS_CLOSED` in all, since then the card
 * goes another way: pillow ends pushed in. While its curved crease keeps its shape an end lies without stretch in two places only, straight
 * on from its face or mirrored in the crease's plane (curved-crease pillow boxes, arXiv 2509.02049), and springs from one to the other.
 */
export function bentPath(
  piece: PieceNet,
  { hinges }: Exclude<ClosingAct, { readonly do: 'glue' }>,
  states: readonly number[][],
  at: number,
  look: LookAt,
): readonly Collision[] | null {
  const moved = movedBy(piece, hinges);
  const pairs = loopPairs(piece, states[at] ?? [], states[at + 1] ?? [], moved);
  const hits: Collision[] = [];
  for (let frame = 1; frame < FRAMES; frame++) {
    const angles = anglesDuring(states, at, frame / FRAMES, piece.closing);
    if (mostStretch(piece, pairs, angles) > STAYS_CLOSED) return null;
    hits.push(...look(angles, moved));
  }
  return hits;
}

/** How far the chords of a panel part, all of them together, in the panel where that is most; mm. */
function mostStretch(piece: PieceNet, pairs: readonly Pair[], angles: readonly number[]): number {
  const stretch = new Map<string, number>();
  pairsApart(piece, pairs, angles).forEach((apart, at) => {
    const panel = piece.faces[pairs[at]?.[1] ?? -1]?.panel ?? '';
    stretch.set(panel, (stretch.get(panel) ?? 0) + apart);
  });
  return Math.max(0, ...stretch.values());
}
