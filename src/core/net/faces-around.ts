import type { FoldFrame } from '../../../shared/fold-file';

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
  const at = (vertex: number) => vertices_coords[vertex] ?? [0, 0];
  spokes.forEach((ends, vertex) => {
    const [x = 0, y = 0] = at(vertex);
    const angle = (end: number) => Math.atan2((at(end)[1] ?? 0) - y, (at(end)[0] ?? 0) - x);
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
      if (ring.length > 2 && area(ring) > 0) faces.push(ring);
    }
  return faces;

  function area(ring: readonly number[]): number {
    return ring.reduce((sum, vertex, k) => {
      const [x = 0, y = 0] = at(vertex);
      const [u = 0, v = 0] = at(ring[(k + 1) % ring.length] ?? vertex);
      return sum + x * v - u * y;
    }, 0);
  }
}
