import { closingStates, closingTolerance, type FoldedFace, flatRing, foldPiece } from '../fold';
import type { Joint, PieceNet } from '../net/types';
import { type At, convexParts, counterClockwise, deepestOverlap } from '../plane';
import { toMm } from '../units/ticks';
import { seenFrom } from './check-joints';
import { type Finding, panelWords, wordsOf } from './finding';

/** Angles nearer than this are one. source: our choice, degrees */
const SAME_ANGLE = 0.01;

/**
 * The acts of closing as a program: nothing is glued before the two faces touch, and at its end every score is folded and every joint glued.
 * A net that names no acts is not asked.
 */
export function checkClosingProgram(piece: PieceNet): Finding[] {
  if (piece.closing.length === 0) return [];
  const states = closingStates(piece);
  const last = states.at(-1) ?? [];
  const glued = new Set<string>();
  const pairOf = ({ tab, target }: Joint) => `${piece.faces[tab]?.panel} ${piece.faces[target]?.panel}`;
  const early = piece.closing.flatMap((act, at): Finding[] => {
    const joint = act.do === 'glue' ? piece.joints[act.joint] : undefined;
    if (act.do !== 'glue' || joint === undefined) return [];
    glued.add(pairOf(joint));
    return touches(piece, foldPiece(piece, states[at]), joint)
      ? []
      : [
          {
            code: 'glued-before-touching',
            ...about(piece, joint),
            says: 'The {tab} is glued to the {target} before the two touch.',
            remedy: 'Fold both in place first.',
          },
        ];
  });
  const open = piece.joints.flatMap((joint): Finding[] =>
    glued.has(pairOf(joint))
      ? []
      : [
          {
            code: 'joint-left-open',
            ...about(piece, joint),
            says: 'The {tab} lies on the {target} at the end and is never glued.',
            remedy: 'Glue it once both are in place.',
          },
        ],
  );
  const unfolded = piece.hinges.flatMap(({ panel, restDeg }, at): Finding[] =>
    Math.abs((last[at] ?? 0) - restDeg) <= SAME_ANGLE
      ? []
      : [
          {
            code: 'fold-left-out',
            severity: 'stop',
            where: panel,
            facts: { panel: panelWords(panel) },
            says: 'The {panel} is not folded in place at the end.',
            remedy: 'Name it in one of the folds.',
          },
        ],
  );
  return [...early, ...open, ...unfolded];
}

const about = (piece: PieceNet, { tab, target }: Joint): Pick<Finding, 'severity' | 'where' | 'facts'> => ({
  severity: 'stop',
  where: piece.faces[tab]?.panel ?? '',
  facts: { tab: wordsOf(piece, tab), target: wordsOf(piece, target) },
});

/** Does a tab lie in the plane of its target, or as far off it as it is drawn, and over some of it? */
function touches(piece: PieceNet, faces: readonly FoldedFace[], joint: Joint): boolean {
  const [tab, target] = [faces[joint.tab], faces[joint.target]];
  if (tab === undefined || target === undefined) return false;
  const slack = closingTolerance(piece);
  const corners = tab.ring.map((corner) => seenFrom(target.pose, corner));
  if (corners.some(([, , z]) => Math.abs(z) > slack + toMm(joint.gap))) return false;
  const parts = convexParts(counterClockwise(corners.map(([x, y]): At => [x, y])));
  return deepestOverlap(parts, convexParts(counterClockwise(flatRing(piece, joint.target)))) > slack;
}
