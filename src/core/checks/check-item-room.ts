import {
  cross,
  dot,
  FLAT,
  type FoldedFace,
  flatRing,
  foldPiece,
  insideOf,
  liesOutside,
  minus,
  placeOf,
  plus,
  size,
  times,
  type Vector,
} from '../fold';
import { CHORD_TOLERANCE_MM } from '../net/arc';
import { asItStands } from '../net/lay-net';
import type { BoxNet, PieceNet } from '../net/types';
import { convexParts, counterClockwise } from '../plane';
import { toMm } from '../units/ticks';
import { asTicks, type Finding } from './finding';
import { type Axes, SLACK, type Slab, settle, unit } from './settle-item';

/** Calipers of clearance an item is given in every direction: a tab or a flap's end may lie between it and the wall. source: common practice, no source */
const ITEM_CLEARANCE = 2;

/**
 * Does an item as large as the box says it holds, less a clearance, lie in the closed box? Card has its thickness here: every panel is a slab
 * of one caliper about its score plane, and panels that lie on others are stacked. Looks for a place by pushing the item off whatever it runs
 * into, square to the root panel or to another wall, and back where it stands out of the room. One piece holds the
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
  if (deep <= SLACK + (isBent(piece) ? CHORD_TOLERANCE_MM : 0)) return [];
  return [
    {
      code: 'inside-less-than-told',
      severity: 'stop',
      where: piece.id,
      facts: { width, depth, height, deep: asTicks(deep) },
      says: 'An item {width} × {depth} × {height} doesn’t fit in the closed box: it is {deep} too large.',
      remedy: 'Make the box larger by at least that.',
    },
  ];
}

/** A bent wall is drawn as chords, which lie so far inside the curve at most. */
const isBent = ({ hinges }: PieceNet): boolean => hinges.some(({ kind }) => kind === 'join');

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
        best = Math.min(best, settle(slabs, corners, { axes, halves, middle }));
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

/** Square to the bench. */
const BENCH: Axes = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/** Frames an item may lie square to: the bench’s, the root’s, then the shell’s walls, then any panel’s; a bent panel’s as a whole before its strips’. */
function framesOf(piece: PieceNet, faces: readonly FoldedFace[]): readonly Axes[] {
  const bent = [...new Set(piece.shell.map((face) => piece.faces[face]?.panel))].flatMap((panel) => {
    const strips = faces.filter((_, at) => piece.faces[at]?.panel === panel);
    return strips.length > 1 ? bentFrame(strips) : [];
  });
  const all = [0, ...piece.shell, ...faces.keys()].flatMap((face): Axes[] => {
    const pose = faces[face]?.pose;
    return pose === undefined
      ? []
      : [[[pose[0], pose[4], pose[8]], [pose[1], pose[5], pose[9]], insideOf(pose)]];
  });
  return [...bent, BENCH, ...all].filter(
    (axes, at, each) => each.findIndex((other) => sameFrame(axes, other)) === at,
  );
}

/** A bent panel as a whole: its strips look one way on the mean, and share a way along themselves. */
function bentFrame(strips: readonly FoldedFace[]): Axes[] {
  const looks = unit(strips.reduce<Vector>((sum, { pose }) => plus(sum, insideOf(pose)), [0, 0, 0]));
  const { pose } = strips[0] ?? { pose: FLAT };
  const ways: readonly Vector[] = [
    [pose[0], pose[4], pose[8]],
    [pose[1], pose[5], pose[9]],
  ];
  const [along] = [...ways].sort((p, q) => Math.abs(dot(p, looks)) - Math.abs(dot(q, looks)));
  if (along === undefined || size(looks) === 0) return [];
  const right = unit(minus(along, times(looks, dot(along, looks))));
  return [[right, cross(looks, right), looks]];
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

/** Every panel as slabs. One that lies on others, or is glued inside one, is as many calipers farther in. */
function slabsOf(piece: PieceNet, faces: readonly FoldedFace[], caliper: number): readonly Slab[] {
  const stacked = piece.faces.map(() => 0);
  const moved = new Map<number, Vector>();
  for (const group of piece.overlaps) {
    if (liesOutside(piece, group)) continue;
    const outer = group.length - 1;
    group.forEach((face, at) => {
      if (group.length === new Set(group.map((one) => piece.faces[one]?.panel)).size)
        if (outer - at > (stacked[face] ?? 0)) {
          stacked[face] = outer - at;
          // a panel that is folded right over looks away from the room it takes
          const inside = insideOf(faces[group[outer] ?? face]?.pose ?? FLAT);
          moved.set(face, times(inside, (outer - at) * caliper));
        }
    });
  }
  for (const { tab, target, lap, gap } of piece.joints)
    if (lap === 'inside' && stacked[tab] === 0) {
      stacked[tab] = (stacked[target] ?? 0) + 1;
      // On the target's inside, which is not its own where it was rolled over; drawn a little off its place, the card gives.
      const inside = insideOf(faces[target]?.pose ?? FLAT);
      moved.set(tab, times(inside, (stacked[tab] ?? 0) * caliper - toMm(gap)));
    }
  return faces.flatMap(({ pose }, face) =>
    convexParts(counterClockwise(flatRing(piece, face))).map((part): Slab => {
      const inside = insideOf(pose);
      const plane = part.map(([x, y]) =>
        plus(placeOf(pose, x, y), moved.get(face) ?? times(inside, (stacked[face] ?? 0) * caliper)),
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
