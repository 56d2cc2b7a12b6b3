import { anglesDuring, closingStates, foldPiece } from '../fold';
import type { BoxNet, ClosingAct, PieceNet } from '../net/types';
import { toMm } from '../units/ticks';
import { bentPath } from './bent-path';
import { type Collision, collisions, platesOf } from './check-collisions';
import { checkLapOrder } from './check-lap-order';
import { asTicks, closingTolerance, panelWords, wordsOf } from './closed-piece';
import type { Finding } from './finding';
import { layersOf } from './layers';
import { loopPath } from './loop-path';
import { tuckPath } from './tuck-path';

/** Frames looked at in each act of closing. source: our choice, 15 degrees of a quarter turn apart */
export const FRAMES_AN_ACT = 6;

type Turning = Exclude<ClosingAct, { readonly do: 'glue' }>;

/** What was found on the way, and the acts (by place in `closing`) that rigid panels cannot say anything about. */
export interface ClosingPath {
  readonly findings: readonly Finding[];
  readonly notFollowed: readonly number[];
}

/**
 * Panels that run into each other on the way, act by act in the declared order, and layers that this order cannot give. Slower than the
 * other checks, so called by itself. A tuck is followed with its flap turned as it slips in; panels in a closed loop (gussets under a roof)
 * are followed along the way that keeps the loop closed, panels that bend (the faces of a pillow) chord by chord. What springs (the ends of a
 * pillow) is not followed: `closingNotFollowed` names it.
 */
export const checkClosingPath = (box: BoxNet): Finding[] =>
  [...box.pieces, ...(box.whole === undefined ? [] : [box.whole])].flatMap((piece) => [
    ...followClosing(piece, box.caliperUm / 1000).findings,
    ...checkLapOrder(piece),
  ]);

/** The acts of closing that the path check cannot follow, as the panels they move. */
export const closingNotFollowed = (box: BoxNet): readonly (readonly string[])[] =>
  box.pieces.flatMap((piece) =>
    followClosing(piece, box.caliperUm / 1000).notFollowed.flatMap((at) => {
      const act = piece.closing[at];
      return act === undefined || act.do === 'glue' ? [] : [act.panels];
    }),
  );

/** Looks at one way the panels may stand, mid-act: what runs into what. `among` narrows it to what moves. */
export type LookAt = (angles: readonly number[], among?: ReadonlySet<number>) => readonly Collision[];

export function followClosing(piece: PieceNet, caliperMm: number): ClosingPath {
  const states = closingStates(piece);
  const look = lookAt(piece, caliperMm);
  const findings: Finding[] = [];
  const notFollowed: number[] = [];
  piece.closing.forEach((act, at) => {
    if (act.do === 'glue') return;
    const hits = act.bends ? followBent(piece, act, states, at, look) : followTurn(piece, states, at, look);
    if (hits === null) notFollowed.push(at);
    else findings.push(...tellHits(piece, act, hits));
  });
  return { findings, notFollowed };
}

function followTurn(
  piece: PieceNet,
  states: readonly number[][],
  at: number,
  look: LookAt,
): readonly Collision[] {
  return Array.from({ length: FRAMES_AN_ACT }, (_, frame) =>
    look(anglesDuring(states, at, (frame + 1) / FRAMES_AN_ACT, piece.closing)),
  ).flat();
}

/** Null where no way was found that the card could go. */
function followBent(
  piece: PieceNet,
  act: Turning,
  states: readonly number[][],
  at: number,
  look: LookAt,
): readonly Collision[] | null {
  const bends = act.hinges.some((hinge) => piece.hinges[hinge]?.kind === 'join');
  const bent = piece.faces.some(
    ({ panel }, face) =>
      act.panels.includes(panel) && piece.faces.some((other, k) => k !== face && other.panel === panel),
  );
  if (bends || bent) return bentPath(piece, act, states, at, look);
  const follow = act.do === 'tuck' ? tuckPath : loopPath;
  return follow(piece, act, states[at] ?? [], states[at + 1] ?? [], look);
}

function lookAt(piece: PieceNet, caliperMm: number): LookAt {
  const slack = Math.max(closingTolerance(piece), toMm(32));
  const layers = layersOf(piece);
  const hingeOf = new Map(piece.hinges.map(({ child }, hinge) => [child, hinge]));
  return (angles, among) => {
    const liftOf = (face: number) => {
      const hinge = hingeOf.get(face) ?? -1;
      const rest = piece.hinges[hinge]?.restDeg ?? 0;
      // no lift either for a panel folded on past its place, flat against its wall
      const part = rest === 0 ? 1 : Math.max(0, 1 - Math.abs((angles[hinge] ?? 0) / rest - 1));
      return (layers[face] ?? 0) * caliperMm * part;
    };
    return collisions(piece, platesOf(piece, foldPiece(piece, angles), liftOf), slack, false, among);
  };
}

function tellHits(piece: PieceNet, act: Turning, hits: readonly Collision[]): readonly Finding[] {
  const told = new Map<string, Finding>();
  for (const hit of hits) {
    const [one, other] = [wordsOf(piece, hit.one), wordsOf(piece, hit.other)];
    const pair = `${one}, ${other}`;
    if (told.has(pair)) continue;
    told.set(pair, {
      code: 'panels-collide-closing',
      severity: 'stop',
      where: piece.faces[hit.other]?.panel ?? '',
      facts: { panels: act.panels.map(panelWords), one, other, deep: asTicks(hit.depth) },
      says: 'While the {panels} fold, the {one} and the {other} run into each other by {deep}.',
      remedy: 'Make one of them shorter, or close the box in another order.',
    });
  }
  return [...told.values()];
}
