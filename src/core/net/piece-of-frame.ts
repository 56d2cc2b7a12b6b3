import { type At, distanceOutside } from '../plane';
import type { FoldFrame } from '../rows/fold-file';
import { cleanLine } from '../rows/text';
import { ROLES } from '../styles/language/roles';
import { millimetres, TICKS_PER_MM, ticks } from '../units/ticks';
import { finely } from './arc';
import { onSameEdge, ringsOf, wasteOf, withoutStraightCorners } from './outline';
import { netArea, pointAt } from './point';
import type { Blank, EdgeKind, Face, Hinge, NetEdge, PieceNet, Point } from './types';

/** A frame in millimeters with its faces and angles filled in. */
export type WholeFrame = FoldFrame & {
  readonly faces_vertices: readonly (readonly number[])[];
  readonly edges_foldAngle: readonly number[];
  /** Openings within each face. */
  readonly 'faces_cc:holes': readonly (readonly (readonly number[])[])[];
};

/** A frame in millimeters as a net; null where its faces are not one piece of card. What the frame leaves out is filled in plainly: walls, every fold in turn. */
export function pieceOfFrame(frame: WholeFrame, at: number): PieceNet | null {
  const { points, origin, blank } = placeCorners(frame);
  const rings = frame.faces_vertices.map((ring) => ringOf(ring, points, 1));
  const holes = rings.map((_, face) =>
    (frame['faces_cc:holes'][face] ?? []).map((hole) => ringOf(hole, points, -1)),
  );
  const plain = plainEdges(frame, points, { rings, sides: sidesOf(rings, holes) }, blank);
  if (plain.length < frame.edges_vertices.length) return null;
  const panels = rings.map((_, face) => frame['faces_cc:panel']?.[face] ?? `panel${face + 1}`);
  const hinges = hingesOf(frame, plain, panels);
  if (hinges.length !== rings.length - 1) return null;
  const edges = onHinges(plain, hinges);
  const faces = rings.map((ring, face): Face => {
    const role = frame['faces_cc:role']?.[face] ?? '';
    const name = frame['faces_cc:name']?.[face] ?? panels[face] ?? '';
    return {
      name,
      panel: panels[face] ?? name,
      role: ROLES.find((known) => known === role) ?? 'wall',
      ring: withoutStraightCorners(ring),
      holes: holes[face] ?? [],
    };
  });
  return {
    id: frame['cc:piece'] ?? `piece-${at + 1}`,
    ...(frame['cc:lid'] ? { lid: true as const } : {}),
    label: cleanLine(frame.frame_title ?? `Piece ${at + 1}`),
    blank,
    faces,
    edges,
    hinges,
    curves: curvesOf(frame, origin),
    joints: jointsOf(frame),
    seams: seamsOf(frame, edges),
    overlaps: frame['cc:overlaps'] ?? [],
    closing: frame['cc:closing'] ?? hinges.map(foldInTurn),
    ...(frame['cc:threads'] && {
      threads: frame['cc:threads'].map(({ long, ...thread }) => ({ ...thread, length: millimetres(long) })),
    }),
    waste: wasteOf(blank, ringsOf(edges.filter(({ right }) => right === null))),
    shell: frame['cc:shell'] ?? [],
    roomMm3: frame['cc:roomMm3'] ?? 0,
  };
}

const foldInTurn = ({ restDeg, panel }: Hinge, hinge: number): PieceNet['closing'][number] => ({
  do: 'fold',
  hinges: [hinge],
  toDeg: [restDeg],
  panels: [panel],
  bends: false,
  tip: null,
});

/** The frame's corners with its lower left one at nothing; `origin` is where that was, in ticks. */
function placeCorners(frame: WholeFrame) {
  const raw = frame.vertices_coords.map(([x = 0, y = 0]) => pointAt(x * TICKS_PER_MM, y * TICKS_PER_MM));
  const origin = pointAt(Math.min(...raw.map(({ x }) => x)), Math.min(...raw.map(({ y }) => y)));
  const points = raw.map(({ x, y }) => pointAt(x - origin.x, y - origin.y));
  const blank: Blank = {
    across: ticks(Math.max(...points.map(({ x }) => x))),
    up: ticks(Math.max(...points.map(({ y }) => y))),
  };
  return { points, origin, blank };
}

/** A ring that runs counterclockwise (1) or clockwise (-1). */
function ringOf(vertices: readonly number[], points: readonly Point[], turn: 1 | -1): Point[] {
  const corners = vertices.map((vertex) => points[vertex] ?? pointAt(0, 0));
  return netArea(corners) * turn < 0 ? corners.reverse() : corners;
}

interface FacesOfFrame {
  readonly rings: readonly (readonly Point[])[];
  /** The face on the left of each directed edge. */
  readonly sides: ReadonlyMap<string, number>;
}

/** Each edge of the frame between the faces it parts, before it is known which of them are hinges; a cut within a face has that face on both sides. Any other edge of no face is left out. */
function plainEdges(
  frame: WholeFrame,
  points: readonly Point[],
  { rings, sides }: FacesOfFrame,
  blank: Blank,
): NetEdge[] {
  return frame.edges_vertices.flatMap(([p, q], edge): NetEdge[] => {
    const [a, b] = [points[p] ?? pointAt(0, 0), points[q] ?? pointAt(0, 0)];
    const [ahead, back] = [sides.get(keyOf(a, b)), sides.get(keyOf(b, a))];
    if (ahead === undefined && back === undefined) {
      const within = frame.edges_assignment[edge] === 'C' ? faceRound(rings, a, b) : -1;
      const slit = {
        a,
        b,
        left: within,
        right: within,
        kind: 'slit',
        foldDeg: 0,
        hinge: null,
        curve: null,
      } as const;
      return within < 0 ? [] : [slit];
    }
    const [left, right] = ahead === undefined ? [back ?? 0, null] : [ahead, back ?? null];
    return [
      {
        ...(ahead === undefined ? { a: b, b: a } : { a, b }),
        left,
        right,
        kind: kindOf(frame.edges_assignment[edge] ?? 'B', right, onSameEdge(blank, a, b)),
        foldDeg: frame.edges_foldAngle[edge] ?? 0,
        hinge: null,
        curve: frame['edges_cc:curve']?.[edge] ?? null,
      },
    ];
  });
}

/** The face that a line lies in, by its middle; -1 where it lies in none. */
const faceRound = (rings: readonly (readonly Point[])[], a: Point, b: Point): number =>
  rings.findIndex(
    (ring) =>
      distanceOutside(
        [(a.x + b.x) / 2, (a.y + b.y) / 2],
        ring.map(({ x, y }): At => [x, y]),
      ) <= 0,
  );

/** The same edges with the hinge that each belongs to, run so that the parent is on their left. */
function onHinges(plain: readonly NetEdge[], hinges: readonly Hinge[]): NetEdge[] {
  const hingeOf = new Map(hinges.map(({ child, parent }, hinge) => [`${parent},${child}`, hinge]));
  return plain.map((edge): NetEdge => {
    const { a, b, left, right, kind } = edge;
    if ((kind !== 'score' && kind !== 'join') || right === null) return edge;
    const along = hingeOf.get(`${left},${right}`);
    if (along !== undefined) return { ...edge, hinge: along };
    const against = hingeOf.get(`${right},${left}`);
    return against === undefined ? edge : { ...edge, a: b, b: a, left: right, right: left, hinge: against };
  });
}

function curvesOf(frame: WholeFrame, origin: Point): PieceNet['curves'] {
  const move = ([x, y]: readonly [number, number]): Point =>
    pointAt(x * TICKS_PER_MM - origin.x, y * TICKS_PER_MM - origin.y);
  return (frame['cc:curves'] ?? []).map(({ a, b, centre, radius, kind }) => ({
    a: move(a),
    b: move(b),
    centre: [finely(centre[0] * TICKS_PER_MM - origin.x), finely(centre[1] * TICKS_PER_MM - origin.y)],
    radius: finely(radius * TICKS_PER_MM),
    kind,
  }));
}

const jointsOf = (frame: WholeFrame): PieceNet['joints'] =>
  (frame['cc:glue'] ?? []).map(([tab, target], joint) => {
    const lap = frame['cc:laps']?.[joint];
    return {
      tab,
      target,
      lap: lap?.lap ?? 'inside',
      carries: lap?.carries ?? false,
      ...(lap?.glueOnly && { glueOnly: lap.glueOnly }),
      gap: millimetres(lap?.gap ?? 0),
    };
  });

const seamsOf = (frame: WholeFrame, edges: readonly NetEdge[]): PieceNet['seams'] =>
  (frame['cc:seams'] ?? []).map(([a, b], seam) => {
    const side = frame['cc:seamSides']?.[seam];
    return {
      a,
      b,
      faces: side?.faces ?? [edges[a]?.left ?? 0, edges[b]?.left ?? 0],
      gap: millimetres(side?.gap ?? 0),
    };
  });

const keyOf = (a: Point, b: Point): string => `${a.x},${a.y},${b.x},${b.y}`;

/** The face on the left of each directed edge, along its ring and its holes. */
function sidesOf(
  rings: readonly (readonly Point[])[],
  holes: readonly (readonly (readonly Point[])[])[],
): ReadonlyMap<string, number> {
  const sides = new Map<string, number>();
  rings.forEach((outer, face) => {
    for (const ring of [outer, ...(holes[face] ?? [])])
      ring.forEach((a, at) => {
        sides.set(keyOf(a, ring[(at + 1) % ring.length] ?? a), face);
      });
  });
  return sides;
}

function kindOf(
  assigned: FoldFrame['edges_assignment'][number],
  right: number | null,
  trimmed: boolean,
): EdgeKind {
  if (right === null) return trimmed ? 'edge' : 'cut';
  if (assigned === 'J') return 'join';
  return assigned === 'B' || assigned === 'C' ? 'slit' : 'score';
}

/** The fold tree: the frame's own parents, or outwards from the first face by scores and joins. Parents before children. */
function hingesOf(frame: WholeFrame, edges: readonly NetEdge[], panels: readonly string[]): Hinge[] {
  const parents = frame['faces_cc:parent'] ?? reach(edges, panels.length);
  const depth = (face: number): number => {
    let deep = 0;
    for (let up = parents[face]; up !== null && up !== undefined && deep <= panels.length; up = parents[up])
      deep++;
    return deep;
  };
  const inOrder = parents.every((parent, child) => parent === null || parent < child);
  const children = [...parents.entries()].map(([child, parent]) => ({ child, parent }));
  if (!inOrder) children.sort((p, q) => depth(p.child) - depth(q.child));
  return children.flatMap(({ child, parent }): Hinge[] => {
    if (parent === null) return [];
    const shared = edges.filter(
      ({ kind, left, right }) =>
        (kind === 'score' || kind === 'join') &&
        ((left === parent && right === child) || (left === child && right === parent)),
    );
    const [first] = shared;
    if (first === undefined || (first.kind !== 'score' && first.kind !== 'join')) return [];
    const runs = shared.map((edge) => (edge.left === parent ? edge : { ...edge, a: edge.b, b: edge.a }));
    const [start] = runs;
    if (start === undefined) return [];
    const along = (p: Point) =>
      (p.x - start.a.x) * (start.b.x - start.a.x) + (p.y - start.a.y) * (start.b.y - start.a.y);
    const ends = runs.flatMap(({ a, b }) => [a, b]).sort((p, q) => along(p) - along(q));
    const [a, b] = [ends[0] ?? start.a, ends[ends.length - 1] ?? start.b];
    return [{ parent, child, a, b, restDeg: first.foldDeg, kind: first.kind, panel: panels[child] ?? '' }];
  });
}

/** Each face's parent when the tree grows by breadth from the first face; null for it and for faces out of reach. */
function reach(edges: readonly NetEdge[], faces: number): (number | null)[] {
  const parents: (number | null)[] = Array.from({ length: faces }, () => null);
  const seen = new Set([0]);
  const queue = [0];
  for (let here = queue.shift(); here !== undefined; here = queue.shift())
    for (const { kind, left, right } of edges) {
      if ((kind !== 'score' && kind !== 'join') || right === null || (left !== here && right !== here))
        continue;
      const other = left === here ? right : left;
      if (seen.has(other)) continue;
      seen.add(other);
      parents[other] = here;
      queue.push(other);
    }
  return parents;
}
