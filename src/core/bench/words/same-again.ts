import type { Blank } from '../../net/types';
import { ticks } from '../../units/ticks';
import type { BenchPoint } from '../types';

/** How one run of points comes from another on a card of this size. */
export type Mirror = 'left to right' | 'near to far' | 'half round';

const MIRRORS: readonly Mirror[] = ['left to right', 'near to far', 'half round'];

const mirrorPoint = ({ x, y }: BenchPoint, mirror: Mirror, { across, up }: Blank): BenchPoint => ({
  x: mirror === 'near to far' ? x : ticks(across - x),
  y: mirror === 'left to right' ? y : ticks(up - y),
});

/** One shape that is said, and the mirrors of it that need not be. */
export interface Repeated<T> {
  readonly said: T;
  readonly again: readonly Mirror[];
}

/** Shapes with those that are mirrors of an earlier one gathered under it. Points may run either way. */
export function gatherMirrors<T>(
  shapes: readonly T[],
  pointsOf: (shape: T) => readonly BenchPoint[],
  size: Blank,
): readonly Repeated<T>[] {
  const left = [...shapes];
  const gathered: Repeated<T>[] = [];
  for (let said = left.shift(); said !== undefined; said = left.shift()) {
    const points = pointsOf(said);
    const again = MIRRORS.filter((mirror) => {
      const wanted = keyOf(points.map((point) => mirrorPoint(point, mirror, size)));
      const found = left.findIndex((other) => keyOf(pointsOf(other)) === wanted);
      if (found >= 0) left.splice(found, 1);
      return found >= 0;
    });
    gathered.push({ said, again });
  }
  return gathered;
}

function keyOf(points: readonly BenchPoint[]): string {
  const spelled = points.map(({ x, y }) => `${x},${y}`);
  const [one, other] = [spelled.join(' '), [...spelled].reverse().join(' ')];
  return [one, other].sort()[0] ?? one;
}

/** `; the same mirrored left to right`: how the repeats are said after a sentence without its full stop. */
export function sayAgain(again: readonly Mirror[]): string {
  if (again.length === MIRRORS.length) return '; the same at all four corners';
  if (again.length === 0) return '';
  return `; the same ${again.map((mirror) => (mirror === 'half round' ? 'turned half round' : `mirrored ${mirror}`)).join(' and ')}`;
}
