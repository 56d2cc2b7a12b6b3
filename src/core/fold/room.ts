import type { FoldedFace } from './fold-piece';
import { cross, distance, dot, type Vector } from './vector';

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
  const rings = shell.map((face) => (faces[face]?.ring ?? []).map(idOf));
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
