import { cross, dot, minus, type Vector } from '../../core/fold';
import { type Camera, onPage } from './camera';

/** A flat convex face in space. */
export interface SpaceFace {
  readonly ring: readonly Vector[];
}

/** Within this, mm, a corner counts as lying in a plane: a fifth of a thin card. */
const IN_PLANE = 0.04;

/**
 * Faces from the farthest to the nearest, so that each may be painted over the ones before it. Of two that meet on the page, the one that
 * lies wholly beyond the other's plane comes first (Newell, Newell and Sancha 1972, from memory, without their splitting).
 */
export function orderByDepth<Face extends SpaceFace>(faces: readonly Face[], camera: Camera): Face[] {
  const seen = faces.map((face) => look(face, camera));
  const behind = seen.map((near) =>
    seen.flatMap((far, at) => (far !== near && hides(near, far) ? [at] : [])),
  );
  const order: number[] = [];
  const state = new Uint8Array(faces.length);
  const paint = (at: number) => {
    if (state[at] !== 0) return;
    state[at] = 1;
    behind[at]?.forEach(paint);
    order.push(at);
  };
  [...seen.keys()].sort((a, b) => seen[a]!.depth - seen[b]!.depth).forEach(paint);
  return order.map((at) => faces[at]!);
}

interface Seen {
  readonly ring: readonly Vector[];
  readonly flat: readonly (readonly [number, number])[];
  /** Square to the face, on the side of the eye. */
  readonly normal: Vector;
  readonly depth: number;
}

function look({ ring }: SpaceFace, camera: Camera): Seen {
  const square = normalOf(ring);
  const facing = dot(square, camera.towards) >= 0;
  return {
    ring,
    flat: ring.map((point) => onPage(camera, point)),
    normal: facing ? square : [-square[0], -square[1], -square[2]],
    depth: ring.reduce((sum, point) => sum + dot(point, camera.towards), 0) / ring.length,
  };
}

/** Square to a ring, unit length (Newell's sum, which any corner may be missing from). */
export function normalOf(ring: readonly Vector[]): Vector {
  let sum: Vector = [0, 0, 0];
  ring.forEach((point, at) => {
    const [a, b] = [minus(point, ring[0]!), minus(ring[(at + 1) % ring.length]!, ring[0]!)];
    const [x, y, z] = cross(a, b);
    sum = [sum[0] + x, sum[1] + y, sum[2] + z];
  });
  const long = Math.hypot(...sum) || 1;
  return [sum[0] / long, sum[1] / long, sum[2] / long];
}

/** True where `near` must be painted after `far`. */
function hides(near: Seen, far: Seen): boolean {
  if (!meetOnPage(near.flat, far.flat)) return false;
  const beyond = far.ring.every((point) => dot(minus(point, near.ring[0]!), near.normal) <= IN_PLANE);
  const before = near.ring.every((point) => dot(minus(point, far.ring[0]!), far.normal) >= -IN_PLANE);
  if (beyond && before) return near.depth > far.depth;
  return beyond || before;
}

/** Whether two convex rings share more than an edge on the page: no line along a side of either parts them. */
function meetOnPage(a: Seen['flat'], b: Seen['flat']): boolean {
  return !partedBySide(a, b) && !partedBySide(b, a);
}

const TOUCHING = 0.05;

function partedBySide(a: Seen['flat'], b: Seen['flat']): boolean {
  return a.some(([x1, y1], at) => {
    const [x2, y2] = a[(at + 1) % a.length]!;
    const long = Math.hypot(x2 - x1, y2 - y1);
    if (long < 1e-9) return false;
    const [nx, ny] = [(y2 - y1) / long, (x1 - x2) / long];
    const across = (points: Seen['flat']) => points.map(([x, y]) => (x - x1) * nx + (y - y1) * ny);
    const [own, other] = [across(a), across(b)];
    return (
      Math.max(...own) - TOUCHING <= Math.min(...other) || Math.max(...other) - TOUCHING <= Math.min(...own)
    );
  });
}
