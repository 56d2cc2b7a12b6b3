import type { Ring as FlatRing } from '../../plane';

interface Corner {
  readonly x: number;
  readonly y: number;
}

type Ring = readonly Corner[];

const named = (ring: FlatRing): Ring => ring.map(([x, y]) => ({ x, y }));

/** An outline where it lies on the sheet, in the sheet's own frame, ticks. */
export interface LaidOutline {
  readonly name: string;
  readonly ring: FlatRing;
}

/**
 * Everything wrong with a nest, as words for a developer; empty means that it can be cut. Knows nothing of how the nest was found and shares no
 * line with it: whole numbers, edges against edges. `gap`: the least distance between two outlines.
 */
export function checkNest(
  laid: readonly LaidOutline[],
  sheet: { readonly left: number; readonly near: number; readonly right: number; readonly far: number },
  gap = 0,
): string[] {
  const faults: string[] = [];
  for (const { name, ring } of laid)
    if (ring.some(([x, y]) => x < sheet.left || x > sheet.right || y < sheet.near || y > sheet.far))
      faults.push(`${name} reaches off the sheet`);
  for (const [i, a] of laid.entries())
    for (const b of laid.slice(i + 1)) {
      if (insidesMeet(a.ring, b.ring)) faults.push(`${a.name} overlaps ${b.name}`);
      else if (gap > 0 && nearer(named(a.ring), named(b.ring), gap))
        faults.push(`${a.name} lies nearer than the gap to ${b.name}`);
    }
  return faults;
}

const side = (a: Corner, b: Corner, c: Corner): number =>
  Math.sign((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));

/** On the line a, b between both, its ends not. */
const isWithin = (a: Corner, b: Corner, c: Corner): boolean =>
  side(a, b, c) === 0 && (c.x - a.x) * (c.x - b.x) + (c.y - a.y) * (c.y - b.y) < 0;

const edgesOf = (ring: Ring): (readonly [Corner, Corner])[] =>
  ring.map((corner, at) => [corner, ring[(at + 1) % ring.length]!] as const);

/** Whether two simple rings, both counter-clockwise, have some of their inside in common. Doubled so that middles of edges are whole too. */
export function insidesMeet(first: FlatRing, second: FlatRing): boolean {
  const double = (ring: FlatRing) => ring.map(([x, y]) => ({ x: 2 * x, y: 2 * y }));
  const [a, b] = [double(first), double(second)];
  for (const [p, q] of edgesOf(a))
    for (const [r, s] of edgesOf(b))
      if (side(p, q, r) * side(p, q, s) < 0 && side(r, s, p) * side(r, s, q) < 0) return true;
  return entersInside(a, b) || entersInside(b, a);
}

/** Edges that do not cross touch only at corners; so each stretch between touches lies wholly inside, outside or on the other ring. */
function entersInside(a: Ring, b: Ring): boolean {
  for (const [p, q] of edgesOf(a)) {
    const stops = [p, ...b.filter((corner) => isWithin(p, q, corner)), q];
    stops.sort((m, n) => (m.x - n.x) * (q.x - p.x) + (m.y - n.y) * (q.y - p.y));
    for (const [at, stop] of stops.slice(0, -1).entries()) {
      const next = stops[at + 1]!;
      const middle = { x: (stop.x + next.x) / 2, y: (stop.y + next.y) / 2 };
      const edge = edgesOf(b).find(([r, s]) => isWithin(r, s, middle));
      // Along a common edge both insides lie left of it if the edges run the same way.
      if (edge === undefined ? windsRound(b, middle) : runsAlong(edge, [p, q])) return true;
    }
  }
  return false;
}

const runsAlong = ([r, s]: readonly [Corner, Corner], [p, q]: readonly [Corner, Corner]): boolean =>
  (s.x - r.x) * (q.x - p.x) + (s.y - r.y) * (q.y - p.y) > 0;

/** Strictly inside, for a point not on the ring. */
function windsRound(ring: Ring, point: Corner): boolean {
  let winding = 0;
  for (const [r, s] of edgesOf(ring)) {
    if (r.y <= point.y && s.y > point.y && side(r, s, point) > 0) winding++;
    if (r.y > point.y && s.y <= point.y && side(r, s, point) < 0) winding--;
  }
  return winding !== 0;
}

const nearer = (a: Ring, b: Ring, gap: number): boolean =>
  edgesOf(a).some((edge) => b.some((corner) => isNear(corner, edge, gap))) ||
  edgesOf(b).some((edge) => a.some((corner) => isNear(corner, edge, gap)));

/** Exact: squares of areas outgrow a double, so they are counted as big whole numbers. */
function isNear(c: Corner, [p, q]: readonly [Corner, Corner], gap: number): boolean {
  const along = (c.x - p.x) * (q.x - p.x) + (c.y - p.y) * (q.y - p.y);
  const length = (q.x - p.x) ** 2 + (q.y - p.y) ** 2;
  const apart = (m: Corner, n: Corner) => (m.x - n.x) ** 2 + (m.y - n.y) ** 2;
  if (along <= 0) return apart(c, p) < gap ** 2;
  if (along >= length) return apart(c, q) < gap ** 2;
  const area = BigInt((q.x - p.x) * (c.y - p.y) - (q.y - p.y) * (c.x - p.x));
  return area * area < BigInt(gap) ** 2n * BigInt(length);
}
