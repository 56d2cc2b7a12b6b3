import { type ClosedPiece, flatRing, placeOf } from '../fold';
import type { Face, Joint, Point } from '../net/types';
import {
  type At,
  convexParts,
  counterClockwise,
  deepestOverlap,
  distanceOutside,
  distanceToBorder,
} from '../plane';
import { inches, type Ticks, toMm } from '../units/ticks';
import { seenFrom } from './check-joints';
import { asTicks, type Finding, wordsOf } from './finding';

/** Card that should be left round an opening: beside a window, whose film has to be glued there, and beside anything else. source: common practice, no source */
const ROUND_WINDOW = inches(0, 3, 8);
const ROUND_HOLE = inches(0, 1, 4);
/** Beside a small hole that a bow draws together with those of three panels and more, which hold one another. source: 1/16 in, common practice, no source */
const ROUND_TIED = inches(0, 1, 16);
/** How near to one another such holes stand. source: our choice */
const TIED_WITHIN_MM = 25.4;
const TIED_WITH = 3;

/** Windows, holes and slots of a closed piece: inside their panel, clear of its scores and edges, and nothing glued across them. */
export function checkOpenings(closed: ClosedPiece): Finding[] {
  const { piece } = closed;
  const slits = piece.edges.filter(({ kind, left, right }) => kind === 'slit' && left === right);
  if (slits.length === 0 && piece.faces.every(({ holes }) => holes.length === 0)) return [];
  return [
    ...slits.flatMap(({ left, a, b }) => {
      const face = piece.faces[left];
      return face === undefined ? [] : checkPlace(closed, left, face, [a, b]);
    }),
    ...piece.faces.flatMap((face, at) => face.holes.flatMap((hole) => checkPlace(closed, at, face, hole))),
    ...piece.joints.flatMap((joint) => [
      ...checkGlue(closed, joint, joint.target, joint.tab),
      ...checkGlue(closed, joint, joint.tab, joint.target),
    ]),
  ];
}

const inMm = (ring: readonly Point[]): readonly At[] => ring.map(({ x, y }): At => [toMm(x), toMm(y)]);

/** Whether three other panels have a hole so near when the piece is closed: one ribbon goes through them all. */
function isTied({ piece, faces }: ClosedPiece, at: number, hole: readonly Point[]): boolean {
  const middleOf = (face: number, ring: readonly Point[]) => {
    const [x, y] = [ring.map((point) => toMm(point.x)), ring.map((point) => toMm(point.y))].map(
      (along) => along.reduce((sum, each) => sum + each, 0) / ring.length,
    ) as [number, number];
    const pose = faces[face]?.pose;
    return pose && placeOf(pose, x, y);
  };
  const here = middleOf(at, hole);
  if (here === undefined) return false;
  const near = piece.faces.filter(({ holes }, face) =>
    holes.some((ring) => {
      const there = face === at ? undefined : middleOf(face, ring);
      return there !== undefined && Math.hypot(...here.map((v, i) => v - (there[i] ?? 0))) < TIED_WITHIN_MM;
    }),
  );
  return near.length >= TIED_WITH;
}

function checkPlace(closed: ClosedPiece, at: number, face: Face, hole: readonly Point[]): Finding[] {
  const { piece, toleranceMm } = closed;
  const outline = flatRing(piece, at);
  const opening = inMm(hole);
  const out = Math.max(...opening.map((corner) => distanceOutside(corner, outline)));
  const where = face.panel;
  if (out > toleranceMm)
    return [
      {
        code: 'opening-crosses-edge',
        severity: 'stop',
        where,
        facts: { panel: wordsOf(piece, at), out: asTicks(out) },
        says: 'An opening in the {panel} is {out} past its edge.',
        remedy: 'Make the opening smaller, or the panel larger.',
      },
    ];
  const others = [outline, ...face.holes.filter((other) => other !== hole).map(inMm)];
  const near = Math.min(...others.map((other) => ringsApart(opening, other)));
  const isWindow = hole.length === 4;
  const free = toMm(isWindow ? ROUND_WINDOW : ROUND_HOLE) - toleranceMm;
  if (near >= free) return [];
  const least: Ticks = isWindow ? ROUND_WINDOW : isTied(closed, at, hole) ? ROUND_TIED : ROUND_HOLE;
  if (near >= toMm(least) - toleranceMm) return [];
  return [
    {
      code: 'opening-near-edge',
      severity: 'warn',
      where,
      facts: { panel: wordsOf(piece, at), near: asTicks(near), least },
      says: 'An opening in the {panel} leaves a strip only {near} wide, which tears or shows glue.',
      remedy: 'Leave at least {least}.',
    },
  ];
}

/** Least distance between two rings that do not cross, mm. */
const ringsApart = (p: readonly At[], q: readonly At[]): number =>
  Math.min(
    ...p.map((corner) => distanceToBorder(corner, q)),
    ...q.map((corner) => distanceToBorder(corner, p)),
  );

/** Does `over` lie glued across an opening of `open`, without the same opening of its own? */
function checkGlue(
  { piece, faces, toleranceMm }: ClosedPiece,
  joint: Joint,
  open: number,
  over: number,
): Finding[] {
  const [under, top] = [faces[open], faces[over]];
  const holes = piece.faces[open]?.holes ?? [];
  if (under === undefined || top === undefined || holes.length === 0) return [];
  const seen = (corner: (typeof top.ring)[number]): At => {
    const [x, y] = seenFrom(under.pose, corner);
    return [x, y];
  };
  const cover = convexParts(counterClockwise(top.ring.map(seen)));
  const own = (piece.faces[over]?.holes ?? []).map((hole) =>
    hole.map(({ x, y }) => seen(placeOf(top.pose, toMm(x), toMm(y)))),
  );
  return holes.flatMap((hole): Finding[] => {
    const opening = counterClockwise(inMm(hole));
    if (own.some((other) => sameRing(opening, other, toleranceMm + toMm(joint.gap)))) return [];
    const parts = convexParts(opening);
    const deep = deepestOverlap(cover, parts);
    if (deep <= toleranceMm) return [];
    return [
      {
        code: 'opening-glued-over',
        severity: 'stop',
        where: piece.faces[open]?.panel ?? '',
        facts: { over: wordsOf(piece, over), open: wordsOf(piece, open), deep: asTicks(deep) },
        says: 'The {over} is glued {deep} across an opening in the {open}.',
        remedy: 'Make the opening smaller, put it in another panel, or put the seam elsewhere.',
      },
    ];
  });
}

/** The same corners, in any order. */
const sameRing = (p: readonly At[], q: readonly At[], slack: number): boolean =>
  p.length === q.length && p.every(([x, y]) => q.some(([u, v]) => Math.hypot(x - u, y - v) <= slack));
