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

/** Pushes the item off the slab it runs deepest into, again and again; how deep it still runs in at the last. Only its middle moves. */
export function settle(slabs: readonly Slab[], room: readonly Vector[], start: Cuboid): number {
  let item = start;
  const meetings = slabs.map((slab): Meeting => ({ slab, known: [] }));
  const rooms = start.axes.map((axis) => spanAlong(axis, room, start));
  const path = [start.middle];
  let least = Number.POSITIVE_INFINITY;
  for (let round = 0; round < ROUNDS; round++) {
    let push = pushBack(rooms, item);
    for (const meeting of meetings) {
      const found = pushOff(meeting, item);
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

/** How far corners reach along a way, and the item to either side of its middle. */
interface Span {
  readonly axis: Vector;
  readonly low: number;
  readonly high: number;
  readonly reach: number;
}

function spanAlong(axis: Vector, corners: readonly Vector[], { axes, halves }: Cuboid): Span {
  const reach = axes.reduce((sum, own, k) => sum + Math.abs(dot(axis, own)) * (halves[k] ?? 0), 0);
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const corner of corners) {
    const along = dot(axis, corner);
    if (along < low) low = along;
    if (along > high) high = along;
  }
  return { axis, low, high, reach };
}

/** An item and a slab, with the ways they may be apart that were looked at so far; null where there is none. */
interface Meeting {
  readonly slab: Slab;
  readonly known: (Span | null)[];
}

/** The ways item and slab may be apart, by separating axes: square to the item, to the slab, and to an edge of each. */
function spanAt({ slab, known }: Meeting, item: Cuboid, at: number): Span | null {
  const found = known[at];
  if (found !== undefined) return found;
  const { axes, edges } = slab;
  const pair = at - item.axes.length - axes.length;
  const [own, edge] = [item.axes[Math.floor(pair / edges.length)], edges[pair % edges.length]];
  const axis =
    item.axes[at] ?? axes[at - item.axes.length] ?? (own && edge ? unit(cross(own, edge)) : NOWHERE);
  const span = size(axis) > 0 ? spanAlong(axis, slab.corners, item) : null;
  known[at] = span;
  return span;
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

const NOWHERE: Vector = [0, 0, 0];

/** The way back into the room where the item stands out of it: over the rim of an open box, or out beyond a wall. */
function pushBack(rooms: readonly Span[], { axes, halves, middle }: Cuboid): Push {
  let most: Push = { depth: 0, way: NOWHERE };
  axes.forEach((axis, k) => {
    const at = dot(axis, middle);
    const half = halves[k] ?? 0;
    const { low, high } = rooms[k] ?? { low: at, high: at };
    const [above, below] = [at + half - high, low - (at - half)];
    if (above > most.depth) most = { depth: above, way: times(axis, -1) };
    if (below > most.depth) most = { depth: below, way: axis };
  });
  return most;
}

const APART: Push = { depth: 0, way: NOWHERE };

/** The shortest way off a slab. */
function pushOff(meeting: Meeting, item: Cuboid): Push {
  const { axes, edges } = meeting.slab;
  const ways = item.axes.length + axes.length + item.axes.length * edges.length;
  let depth = Number.POSITIVE_INFINITY;
  let way = NOWHERE;
  let turned = false;
  for (let k = 0; k < ways; k++) {
    const span = spanAt(meeting, item, k);
    if (span === null) continue;
    const at = dot(span.axis, item.middle);
    const [up, down] = [span.high - (at - span.reach), at + span.reach - span.low];
    const least = Math.min(up, down);
    if (least <= 0) return APART;
    if (least >= depth) continue;
    depth = least;
    way = span.axis;
    turned = up >= down;
  }
  return { depth, way: turned ? times(way, -1) : way };
}
