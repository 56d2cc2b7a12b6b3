import { type At, areaOf } from '../plane';
import type { FoldFrame } from '../rows/fold-file';

/** The faces of a flat crease pattern that lists none: at each corner the next edge clockwise from the one come by, so rings run counter-clockwise. */
export function facesAround({
  vertices_coords,
  edges_vertices,
}: Pick<FoldFrame, 'vertices_coords' | 'edges_vertices'>): number[][] {
  const spokes: number[][] = vertices_coords.map(() => []);
  for (const [a, b] of edges_vertices) {
    spokes[a]?.push(b);
    spokes[b]?.push(a);
  }
  const at = (vertex: number): At => {
    const [x = 0, y = 0] = vertices_coords[vertex] ?? [];
    return [x, y];
  };
  spokes.forEach((ends, vertex) => {
    const [x, y] = at(vertex);
    const angle = (end: number) => Math.atan2(at(end)[1] - y, at(end)[0] - x);
    ends.sort((p, q) => angle(p) - angle(q));
  });
  const used = new Set<string>();
  const faces: number[][] = [];
  for (const [a, b] of edges_vertices)
    for (const [from, to] of [
      [a, b],
      [b, a],
    ] as const) {
      const ring: number[] = [];
      let [before, here] = [from, to];
      while (!used.has(`${before},${here}`)) {
        used.add(`${before},${here}`);
        ring.push(before);
        const ends = spokes[here] ?? [];
        const next = ends[(ends.indexOf(before) + ends.length - 1) % ends.length] ?? before;
        [before, here] = [here, next];
      }
      if (ring.length > 2 && areaOf(ring.map(at)) > 0) faces.push(ring);
    }
  return faces;
}
