import type { Ticks } from '../units/ticks';
import { pointAt, samePoint } from './point';
import type { NetEdge, Point, Seam } from './types';

/** One straight part of a panel's edge, as its face's ring runs it. */
interface SeamSide {
  readonly face: number;
  readonly a: Point;
  readonly b: Point;
}

/** Pairs the edges of two sides that meet when closed; the second side runs backwards. Edges are split (the new part at the list's end) where only one side has a corner. */
export function laySeam(
  edges: NetEdge[],
  first: readonly SeamSide[],
  second: readonly SeamSide[],
  gap: Ticks,
): Seam[] {
  const backwards = [...second].reverse().map(({ face, a, b }) => ({ face, a: b, b: a }));
  return first.flatMap((one, at) => {
    const other = backwards[at];
    return other === undefined ? [] : pairSides(edges, one, other, gap);
  });
}

function pairSides(edges: NetEdge[], one: SeamSide, other: SeamSide, gap: Ticks): Seam[] {
  const places = [one, other].flatMap((side) => edgesOn(edges, side).map(({ to }) => Math.round(to)));
  const [p, q] = [one, other].map((side) => splitAt(edges, side, places)) as [number[], number[]];
  return p.flatMap((a, at): Seam[] => {
    const b = q[at];
    return b === undefined ? [] : [{ a, b, faces: [one.face, other.face], gap }];
  });
}

/** Edges of the side's face that lie along it, with how far from its start each begins and ends. */
function edgesOn(edges: readonly NetEdge[], { face, a, b }: SeamSide) {
  const along = (p: Point) => Math.hypot(p.x - a.x, p.y - a.y);
  return edges
    .map((edge, at) => ({ edge, at }))
    .filter(
      ({ edge }) =>
        (edge.left === face || edge.right === face) && between(edge.a, a, b) && between(edge.b, a, b),
    )
    .map(({ edge, at }) => ({
      edge,
      at,
      from: Math.min(along(edge.a), along(edge.b)),
      to: Math.max(along(edge.a), along(edge.b)),
    }))
    .sort((p, q) => p.from - q.from);
}

/** Corners nearer than this are one corner: two slanted sides of one length round differently. */
const SAME_CORNER = 4; // ticks; source: our choice, the closing tolerance of design

/** The edges along a side once it has a corner at every place; their indices from the side's start on. */
function splitAt(edges: NetEdge[], side: SeamSide, places: readonly number[]): number[] {
  for (const place of places)
    for (const { edge, at, from, to } of edgesOn(edges, side)) {
      if (place < from + SAME_CORNER || place > to - SAME_CORNER) continue;
      const long = Math.hypot(side.b.x - side.a.x, side.b.y - side.a.y);
      const exact = roundPlace(place, side, long);
      if (samePoint(exact, edge.a) || samePoint(exact, edge.b)) continue;
      edges[at] = { ...edge, b: exact };
      edges.push({ ...edge, a: exact });
    }
  return edgesOn(edges, side).map(({ at }) => at);
}

const roundPlace = (place: number, { a, b }: SeamSide, long: number): Point =>
  pointAt(a.x + ((b.x - a.x) * place) / long, a.y + ((b.y - a.y) * place) / long);

const between = (point: Point, a: Point, b: Point): boolean =>
  (point.x - a.x) * (point.x - b.x) <= 0 &&
  (point.y - a.y) * (point.y - b.y) <= 0 &&
  Math.abs((b.x - a.x) * (point.y - a.y) - (b.y - a.y) * (point.x - a.x)) <= Math.hypot(b.x - a.x, b.y - a.y);
