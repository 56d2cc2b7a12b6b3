import type { PieceNet } from '../net/types';
import { toMm } from '../units/ticks';
import { FLAT, foldAbout, type Pose, placeOf } from './pose';
import type { Vector } from './vector';

export interface FoldedFace {
  readonly pose: Pose;
  /** The face's corners in space, mm, in the order of its flat ring. */
  readonly ring: readonly Vector[];
}

/** Every hinge's angle at the closed state, degrees. */
export const restAngles = (piece: PieceNet): number[] => piece.hinges.map(({ restDeg }) => restDeg);

/**
 * Where each face goes when every hinge is turned to its angle (degrees, valley positive, one a hinge). The root stays flat on the bench: as it lies
 * on the blank, or square to it where its sides run cornerwise over a square of paper.
 */
export function posesOf(piece: PieceNet, anglesDeg: readonly number[]): Pose[] {
  const root = rootPose(piece);
  const poses: Pose[] = piece.faces.map(() => root);
  piece.hinges.forEach(({ parent, child, a, b }, at) => {
    poses[child] = foldAbout(
      poses[parent] ?? FLAT,
      toMm(a.x),
      toMm(a.y),
      toMm(b.x),
      toMm(b.y),
      anglesDeg[at] ?? 0,
    );
  });
  return poses;
}

function rootPose({ faces }: PieceNet): Pose {
  const [a, b, ...others] = faces[0]?.ring ?? [];
  if (a === undefined || b === undefined || others.length !== 2) return FLAT;
  const [x, y] = [Math.sign(b.x - a.x), Math.sign(b.y - a.y)];
  if (Math.abs(b.x - a.x) !== Math.abs(b.y - a.y)) return FLAT;
  const [c, s] = [x * Math.SQRT1_2, y * Math.SQRT1_2];
  return [c, s, 0, 0, -s, c, 0, 0, 0, 0, 1, 0];
}

/** The middle of a face's corners, in its folded place; mm. */
export function middleOf({ faces }: PieceNet, face: number, pose: Pose): Vector {
  const ring = faces[face]?.ring ?? [];
  const mean = (axis: 'x' | 'y') =>
    ring.reduce((sum, point) => sum + toMm(point[axis]), 0) / (ring.length || 1);
  return placeOf(pose, mean('x'), mean('y'));
}

/** The piece folded: each face's pose and its corners in space, mm. Thin card; thickness is the checks' business. */
export function foldPiece(piece: PieceNet, anglesDeg: readonly number[] = restAngles(piece)): FoldedFace[] {
  const poses = posesOf(piece, anglesDeg);
  return piece.faces.map(({ ring }, at) => {
    const pose = poses[at] ?? FLAT;
    return { pose, ring: ring.map(({ x, y }) => placeOf(pose, toMm(x), toMm(y))) };
  });
}
