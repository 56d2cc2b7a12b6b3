import type { StripInstance } from '../../shared/strip-instances';
import { type At, areaOf, boxOf, type Ring } from '../core/plane';
import { nestStrip, type Quarter, type StripPlace, turnCorner } from '../core/yield';
import type { Desk } from './verb';

/** Finest grid as a part of the coarsest; corners are held to this part of a unit too. source: our own, by trial */
const FINER = [1, 2, 8];
const FINEST = 8;
const ROWS = 80; // coarse rows a strip is high; our own, by trial

/** The shortest strip found for these outlines: `value` is its length, `density` the percentage of it that is covered. */
export function nestOnStrip(instance: StripInstance, seconds: number, desk: Desk) {
  const start = desk.tick();
  const { strip, items, name } = instance;
  const scale = scaleOf(items.flatMap(({ polygon }) => polygon.flat()));
  const parts = items.map(({ polygon, demand, allowedOrientations }) => ({
    ring: ringOf(polygon, scale),
    count: demand ?? 1,
    quarters: quartersOf(allowedOrientations ?? [0]),
  }));
  const coarse = Math.max(1, Math.round(strip.h / ROWS)) * scale;
  const steps = FINER.map((finer) => coarse / finer);
  const nest = nestStrip(parts, Math.floor(strip.h * scale), { seconds, now: desk.tick, steps });
  const ms = Math.round(desk.tick() - start);
  if (nest === null)
    return { name, value: null, lowerBound: null, proven: false, density: 0, ms, layouts: [] };
  const area = parts.reduce((sum, { ring, count }) => sum + count * Math.abs(areaOf(ring)), 0) / scale ** 2;
  const length = nest.length / scale;
  return {
    name,
    value: length,
    lowerBound: nest.lowerBound / scale,
    proven: nest.length === nest.lowerBound,
    density: Math.round((1e4 * area) / (strip.h * length)) / 100,
    ms,
    layouts: [{ sheets: 1, parts: nest.parts.map((place) => describePlace(place, parts, scale)) }],
  };
}

/** Whole numbers out of decimals: the least power of ten that makes every corner whole, so that eighths of it are whole too. */
function scaleOf(numbers: readonly number[]): number {
  let power = 1;
  while (power < 1e4 && numbers.some((number) => !Number.isInteger(Number((number * power).toFixed(6)))))
    power *= 10;
  return power * FINEST;
}

function ringOf(polygon: Ring, scale: number): Ring {
  const ring = polygon.map(([x, y]): At => [Math.round(x * scale), Math.round(y * scale)]);
  const [first, last] = [ring[0], ring[ring.length - 1]];
  return first?.[0] === last?.[0] && first?.[1] === last?.[1] ? ring.slice(1) : ring;
}

/** Only quarter turns keep corners whole; a part that may not lie in any of them is laid as it is drawn. */
function quartersOf(degrees: readonly number[]): readonly Quarter[] {
  const quarters = degrees.map((turn) => (((turn % 360) + 360) % 360) / 90).filter(Number.isInteger);
  return quarters.length > 0 ? (quarters as Quarter[]) : [0];
}

/** The polygon turned about 0, 0 by `rotation` degrees counter-clockwise, then moved by x, y. */
function describePlace(
  { part, quarter, x, y }: StripPlace,
  parts: readonly { readonly ring: Ring }[],
  scale: number,
) {
  const ring = parts[part]?.ring ?? [];
  const { left, bottom } = boxOf(ring.map((corner) => turnCorner(corner, quarter)));
  return { item: part, x: (x - left) / scale, y: (y - bottom) / scale, rotation: 90 * quarter };
}
