import { groupLayers } from '../net/group-layers';
import type { PieceNet } from '../net/types';
import type { Role } from '../styles/language/types';
import { anglesDuring, closingStates } from './closing/closing-states';
import { middleOf, posesOf } from './fold-piece';
import { insideOf, type Pose, placeOf } from './pose';
import { dot, minus } from './vector';

/*
 * What lies on what in a closed piece. A style says it in two places: `overlaps` are stacks, innermost first, and a joint's tab lies inside or
 * outside its target. Three who ask need it in three forms: how far the solid layers are lifted into the room, where a picture in space puts
 * each face, and which of two flush faces covers the other in a drawing.
 */

/** Panels that stand still while others are laid against them. */
const HOLDS: ReadonlySet<Role> = new Set(['wall', 'roof', 'cover', 'handle'] as const);

/**
 * How many calipers each face is lifted towards the inside when closed: in a group of faces that lie on one another the innermost most, the
 * outermost one. What lies against a wall, roof, cover or fin, inside or outside it, is held by it and stays. Bent panels stay: they end on a wall at an angle, so what is too long crosses it without a lift.
 */
export function liftsInward(piece: PieceNet): number[] {
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

const TUCKED: ReadonlySet<Role> = new Set(['tuck', 'dustFlap', 'lockFlap']);

/** How many layers lie inside each face; what is tucked in lies inside the walls. */
export function layersInside(piece: PieceNet): Map<number, number> {
  const layers = new Map<number, number>();
  for (const [at, { role }] of piece.faces.entries()) if (TUCKED.has(role)) layers.set(at, -1);
  for (const group of piece.overlaps)
    for (const [at, layer] of groupLayers(piece, group).entries())
      for (const face of layer) layers.set(face, at);
  for (const { tab, target, lap } of piece.joints)
    if (!piece.overlaps.some((group) => group.includes(tab)))
      layers.set(tab, (layers.get(target) ?? 0) + (lap === 'inside' ? -1 : 1));
  return layers;
}

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
