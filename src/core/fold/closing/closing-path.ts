import type { ClosingAct, PieceNet } from '../../net/types';
import { toMm } from '../../units/ticks';
import { closingTolerance } from '../closed-piece';
import { type Collision, collisions, type LookAt, platesOf } from '../collisions';
import { foldPiece } from '../fold-piece';
import { liftsInward } from '../layers';
import { bentPath } from './bent-path';
import { anglesDuring, closingStates } from './closing-states';
import { loopPath } from './loop-path';
import { tuckPath } from './tuck-path';

/** Frames looked at in each act of closing. source: our choice, 15 degrees of a quarter turn apart */
const FRAMES_AN_ACT = 6;

type Turning = Exclude<ClosingAct, { readonly do: 'glue' }>;

/** What runs into what in one act. */
export interface ActHits {
  readonly act: Turning;
  readonly hits: readonly Collision[];
}

/** What was met on the way, and the acts (by place in `closing`) that rigid panels cannot say anything about. */
export interface ClosingPath {
  readonly met: readonly ActHits[];
  readonly notFollowed: readonly number[];
}

/**
 * Closes a piece act by act in the declared order and looks at what runs into what on the way. A tuck is followed with its flap turned as it
 * slips in; panels in a closed loop (gussets under a roof) along the way that keeps the loop closed, panels that bend (the faces of a pillow)
 * chord by chord. What springs (the ends of a pillow) is not followed.
 */
export function followClosing(piece: PieceNet, caliperMm: number): ClosingPath {
  const states = closingStates(piece);
  const look = lookAt(piece, caliperMm);
  const met: ActHits[] = [];
  const notFollowed: number[] = [];
  piece.closing.forEach((act, at) => {
    if (act.do === 'glue') return;
    const hits = act.bends ? followBent(piece, act, states, at, look) : followTurn(piece, states, at, look);
    if (hits === null) notFollowed.push(at);
    else if (hits.length > 0) met.push({ act, hits });
  });
  return { met, notFollowed };
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
  const layers = liftsInward(piece);
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
