import type { Pose, Vector } from '../fold';
import { type ClosedPiece, flatRing } from '../fold';
import type { Joint } from '../net/types';
import { type At, convexParts, counterClockwise, deepestOverlap, distanceOutside } from '../plane';
import { toMm } from '../units/ticks';
import { asTicks, type Finding, wordsOf } from './finding';

/** Glued panels of the closed piece: each lies in its target's plane, a tab inside its target's outline, a flap at least over part of it. */
export const checkJoints = (closed: ClosedPiece): Finding[] =>
  closed.piece.joints.flatMap((joint) => checkJoint(closed, joint));

function checkJoint({ piece, faces, toleranceMm }: ClosedPiece, joint: Joint): Finding[] {
  const [tab, target] = [faces[joint.tab], faces[joint.target]];
  if (tab === undefined || target === undefined) return [];
  const corners = tab.ring.map((corner) => seenFrom(target.pose, corner));
  const outline = flatRing(piece, joint.target);
  const names = { tab: wordsOf(piece, joint.tab), target: wordsOf(piece, joint.target) };
  const where = piece.faces[joint.tab]?.panel ?? '';
  const level = joint.lap === 'inside' ? toMm(joint.gap) : -toMm(joint.gap);
  const off = Math.max(...corners.map(([, , z]) => Math.abs(z - level)));
  if (off > toleranceMm)
    return [
      {
        code: 'tab-off-its-wall',
        severity: 'stop',
        where,
        facts: { ...names, off: asTicks(off) },
        says: 'The {tab} ends {off} away from the {target} it is glued to.',
        remedy: 'The panels between them don’t add up. Check their sizes.',
      },
    ];
  const ring = corners.map(([x, y]): At => [x, y]);
  if (piece.faces[joint.tab]?.role === 'glueTab') {
    const out = Math.max(...ring.map((corner) => distanceOutside(corner, outline)));
    if (out <= toleranceMm) return [];
    return [
      {
        code: 'tab-sticks-out',
        severity: 'stop',
        where,
        facts: { ...names, out: asTicks(out) },
        says: 'The {tab} sticks out of the {target} by {out}.',
        remedy: 'Make the tab smaller, or the panel it is glued to larger.',
      },
    ];
  }
  const parts = convexParts(counterClockwise(ring));
  const targets = convexParts(counterClockwise(outline));
  const lap = deepestOverlap(parts, targets);
  if (lap > toleranceMm) return [];
  return [
    {
      code: 'flap-misses',
      severity: 'stop',
      where,
      facts: { ...names, short: asTicks(Math.max(0, -lap)) },
      says: 'The {tab} is {short} too short to reach the {target} it is glued to.',
      remedy: 'Make one of them longer.',
    },
  ];
}

/** A point in the flat frame of a face: x and y as on the blank (mm), z towards the inside. */
export function seenFrom(m: Pose, [px, py, pz]: Vector): Vector {
  const [x, y, z] = [px - m[3], py - m[7], pz - m[11]];
  return [m[0] * x + m[4] * y + m[8] * z, m[1] * x + m[5] * y + m[9] * z, m[2] * x + m[6] * y + m[10] * z];
}
