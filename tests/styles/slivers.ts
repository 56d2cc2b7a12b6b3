import * as clip from 'polyclip-ts';
import type { PieceNet } from '../../src/core/net';

/**
 * What no hand can cut: waste that runs out in less than 10 degrees, or a strip narrower than 1/16 in and longer than that. source: common
 * practice, no source. Waste is worked out by another library (npm `polyclip-ts`): the blank less its faces, holes and all.
 */
export interface Sliver {
  readonly kind: 'sharp' | 'narrow';
  /** Degrees, or millimeters. */
  readonly size: number;
  /** Millimeters from the blank's lower left corner. */
  readonly at: readonly [number, number];
}

const LEAST_DEG = 10;
/** The finest mark below 1/16 in on a tool marked in millimeters is 1 mm. */
export const LEAST_MM = { in: 25.4 / 16, mm: 1 } as const;
/** Corners of slanted lines lie on whole ticks of 1/320 mm, so a strip drawn 1/16 in wide may be a tick or two short. */
const TICKS_MM = 0.01;

type Spot = readonly [number, number];
type Side = readonly [Spot, Spot];

const TICK = 320;

/** Every sliver among what is cut out of a piece's blank. */
export const sliversOf = (piece: PieceNet, leastMm: number): readonly Sliver[] =>
  wasteOf(piece).flatMap((rings) => sliversIn(rings, leastMm));

/** Every sliver of one piece of waste. `rings`: corners in mm, the waste on the left of each side. */
export function sliversIn(rings: readonly (readonly Spot[])[], leastMm: number): readonly Sliver[] {
  const sides = rings.flatMap(sidesOf);
  return [...sides.flatMap((side, i) => sharpAt(side, sides, i)), ...narrowIn(sides, leastMm)];
}

/** The pieces of waste, each as rings that run with the waste on their left, mm. */
function wasteOf({ blank, faces }: PieceNet): readonly (readonly (readonly Spot[])[])[] {
  const { across, up } = blank;
  const whole: [number, number][] = [[0, 0], [across, 0], [across, up], [0, up]]; // biome-ignore format: one row
  const card = faces.map(({ ring, holes }) =>
    [ring, ...holes].map((points) => points.map(({ x, y }): [number, number] => [x, y])),
  );
  const [first, ...others] = card;
  if (first === undefined) return [];
  // Faces are put together first, so that scores leave no seam.
  const joined = clip.union(first, ...others);
  return clip
    .difference([whole], joined)
    .map((rings) =>
      rings.map((ring) => withoutMiddles(ring.slice(0, -1).map(([x, y]): Spot => [x / TICK, y / TICK]))),
    );
}

/** Corners in the middle of a straight side are left out, and so are sides a tick or two long. */
function withoutMiddles(ring: readonly Spot[]): readonly Spot[] {
  const apart = ring.filter((p, i) => distance(p, ring[(i + 1) % ring.length] ?? p) > TICKS_MM);
  return apart.filter((p, i) => {
    const [before, after] = [apart.at(i - 1) ?? p, apart[(i + 1) % apart.length] ?? p];
    return Math.abs(turnDeg(before, p, after)) > 0.05;
  });
}

const sidesOf = (ring: readonly Spot[]): readonly Side[] =>
  ring.map((p, i): Side => [p, ring[(i + 1) % ring.length] ?? p]);

const distance = ([x, y]: Spot, [u, v]: Spot): number => Math.hypot(u - x, v - y);

/** How far the way turns left at a corner, degrees. */
function turnDeg([ax, ay]: Spot, [bx, by]: Spot, [cx, cy]: Spot): number {
  const [ux, uy, vx, vy] = [bx - ax, by - ay, cx - bx, cy - by];
  return (Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy) * 180) / Math.PI;
}

/** The waste's own angle at the end of a side, where it is too sharp. */
function sharpAt([a, b]: Side, sides: readonly Side[], i: number): readonly Sliver[] {
  const next = sides.find(([from], j) => j !== i && from[0] === b[0] && from[1] === b[1]);
  if (!next) return [];
  const deg = 180 - turnDeg(a, b, next[1]);
  return deg < LEAST_DEG ? [{ kind: 'sharp', size: deg, at: b }] : [];
}

/** Strips between two sides that run nearly side by side, the waste between them. */
function narrowIn(sides: readonly Side[], leastMm: number): readonly Sliver[] {
  return sides.flatMap((one, i) =>
    sides.slice(i + 1).flatMap((other): readonly Sliver[] => {
      const strip = stripBetween(one, other);
      return strip && strip.wide < leastMm - TICKS_MM && strip.long > LEAST_MM.in
        ? [{ kind: 'narrow', size: strip.wide, at: strip.at }]
        : [];
    }),
  );
}

/** How wide the waste is where two sides face each other, and along how much of the first; null where they do not, or run apart. */
function stripBetween([a, b]: Side, [c, d]: Side): { wide: number; long: number; at: Spot } | null {
  const long = distance(a, b);
  const [ux, uy] = [(b[0] - a[0]) / long, (b[1] - a[1]) / long];
  const along = ([x, y]: Spot): number => (x - a[0]) * ux + (y - a[1]) * uy;
  // The waste lies on the left of a side.
  const left = ([x, y]: Spot): number => ux * (y - a[1]) - uy * (x - a[0]);
  const leanDeg = (Math.atan2(left(c) - left(d), along(c) - along(d)) * 180) / Math.PI;
  if (Math.abs(leanDeg) >= LEAST_DEG) return null;
  const [from, to] = [Math.max(0, along(d)), Math.min(long, along(c))];
  if (to <= from) return null;
  const offAt = (at: number): number =>
    left(d) + ((at - along(d)) / (along(c) - along(d))) * (left(c) - left(d));
  const [p, q] = [offAt(from), offAt(to)];
  if (Math.min(p, q) <= 0) return null;
  const wide = Math.min(p, q);
  const place = p < q ? from : to;
  return { wide, long: to - from, at: [a[0] + place * ux, a[1] + place * uy] };
}
