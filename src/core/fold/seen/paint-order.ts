import {
  type At,
  areaOf,
  boxesOverlap,
  boxOf,
  clipTo,
  counterClockwise,
  type Ring,
  type Triangle,
  trianglesOf,
} from '../../plane';
import type { LayerSense } from '../layers';
import { insideOf, type Pose, placeOf } from '../pose';
import { dot } from '../vector';
import type { Seen, View } from './view';

/** A folded face as it is seen: its ring in the picture with each corner's nearness, and how it stands in space. */
export interface SeenFace {
  readonly ring: readonly Seen[];
  readonly pose: Pose;
}

const FLUSH_MM = 0.02; // faces nearer than this lie in one plane
const LEAST_MM2 = 0.05; // shared area too small to matter

/**
 * The order to paint faces in, farthest first, so that each covers what it hides. Faces do not pass through one another, so of two that
 * overlap in the picture one is nearer wherever they do; flush faces are told apart by `sense`. A ring of faces that each cover the next is
 * cut at the farthest.
 */
export function paintOrder(faces: readonly SeenFace[], view: View, sense: LayerSense): number[] {
  const figures = faces.map(({ ring }) => {
    const flat = ring.map(([x, y]): At => [x, y]);
    return { triangles: trianglesOf(flat), box: boxOf(flat) };
  });
  const behind: Set<number>[] = faces.map(() => new Set());
  for (let a = 0; a < faces.length; a++)
    for (let b = a + 1; b < faces.length; b++) {
      if (!boxesOverlap(figures[a]!.box, figures[b]!.box)) continue;
      const shared = largestOverlap(figures[a]!.triangles, figures[b]!.triangles);
      if (!shared || shared.area < LEAST_MM2) continue;
      if (isNearer(faces, view, sense, a, b, shared)) behind[a]!.add(b);
      else behind[b]!.add(a);
    }
  return sortBackToFront(faces, behind);
}

function isNearer(
  faces: readonly SeenFace[],
  view: View,
  sense: LayerSense,
  a: number,
  b: number,
  { middle }: Overlap,
): boolean {
  const gap = nearnessAt(faces[a]!, view, middle) - nearnessAt(faces[b]!, view, middle);
  if (Math.abs(gap) > FLUSH_MM) return gap > 0;
  const seesInside = dot(insideOf(faces[b]!.pose), view.toEye) > 0;
  return (sense(a, b) === 1) === seesInside;
}

/** How near the eye a face's plane is behind a point of the picture. */
function nearnessAt({ pose }: SeenFace, { right, up, toEye }: View, [x, y]: At): number {
  const normal = insideOf(pose);
  const onPlane = dot(placeOf(pose, 0, 0), normal);
  return (onPlane - x * dot(right, normal) - y * dot(up, normal)) / dot(toEye, normal);
}

function sortBackToFront(faces: readonly SeenFace[], behind: readonly Set<number>[]): number[] {
  const nearest = faces.map(({ ring }) => Math.max(...ring.map(([, , near]) => near)));
  const left = new Set(faces.keys());
  const order: number[] = [];
  while (left.size > 0) {
    const ready = [...left].filter((face) => [...behind[face]!].every((other) => !left.has(other)));
    const next = (ready.length > 0 ? ready : [...left]).reduce((a, b) => (nearest[b]! < nearest[a]! ? b : a));
    order.push(next);
    left.delete(next);
  }
  return order;
}

/** Where two flat figures cover one another: the largest piece of it, as its middle and its area. */
interface Overlap {
  readonly middle: At;
  readonly area: number;
}

/** The largest region that a triangle of one figure shares with a triangle of the other; null where they share none. */
function largestOverlap(a: readonly Triangle[], b: readonly Triangle[]): Overlap | null {
  let best: Overlap | null = null;
  for (const p of a)
    for (const q of b) {
      const shared = measure(clipTo(p, counterClockwise(q)));
      if (shared.area > (best?.area ?? 0)) best = shared;
    }
  return best;
}

function measure(ring: Ring): Overlap {
  const middle = (axis: 0 | 1) => ring.reduce((sum, point) => sum + point[axis], 0) / (ring.length || 1);
  return { area: Math.abs(areaOf(ring)), middle: [middle(0), middle(1)] };
}
