/** A point or direction of the folded box, mm: the root face's flat frame, x right, y up, z towards the viewer (the inside). */
export type Vector = readonly [x: number, y: number, z: number];

export const minus = (p: Vector, q: Vector): Vector => [p[0] - q[0], p[1] - q[1], p[2] - q[2]];
export const plus = (p: Vector, q: Vector): Vector => [p[0] + q[0], p[1] + q[1], p[2] + q[2]];
export const times = (p: Vector, k: number): Vector => [p[0] * k, p[1] * k, p[2] * k];
export const dot = (p: Vector, q: Vector): number => p[0] * q[0] + p[1] * q[1] + p[2] * q[2];
export const cross = (p: Vector, q: Vector): Vector => [
  p[1] * q[2] - p[2] * q[1],
  p[2] * q[0] - p[0] * q[2],
  p[0] * q[1] - p[1] * q[0],
];
export const size = (p: Vector): number => Math.hypot(p[0], p[1], p[2]);
export const distance = (p: Vector, q: Vector): number => Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);
