import { alongOf, type Carrier, carrierKey, carrierOf } from '../../net/carrier';
import type { Point } from '../../net/types';
import { ticks } from '../../units/ticks';
import {
  mergeStretches,
  type Place,
  pairPlaces,
  placeOf,
  type Stretch,
  type Stretches,
  shareStretches,
  stretch,
  wholePlace,
} from './exact-intervals';

export interface Segment {
  readonly a: Point;
  readonly b: Point;
}

export const lineOf = ({ a, b }: Segment): Carrier => carrierOf(a, b).carrier;

/** A segment with its line and where it lies along it, worked out once. */
export interface LaidSegment {
  readonly line: Carrier;
  /** The same line has the same key. */
  readonly key: string;
  readonly stretch: Stretch;
}

export function laySegment(segment: Segment): LaidSegment {
  const line = lineOf(segment);
  return { line, key: carrierKey(line), stretch: stretchOf(line, segment) };
}

/** What lies on one line: its members, and their stretches merged. */
export interface Gathered<S> {
  readonly line: Carrier;
  readonly members: readonly S[];
  readonly stretches: Stretches;
}

/** Segments gathered by the line they lie on, under its key. */
export function byLine<S extends LaidSegment>(segments: readonly S[]): ReadonlyMap<string, Gathered<S>> {
  const lines = new Map<string, { line: Carrier; members: S[]; stretches: Stretch[] }>();
  for (const segment of segments) {
    const known = lines.get(segment.key);
    if (known) {
      known.members.push(segment);
      known.stretches.push(segment.stretch);
    } else lines.set(segment.key, { line: segment.line, members: [segment], stretches: [segment.stretch] });
  }
  return new Map(
    [...lines].map(([key, found]) => [key, { ...found, stretches: mergeStretches(found.stretches) }]),
  );
}

export const liesOn = (line: Carrier, { a, b }: Segment): boolean =>
  sideOf(line, a) === 0 && sideOf(line, b) === 0;

/** Where a segment lies along its own line; places are the net's own, x or y in ticks. */
export const stretchOf = (line: Carrier, { a, b }: Segment): Stretch =>
  stretch(alongOf(line, a), alongOf(line, b));

/** Signed: positive on the left of the line's direction, 0 on it. Below 2^42 on cards up to 2 m, so exact in doubles. */
const sideOf = ({ dx, dy, offset }: Carrier, { x, y }: Point): number => dx * y - dy * x - offset;

/**
 * The stretches of a line that run through the inside of a figure; its boundary is given as segments in any order.
 * A stretch counts only with card on both of its sides, so what runs along the boundary is left out.
 */
export function insideAlong(line: Carrier, boundary: readonly Segment[]): Stretches {
  const justLeft: Place[] = [];
  const justRight: Place[] = [];
  for (const { a, b } of boundary) {
    const sideA = sideOf(line, a);
    const sideB = sideOf(line, b);
    const crossesLeft = sideA > 0 !== sideB > 0;
    const crossesRight = sideA < 0 !== sideB < 0;
    if (!crossesLeft && !crossesRight) continue;
    const place = crossing(alongOf(line, a), alongOf(line, b), sideA, sideB);
    if (crossesLeft) justLeft.push(place);
    if (crossesRight) justRight.push(place);
  }
  return shareStretches(pairPlaces(justLeft), pairPlaces(justRight));
}

/** Where a boundary edge crosses, from its ends' places along the line and their distances to either side; a fraction, so whole numbers of any size. */
function crossing(placeA: number, placeB: number, sideA: number, sideB: number): Place {
  if (sideA === 0 || placeA === placeB) return wholePlace(placeA);
  if (sideB === 0) return wholePlace(placeB);
  const under = BigInt(sideA - sideB);
  return placeOf(BigInt(placeA) * under + BigInt(placeB - placeA) * BigInt(sideA), under);
}

/** The whole point of a line at a place along it, as `alongOf` measures. */
function pointAt({ dx, dy, offset }: Carrier, place: number): Point {
  if (Math.abs(dx) >= Math.abs(dy)) return { x: ticks(place), y: ticks((offset + dy * place) / dx) };
  const y = dy > 0 ? place : -place;
  return { x: ticks((dx * y - offset) / dy), y: ticks(y) };
}

/** A stretch whose ends are corners of the net, as a segment. */
export const segmentOn = (line: Carrier, { from, to }: Stretch): Segment => ({
  a: pointAt(line, Number(from.n)),
  b: pointAt(line, Number(to.n)),
});
