import { type At, boxOf, cornerAt, counterClockwise, type Ring, sideOf } from '../../plane';
import type { SheetPaper, SheetPart } from '../types';

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
export const turnCorner = ([x, y]: At, quarter: Quarter): At => {
  const turns: readonly [At, At, At, At] = [[x, y], [-y, x], [-x, -y], [y, -x]]; // biome-ignore format: one row
  return turns[quarter];
};

/** A ring without double corners and corners on a straight edge, counter-clockwise. */
export function tidyRing(ring: Ring): Ring {
  const turned = [...counterClockwise(ring)];
  for (let at = 0; at < turned.length && turned.length > 3; ) {
    if (sideOf(cornerAt(turned, at - 1), cornerAt(turned, at), cornerAt(turned, at + 1)) === 0) {
      turned.splice(at, 1);
      at = Math.max(0, at - 2);
    } else at++;
  }
  return turned;
}

export function turnRing(ring: Ring, quarter: Quarter): Lie {
  const turned = ring.map((corner) => turnCorner(corner, quarter));
  const { left, bottom, right, top } = boxOf(turned);
  return {
    quarter,
    ring: turned.map(([x, y]): At => [x - left, y - bottom]),
    across: right - left,
    up: top - bottom,
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
  const start = ring.reduce((low, [x, y], at) => {
    const best = ring[low]!;
    return y < best[1] || (y === best[1] && x < best[0]) ? at : low;
  }, 0);
  return ring.map((_, at) => ring[(start + at) % ring.length]!).join(' '); // biome-ignore format: one line
}

/** Quarter turns that keep a part's grain along the sheet's; on print that stands one way, only one of them. */
export function quartersOf(
  grain: SheetPart['grain'],
  paper: Pick<SheetPaper, 'grain' | 'oneWay'>,
): readonly Quarter[] {
  if (grain === 'free' || paper.grain === 'none') return [0, 1, 2, 3];
  if (paper.oneWay) return grain === paper.grain ? [0] : [1];
  return grain === paper.grain ? [0, 2] : [1, 3];
}
