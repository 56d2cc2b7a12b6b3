import { type At, contains } from '../plane';
import type { FoldFrame } from '../rows/fold-file';

type Ring = number[];

/**
 * The openings of a frame: what it says itself, or every closed run of boundary that no face has along its edge. Where faces were derived from
 * the lines, an opening was taken for a face and is taken out again. `faces` are the frame's own, or derived.
 */
export function openingsOf(
  frame: FoldFrame,
  faces: readonly Ring[],
): { readonly faces: number[][]; readonly holes: number[][][] } {
  const told = frame['faces_cc:holes'];
  if (told !== undefined && frame.faces_vertices !== undefined)
    return { faces: [...faces], holes: faces.map((_, at) => told[at] ?? []) };
  const boundary = frame.edges_vertices.filter((_, edge) => frame.edges_assignment[edge] === 'B');
  const cut = new Set(boundary.flatMap(([a, b]) => [`${a},${b}`, `${b},${a}`]));
  const derived = frame.faces_vertices === undefined;
  const loose = derived
    ? faces.filter((ring) => sidesOf(ring).every((side) => cut.has(side)))
    : loopsOff(boundary, faces);
  const card = derived ? faces.filter((ring) => !loose.includes(ring)) : faces;
  const holes = card.map((): Ring[] => []);
  const kept: Ring[] = [];
  for (const ring of loose) {
    const within = card.findIndex((face) => isWithin(frame, ring, face));
    if (within >= 0) holes[within]?.push(ring);
    else if (derived) kept.push(ring);
  }
  return { faces: [...card, ...kept].map((ring) => [...ring]), holes: [...holes, ...kept.map(() => [])] };
}

const sidesOf = (ring: Ring): string[] => ring.map((a, at) => `${a},${ring[(at + 1) % ring.length]}`);

/** Closed runs of boundary edges that lie along no face. */
function loopsOff(boundary: readonly (readonly [number, number])[], faces: readonly Ring[]): Ring[] {
  const known = new Set(
    faces.flatMap((ring) => sidesOf(ring).flatMap((side) => [side, side.split(',').reverse().join()])),
  );
  const next = new Map<number, number[]>();
  for (const [a, b] of boundary)
    if (!known.has(`${a},${b}`)) {
      next.set(a, [...(next.get(a) ?? []), b]);
      next.set(b, [...(next.get(b) ?? []), a]);
    }
  const loops: Ring[] = [];
  const done = new Set<number>();
  for (const start of next.keys()) {
    const loop: number[] = [];
    for (let here: number | undefined = start; here !== undefined && !done.has(here); ) {
      done.add(here);
      loop.push(here);
      here = next.get(here)?.find((vertex) => !done.has(vertex));
    }
    if (loop.length > 2) loops.push(loop);
  }
  return loops;
}

/** Does a ring lie within a face? Its first corner says: rings do not cross. */
function isWithin({ vertices_coords }: FoldFrame, ring: Ring, face: Ring): boolean {
  const at = (vertex: number | undefined): At => {
    const [x = 0, y = 0] = vertices_coords[vertex ?? 0] ?? [];
    return [x, y];
  };
  return contains(face.map(at), at(ring[0]));
}
