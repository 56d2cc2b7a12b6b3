import type { PieceNet } from '../../net/types';
import { anglesDuring, closingStates } from '../closing/closing-states';
import { middleOf, posesOf } from '../fold-piece';
import { insideOf, type Pose, placeOf } from '../pose';
import { dot, minus } from '../vector';

/** Says on which side of face `b` face `a` lies where both are in one plane: 1 on b's inside, -1 on its outside. */
export type LayerSense = (a: number, b: number) => 1 | -1;

const JUST_BEFORE = 0.97; // of an act: near enough its end to be over the right panel, far enough to be off its plane
const APART_MM = 1e-3;

/**
 * Layers after `acts` acts of closing. What is declared comes first (`overlaps` innermost first; a joint's lap), and else a face lies on the
 * side it came from: the two are looked at just before the last act that moved one against the other.
 */
export function layerSense(piece: PieceNet, acts: number): LayerSense {
  const states = closingStates(piece);
  const before = Array.from({ length: acts }, (_, act) =>
    posesOf(piece, anglesDuring(states, act, JUST_BEFORE, piece.closing)),
  );
  const closed = posesOf(piece, states.at(-1) ?? []);
  return (a, b) => declaredSense(piece, closed, a, b) ?? movedSense(piece, before, a, b) ?? (a > b ? 1 : -1);
}

function declaredSense(piece: PieceNet, closed: readonly Pose[], a: number, b: number): 1 | -1 | null {
  for (const group of piece.overlaps) {
    const [atA, atB] = [group.indexOf(a), group.indexOf(b)];
    if (atA < 0 || atB < 0) continue;
    const [one, outermost] = [closed[b], closed[group.at(-1) ?? b]];
    // a panel that is folded right over has its inside towards what lies farther out
    const looksIn = !one || !outermost || dot(insideOf(one), insideOf(outermost)) > 0;
    return atA < atB === looksIn ? 1 : -1;
  }
  for (const { tab, target, lap } of piece.joints) {
    const inside = lap === 'inside' ? 1 : -1;
    if (tab === a && target === b) return inside;
    if (tab === b && target === a) return inside === 1 ? -1 : 1;
  }
  return null;
}

function movedSense(
  piece: PieceNet,
  before: readonly (readonly Pose[])[],
  a: number,
  b: number,
): 1 | -1 | null {
  for (const poses of [...before].reverse()) {
    const [poseA, poseB] = [poses[a]!, poses[b]!];
    const off = dot(minus(middleOf(piece, a, poseA), placeOf(poseB, 0, 0)), insideOf(poseB));
    if (Math.abs(off) > APART_MM) return off > 0 ? 1 : -1;
  }
  return null;
}
