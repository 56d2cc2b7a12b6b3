import { Matrix4, Vector3 } from 'three';
import type { PieceNet } from '../../src/core/net';
import { paringsOf } from '../../src/core/net/parings';
import type { LeftOut } from './clashes';
import type { Stand } from './places';
import { pointOn } from './places';
import type { Solids } from './solids';

/** One face lies on the inside of another, a whole card off it. */
interface Lies {
  readonly inner: number;
  readonly outer: number;
  /** Whose inside counts, where a panel of several layers may be folded right over: the outermost one's. */
  readonly by?: number;
  /** The one of the two that gives way. */
  readonly gives: number;
  /** How far off it lies, mm: glued at so much, or lying on it by at least that. */
  readonly off: number;
  readonly glued: boolean;
}

/** Directions nearer than this are one. */
const PARALLEL = 1e-3;
const ROUNDS = 40;
/** Panels that stay where they are scored, while others give way. */
const STANDS: ReadonlySet<string> = new Set(['wall', 'base', 'roof', 'cover']);

/**
 * How far each face is moved off its score plane, mm, so that layers lie on one another in the order the style declares: tabs on the side of
 * their joint, overlaps innermost first, panels folded flat on the side they are folded to. Walls of the room stay where they are; what
 * is nearer the inside moves in, what is farther out moves out, and takes with it whatever hangs on it.
 */
export function stackOf(
  piece: PieceNet,
  stands: readonly Stand[],
  caliperMm: number,
  solids: Solids,
  leftOut: LeftOut,
): Vector3[] {
  const own = piece.faces.map(() => 0);
  const parentOf = new Map(piece.hinges.map(({ parent, child }) => [child, parent]));
  const lies = liesOf(piece, stands, caliperMm, solids).filter(
    ({ inner, outer }) => !leftOut(piece.faces[inner]?.panel ?? '', piece.faces[outer]?.panel ?? ''),
  );
  const shiftOf = (face: number): Vector3 => {
    const up = parentOf.get(face);
    const from = up === undefined ? new Vector3() : shiftOf(up);
    const inside = stands[face]?.inside ?? new Vector3();
    return from.addScaledVector(inside, own[face] ?? 0);
  };
  const levelOf = (face: number, along: Vector3): number => {
    const ring = piece.faces[face]?.ring ?? [];
    const stand = stands[face];
    const [corner] = ring;
    return corner === undefined || stand === undefined
      ? 0
      : pointOn(stand, corner).add(shiftOf(face)).dot(along);
  };
  for (let round = 0; round < ROUNDS; round++) {
    let moved = false;
    for (const { inner, outer, gives, off, glued, by = outer } of lies) {
      const along = stands[by]?.inside ?? new Vector3();
      const lacks = off - (levelOf(inner, along) - levelOf(outer, along));
      if (glued ? Math.abs(lacks) < 1e-6 : lacks < 1e-6) continue;
      const way = (stands[gives]?.inside ?? along).dot(along) * (gives === outer ? -1 : 1);
      own[gives] = (own[gives] ?? 0) + way * lacks;
      moved = true;
    }
    if (!moved) break;
  }
  return piece.faces.map((_, face) => shiftOf(face));
}

function liesOf(
  piece: PieceNet,
  stands: readonly Stand[],
  caliperMm: number,
  solids: Solids,
): readonly Lies[] {
  const stays = new Set([
    0,
    ...piece.shell,
    ...piece.faces.flatMap(({ role }, face) => (STANDS.has(role) ? [face] : [])),
  ]);
  const found: Lies[] = [];
  for (const { tab, target, lap, gap } of piece.joints) {
    const [inner, outer] = lap === 'inside' ? [tab, target] : [target, tab];
    found.push({ inner, outer, gives: tab, off: Math.max(caliperMm, gap / 320), glued: true });
  }
  const lapped = (one: number, other: number) =>
    piece.overlaps.some((group) => group.includes(one) && group.includes(other));
  for (const { parent, child, restDeg } of piece.hinges)
    if (Math.abs(restDeg) > 179.5 && !lapped(parent, child)) {
      const [inner, outer] = restDeg > 0 ? [child, parent] : [parent, child];
      found.push({ inner, outer, gives: child, off: caliperMm, glued: false });
    }
  for (const group of piece.overlaps) {
    const held = group.findIndex((face) => stays.has(face));
    group.forEach((inner, at) => {
      group.slice(at + 1).forEach((outer, after) => {
        if (!flush(stands, inner, outer, piece, caliperMm)) return;
        if (!solids.overlapFlat(piece, stands, inner, outer)) return;
        const innerStays = held < 0 || at >= held;
        const holder = parentIn(piece, group.slice(0, at), inner);
        const inward = innerStays && at + 1 + after !== held ? outer : inner;
        const bent = [inner, outer].find((face) => isBent(piece, face));
        found.push({
          inner,
          outer,
          by: group.at(-1) ?? outer,
          gives:
            bent ??
            (parentIn(piece, [inner], outer) === inner
              ? outer
              : inward === inner
                ? (holder ?? inner)
                : inward),
          off: caliperMm,
          glued: false,
        });
      });
    });
  }
  return found;
}

/** The panel among these that a face hangs on, if it does: folded over with it, the face goes where that goes. */
const parentIn = ({ hinges }: PieceNet, among: readonly number[], face: number): number | undefined =>
  among.find((parent) => hinges.some((hinge) => hinge.parent === parent && hinge.child === face));

/** A part of a leaf that bends away from its middle. */
const isBent = ({ faces, hinges }: PieceNet, face: number): boolean =>
  faces[face]?.role === 'lid' &&
  hinges.some(
    ({ parent, child, kind }) =>
      kind === 'join' && child === face && faces[parent]?.panel === faces[face]?.panel,
  );

/** Do two faces lie in one plane, or a few cards off it? */
function flush(
  stands: readonly Stand[],
  one: number,
  other: number,
  { faces }: PieceNet,
  caliperMm: number,
): boolean {
  const [p, q] = [stands[one], stands[other]];
  const [a, b] = [faces[one]?.ring[0], faces[other]?.ring[0]];
  if (!p || !q || !a || !b || new Vector3().crossVectors(p.inside, q.inside).length() > PARALLEL)
    return false;
  return Math.abs(pointOn(p, a).sub(pointOn(q, b)).dot(q.inside)) < caliperMm / 2;
}

/** A face's outline as it is folded: flaps that fold in first are pared at their sides, as the net's own drawing says. */
export function cutLinesOf(piece: PieceNet, face: number) {
  return paringsOf(piece).filter((paring) => paring.face === face);
}

export const shifted = ({ place }: Stand, shift: Vector3): Matrix4 =>
  new Matrix4().makeTranslation(shift.x, shift.y, shift.z).multiply(place);
