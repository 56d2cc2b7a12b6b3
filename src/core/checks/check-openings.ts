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

function checkPlace(
  { piece, toleranceMm }: ClosedPiece,
  at: number,
  face: Face,
  hole: readonly Point[],
): Finding[] {
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
  const least: Ticks = hole.length === 4 ? ROUND_WINDOW : ROUND_HOLE;
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
