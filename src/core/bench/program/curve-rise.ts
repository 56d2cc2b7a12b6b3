import type { Point } from '../../net/types';
import { roundToTick, type Ticks } from '../../units/ticks';

/** How far a run of chords stands off the straight line between its ends, to the nearest tick: what a template is known by. */
export function riseOf(points: readonly Point[]): Ticks {
  const first = points[0];
  const last = points.at(-1);
  if (!first || !last) return roundToTick(0);
  const [across, up] = [last.x - first.x, last.y - first.y];
  const span = Math.hypot(across, up) || 1;
  const offs = points.map((p) => Math.abs(across * (p.y - first.y) - up * (p.x - first.x)) / span);
  return roundToTick(Math.max(...offs));
}
