import { dot, insideOf, type Pose, placeOf } from '../fold';
import type { LayerSense } from './layer-sense';
import { largestOverlap, type Overlap, triangulate } from './planar-overlap';
import type { At } from './strokes/types';
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
    return { triangles: triangulate(flat), box: boxAround(flat) };
  });
  const behind: Set<number>[] = faces.map(() => new Set());
  for (let a = 0; a < faces.length; a++)
    for (let b = a + 1; b < faces.length; b++) {
      if (!boxesMeet(figures[a]!.box, figures[b]!.box)) continue;
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

type Bounds = readonly [left: number, right: number, bottom: number, top: number];

function boxAround(ring: readonly At[]): Bounds {
  const xs = ring.map(([x]) => x);
  const ys = ring.map(([, y]) => y);
  return [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
}

const boxesMeet = (a: Bounds, b: Bounds) => a[0] < b[1] && b[0] < a[1] && a[2] < b[3] && b[2] < a[3];
