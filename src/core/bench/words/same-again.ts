import type { Blank } from '../../net/types';
import type { Ruler } from '../../units';
import { type Ticks, ticks } from '../../units/ticks';
import type { BenchPoint } from '../types';
import { sayLengths } from './say-length';

/** How one run of points comes from another on a card of this size. */
type Mirror = 'left to right' | 'near to far' | 'half round';

const MIRRORS: readonly Mirror[] = ['left to right', 'near to far', 'half round'];

const mirrorPoint = ({ x, y }: BenchPoint, mirror: Mirror, { across, up }: Blank): BenchPoint => ({
  x: mirror === 'near to far' ? x : ticks(across - x),
  y: mirror === 'left to right' ? y : ticks(up - y),
});

/** One shape that is said, and where it comes again: mirrored, or so much farther across or up. */
export interface Repeated<T> {
  readonly said: T;
  readonly mirrors: readonly Mirror[];
  readonly farther: Farther | null;
}

interface Farther {
  readonly way: 'across' | 'up';
  readonly by: readonly Ticks[];
}

/** So many in a row are said as a row. */
const LEAST_IN_A_ROW = 3;

/** Shapes with those that repeat an earlier one gathered under it. The points of a mirrored one may run either way. */
export function gatherRepeats<T>(
  shapes: readonly T[],
  pointsOf: (shape: T) => readonly BenchPoint[],
  size: Blank,
): readonly Repeated<T>[] {
  const left = [...shapes];
  const gathered: Repeated<T>[] = [];
  for (const way of ['across', 'up'] as const)
    for (const row of rowsOf(left, pointsOf, way)) {
      const [said, ...others] = row;
      if (said === undefined || row.length < LEAST_IN_A_ROW) continue;
      const by = others.map((other) => ticks(placeOf(pointsOf(other), way) - placeOf(pointsOf(said), way)));
      for (const one of row) left.splice(left.indexOf(one), 1);
      gathered.push({ said, mirrors: [], farther: { way, by } });
    }
  for (let said = left.shift(); said !== undefined; said = left.shift()) {
    const points = pointsOf(said);
    const mirrors = MIRRORS.filter((mirror) => {
      const wanted = keyOf(points.map((point) => mirrorPoint(point, mirror, size)));
      const found = left.findIndex((other) => keyOf(pointsOf(other)) === wanted);
      if (found >= 0) left.splice(found, 1);
      return found >= 0;
    });
    gathered.push({ said, mirrors, farther: null });
  }
  return gathered;
}

/** Shapes that are one another moved along one way, nearest first. */
function rowsOf<T>(
  shapes: readonly T[],
  pointsOf: (shape: T) => readonly BenchPoint[],
  way: Farther['way'],
): readonly (readonly T[])[] {
  const rows = new Map<string, T[]>();
  for (const shape of shapes) {
    const points = pointsOf(shape);
    const from = placeOf(points, way);
    const key = points
      .map(({ x, y }) => (way === 'across' ? `${x - from},${y}` : `${x},${y - from}`))
      .join(' ');
    rows.set(key, [...(rows.get(key) ?? []), shape]);
  }
  return [...rows.values()].map((row) =>
    row.toSorted((a, b) => placeOf(pointsOf(a), way) - placeOf(pointsOf(b), way)),
  );
}

const placeOf = ([first]: readonly BenchPoint[], way: Farther['way']): Ticks =>
  (way === 'across' ? first?.x : first?.y) ?? ticks(0);

function keyOf(points: readonly BenchPoint[]): string {
  const spelled = points.map(({ x, y }) => `${x},${y}`);
  const [one, other] = [spelled.join(' '), [...spelled].reverse().join(' ')];
  return [one, other].sort()[0] ?? one;
}

/** `; the same mirrored left to right`, `; the same 2 and 4 in farther up`: how repeats are said after a sentence without its full stop. */
export function sayAgain({ mirrors, farther }: Repeated<unknown>, ruler: Ruler): string {
  if (farther) return `; the same ${sayLengths(farther.by, ruler)} farther ${farther.way}`;
  if (mirrors.length === MIRRORS.length) return '; the same at all four corners';
  if (mirrors.length === 0) return '';
  return `; the same ${mirrors.map((mirror) => (mirror === 'half round' ? 'turned half round' : `mirrored ${mirror}`)).join(' and ')}`;
}
