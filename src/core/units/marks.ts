import { type Ticks, ticks } from './ticks';

/** The two families of marks a maker reads. */
export type LengthUnit = 'in' | 'mm';

/** A ruler or trimmer: the unit printed on it and its closest pair of marks. */
export interface Ruler {
  readonly unit: LengthUnit;
  readonly finest: Ticks;
  /** What the reader calls a length a hair short of a mark, or past it; `scant` and `full` if left out. */
  readonly leans?: Readonly<Record<'scant' | 'full', string>>;
}

/** Steps between marks, coarse to fine: 1, 1/2, 1/4, 1/8, 1/16, 1/32 in; 10, 5, 1, 0.5 mm. source: common practice of rulers and trimmers. */
export const MARK_STEPS: Readonly<Record<LengthUnit, readonly Ticks[]>> = {
  in: [8128, 4064, 2032, 1016, 508, 254].map(ticks),
  mm: [3200, 1600, 320, 160].map(ticks),
};

/** What most trimmers carry: 1/16 in, 1 mm. source: common practice. */
export const USUAL_FINEST: Readonly<Record<LengthUnit, Ticks>> = { in: ticks(508), mm: ticks(320) };

/**
 * The ruler that lies beside a tool: the usual marks of the unit, or the tool's own where they are finer. Contents, needs and gaps are read on
 * it; a board's marks are for scores, and a trimmer's for cuts.
 */
export const rulerBeside = (unit: LengthUnit, toolMark: Ticks = USUAL_FINEST[unit]): Ruler => ({
  unit,
  finest: ticks(Math.min(toolMark, USUAL_FINEST[unit])),
});

export const isOnMark = (length: Ticks, finest: Ticks): boolean => length % finest === 0;
export const markBelow = (length: Ticks, finest: Ticks): Ticks => ticks(Math.floor(length / finest) * finest);
export const markAbove = (length: Ticks, finest: Ticks): Ticks => ticks(Math.ceil(length / finest) * finest);

/** The mark nearest to a length; halfway goes to the longer one. */
export const nearestMark = (length: Ticks, finest: Ticks): Ticks =>
  ticks(Math.floor((2 * length + finest) / (2 * finest)) * finest);

/**
 * How hard a length is to find on a ruler: its place in MARK_STEPS (whole inch or 10 mm is 0, 1/2 in or 5 mm is 1, …).
 * Null between all marks.
 */
export function markRoughness(length: Ticks, unit: LengthUnit): number | null {
  const place = MARK_STEPS[unit].findIndex((step) => length % step === 0);
  return place < 0 ? null : place;
}
