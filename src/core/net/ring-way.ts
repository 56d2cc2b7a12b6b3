import { toDegrees, toRadians } from '../units/angles';
import type { LeafRing } from './lay-leaf';
import type { ClosingAct, Hinge } from './types';

/** Stops at which a turning ring is worked out, evenly apart. source: our choice, 5 degrees */
const STOPS = 18;

/** The same acts; those that turn all leaves of a ring get the way their lower sides bend to go under. */
export const turnRings = (
  acts: readonly ClosingAct[],
  rings: readonly LeafRing[],
  hinges: readonly Hinge[],
): readonly ClosingAct[] =>
  acts.map((act) => {
    const ring = rings.find(
      ({ panels }) => act.do === 'fold' && panels.every((panel) => act.panels.includes(panel)),
    );
    if (act.do === 'glue' || ring === undefined || act.through !== undefined) return act;
    const lower = new Set(ring.layers[0]);
    const through = Array.from({ length: STOPS - 1 }, (_, stop) => {
      const part = (stop + 1) / STOPS;
      const bend = lowerSideBend(90 * part, ring.chordDeg);
      return act.hinges.map((hinge, at) =>
        lower.has(hinges[hinge]?.child ?? -1) ? bend : (act.toDeg[at] ?? 0) * part,
      );
    });
    return { ...act, through };
  });

/** How much farther than its outline needs a side bends to clear its neighbor. source: our choice, degrees */
const CLEAR_DEG = 1;

/**
 * How far the lower side of a leaf bends inward to pass under its neighbor, degrees, when all leaves of a square ring are `turnedDeg` from
 * upright (90 is closed). `chordDeg` is the angle between the side's arc and its chord at the corner. The side turns about its chord. The chord
 * and the neighbor's plane both start in that corner, so the whole side is clear where its outermost ray from the corner is.
 */
function lowerSideBend(turnedDeg: number, chordDeg: number): number {
  const lean = toRadians(90 - turnedDeg);
  const ray = toRadians(Math.min(45, chordDeg + CLEAR_DEG));
  const [sine, cosine] = [Math.sin(lean), Math.cos(lean)];
  // heights over the neighbor's plane, along the chord, off it in the leaf, and square to the leaf
  const chord = (sine * (cosine - 1)) / Math.SQRT2;
  const off = (sine * (1 + cosine)) / Math.SQRT2;
  const square = cosine * cosine;
  const reach = Math.hypot(off, square);
  const lowest = -chord / Math.tan(ray);
  return off <= lowest || reach === 0
    ? 0
    : toDegrees(Math.acos(Math.min(1, lowest / reach)) - Math.atan2(square, off));
}
