import { isOnMark, markRoughness, type Ticks } from '../../units';
import type { BenchTool } from '../types';

/**
 * What handling costs a maker, in steps of roughness: one halving of an inch more to find a mark. source: common practice, no source:
 * on a trimmer the fence is the slow part and the card is quickly turned; on a grooved board every mark is there at once.
 */
export const HANDLING = {
  fence: { setting: 3, turn: 2 },
  grooves: { setting: 0, turn: 3 },
} as const;

/** A place between all marks, and one that the tool cannot reach. source: our choice, dearer than any mark. */
const BETWEEN_MARKS = 6;
const BEYOND_REACH = 100;

/** How hard it is to score at a distance from the fence. */
export function placeCost(at: Ticks, tool: BenchTool): number {
  const roughness = isOnMark(at, tool.finestMark) ? markRoughness(at, tool.unit) : null;
  return (roughness ?? BETWEEN_MARKS) + (at > tool.reach ? BEYOND_REACH : 0);
}
