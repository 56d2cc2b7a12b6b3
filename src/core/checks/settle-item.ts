import { cross, dot, minus, plus, size, times, type Vector } from '../fold';

/** Rounds of pushing an item away from what it runs into. source: our choice */
const ROUNDS = 60;

/** source: our choice, a fifth of the lightest card, mm */
export const SLACK = 0.04;

export type Axes = readonly [Vector, Vector, Vector];

export interface Cuboid {
  readonly axes: Axes;
  readonly halves: readonly [number, number, number];
  readonly middle: Vector;
}

/** A convex part of a panel, one caliper thick. */
export interface Slab {
  readonly corners: readonly Vector[];
  readonly axes: readonly Vector[];
  readonly edges: readonly Vector[];
}

export const unit = (p: Vector): Vector => {
  const long = size(p);
  return long < 1e-9 ? [0, 0, 0] : times(p, 1 / long);
};

/** Pushes the item off the slab it runs deepest into, again and again; how deep it still runs in at the last. */
export function settle(slabs: readonly Slab[], room: readonly Vector[], start: Cuboid): number {
  let item = start;
  const path = [start.middle];
  let least = Number.POSITIVE_INFINITY;
  for (let round = 0; round < ROUNDS; round++) {
    let push = pushBack(room, item);
    for (const slab of slabs) {
      const found = pushOff(slab, item);
      if (found.depth > push.depth) push = found;
    }
    least = Math.min(least, push.depth);
    if (push.depth <= SLACK) return push.depth;
    item = { ...item, middle: plus(item.middle, times(push.way, push.depth)) };
    path.push(item.middle);
    if (path.length > 4 && path.length % 4 === 1) item = { ...item, middle: runOn(path) };
  }
  return least;
}

/**
 * In a wedge of two panels the pushes shrink by the same share each time and never arrive: the sum of what is still to come (a geometric
 * series, two pushes a term) is taken at once. Aitken 1926.
 */
function runOn(path: readonly Vector[]): Vector {
  const [before, between, now] = [path.at(-5), path.at(-3), path.at(-1)] as [Vector, Vector, Vector];
  const [first, second] = [minus(between, before), minus(now, between)];
  const share = size(second) / (size(first) || 1);
  const straight = dot(first, second) > STRAIGHT * size(first) * size(second);
  return straight && share > 0 && share < 1 ? plus(now, times(second, share / (1 - share))) : now;
}

/** Two ways this near one another are one. source: our choice, the cosine of about eight degrees */
const STRAIGHT = 0.99;

interface Push {
  readonly depth: number;
  readonly way: Vector;
}

/** The way back into the room where the item stands out of it: over the rim of an open box, or out beyond a wall. */
function pushBack(room: readonly Vector[], { axes, halves, middle }: Cuboid): Push {
  let most: Push = { depth: 0, way: [0, 0, 0] };
  axes.forEach((axis, k) => {
    const along = room.map((corner) => dot(axis, corner));
    const at = dot(axis, middle);
    const half = halves[k] ?? 0;
    const [above, below] = [at + half - Math.max(...along), Math.min(...along) - (at - half)];
    if (above > most.depth) most = { depth: above, way: times(axis, -1) };
    if (below > most.depth) most = { depth: below, way: axis };
  });
  return most;
}

const APART: Push = { depth: 0, way: [0, 0, 0] };

/** The shortest way off a slab, by separating axes. */
function pushOff({ corners, axes, edges }: Slab, item: Cuboid): Push {
  let best: Push = { depth: Number.POSITIVE_INFINITY, way: [0, 0, 0] };
  const tries = (axis: Vector): boolean => {
    const reach = item.axes.reduce(
      (sum, own, k) => sum + Math.abs(dot(axis, own)) * (item.halves[k] ?? 0),
      0,
    );
    const at = dot(axis, item.middle);
    let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const corner of corners) {
      const along = dot(axis, corner);
      if (along < low) low = along;
      if (along > high) high = along;
    }
    const [up, down] = [high - (at - reach), at + reach - low];
    const depth = Math.min(up, down);
    if (depth <= 0) return false;
    if (depth < best.depth) best = { depth, way: up < down ? axis : times(axis, -1) };
    return true;
  };
  for (const axis of [...item.axes, ...axes]) if (size(axis) > 0 && !tries(axis)) return APART;
  for (const own of item.axes)
    for (const edge of edges) {
      const axis = unit(cross(own, edge));
      if (size(axis) > 0 && !tries(axis)) return APART;
    }
  return best;
}
