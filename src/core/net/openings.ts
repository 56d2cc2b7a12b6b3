import type { At } from '../plane';
import type { EdgeName, HoleSpec, Len, NotchSpec } from '../styles/language/types';
import { TICKS_PER_MM } from '../units/ticks';
import { CHORD_TOLERANCE_MM } from './arc';
import type { Bench, LaidRing, Side } from './laid-panel';
import { pointAt, samePoint } from './point';
import { shapedWindow } from './shaped-window';
import type { Point } from './types';

type Measure = (text: string) => number;

/**
 * The openings in a panel whose ring is given, `place` its hinge frame: holes, each a clockwise ring, and slits. What has no size, or more than
 * its panel, is left out. Round ends stand off their arcs by `CHORD_TOLERANCE_MM` at most.
 */
export function cutOpenings(
  bench: Bench,
  ring: readonly Point[],
  openings: readonly HoleSpec[],
  of: Measure,
  place: (along: number, out: number) => Point,
): { readonly holes: readonly LaidRing[]; readonly slits: readonly LaidRing[] } {
  if (ring.length === 0) return { holes: [], slits: [] };
  const [xs, ys] = [ring.map(({ x }) => x), ring.map(({ y }) => y)];
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  /** Where an opening says, or in the middle of its panel. */
  const middleOf = (at: readonly [along: Len, out: Len] | undefined): At => {
    if (at === undefined) return [(left + right) / 2, (low + high) / 2];
    const { x, y } = place(of(at[0]), of(at[1]));
    return [x, y];
  };
  const holes: LaidRing[] = [];
  const slits: LaidRing[] = [];
  for (const opening of openings) {
    if (opening.hole === 'window') {
      const margin = of(opening.margin);
      const [x1, x2, y1, y2] = [left + margin, right - margin, low + margin, high - margin];
      if (margin > 0 && x1 < x2 && y1 < y2) holes.push(windowIn(bench, [x1, y1], [x2, y2], opening));
    } else if (opening.hole === 'slit') {
      const long = of(opening.long);
      const [across, up] = opening.runs === 'across' ? [long, 0] : [0, long];
      if (!fits(long, across > 0 ? right - left : high - low)) continue;
      const [x, y] = middleOf(opening.at);
      const ends = [pointAt(x - across / 2, y - up / 2), pointAt(x + across / 2, y + up / 2)];
      slits.push({ ring: ends, curves: [null, null] });
    } else {
      const [across, up] =
        opening.hole === 'round'
          ? [of(opening.across), of(opening.across)]
          : [of(opening.size[0]), of(opening.size[1])];
      if (fits(across, right - left) && fits(up, high - low))
        holes.push(roundEnded(bench, middleOf(opening.at), across, up));
    }
  }
  return { holes, slits };
}

function windowIn(
  bench: Bench,
  [x1, y1]: At,
  [x2, y2]: At,
  { shape, headDown }: Extract<HoleSpec, { readonly hole: 'window' }>,
): LaidRing {
  if (shape !== undefined) return shapedWindow(bench, [x1, y1], [x2, y2], shape, headDown ?? false);
  const corners = [pointAt(x1, y1), pointAt(x1, y2), pointAt(x2, y2), pointAt(x2, y1)];
  return { ring: corners, curves: corners.map(() => null) };
}

/** An opening that reaches its panel's edges cannot be cut: the style's limits say so, the net goes without. */
const fits = (opening: number, room: number): boolean => opening > 0 && opening < room;

/** A circle, or straight sides with half-round ends, about a middle: clockwise from its left end. */
function roundEnded(bench: Bench, [x, y]: At, across: number, up: number): LaidRing {
  const radius = Math.min(across, up) / 2;
  const [along, rise] = [across / 2 - radius, up / 2 - radius];
  const turns = [180, 90, 0, -90] as const;
  const centres: readonly At[] = [
    [x - along, y + rise],
    [x + along, y + rise],
    [x + along, y - rise],
    [x - along, y - rise],
  ];
  const parts = turns.map((from, k) => quarterArc(bench, centres[k] ?? [x, y], radius, from));
  return closeRing(parts);
}

/** Quarter arcs in order, with straight lines between those that do not meet. */
function closeRing(
  parts: readonly { readonly points: readonly Point[]; readonly curve: number }[],
): LaidRing {
  const [ring, curves]: [Point[], (number | null)[]] = [[], []];
  parts.forEach(({ points, curve }, at) => {
    const next = parts[(at + 1) % parts.length]?.points[0];
    points.slice(0, -1).forEach((point) => {
      ring.push(point);
      curves.push(curve);
    });
    const last = points[points.length - 1];
    if (last === undefined || next === undefined || samePoint(last, next)) return;
    ring.push(last);
    curves.push(null);
  });
  return { ring, curves };
}

/** Clockwise from an angle, 90 degrees on, as chords; a true arc is noted for it. Bulges to the left of the way it runs. */
function quarterArc(
  bench: Bench,
  [x, y]: At,
  radius: number,
  fromDeg: number,
): { readonly points: readonly Point[]; readonly curve: number } {
  const chord = 2 * Math.acos(Math.max(0, 1 - (CHORD_TOLERANCE_MM * TICKS_PER_MM) / radius));
  const pieces = Math.max(2, Math.ceil(Math.PI / 2 / chord));
  const points = Array.from({ length: pieces + 1 }, (_, k) => {
    const angle = (fromDeg * Math.PI) / 180 - ((Math.PI / 2) * k) / pieces;
    return pointAt(x + radius * Math.cos(angle), y + radius * Math.sin(angle));
  });
  const [a, b] = [points[0], points[pieces]];
  if (a !== undefined && b !== undefined)
    bench.curves.push({ a, b, rise: radius * (1 - Math.SQRT1_2), bulge: 'left', kind: 'cut' });
  return { points, curve: bench.curves.length - 1 };
}

/** A ring with half-rounds cut out of the middle of some of its edges. */
export function cutNotches(
  bench: Bench,
  whole: LaidRing,
  sides: ReadonlyMap<EdgeName, readonly Side[]>,
  notches: readonly NotchSpec[],
  of: Measure,
): LaidRing {
  return notches.reduce((ring, { edge, radius }) => {
    const [side] = sides.get(edge) ?? [];
    return side === undefined ? ring : cutNotch(bench, ring, side, of(radius));
  }, whole);
}

function cutNotch(bench: Bench, { ring, curves }: LaidRing, { a, b }: Side, radius: number): LaidRing {
  const at = ring.findIndex((point) => samePoint(point, a));
  const long = Math.hypot(b.x - a.x, b.y - a.y);
  if (at < 0 || radius <= 0 || 2 * radius >= long) return { ring, curves };
  const middle: At = [Math.round((a.x + b.x) / 2), Math.round((a.y + b.y) / 2)];
  // backwards along the edge first: the card lies on its left, and the notch swings clockwise through it
  const fromDeg = (Math.atan2(a.y - b.y, a.x - b.x) * 180) / Math.PI;
  const [first, second] = [0, 1].map((k) => quarterArc(bench, middle, radius, fromDeg - 90 * k));
  if (first === undefined || second === undefined) return { ring, curves };
  const points = [...first.points, ...second.points.slice(1)];
  const arcs = [
    ...first.points.slice(1).map(() => first.curve),
    ...second.points.slice(1).map(() => second.curve),
    null,
  ];
  return {
    ring: [...ring.slice(0, at + 1), ...points, ...ring.slice(at + 1)],
    curves: [...curves.slice(0, at + 1), ...arcs, ...curves.slice(at + 1)],
  };
}
