import { turnOf } from '../units/angles';
import type { Vector } from './vector';

/** Where a flat face has got to: three rows of [rotation | shift], mm. The third column is the way its inside looks. */
export type Pose = readonly [
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
];

export const FLAT: Pose = [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0];

/** A flat point (mm) in its folded place. */
export const placeOf = (m: Pose, x: number, y: number): Vector => [
  m[0] * x + m[1] * y + m[3],
  m[4] * x + m[5] * y + m[7],
  m[8] * x + m[9] * y + m[11],
];

/** The way a face's inside looks. */
export const insideOf = (m: Pose): Vector => [m[2], m[6], m[10]];

/** The pose of a child folded by `foldDeg` about the flat line from (ax, ay) to (bx, by), its parent's edge: valley turns it towards the inside. */
export function foldAbout(m: Pose, ax: number, ay: number, bx: number, by: number, foldDeg: number): Pose {
  const long = Math.hypot(bx - ax, by - ay) || 1;
  const [u, v] = [(bx - ax) / long, (by - ay) / long];
  const [c, sine] = turnOf(foldDeg);
  const s = -sine; // the child lies right of a→b: a valley is a clockwise turn seen along it
  const k = 1 - c;
  // rotation about the in-plane axis (u, v, 0); columns
  const [r00, r01, r02] = [c + u * u * k, u * v * k, v * s];
  const [r10, r11, r12] = [u * v * k, c + v * v * k, -u * s];
  const [r20, r21, r22] = [-v * s, u * s, c];
  const [tx, ty, tz] = [ax - r00 * ax - r01 * ay, ay - r10 * ax - r11 * ay, -r20 * ax - r21 * ay];
  return [
    m[0] * r00 + m[1] * r10 + m[2] * r20,
    m[0] * r01 + m[1] * r11 + m[2] * r21,
    m[0] * r02 + m[1] * r12 + m[2] * r22,
    m[0] * tx + m[1] * ty + m[2] * tz + m[3],
    m[4] * r00 + m[5] * r10 + m[6] * r20,
    m[4] * r01 + m[5] * r11 + m[6] * r21,
    m[4] * r02 + m[5] * r12 + m[6] * r22,
    m[4] * tx + m[5] * ty + m[6] * tz + m[7],
    m[8] * r00 + m[9] * r10 + m[10] * r20,
    m[8] * r01 + m[9] * r11 + m[10] * r21,
    m[8] * r02 + m[9] * r12 + m[10] * r22,
    m[8] * tx + m[9] * ty + m[10] * tz + m[11],
  ];
}
