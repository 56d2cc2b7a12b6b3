import { caliperTicks } from '../net/name-values';
import type { BoxNet } from '../net/types';
import { type Ticks, ticks } from '../units';

export interface BoxSize {
  readonly width: Ticks;
  readonly depth: Ticks;
  readonly height: Ticks;
}

/** The closed box outside: its room and one caliper of wall on every side. Layers of an overlapping bottom are not counted. */
export function outsideSize({ inside, caliperUm }: BoxNet): BoxSize {
  const walls = 2 * caliperTicks(caliperUm);
  return {
    width: ticks(inside.width + walls),
    depth: ticks(inside.depth + walls),
    height: ticks(inside.height + walls),
  };
}
