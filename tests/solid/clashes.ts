import type { Manifold } from 'manifold-3d';
import { Vector3 } from 'three';
import type { PieceNet } from '../../src/core/net';
import { samePoint } from '../../src/core/net/point';
import { pointOn, type Stand, standsOf } from './places';
import type { Solids } from './solids';
import { shifted, stackOf } from './stack';

/** How far card may reach into card, mm: it gives so much under a finger. */
const GIVES_MM = 0.05;

/** Some card of one or two faces: a plate, or the bend between a panel and what is folded on it. */
export interface Body {
  readonly solid: Manifold;
  readonly faces: readonly number[];
}

/** Where a closed piece stands, in card of its thickness. */
export interface Built {
  readonly piece: PieceNet;
  readonly stands: readonly Stand[];
  readonly shifts: readonly Vector3[];
  readonly bodies: readonly Body[];
  readonly caliperMm: number;
}

export interface Clash {
  readonly one: string;
  readonly other: string;
  readonly deepMm: number;
}

/** Every face of a closed piece as a plate of its caliper at its place in the stack, and the card between a panel and a flap that lies farther out. */
export function build(
  piece: PieceNet,
  caliperMm: number,
  solids: Solids,
  leftOut: LeftOut = () => false,
): Built {
  const stands = standsOf(piece);
  const shifts = stackOf(piece, stands, caliperMm, solids, leftOut);
  const skin = GIVES_MM / 2;
  const plates = stands.map(
    (stand, face): Body => ({
      solid: solids.plate(piece, face, shifted(stand, shifts[face] ?? new Vector3()), caliperMm, skin),
      faces: [face],
    }),
  );
  const bends = piece.hinges.flatMap(({ parent, child, a, b }): Body[] => {
    const stand = stands[parent];
    if (stand === undefined) return [];
    const ends = [pointOn(stand, a), pointOn(stand, b)];
    const along = (ends[1] as Vector3)
      .clone()
      .sub(ends[0] as Vector3)
      .normalize()
      .multiplyScalar(caliperMm / 2);
    const inner = [(ends[0] as Vector3).clone().add(along), (ends[1] as Vector3).clone().sub(along)];
    const points = [parent, child].flatMap((face) =>
      inner.map((p) => p.clone().add(shifts[face] ?? new Vector3())),
    );
    return [{ solid: solids.rod(points, caliperMm / 2 - skin), faces: [parent, child] }];
  });
  return { piece, stands, shifts, bodies: [...plates, ...bends], caliperMm };
}

/** Which pairs of panels are not asked about. */
export type LeftOut = (one: string, other: string) => boolean;

/** Card that reaches into card by more than it gives, worst first. Where two panels meet in a fold or seam, the card of the fold itself is left out. */
export function clashesIn(built: Built, solids: Solids, leftOut: LeftOut = () => false): Clash[] {
  const { piece, bodies } = built;
  const worst = new Map<string, Clash>();
  const boxes = bodies.map(({ solid }) => solid.boundingBox());
  const name = (face: number) => piece.faces[face]?.panel ?? '';
  bodies.forEach((p, at) => {
    bodies.slice(at + 1).forEach((q, after) => {
      if (p.faces.some((face) => q.faces.includes(face))) return;
      const [one, other] = [p.faces.map(name).join('|'), q.faces.map(name).join('|')];
      if (p.faces.some((f) => q.faces.some((g) => name(f) === name(g) || leftOut(name(f), name(g))))) return;
      const [a, b] = [boxes[at], boxes[at + 1 + after]];
      if (
        !a ||
        !b ||
        [0, 1, 2].some((k) => (a.max[k] ?? 0) < (b.min[k] ?? 0) || (b.max[k] ?? 0) < (a.min[k] ?? 0))
      )
        return;
      const deep = solids.reachInto(p.solid, q.solid, waysOf(built, p, q), () =>
        zonesOf(built, p, q, solids),
      );
      if (deep === 0) return;
      const key = `${one} ${other}`;
      const deepMm = deep + GIVES_MM;
      if ((worst.get(key)?.deepMm ?? 0) < deepMm) worst.set(key, { one, other, deepMm });
    });
  });
  return [...worst.values()].sort((p, q) => q.deepMm - p.deepMm);
}

/** Ways in which one body may be moved off another: square to their faces, and along the bench's axes. */
const waysOf = ({ stands }: Built, p: Body, q: Body): readonly Vector3[] => [
  ...[...p.faces, ...q.faces].flatMap((face) => stands[face]?.inside ?? []),
  new Vector3(1, 0, 0),
  new Vector3(0, 1, 0),
  new Vector3(0, 0, 1),
];

/** The card of folds that two bodies share: along a line where two of their panels are joined, and round a corner that they have in common on the net. */
function zonesOf(built: Built, p: Body, q: Body, solids: Solids): Manifold[] {
  return p.faces.flatMap((one) =>
    q.faces.flatMap((other) => [
      ...linesBetween(built, one, other, solids),
      ...cornersOf(built, one, other, solids),
    ]),
  );
}

function linesBetween(
  { piece, stands, shifts, caliperMm }: Built,
  one: number,
  other: number,
  solids: Solids,
): Manifold[] {
  const joins = (p: number, q: number) => (p === one && q === other) || (p === other && q === one);
  const [s, u] = [stands[one], stands[other]];
  if (!s || !u) return [];
  const open = Math.PI - s.inside.angleTo(u.inside);
  const lifted = [one, other].reduce((sum, face) => sum + (shifts[face]?.length() ?? 0), caliperMm);
  const reach = 1.5 * caliperMm + lifted / Math.max(Math.sin(Math.min(open, Math.PI / 2)), 0.1);
  const rod = (face: number, a: { x: number; y: number }, b: { x: number; y: number }) => {
    const stand = stands[face];
    return stand === undefined ? [] : [solids.rod([pointOn(stand, a), pointOn(stand, b)], 1.2 * reach)];
  };
  return [
    ...piece.edges.flatMap(({ a, b, left, right, kind }) =>
      right !== null && joins(left, right) && (kind === 'score' || kind === 'join') ? rod(left, a, b) : [],
    ),
    ...piece.hinges.flatMap(({ a, b, parent, child }) => (joins(parent, child) ? rod(parent, a, b) : [])),
    ...piece.seams.flatMap(({ a, faces: [p, q] }) => {
      const edge = piece.edges[a];
      return edge && joins(p, q) ? rod(p, edge.a, edge.b) : [];
    }),
    // a web that is folded back along a seam meets the panel beyond the seam there
    ...piece.seams.flatMap(({ a, b, faces: [p, q] }) =>
      [
        [p, b],
        [q, a],
      ].flatMap(([face, beyond]) => {
        const edge = piece.edges[beyond ?? -1];
        const isOnIt = piece.hinges.some(
          (hinge) =>
            (joins(face ?? -1, hinge.child) || joins(face ?? -1, hinge.parent)) &&
            edge !== undefined &&
            [hinge.a, hinge.b].every((end) => samePoint(end, edge.a) || samePoint(end, edge.b)),
        );
        const there = beyond === b ? q : p;
        return isOnIt && edge !== undefined ? rod(there, edge.a, edge.b) : [];
      }),
    ),
  ];
}

/** Corners in the same place when closed, or a card apart where a panel is drawn narrower: folds and seams end there. */
function cornersOf(built: Built, one: number, other: number, solids: Solids): Manifold[] {
  const { piece, stands, caliperMm } = built;
  const [s, u] = [stands[one], stands[other]];
  if (!s || !u) return [];
  const there = (piece.faces[other]?.ring ?? []).map((at) => pointOn(u, at));
  return (piece.faces[one]?.ring ?? [])
    .map((at) => pointOn(s, at))
    .flatMap((corner) =>
      there.some((at) => at.distanceTo(corner) < 1.1 * caliperMm)
        ? [solids.rod([corner], Math.max(3 * caliperMm, pointedTip(built, one, other, corner)))]
        : [],
    );
}

/** At the tip of a cone or pyramid, where opposite walls come nearer than a card, the point gives. */
function pointedTip(
  { piece: { faces, hinges }, stands, caliperMm }: Built,
  one: number,
  other: number,
  tip: Vector3,
): number {
  // the overlap of a rolled cone runs into its tip as well
  const isWall = (face: number) =>
    faces[face]?.role === 'wall' ||
    hinges.some(({ child, kind }) => child === face && kind === 'join' && faces[face]?.role === 'glueTab');
  if (!isWall(one) || !isWall(other)) return 0;
  const there = stands.filter(
    (stand, face) =>
      isWall(face) && faces[face]?.ring.some((at) => pointOn(stand, at).distanceTo(tip) < 0.05),
  );
  const turn = Math.max(...there.flatMap((p) => there.map((q) => p.inside.angleTo(q.inside))));
  const half = (Math.PI - turn) / 2;
  return half > 0.05 ? (1.3 * caliperMm) / Math.sin(half) : 0;
}
