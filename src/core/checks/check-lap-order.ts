import {
  anglesDuring,
  closingStates,
  dot,
  insideOf,
  middleOf,
  minus,
  type Pose,
  posesOf,
  size,
} from '../fold';
import type { PieceNet } from '../net/types';
import { type Finding, panelWords } from './finding';

/** How far into its last act two panels are looked at: late enough to come from the side they end on, early enough to lie apart. */
const JUST_BEFORE = 0.9;
/** Nearer than this a panel slides in along the other, and comes from neither side. Sine of the angle between them. */
const SLIDES = 1e-3;

/**
 * Where panels lie on one another, the order of layers and the order of closing must agree: what comes last comes from outside if it is an
 * outer layer, from inside if it is an inner one. Flush panels do not run into each other, so the path alone would not tell.
 */
export function checkLapOrder(piece: PieceNet): Finding[] {
  const path = pathOf(piece);
  const told = new Map<string, Finding>();
  for (const group of piece.overlaps)
    group.forEach((outer, at) => {
      for (const inner of group.slice(0, at)) {
        const [one, other] = [inner, outer].map((face) => piece.faces[face]?.panel ?? '');
        const key = `${one} ${other}`;
        if (one === undefined || other === undefined || one === other || told.has(key)) continue;
        if (comesFrom(piece, path, inner, outer, group.at(-1) ?? outer) === 'outside')
          told.set(key, finding(one, other));
      }
    });
  return [...told.values()];
}

const finding = (inner: string, outer: string): Finding => ({
  code: 'lap-order-impossible',
  severity: 'stop',
  where: inner,
  facts: { inner: panelWords(inner), outer: panelWords(outer) },
  says: 'The {inner} should be inside the {outer}, but this order puts it outside.',
  remedy: 'Close the inner one first, or swap the two.',
});

type Poses = readonly Pose[];

/** Where every face is before each act and after the last, and just before the end of each act. */
interface Path {
  readonly between: readonly Poses[];
  readonly nearly: readonly Poses[];
}

function pathOf(piece: PieceNet): Path {
  const states = closingStates(piece);
  return {
    between: states.map((angles) => posesOf(piece, angles)),
    nearly: piece.closing.map((_, act) =>
      posesOf(piece, anglesDuring(states, act, JUST_BEFORE, piece.closing)),
    ),
  };
}

/**
 * The side from which `inner` comes to lie along `outer`, seen from the panel that lies outermost. Only where it is plain: one of them rests
 * and the other turns about a score on a panel that rests. Null where both are on their way, one slides in or bends, or they never part.
 */
function comesFrom(
  piece: PieceNet,
  { between, nearly }: Path,
  inner: number,
  outer: number,
  base: number,
): 'inside' | 'outside' | null {
  const seen = (poses: Poses) => apart(piece, poses, inner, outer);
  const last = between.at(-1) ?? [];
  const act = piece.closing.findLastIndex((_, at) => !isSame(seen(between[at] ?? []), seen(last), 1e-6));
  const met = piece.closing[act];
  if (met === undefined || met.do === 'glue' || (met.bends && met.do !== 'tuck')) return null;
  const rests = (face: number) => isSame(between[act]?.[face], between[act + 1]?.[face], 1e-9);
  const turns = (face: number) => {
    const hinge = piece.hinges.find(({ child }) => child === face);
    return hinge !== undefined && !rests(face) && rests(hinge.parent);
  };
  if (!(rests(inner) && turns(outer)) && !(rests(outer) && turns(inner))) return null;
  const [high, away] = seen(nearly[act] ?? []);
  if (Math.abs(high) < SLIDES * away) return null;
  // `outer` may look the other way from the outermost panel: folded over, it shows it its back.
  const looksAlike = dot(insideOf(last[outer] as Pose), insideOf(last[base] as Pose)) > 0;
  return high > 0 === looksAlike ? 'inside' : 'outside';
}

/** The middle of `inner` above the plane of `outer`, towards its inside, and how far off it lies. mm */
function apart(piece: PieceNet, poses: Poses, inner: number, outer: number): readonly [number, number] {
  const [one, other] = [poses[inner] as Pose, poses[outer] as Pose];
  const way = minus(middleOf(piece, inner, one), middleOf(piece, outer, other));
  return [dot(insideOf(other), way), size(way)];
}

const isSame = (one: readonly number[] = [], other: readonly number[] = [], slack: number): boolean =>
  one.every((value, at) => Math.abs(value - (other[at] ?? 0)) < slack);
