import type { Ticks } from '../units/ticks';
import { pointAt, samePoint } from './point';
import type { NetEdge, Point, Seam } from './types';

/** One straight part of a panel's edge, as its face's ring runs it. */
interface SeamSide {
  readonly face: number;
  readonly a: Point;
  readonly b: Point;
}

/** The edges of a piece, and by face which of them it has: their indices, rising. */
export interface EdgesByFace {
  readonly edges: NetEdge[];
  readonly of: readonly number[][];
}

export function edgesByFace(edges: NetEdge[], faces: number): EdgesByFace {
  const of: number[][] = Array.from({ length: faces }, () => []);
  edges.forEach(({ left, right }, at) => {
    of[left]?.push(at);
    if (right !== null) of[right]?.push(at);
  });
  return { edges, of };
}

/** Pairs the edges of two sides that meet when closed; the second side runs backwards. Edges are split (the new part at the list's end) where only one side has a corner. */
export function laySeam(
  net: EdgesByFace,
  first: readonly SeamSide[],
  second: readonly SeamSide[],
  gap: Ticks,
): Seam[] {
  const seams: Seam[] = [];
  first.forEach((one, at) => {
    const other = second[second.length - 1 - at];
    if (other !== undefined) pairSides(net, one, { face: other.face, a: other.b, b: other.a }, gap, seams);
  });
  return seams;
}

function pairSides(net: EdgesByFace, one: SeamSide, other: SeamSide, gap: Ticks, seams: Seam[]): void {
  const along = edgesOn(net, one);
  const places = [...along, ...edgesOn(net, other)].map(({ to }) => Math.round(to));
  const p = splitAt(net, one, along, places);
  const q = splitAt(net, other, edgesOn(net, other), places);
  p.forEach(({ at: a }, at) => {
    const b = q[at]?.at;
    if (b !== undefined) seams.push({ a, b, faces: [one.face, other.face], gap });
  });
}

/** An edge that lies along a side, with how far from the side's start it begins and ends. */
interface EdgeOn {
  readonly edge: NetEdge;
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

/** Edges of the side's face that lie along it, from its start on. */
function edgesOn({ edges, of }: EdgesByFace, { face, a, b }: SeamSide): readonly EdgeOn[] {
  const found: EdgeOn[] = [];
  for (const at of of[face] ?? []) {
    const edge = edges[at];
    if (edge === undefined || !between(edge.a, a, b) || !between(edge.b, a, b)) continue;
    const p = Math.hypot(edge.a.x - a.x, edge.a.y - a.y);
    const q = Math.hypot(edge.b.x - a.x, edge.b.y - a.y);
    found.push({ edge, at, from: Math.min(p, q), to: Math.max(p, q) });
  }
  return found.sort((p, q) => p.from - q.from);
}

/** Corners nearer than this are one corner: two slanted sides of one length round differently. */
const SAME_CORNER = 4; // ticks; source: our choice, the closing tolerance of design

/** The edges `along` a side once it has a corner at every place. */
function splitAt(
  net: EdgesByFace,
  side: SeamSide,
  along: readonly EdgeOn[],
  places: readonly number[],
): readonly EdgeOn[] {
  let known = along;
  for (const place of places) {
    let split = false;
    for (const { edge, at, from, to } of known) {
      if (place < from + SAME_CORNER || place > to - SAME_CORNER) continue;
      const long = Math.hypot(side.b.x - side.a.x, side.b.y - side.a.y);
      const exact = roundPlace(place, side, long);
      if (samePoint(exact, edge.a) || samePoint(exact, edge.b)) continue;
      net.of[edge.left]?.push(net.edges.length);
      if (edge.right !== null) net.of[edge.right]?.push(net.edges.length);
      net.edges[at] = { ...edge, b: exact };
      net.edges.push({ ...edge, a: exact });
      split = true;
    }
    if (split) known = edgesOn(net, side);
  }
  return known;
}

const roundPlace = (place: number, { a, b }: SeamSide, long: number): Point =>
  pointAt(a.x + ((b.x - a.x) * place) / long, a.y + ((b.y - a.y) * place) / long);

const between = (point: Point, a: Point, b: Point): boolean =>
  (point.x - a.x) * (point.x - b.x) <= 0 &&
  (point.y - a.y) * (point.y - b.y) <= 0 &&
  Math.abs((b.x - a.x) * (point.y - a.y) - (b.y - a.y) * (point.x - a.x)) <= Math.hypot(b.x - a.x, b.y - a.y);
