import type { ClosingAct, Hinge } from './types';

/** Stops at which a roll is worked out, evenly apart. source: our choice */
const STOPS = 18;
/** How much farther the overlap bends on the way, so that it goes in under the first edge. source: our choice, degrees */
const TURNED_IN = 20;

/** The same acts; those that roll a sector up bend it evenly, and its overlap a little farther until the edges meet. `overlaps`: panels that end up inside. */
export const rollUp = (
  acts: readonly ClosingAct[],
  overlaps: ReadonlySet<string>,
  hinges: readonly Hinge[],
): readonly ClosingAct[] =>
  acts.map((act) => {
    if (act.do === 'glue' || act.through !== undefined) return act;
    const first = act.hinges.find((at) => overlaps.has(hinges[at]?.panel ?? ''));
    if (first === undefined || act.hinges.some((at) => hinges[at]?.kind !== 'join')) return act;
    const through = Array.from({ length: STOPS - 1 }, (_, stop) => {
      const part = (stop + 1) / STOPS;
      const more = TURNED_IN * Math.min(1, 6 * part, 6 * (1 - part));
      return act.hinges.map((hinge, at) => (act.toDeg[at] ?? 0) * part + (hinge === first ? more : 0));
    });
    return { ...act, through };
  });
