import type { SheetPaper, SheetPart } from '../types';

/** A corner of an outline, whole ticks; y up. */
export interface Corner {
  readonly x: number;
  readonly y: number;
}

export type Ring = readonly Corner[];

/** Quarter turns counter-clockwise. */
export type Quarter = 0 | 1 | 2 | 3;

/** One way for an outline to lie: corners counter-clockwise, its box from 0, 0. */
export interface Lie {
  readonly quarter: Quarter;
  readonly ring: Ring;
  readonly across: number;
  readonly up: number;
}

/** A corner turned about 0, 0. */
export const turnCorner = ({ x, y }: Corner, quarter: Quarter): Corner =>
  quarter === 0
    ? { x, y }
    : quarter === 1
      ? { x: -y, y: x }
      : quarter === 2
        ? { x: -x, y: -y }
        : { x: y, y: -x };

/** Twice the area inside a ring, square ticks; positive when its corners run counter-clockwise. */
export function doubleAreaOf(ring: Ring): number {
  let [sum, before] = [0, ring[ring.length - 1]];
  for (const corner of ring) {
    if (before !== undefined) sum += before.x * corner.y - corner.x * before.y;
    before = corner;
  }
  return sum;
}

/** A ring without double corners and corners on a straight edge, counter-clockwise. */
export function tidyRing(ring: Ring): Ring {
  const turned = doubleAreaOf(ring) < 0 ? [...ring].reverse() : [...ring];
  for (let at = 0; at < turned.length && turned.length > 3; ) {
    const before = turned[(at + turned.length - 1) % turned.length]!;
    const here = turned[at]!;
    const after = turned[(at + 1) % turned.length]!;
    if (crossOf(before, here, after) === 0) {
      turned.splice(at, 1);
      at = Math.max(0, at - 2);
    } else at++;
  }
  return turned;
}

/** Twice the area of the triangle a, b, c; positive when c lies left of a→b. */
export const crossOf = (a: Corner, b: Corner, c: Corner): number =>
  (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

export function turnRing(ring: Ring, quarter: Quarter): Lie {
  const turned = ring.map((corner) => turnCorner(corner, quarter));
  const left = Math.min(...turned.map(({ x }) => x));
  const near = Math.min(...turned.map(({ y }) => y));
  const moved = turned.map(({ x, y }) => ({ x: x - left, y: y - near }));
  return {
    quarter,
    ring: moved,
    across: Math.max(...moved.map(({ x }) => x)),
    up: Math.max(...moved.map(({ y }) => y)),
  };
}

/** The different ways an outline may lie; turns that change nothing are left out. */
export function liesOf(ring: Ring, quarters: readonly Quarter[]): readonly Lie[] {
  const lies = new Map<string, Lie>();
  for (const quarter of quarters) {
    const lie = turnRing(tidyRing(ring), quarter);
    const key = keyOf(lie.ring);
    if (!lies.has(key)) lies.set(key, lie);
  }
  return [...lies.values()];
}

/** Corners from the lowest left one on, as text. */
function keyOf(ring: Ring): string {
  const start = ring.reduce((low, { x, y }, at) => {
    const best = ring[low]!;
    return y < best.y || (y === best.y && x < best.x) ? at : low;
  }, 0);
  return ring.map((_, at) => ring[(start + at) % ring.length]!).map(({ x, y }) => `${x},${y}`).join(' '); // biome-ignore format: one line
}

/** Quarter turns that keep a part's grain along the sheet's. */
export function quartersOf(grain: SheetPart['grain'], paper: Pick<SheetPaper, 'grain'>): readonly Quarter[] {
  if (grain === 'free' || paper.grain === 'none') return [0, 1, 2, 3];
  return grain === paper.grain ? [0, 2] : [1, 3];
}
