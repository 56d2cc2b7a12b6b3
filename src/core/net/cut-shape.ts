import type { CutSpec, EdgeName } from '../styles/language/types';
import { chordEnds } from './arc';
import type { Bench, LaidRing, Side } from './laid-panel';
import { pointAt, samePoint } from './point';
import type { Point } from './types';

/** A line from one end to the other: straight where `rise` is 0. */
interface Run {
  readonly rise: number;
  readonly bulge: 'left' | 'right';
}

const STRAIGHT: Run = { rise: 0, bulge: 'right' };

/** A corner after the cut: where the edge before it ends, where the edge after it begins, and the line between the two. */
interface Corner {
  readonly ends: Point;
  readonly begins: Point;
  readonly between: Run;
}

/**
 * A panel's ring with its cuts made; `sides` then holds what is left of each edge. A cut that is too large makes a ring that crosses itself,
 * which `checkPanelShape` reports.
 */
export function cutShape(
  bench: Bench,
  corners: readonly Point[],
  names: readonly EdgeName[],
  sides: Map<EdgeName, readonly Side[]>,
  cuts: readonly CutSpec[],
  of: (text: string) => number,
): LaidRing {
  const count = corners.length;
  const at = (corner: number): Point => corners[(corner + count) % count] as Point;
  const left: Corner[] = corners.map((point) => ({ ends: point, begins: point, between: STRAIGHT }));
  const edges = corners.map(() => STRAIGHT);
  for (const { at: edge, cut, size } of cuts) {
    const [corner, length] = [names.indexOf(edge), of(size)];
    if (corner < 0 || length <= 0) continue;
    const next = (corner + 1) % count;
    if (cut === 'round' || cut === 'slant') left[corner] = cornerCut(at, corner, cut, length);
    else edges[corner] = { rise: length, bulge: cut === 'arch' ? 'right' : 'left' };
    if (cut !== 'arch') continue;
    // down the edges beside it until its ends lie `length` below its middle
    left[corner] = movedTo(towards(at(corner), at(corner - 1), length / steepness(at, corner)));
    left[next] = movedTo(towards(at(next), at(next + 1), length / steepness(at, next)));
  }
  const [ring, curves]: [Point[], (number | null)[]] = [[], []];
  const draw = (a: Point, b: Point, { rise, bulge }: Run): readonly Point[] => {
    if (samePoint(a, b)) return [];
    const curve = rise > 0 ? bench.curves.push({ a, b, rise, bulge, kind: 'cut' }) - 1 : null;
    const points = [a, ...(rise <= 0 ? [] : arcFrom(a, b, rise, bulge))];
    for (const point of points) {
      ring.push(point);
      curves.push(curve);
    }
    return [...points, b];
  };
  left.forEach(({ ends, begins, between }, corner) => {
    draw(ends, begins, between);
    const points = draw(begins, left[(corner + 1) % count]?.ends ?? begins, edges[corner] ?? STRAIGHT);
    const name = names[corner] ?? 'e0';
    const face = sides.get(name)?.[0]?.face ?? bench.faces.length;
    sides.set(
      name,
      points.slice(1).map((b, nth) => ({ face, a: points[nth] ?? b, b, leanDeg: 0 })),
    );
  });
  return { ring, curves };
}

type Corners = (corner: number) => Point;

const movedTo = (point: Point): Corner => ({ ends: point, begins: point, between: STRAIGHT });

const arcFrom = (a: Point, b: Point, rise: number, bulge: Run['bulge']): readonly Point[] =>
  bulge === 'left' ? chordEnds(a, b, rise) : [...chordEnds(b, a, rise)].reverse();

/** A corner rounded by an arc that touches both its edges, or cut off straight as far along one as along the other. */
function cornerCut(at: Corners, corner: number, cut: 'round' | 'slant', length: number): Corner {
  const turn = turnAt(at, corner);
  const off = cut === 'slant' ? length : length * Math.tan(Math.abs(turn) / 2);
  return {
    ends: towards(at(corner), at(corner - 1), off),
    begins: towards(at(corner), at(corner + 1), off),
    between:
      cut === 'slant'
        ? STRAIGHT
        : { rise: length * (1 - Math.cos(turn / 2)), bulge: turn > 0 ? 'right' : 'left' },
  };
}

const towards = (from: Point, to: Point, length: number): Point => {
  const long = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  return pointAt(from.x + ((to.x - from.x) * length) / long, from.y + ((to.y - from.y) * length) / long);
};

/** How far the ring turns at a corner, radians; more than 0 to the left. */
function turnAt(at: Corners, corner: number): number {
  const [before, here, after] = [at(corner - 1), at(corner), at(corner + 1)];
  const [ux, uy, vx, vy] = [here.x - before.x, here.y - before.y, after.x - here.x, after.y - here.y];
  return Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
}

/** Sine of the angle at a corner; never so small that an arch runs far off its panel. */
const steepness = (at: Corners, corner: number): number =>
  Math.max(0.05, Math.abs(Math.sin(turnAt(at, corner))));
