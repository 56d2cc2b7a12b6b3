import {
  cross,
  dot,
  type FoldedFace,
  foldPiece,
  insideOf,
  minus,
  placeOf,
  plus,
  size,
  times,
  type Vector,
} from '../fold';
import { asItStands } from '../net/lay-net';
import type { BoxNet, PieceNet } from '../net/types';
import { toMm } from '../units/ticks';
import { asTicks, flatRing } from './closed-piece';
import type { Finding } from './finding';
import { convexParts, counterClockwise } from './planar';

/** Calipers of clearance an item is given in every direction: a tab or a flap's end may lie between it and the wall. source: common practice, no source */
export const ITEM_CLEARANCE = 2;

/** Rounds of pushing an item away from what it runs into. source: our choice */
const ROUNDS = 60;

/**
 * Does an item as large as the box says it holds, less a clearance, lie in the closed box? Card has its thickness here: every panel is a slab
 * of one caliper about its score plane, and panels that lie on others are stacked. Looks for a place by pushing the item off whatever it runs
 * into, square to the root panel or to another wall; each side of the item stays upright on the one the style names. One piece holds the
 * item: the first that bounds a room. How the item gets in is not modelled.
 */
export function checkItemRoom(box: BoxNet, clearance: number = ITEM_CLEARANCE): Finding[] {
  const piece = asItStands(box).find(({ shell }) => shell.length > 0);
  if (piece === undefined) return [];
  const caliper = box.caliperUm / 1000;
  const { width, depth, height } = box.inside;
  const item = [width, depth, height].map((side) => toMm(side) - clearance * caliper) as [
    number,
    number,
    number,
  ];
  if (Math.min(...item) <= 0) return [];
  const deep = leastCrossing(piece, caliper, item);
  if (deep <= SLACK) return [];
  return [
    {
      code: 'inside-less-than-told',
      severity: 'stop',
      where: piece.id,
      facts: { width, depth, height, deep: asTicks(deep) },
      says: 'An item {width} × {depth} × {height} does not lie in the closed box: it runs {deep} into the card.',
      remedy: 'Make the box larger by at least that.',
    },
  ];
}

/** source: our choice, a fifth of the lightest card, mm */
const SLACK = 0.04;

/** How deep the item still runs into the card at the best place found; 0 where it lies free. */
export function leastCrossing(
  piece: PieceNet,
  caliperMm: number,
  item: readonly [number, number, number],
): number {
  const faces = foldPiece(piece);
  const slabs = slabsOf(piece, faces, caliperMm);
  const corners = piece.shell.flatMap((face) => faces[face]?.ring ?? []);
  let best = Number.POSITIVE_INFINITY;
  for (const axes of framesOf(piece, faces))
    for (const [w, d, h] of ORDERS) {
      const halves = [item[w] / 2, item[d] / 2, item[h] / 2] as const;
      for (const middle of [middleOf(corners), meanOf(corners)]) {
        best = Math.min(best, settle(slabs, { axes, halves, middle }));
        if (best <= SLACK) return best;
      }
    }
  return best;
}

const ORDERS = [
  [0, 2, 1],
  [0, 1, 2],
  [1, 2, 0],
  [1, 0, 2],
  [2, 0, 1],
  [2, 1, 0],
] as const;

type Axes = readonly [Vector, Vector, Vector];

interface Cuboid {
  readonly axes: Axes;
  readonly halves: readonly [number, number, number];
  readonly middle: Vector;
}

/** Frames an item may lie square to: the root’s, then the shell’s walls, then any panel’s. */
function framesOf(piece: PieceNet, faces: readonly FoldedFace[]): readonly Axes[] {
  const all = [0, ...piece.shell, ...faces.keys()].flatMap((face): Axes[] => {
    const pose = faces[face]?.pose;
    return pose === undefined
      ? []
      : [[[pose[0], pose[4], pose[8]], [pose[1], pose[5], pose[9]], insideOf(pose)]];
  });
  return all.filter((axes, at) => all.findIndex((other) => sameFrame(axes, other)) === at);
}

const sameFrame = (p: Axes, q: Axes): boolean =>
  p.every((axis) => q.some((other) => Math.abs(Math.abs(dot(axis, other)) - 1) < 1e-6));

const middleOf = (points: readonly Vector[]): Vector =>
  [0, 1, 2].map((axis) => {
    const all = points.map((point) => point[axis as 0 | 1 | 2]);
    return (Math.min(...all) + Math.max(...all)) / 2;
  }) as unknown as Vector;

/** Leans towards where the corners are many: the mouth of a cone. */
const meanOf = (points: readonly Vector[]): Vector =>
  times(
    points.reduce<Vector>((sum, point) => plus(sum, point), [0, 0, 0]),
    1 / Math.max(1, points.length),
  );

/** A convex part of a panel, one caliper thick. */
interface Slab {
  readonly corners: readonly Vector[];
  readonly axes: readonly Vector[];
  readonly edges: readonly Vector[];
}

/** Every panel as slabs. One that lies on others, or is glued inside one, is as many calipers farther in. */
function slabsOf(piece: PieceNet, faces: readonly FoldedFace[], caliper: number): readonly Slab[] {
  const stacked = piece.faces.map(() => 0);
  for (const group of piece.overlaps) {
    const outer = group.length - 1;
    group.forEach((face, at) => {
      if (group.length === new Set(group.map((one) => piece.faces[one]?.panel)).size)
        stacked[face] = Math.max(stacked[face] ?? 0, outer - at);
    });
  }
  for (const { tab, target, lap, gap } of piece.joints)
    if (lap === 'inside' && stacked[tab] === 0 && gap === 0) stacked[tab] = (stacked[target] ?? 0) + 1;
  return faces.flatMap(({ pose }, face) =>
    convexParts(counterClockwise(flatRing(piece, face))).map((part): Slab => {
      const inside = insideOf(pose);
      const plane = part.map(([x, y]) =>
        plus(placeOf(pose, x, y), times(inside, (stacked[face] ?? 0) * caliper)),
      );
      const half = times(inside, caliper / 2);
      const edges = plane.map((corner, at) => unit(minus(plane[(at + 1) % plane.length] ?? corner, corner)));
      return {
        corners: plane.flatMap((corner) => [plus(corner, half), minus(corner, half)]),
        axes: [inside, ...edges.map((edge) => unit(cross(edge, inside)))],
        edges,
      };
    }),
  );
}

const unit = (p: Vector): Vector => {
  const long = size(p);
  return long < 1e-9 ? [0, 0, 0] : times(p, 1 / long);
};

/** Pushes the item off the slab it runs deepest into, again and again; how deep it still runs in at the last. */
function settle(slabs: readonly Slab[], start: Cuboid): number {
  let item = start;
  let least = Number.POSITIVE_INFINITY;
  for (let round = 0; round < ROUNDS; round++) {
    let push: Push = { depth: 0, way: [0, 0, 0] };
    for (const slab of slabs) {
      const found = pushOff(slab, item);
      if (found.depth > push.depth) push = found;
    }
    least = Math.min(least, push.depth);
    if (push.depth <= SLACK) return push.depth;
    item = { ...item, middle: plus(item.middle, times(push.way, push.depth)) };
  }
  return least;
}

interface Push {
  readonly depth: number;
  readonly way: Vector;
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
