import type { PieceNet } from '../net/types';
import type { Role } from '../styles/language/types';

/** Panels that stand still while others are laid against them. */
const HOLDS: ReadonlySet<Role> = new Set(['wall', 'roof', 'cover', 'handle'] as const);

/**
 * How many calipers each face is lifted towards the inside when closed: in a group of faces that lie on one another the innermost most, the
 * outermost one. What lies against a wall, roof, cover or fin, inside or outside it, is held by it and stays. Bent panels stay: they end on a wall at an angle, so what is too long crosses it without a lift.
 */
export function layersOf(piece: PieceNet): number[] {
  const layers = piece.faces.map(() => 0);
  for (const group of piece.overlaps) {
    const panels = [...new Set(group.map((face) => piece.faces[face]?.panel))];
    if (panels.length < group.length || holds(piece, group.at(-1)) || liesOutside(piece, group)) continue;
    // a liner hangs on a wall and is pressed onto what it lines: both stay
    if (piece.faces[group[0] ?? -1]?.role === 'liner') continue;
    for (const face of group)
      layers[face] = Math.max(layers[face] ?? 0, panels.length - panels.indexOf(piece.faces[face]?.panel));
  }
  return layers;
}

const holds = (piece: PieceNet, face: number | undefined): boolean =>
  HOLDS.has(piece.faces[face ?? -1]?.role ?? 'wall');

/** Panels that lie on the outside of a wall, which stays where it is: the room loses nothing to them. */
export const liesOutside = (piece: PieceNet, group: readonly number[]): boolean =>
  holds(piece, group[0]) && !holds(piece, group.at(-1));
