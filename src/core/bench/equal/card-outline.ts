import { samePoint } from '../../net/point';
import type { Point } from '../../net/types';
import { areaOf, atOf } from '../../plane';
import type { BenchFaultCode } from '../types';
import { sidesOf } from './bench-card';
import { cutStretches, mergeStretches } from './exact-intervals';
import { insideAlong, liesOn, lineOf, type Segment, stretchOf } from './line-stretches';

const between = (some: number, other: number, at: number): boolean =>
  Math.min(some, other) <= at && at <= Math.max(some, other);

/** Exact in doubles on cards up to 2 m. */
const isOn = ({ a, b }: Segment, p: Point): boolean =>
  (b.x - a.x) * (p.y - a.y) === (b.y - a.y) * (p.x - a.x) && between(a.x, b.x, p.x) && between(a.y, b.y, p.y);

export const legsOf = (path: readonly Point[]): readonly Segment[] =>
  path.slice(1).map((b, i) => ({ a: path[i] ?? b, b }));

/** True if the whole segment runs through card, its ends allowed on the edges. */
export function runsInside(edges: readonly Segment[], segment: Segment): boolean {
  if (samePoint(segment.a, segment.b)) return false;
  const line = lineOf(segment);
  return cutStretches([stretchOf(line, segment)], insideAlong(line, edges)).length === 0;
}

/** True if the whole segment lies along the given edges. */
export function runsAlong(edges: readonly Segment[], segment: Segment): boolean {
  const line = lineOf(segment);
  const onLine = edges.filter((edge) => liesOn(line, edge));
  const covered = mergeStretches(onLine.map((edge) => stretchOf(line, edge)));
  return cutStretches([stretchOf(line, segment)], covered).length === 0;
}

/** The ring after a cut along `path`, whose left side is kept. `edges` are all of the card's, holes too. */
export function cutRing(
  ring: readonly Point[],
  edges: readonly Segment[],
  path: readonly Point[],
): readonly Point[] | BenchFaultCode {
  const first = path[0];
  const last = path.at(-1);
  if (!first || !last || samePoint(first, last)) return 'cut-not-from-edge';
  const sides = sidesOf(ring);
  const startSide = sides.findIndex((side) => isOn(side, first));
  const endSide = sides.findIndex((side) => isOn(side, last));
  if (startSide < 0 || endSide < 0) return 'cut-not-from-edge';
  if (!legsOf(path).every((leg) => runsInside(edges, leg))) return 'cut-crosses-edge';
  const kept = [...path, ...walkRing(ring, [last, endSide], [first, startSide])];
  return kept.filter((p, i) => !samePoint(p, kept[(i + 1) % kept.length] ?? p));
}

/** Whether the larger part of a card lies on the left of a path; of the uncut card where the path starts and ends on its edge. */
export function isLargerOnLeft(
  blank: readonly Point[],
  ring: readonly Point[],
  path: readonly Point[],
): boolean | null {
  for (const uncut of [blank, ring]) {
    const left = cutRing(uncut, sidesOf(uncut), path);
    const right = cutRing(uncut, sidesOf(uncut), [...path].reverse());
    if (typeof left === 'string' || typeof right === 'string') continue;
    return Math.abs(areaOf(left.map(atOf))) >= Math.abs(areaOf(right.map(atOf)));
  }
  return null;
}

type OnSide = readonly [point: Point, side: number];

/** The corners met when walking the ring counter-clockwise from a point on one side to a point on another. */
function walkRing(ring: readonly Point[], [from, fromSide]: OnSide, [to, toSide]: OnSide): readonly Point[] {
  const corner = (i: number): Point => ring[i % ring.length] ?? from;
  const start = corner(fromSide);
  if (fromSide === toSide && distance2(start, to) > distance2(start, from)) return [];
  const steps = ((toSide - fromSide - 1 + 2 * ring.length) % ring.length) + 1;
  return Array.from({ length: steps }, (_, i) => corner(fromSide + 1 + i));
}

const distance2 = (p: Point, q: Point): number => (p.x - q.x) ** 2 + (p.y - q.y) ** 2;
