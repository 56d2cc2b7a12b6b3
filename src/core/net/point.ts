import { roundToTick } from '../units/ticks';
import type { Point } from './types';

/** A point of the net from two numbers of ticks, each rounded once. */
export const pointAt = (x: number, y: number): Point => ({ x: roundToTick(x), y: roundToTick(y) });

export const samePoint = (p: Point, q: Point): boolean => p.x === q.x && p.y === q.y;

/** Twice the area inside a ring, in square ticks; positive when counter-clockwise. */
export function doubleArea(ring: readonly Point[]): number {
  let sum = 0;
  let before = ring[ring.length - 1];
  for (const point of ring) {
    if (before !== undefined) sum += before.x * point.y - point.x * before.y;
    before = point;
  }
  return sum;
}

export const gcd = (a: number, b: number): number => {
  while (b !== 0) [a, b] = [b, a % b];
  return Math.abs(a);
};
