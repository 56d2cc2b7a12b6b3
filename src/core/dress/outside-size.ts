import { closingStates, cross, dot, foldPiece, standOf, type Vector } from '../fold';
import { asItStands } from '../net/lay-net';
import { caliperTicks } from '../net/name-values';
import type { BoxNet, PieceNet } from '../net/types';
import { type At, hullOf } from '../plane';
import { TICKS_PER_MM, type Ticks, ticks } from '../units';

export interface BoxSize {
  readonly width: Ticks;
  readonly depth: Ticks;
  readonly height: Ticks;
}

/** The closed box outside, and the shortest way once round it: round the walls, over the top past the front, over the top past the sides. */
export interface Outside extends BoxSize {
  readonly round: { readonly walls: Ticks; readonly front: Ticks; readonly sides: Ticks };
  /** Ribbon that goes through its openings. */
  readonly threaded: Ticks;
}

const measured = new WeakMap<BoxNet, Outside>();

/**
 * The closed box outside, roof, handle and lid included: how far its folded panels reach, and one caliper for the walls. What goes round
 * it takes the shortest way, the hull of what it goes round. Further layers of an overlapping bottom are not counted. Source: derived.
 */
export function outsideSize(net: BoxNet): Outside {
  const known = measured.get(net);
  if (known) return known;
  const outside = measure(net);
  measured.set(net, outside);
  return outside;
}

function measure(net: BoxNet): Outside {
  const pieces = asItStands(net);
  const main = pieces[0] ? cornersOf(pieces[0]) : [];
  const corners = [main, ...pieces.slice(1).map((piece) => broughtTo(main, cornersOf(piece), piece))].flat();
  const caliper = caliperTicks(net.caliperUm);
  const lids = caliper * pieces.filter(({ lid }) => lid).length;
  const reach = (axis: Axis) => ticks(roundUp(length(corners, axis)) + caliper);
  const round = (one: Axis, other: Axis, more: number) =>
    ticks(roundUp(roundOf(corners.map((corner): At => [corner[one], corner[other]]))) + 4 * caliper + more);
  return {
    width: reach(0),
    depth: reach(1),
    height: ticks(reach(2) + lids),
    round: { walls: round(0, 1, 0), front: round(1, 2, 2 * lids), sides: round(0, 2, 2 * lids) },
    threaded: threadedIn(net),
  };
}

/** Ribbon of one box, every pull together; 0 where it has none. */
export const threadedIn = ({ pieces }: BoxNet): Ticks =>
  ticks(pieces.flatMap(({ threads = [] }) => threads).reduce((sum, { length: long }) => sum + long, 0));

type Axis = 0 | 1 | 2;

/** A hundredth of a tick is what folding in floating millimeters may add to a whole one. source: our own choice */
const SLACK = 0.01;
const roundUp = (mm: number): number => Math.ceil(mm * TICKS_PER_MM - SLACK);

/** Corners of the closed piece: across its front, from front to back, up; mm. */
function cornersOf(piece: PieceNet): readonly Vector[] {
  const angles = closingStates(piece).at(-1);
  const faces = foldPiece(piece, angles);
  const { up, front } = standOf(
    piece,
    faces.map(({ pose }) => pose),
  );
  const across = cross(front, up);
  return faces.flatMap(({ ring }) => ring.map((p): Vector => [dot(p, across), dot(p, front), dot(p, up)]));
}

/**
 * The corners of a further piece where it sits: in the middle, a lid with its top on the top, all else from the bottom. A sleeve may be drawn
 * with another wall in front than its drawer: the way round that reaches less beyond is how it sits.
 */
function broughtTo(main: readonly Vector[], corners: readonly Vector[], { lid }: PieceNet): Vector[] {
  const turned = corners.map(([x, y, z]): Vector => [y, x, z]);
  const beyond = (each: readonly Vector[]) =>
    Math.abs(length(each, 0) - length(main, 0)) + Math.abs(length(each, 1) - length(main, 1));
  const sits = beyond(turned) < beyond(corners) ? turned : corners;
  const middle = (axis: Axis) => (ends(main, axis)[0] + ends(main, axis)[1] - ends(sits, axis)[0] - ends(sits, axis)[1]) / 2; // biome-ignore format: one row
  const end = lid ? 1 : 0;
  const shift: Vector = [middle(0), middle(1), ends(main, 2)[end] - ends(sits, 2)[end]];
  return sits.map(([x, y, z]): Vector => [x + shift[0], y + shift[1], z + shift[2]]);
}

function ends(corners: readonly Vector[], axis: Axis): readonly [least: number, most: number] {
  const along = corners.map((corner) => corner[axis]);
  return along.length === 0 ? [0, 0] : [Math.min(...along), Math.max(...along)];
}

function length(corners: readonly Vector[], axis: Axis): number {
  const [least, most] = ends(corners, axis);
  return most - least;
}

/** The way round the hull of these points. */
function roundOf(points: readonly At[]): number {
  const hull = hullOf(points);
  return hull.reduce((sum, [x, y], at) => {
    const [nextX, nextY] = hull[(at + 1) % hull.length]!;
    return sum + Math.hypot(nextX - x, nextY - y);
  }, 0);
}
