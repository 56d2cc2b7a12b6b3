import { netArea, pointAt, samePoint } from './point';
import type { Blank, Point } from './types';

type Directed = { readonly a: Point; readonly b: Point };

/** The rings round a piece from its one-sided edges (card on the left): the outer one counter-clockwise, gaps in it clockwise. */
export function ringsOf(boundary: readonly Directed[]): Point[][] {
  const from = new Map<string, Directed[]>();
  const key = (p: Point) => `${p.x},${p.y}`;
  for (const edge of boundary) {
    const known = from.get(key(edge.a));
    if (known === undefined) from.set(key(edge.a), [edge]);
    else known.push(edge);
  }
  const rings: Point[][] = [];
  for (const start of boundary) {
    let edge = take(from.get(key(start.a)), start);
    if (edge === undefined) continue;
    const ring: Point[] = [];
    while (edge !== undefined) {
      ring.push(edge.a);
      if (samePoint(edge.b, start.a)) break;
      edge = take(from.get(key(edge.b)), sharpestLeft(from.get(key(edge.b)) ?? [], edge));
    }
    rings.push(ring);
  }
  return rings;
}

function take(edges: Directed[] | undefined, edge: Directed | undefined): Directed | undefined {
  const at = edges === undefined || edge === undefined ? -1 : edges.indexOf(edge);
  return at < 0 ? undefined : edges?.splice(at, 1)[0];
}

/** Where two rings touch at a point, the turn that keeps each ring with its own card. */
function sharpestLeft(choices: readonly Directed[], came: Directed): Directed | undefined {
  const turn = (edge: Directed) => {
    const [ux, uy, vx, vy] = [
      came.b.x - came.a.x,
      came.b.y - came.a.y,
      edge.b.x - edge.a.x,
      edge.b.y - edge.a.y,
    ];
    return Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
  };
  return choices.length < 2 ? choices[0] : [...choices].sort((p, q) => turn(q) - turn(p))[0];
}

/** The ring round a piece, counter-clockwise, from its edges with card on one side only. */
export const outerRing = (rings: readonly (readonly Point[])[]): readonly Point[] =>
  rings.reduce<readonly Point[]>((best, ring) => (netArea(ring) > netArea(best) ? ring : best), []);

/** What falls away between a blank and the piece cut from it: every ring counter-clockwise. */
export function wasteOf(blank: Blank, rings: readonly (readonly Point[])[]): Point[][] {
  const outer = withoutStraightCorners(outerRing(rings));
  const gaps = rings
    .filter((ring) => netArea(ring) < 0)
    .map((ring) => withoutStraightCorners(ring).reverse());
  const start = outer.findIndex((point, at) => {
    const before = outer[(at + outer.length - 1) % outer.length];
    return (
      before !== undefined &&
      onEdgeOf(blank, point) &&
      (!onSameEdge(blank, before, point) || !onEdgeOf(blank, before))
    );
  });
  if (start < 0) return gaps;
  const waste: Point[][] = [];
  let chain: Point[] = [];
  for (let step = 0; step <= outer.length; step++) {
    const point = outer[(start + step) % outer.length];
    if (point === undefined) break;
    const before = chain[chain.length - 1];
    const trimmed = before !== undefined && onSameEdge(blank, before, point);
    if (trimmed) chain = [point];
    else chain.push(point);
    if (chain.length > 1 && onEdgeOf(blank, point)) {
      waste.push(closeOff(blank, chain));
      chain = [point];
    }
  }
  return [...gaps, ...waste];
}

/** A chain of cuts from one place on the blank's edge to another, turned into the ring of what it cuts away. */
function closeOff(blank: Blank, chain: readonly Point[]): Point[] {
  const ring = [...chain].reverse();
  const [from, to] = [chain[0], chain[chain.length - 1]];
  if (from === undefined || to === undefined) return ring;
  const round = 2 * (blank.across + blank.up);
  const [start, end] = [roundOf(blank, from), roundOf(blank, to)];
  const { across, up } = blank;
  const corners = [pointAt(0, 0), pointAt(across, 0), pointAt(across, up), pointAt(0, up)];
  const ahead = (place: number) => (place - start + round) % round;
  const passed = corners.filter(
    (corner) => ahead(roundOf(blank, corner)) > 0 && ahead(roundOf(blank, corner)) < ahead(end),
  );
  return [...ring, ...passed.sort((p, q) => ahead(roundOf(blank, p)) - ahead(roundOf(blank, q)))];
}

/** How far counter-clockwise round the blank from its lower left corner. */
function roundOf({ across, up }: Blank, { x, y }: Point): number {
  if (y === 0) return x;
  if (x === across) return across + y;
  if (y === up) return across + up + (across - x);
  return 2 * across + up + (up - y);
}

const onEdgeOf = ({ across, up }: Blank, { x, y }: Point): boolean =>
  x === 0 || y === 0 || x === across || y === up;

/** Do both points lie on one side of the blank? Then the line between them is its own trimmed edge. */
export const onSameEdge = ({ across, up }: Blank, p: Point, q: Point): boolean =>
  (p.x === q.x && (p.x === 0 || p.x === across)) || (p.y === q.y && (p.y === 0 || p.y === up));

/** A ring without the corners it passes straight through: those belong to its neighbors. */
export function withoutStraightCorners(ring: readonly Point[]): Point[] {
  const kept = ring.filter((p, at) => {
    const [before, after] = [
      ring[(at + ring.length - 1) % ring.length] ?? p,
      ring[(at + 1) % ring.length] ?? p,
    ];
    return (p.x - before.x) * (after.y - p.y) !== (p.y - before.y) * (after.x - p.x);
  });
  return kept;
}
