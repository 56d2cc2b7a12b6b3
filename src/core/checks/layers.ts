import type { PieceNet } from '../net/types';
import type { Role } from '../styles/language/types';

/** Panels that stand still while others are laid against them. */
const HOLDS: ReadonlySet<Role> = new Set(['wall', 'roof', 'cover', 'handle'] as const);

/**
 * How many calipers each face is lifted towards the inside when closed: in a group of faces that lie on one another the innermost most, the
 * outermost one. What lies against a wall, roof, cover or fin is held by it and stays. Bent panels stay: they end on a wall at an angle, so what is too long crosses it without a lift.
 */
export function layersOf(piece: PieceNet): number[] {
  const layers = piece.faces.map(() => 0);
  for (const group of piece.overlaps) {
    const panels = [...new Set(group.map((face) => piece.faces[face]?.panel))];
    const outermost = piece.faces[group[group.length - 1] ?? -1]?.role ?? 'wall';
    if (panels.length < group.length || HOLDS.has(outermost)) continue;
    for (const face of group)
      layers[face] = Math.max(layers[face] ?? 0, panels.length - panels.indexOf(piece.faces[face]?.panel));
  }
  return layers;
}

/** Pairs of faces by `pairKey` that may touch all along: hinged to one another. */
export const hingedPairs = (piece: PieceNet): ReadonlySet<number> =>
  new Set(piece.hinges.map(({ parent, child }) => pairKey(piece, parent, child)));

/** Pairs of faces by `pairKey` that may lie on one another in one plane: glued, or declared to lap. */
export function lappedPairs(piece: PieceNet): ReadonlySet<number> {
  const pairs = new Set(piece.joints.map(({ tab, target }) => pairKey(piece, tab, target)));
  for (const group of piece.overlaps)
    for (const p of group) for (const q of group) pairs.add(pairKey(piece, p, q));
  return pairs;
}

export const pairKey = ({ faces }: PieceNet, p: number, q: number): number =>
  Math.min(p, q) * faces.length + Math.max(p, q);
