import { isOnMark, markRoughness, type Ticks } from '../../units';
import type { BenchTool } from '../types';

/**
 * What handling costs a maker, in steps of roughness: one halving of an inch more to find a mark. source: common practice, no source:
 * on a trimmer the fence is the slow part and the card is quickly turned; on a grooved board every mark is there at once.
 * `opposite`: measuring from two edges that face each other by more than one setting, so that an error of the blank falls between two scores.
 */
export const HANDLING = {
  fence: { setting: 3, turn: 2, opposite: 4 },
  grooves: { setting: 0, turn: 3, opposite: 2 },
} as const;

/** A place between all marks, and one that the tool cannot reach. source: our choice, dearer than any mark. */
const BETWEEN_MARKS = 6;
const BEYOND_REACH = 100;

/**
 * A place measured from the tab's end: an error of the blank would fall into a panel, and from the other edge it falls into the tab.
 * source: our choice, dearer than the roughest mark with a setting, a turn there and a turn back; cheaper than work by ruler.
 */
const FROM_TAB = 20;

/** How hard it is to score at a distance from the fence; `fromTab` where the tab's end lies against it. */
export function placeCost(at: Ticks, tool: BenchTool, fromTab: boolean): number {
  const roughness = isOnMark(at, tool.finestMark) ? markRoughness(at, tool.unit) : null;
  return (roughness ?? BETWEEN_MARKS) + (at > tool.reach ? BEYOND_REACH : 0) + (fromTab ? FROM_TAB : 0);
}
