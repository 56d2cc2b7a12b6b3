import type { PieceNet } from '../net/types';
import { convexParts, counterClockwise } from '../plane';
import { flatRing } from './closed-piece';
import type { FoldedFace } from './fold-piece';
import { insideOf, type Pose, placeOf } from './pose';
import { cross, dot, minus, plus, size, times, type Vector } from './vector';

/** Each face as plates in space (one if convex), lifted towards its inside by `liftOf(face)` mm. */
export function platesOf(
  piece: PieceNet,
  faces: readonly FoldedFace[],
  liftOf: (face: number) => number,
): Plate[][] {
  return faces.map(({ pose, ring }, face) => {
    const flat = counterClockwise(flatRing(piece, face));
    const parts = convexParts(flat);
    const [only] = parts;
    if (parts.length === 1 && only === flat) return [plateOf(ring, pose, liftOf(face))];
    return parts.map((part) =>
      plateOf(
        part.map(([x, y]) => placeOf(pose, x, y)),
        pose,
        liftOf(face),
      ),
    );
  });
}

export interface Collision {
  readonly one: number;
  readonly other: number;
  readonly depth: number;
  readonly level: boolean;
}

/** Looks at one way the panels may stand, mid-act: what runs into what. `among` narrows it to what moves. */
export type LookAt = (angles: readonly number[], among?: ReadonlySet<number>) => readonly Collision[];

/** All pairs of faces that run into each other by more than `slack` mm; overlaps within one plane only if `withLevel`; with `among`, only pairs with one of these. */
export function collisions(
  piece: PieceNet,
  plates: readonly (readonly Plate[])[],
  slack: number,
  withLevel: boolean,
  among?: ReadonlySet<number>,
): Collision[] {
  const [hinged, lapped] = [hingedPairs(piece), lappedPairs(piece)];
  const found: Collision[] = [];
  for (let one = 0; one < plates.length; one++)
    for (let other = one + 1; other < plates.length; other++) {
      if (among !== undefined && among.has(one) === among.has(other) && !among.has(one)) continue;
      for (const p of plates[one] ?? [])
        for (const q of plates[other] ?? []) {
          if (!near(p, q, slack)) continue;
          const pair = pairKey(piece, one, other);
          if (hinged.has(pair)) continue;
          const { depth, level } = crossingDepth(p, q, slack);
          if (depth > slack && (!level || (withLevel && !lapped.has(pair))))
            found.push({ one, other, depth, level });
        }
    }
  return found;
}

/** Pairs of faces by `pairKey` that may touch all along: hinged to one another. */
const hingedPairs = (piece: PieceNet): ReadonlySet<number> =>
  new Set(piece.hinges.map(({ parent, child }) => pairKey(piece, parent, child)));

/** Pairs of faces by `pairKey` that may lie on one another in one plane: glued, or declared to lap. */
function lappedPairs(piece: PieceNet): ReadonlySet<number> {
  const pairs = new Set(piece.joints.map(({ tab, target }) => pairKey(piece, tab, target)));
  for (const group of piece.overlaps)
    for (const p of group) for (const q of group) pairs.add(pairKey(piece, p, q));
  return pairs;
}

const pairKey = ({ faces }: PieceNet, p: number, q: number): number =>
  Math.min(p, q) * faces.length + Math.max(p, q);

/** A flat convex face in space, ready to be tested against others. */
export interface Plate {
  readonly ring: readonly Vector[];
  readonly inside: Vector;
  readonly low: Vector;
  readonly high: Vector;
}

/** A face's ring in space, lifted towards the inside by `lift` mm. */
function plateOf(ring: readonly Vector[], pose: Pose, lift: number): Plate {
  const inside = insideOf(pose);
  const lifted = lift === 0 ? ring : ring.map((corner) => plus(corner, times(inside, lift)));
  const low: [number, number, number] = [Infinity, Infinity, Infinity];
  const high: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (const corner of lifted)
    for (const axis of [0, 1, 2] as const) {
      if (corner[axis] < low[axis]) low[axis] = corner[axis];
      if (corner[axis] > high[axis]) high[axis] = corner[axis];
    }
  return { ring: lifted, inside, low, high };
}

/** Do the boxes round two plates come nearer than `slack`? The cheap question before the dear one. */
const near = (p: Plate, q: Plate, slack: number): boolean =>
  p.high[0] >= q.low[0] - slack &&
  q.high[0] >= p.low[0] - slack &&
  p.high[1] >= q.low[1] - slack &&
  q.high[1] >= p.low[1] - slack &&
  p.high[2] >= q.low[2] - slack &&
  q.high[2] >= p.low[2] - slack;

/**
 * How deep two convex plates run into each other, mm, by separating axes; 0 when some line parts them or they only touch within `slack`.
 * Plates in one plane (within `slack`) are a separate question, `level`: overlap within that plane.
 */
function crossingDepth(
  p: Plate,
  q: Plate,
  slack: number,
): { readonly depth: number; readonly level: boolean } {
  const level = inOnePlane(p, q, slack);
  let depth = Infinity;
  /** Does this axis part them? Keeps the least overlap met so far. */
  const parts = (axis: Vector): boolean => {
    depth = Math.min(depth, overlapAlong(p.ring, q.ring, axis));
    return depth <= slack;
  };
  const partsAsUnit = (axis: Vector): boolean => {
    const long = size(axis);
    return long >= 1e-6 && parts(times(axis, 1 / long));
  };
  const apart = { depth: 0, level };
  if (!level && (parts(p.inside) || parts(q.inside))) return apart;
  for (let at = 0; at < p.ring.length; at++) if (partsAsUnit(cross(edgeOf(p, at), p.inside))) return apart;
  for (let at = 0; at < q.ring.length; at++) if (partsAsUnit(cross(edgeOf(q, at), q.inside))) return apart;
  if (!level)
    for (let at = 0; at < p.ring.length; at++) {
      const edge = edgeOf(p, at);
      for (let other = 0; other < q.ring.length; other++)
        if (partsAsUnit(cross(edge, edgeOf(q, other)))) return apart;
    }
  return { depth, level };
}

const ORIGIN: Vector = [0, 0, 0];

const edgeOf = ({ ring }: Plate, at: number): Vector => {
  const from = ring[at] ?? ORIGIN;
  return minus(ring[at + 1] ?? ring[0] ?? from, from);
};

function inOnePlane(p: Plate, q: Plate, slack: number): boolean {
  if (size(cross(p.inside, q.inside)) > 1e-3) return false;
  const level = dot(p.ring[0] ?? ORIGIN, p.inside);
  return q.ring.every((corner) => Math.abs(dot(corner, p.inside) - level) <= slack);
}

function overlapAlong(p: readonly Vector[], q: readonly Vector[], axis: Vector): number {
  let [lowP, highP, lowQ, highQ] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const corner of p) {
    const at = dot(corner, axis);
    if (at < lowP) lowP = at;
    if (at > highP) highP = at;
  }
  for (const corner of q) {
    const at = dot(corner, axis);
    if (at < lowQ) lowQ = at;
    if (at > highQ) highQ = at;
  }
  return Math.min(highP - lowQ, highQ - lowP);
}
