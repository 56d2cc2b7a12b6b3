import {
  anglesDuring,
  closingStates,
  dot,
  insideOf,
  type Pose,
  placeOf,
  posesOf,
  type Vector,
} from '../fold';
import type { PieceNet } from '../net/types';
import { toMm } from '../units/ticks';
import { panelWords } from './closed-piece';
import type { Finding } from './finding';

/** How far into its last act two panels are looked at: late enough to come from the side they end on, early enough to lie apart. */
const JUST_BEFORE = 0.9;
/** Nearer than this a panel slides in along the other, and comes from neither side. Sine of the angle between them. */
const SLIDES = 1e-3;

/**
 * Where panels lie on one another, the order of layers and the order of closing must agree: what comes last comes from outside if it is an
 * outer layer, from inside if it is an inner one. Flush panels do not run into each other, so the path alone would not tell.
 */
export function checkLapOrder(piece: PieceNet): Finding[] {
  const states = closingStates(piece);
  const told = new Map<string, Finding>();
  for (const group of piece.overlaps)
    group.forEach((outer, at) => {
      for (const inner of group.slice(0, at)) {
        const names = [inner, outer].map((face) => piece.faces[face]?.panel ?? '') as [string, string];
        if (names[0] === names[1] || told.has(names.join())) continue;
        if (comesFrom(piece, states, inner, outer, group.at(-1) ?? outer) === 'outside')
          told.set(names.join(), finding(names));
      }
    });
  return [...told.values()];
}

const finding = ([inner, outer]: readonly [string, string]): Finding => ({
  code: 'lap-order-impossible',
  severity: 'stop',
  where: inner,
  facts: {},
  says: `The ${panelWords(inner)} should end up inside the ${panelWords(outer)}, but folded in this order it comes to lie outside it.`,
  remedy: 'Close the one that lies inside first, or let the two change places.',
});

/**
 * The side from which `inner` comes to lie along `outer`, seen from the panel that lies outermost. Only where it is plain: one of them rests
 * and the other turns about a score on a panel that rests. Null where both are on their way, one slides in or bends, or they never part.
 */
function comesFrom(
  piece: PieceNet,
  states: readonly (readonly number[])[],
  inner: number,
  outer: number,
  base: number,
): 'inside' | 'outside' | null {
  const poses = states.map((angles) => posesOf(piece, angles));
  const seen = (at: number) => poses[at] && apart(piece, poses[at], inner, outer);
  const end = states.length - 1;
  const act = piece.closing.findLastIndex((_, at) => !sameView(seen(at), seen(end)));
  const met = piece.closing[act];
  if (met === undefined || met.do === 'glue' || (met.bends && met.do !== 'tuck')) return null;
  const rests = (face: number) => isSamePose(poses[act]?.[face], poses[act + 1]?.[face]);
  const turns = (face: number) => {
    const hinge = piece.hinges.find(({ child }) => child === face);
    return hinge !== undefined && !rests(face) && rests(hinge.parent);
  };
  if (!(rests(inner) && turns(outer)) && !(rests(outer) && turns(inner))) return null;
  const before = posesOf(piece, anglesDuring(states, act, JUST_BEFORE, piece.closing));
  const [high, away] = apart(piece, before, inner, outer);
  // `outer` may look the other way from the outermost panel: folded over, it shows it its back.
  const last = poses[end] ?? [];
  const sense = Math.sign(dot(insideOf(last[outer] as Pose), insideOf(last[base] as Pose)));
  if (Math.abs(high) < SLIDES * away) return null;
  return high * sense > 0 ? 'inside' : 'outside';
}

/** The middle of `inner` above the plane of `outer`, towards its inside, and how far off it lies. mm */
function apart(piece: PieceNet, poses: readonly Pose[], inner: number, outer: number): [number, number] {
  const [from, to] = [middleOf(piece, poses, outer), middleOf(piece, poses, inner)];
  const way: Vector = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  return [dot(insideOf(poses[outer] as Pose), way), Math.hypot(...way)];
}

const sameView = (
  one: readonly [number, number] | undefined,
  other: readonly [number, number] | undefined,
): boolean =>
  one !== undefined &&
  other !== undefined &&
  one.every((value, at) => Math.abs(value - (other[at] ?? 0)) < 1e-6);

const isSamePose = (one: Pose | undefined, other: Pose | undefined): boolean =>
  one !== undefined &&
  other !== undefined &&
  one.every((value, at) => Math.abs(value - (other[at] ?? 0)) < 1e-9);

function middleOf({ faces }: PieceNet, poses: readonly Pose[], face: number): Vector {
  const ring = faces[face]?.ring ?? [];
  const mean = (of: (p: (typeof ring)[number]) => number) =>
    ring.reduce((sum, p) => sum + of(p), 0) / (ring.length || 1);
  return placeOf(poses[face] as Pose, toMm(mean(({ x }) => x)), toMm(mean(({ y }) => y)));
}
