import { cross, dot, insideOf, minus, type Pose, plus, size, times, type Vector } from '../fold';

/** A flat convex face in space, ready to be tested against others. */
export interface Plate {
  readonly ring: readonly Vector[];
  readonly inside: Vector;
  readonly low: Vector;
  readonly high: Vector;
}

/** A face's ring in space, lifted towards the inside by `lift` mm. */
export function plateOf(ring: readonly Vector[], pose: Pose, lift: number): Plate {
  const inside = insideOf(pose);
  const lifted = lift === 0 ? ring : ring.map((corner) => plus(corner, times(inside, lift)));
  const low: [number, number, number] = [Infinity, Infinity, Infinity];
  const high: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (const corner of lifted)
    for (const axis of [0, 1, 2] as const) {
      low[axis] = Math.min(low[axis], corner[axis]);
      high[axis] = Math.max(high[axis], corner[axis]);
    }
  return { ring: lifted, inside, low, high };
}

/**
 * How deep two convex plates run into each other, mm, by separating axes; 0 when some line parts them or they only touch within `slack`.
 * Plates in one plane (within `slack`) are a separate question: overlap within that plane.
 */
export function crossingDepth(
  p: Plate,
  q: Plate,
  slack: number,
): { readonly depth: number; readonly level: boolean } {
  const apart = { depth: 0, level: false };
  for (const axis of [0, 1, 2] as const)
    if (p.high[axis] - q.low[axis] <= slack && !flatAlong(p, q, axis)) return apart;
  for (const axis of [0, 1, 2] as const)
    if (q.high[axis] - p.low[axis] <= slack && !flatAlong(p, q, axis)) return apart;
  const level = inOnePlane(p, q, slack);
  let depth = Infinity;
  for (const axis of axesOf(p, q, level)) {
    depth = Math.min(depth, overlapAlong(p.ring, q.ring, axis));
    if (depth <= slack) return { depth: 0, level };
  }
  return { depth, level };
}

/** Two plates lying flat in one plane have no extent across it: that axis cannot part them. */
const flatAlong = (p: Plate, q: Plate, axis: 0 | 1 | 2): boolean =>
  Math.abs(p.inside[axis]) > 0.999 && Math.abs(q.inside[axis]) > 0.999;

function inOnePlane(p: Plate, q: Plate, slack: number): boolean {
  if (size(cross(p.inside, q.inside)) > 1e-3) return false;
  const origin = p.ring[0] ?? [0, 0, 0];
  return q.ring.every((corner) => Math.abs(dot(minus(corner, origin), p.inside)) <= slack);
}

/** Axes that could part two plates: in one plane their edges' normals, else both faces' normals, edge with edge, and edges within each plane. */
function* axesOf(p: Plate, q: Plate, level: boolean): Generator<Vector> {
  const [ps, qs] = [edgesOf(p), edgesOf(q)];
  for (const edge of ps) yield* unit(cross(edge, p.inside));
  for (const edge of qs) yield* unit(cross(edge, q.inside));
  if (level) return;
  yield p.inside;
  yield q.inside;
  for (const one of ps) for (const other of qs) yield* unit(cross(one, other));
}

const edgesOf = ({ ring }: Plate): Vector[] =>
  ring.map((corner, at) => minus(ring[(at + 1) % ring.length] ?? corner, corner));

function unit(axis: Vector): Vector[] {
  const long = size(axis);
  return long < 1e-6 ? [] : [times(axis, 1 / long)];
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
