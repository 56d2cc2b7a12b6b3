import type { Bow, Tie } from '../rows/dressing';
import { ticksOfMm } from '../rows/lengths';
import { type Ticks, ticks } from '../units';
import type { BoxSize } from './outside-size';

/** Ribbon both ways, crossing below: twice the length, twice the width, four times the height. */
export const crossWrap = ({ width, depth, height }: BoxSize): Ticks =>
  ticks(2 * width + 2 * depth + 4 * height);

/** A ring round the walls. */
export const ringWrap = ({ width, depth }: BoxSize): Ticks => ticks(2 * (width + depth));

/** A tied bow: every loop is its length there and back, two tails, the knot. */
export const bowLength = (bow: Bow): Ticks =>
  ticks(2 * bow.loops * ticksOfMm(bow.loopMm) + 2 * ticksOfMm(bow.tailMm) + ticksOfMm(bow.knotMm));

/** One piece of ribbon or twine for a box, bow included; formulas: common practice, no source. */
export function tieLength(outside: BoxSize, { wrap, bow }: Pick<Tie, 'wrap' | 'bow'>): Ticks {
  const round = wrap === 'cross' ? crossWrap(outside) : wrap === 'ring' ? ringWrap(outside) : 0;
  return ticks(round + (bow ? bowLength(bow) : 0));
}
