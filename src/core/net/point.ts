import { areaOf, atOf } from '../plane';
import { roundToTick } from '../units/ticks';
import type { Point } from './types';

/** A point of the net from two numbers of ticks, each rounded once. */
export const pointAt = (x: number, y: number): Point => ({ x: roundToTick(x), y: roundToTick(y) });

export const samePoint = (p: Point, q: Point): boolean => p.x === q.x && p.y === q.y;

/** Area inside a ring, in square ticks; positive when counter-clockwise. */
export const netArea = (ring: readonly Point[]): number => areaOf(ring.map(atOf));
