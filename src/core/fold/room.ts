import type { FoldedFace } from './fold-piece';
import { insideOf } from './pose';
import { cross, distance, dot, minus, type Vector } from './vector';

/**
 * Room inside a shell of folded faces, mm³, by the divergence theorem; openings are closed with caps. Corners nearer than `weldMm` are one
 * corner. Positive when the faces' insides look inwards.
 */
export function roomInside(faces: readonly FoldedFace[], shell: readonly number[], weldMm: number): number {
  const corners: Vector[] = [];
  const idOf = (point: Vector): number => {
    const known = corners.findIndex(
      (corner) => Math.abs(corner[0] - point[0]) <= weldMm && distance(corner, point) <= weldMm,
    );
    return known >= 0 ? known : corners.push(point) - 1;
  };
  const rings = shell.map((face) => wholeRing(faces[face]).map(idOf));
  const open = new Map<string, readonly [number, number]>();
  for (const ring of rings)
    ring.forEach((from, at) => {
      const to = ring[(at + 1) % ring.length] ?? from;
      if (from === to || open.delete(`${to},${from}`)) return;
      open.set(`${from},${to}`, [from, to]);
    });
  const caps = loopsOf([...open.values()]).map((loop) => loop.reverse());
  const at = (id: number): Vector => corners[id] ?? [0, 0, 0];
  let six = 0;
  for (const ring of [...rings, ...caps])
    for (let k = 1; k + 1 < ring.length; k++)
      six += dot(at(ring[0] ?? 0), cross(at(ring[k] ?? 0), at(ring[k + 1] ?? 0)));
  return -six / 6;
}

/** A face's corners as if nothing were notched out of its edges: a thumb notch takes no room. */
function wholeRing(face: FoldedFace | undefined): readonly Vector[] {
  if (face === undefined) return [];
  const inside = insideOf(face.pose);
  const kept = [...face.ring];
  for (let at = 0, steady = 0; steady < kept.length && kept.length > 3; ) {
    const [before, here, after] = [-1, 0, 1].map((step) => kept[(at + step + kept.length) % kept.length]);
    if (before === undefined || here === undefined || after === undefined) break;
    const turn = dot(cross(minus(here, before), minus(after, here)), inside);
    if (turn < -REFLEX) {
      kept.splice(at, 1);
      steady = 0;
    } else {
      at++;
      steady++;
    }
    if (at >= kept.length) at = 0;
  }
  return kept;
}

/** Rounding of corners to ticks may turn a straight edge by this much. source: our choice, mm² */
const REFLEX = 0.05;

/** Chains one-sided edges into closed loops. */
function loopsOf(edges: readonly (readonly [number, number])[]): number[][] {
  const next = new Map<number, number[]>();
  for (const [from, to] of edges) next.set(from, [...(next.get(from) ?? []), to]);
  const loops: number[][] = [];
  for (const [start] of edges) {
    const loop: number[] = [];
    let here = next.get(start)?.pop();
    while (here !== undefined) {
      loop.push(here);
      here = here === start ? undefined : next.get(here)?.pop();
    }
    if (loop.length > 2) loops.push(loop);
  }
  return loops;
}
