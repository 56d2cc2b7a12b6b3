import type { Bow, Tie } from '../rows/dressing';
import { ticksOfMm } from '../rows/lengths';
import { type Ticks, ticks } from '../units';
import type { Outside } from './outside-size';

type Ways = Pick<Outside, 'round'> & Partial<Pick<Outside, 'threaded'>>;

/** How far ribbon goes round a box: both ways, crossing below; once over the top; round the walls; or through its pull. Of a plain box both ways are twice its width and depth and four times its height. */
export function wrapLength({ round, threaded = ticks(0) }: Ways, wrap: Tie['wrap']): Ticks {
  switch (wrap) {
    case 'cross':
      return ticks(round.front + round.sides);
    case 'over-front':
      return round.front;
    case 'over-sides':
      return round.sides;
    case 'ring':
      return round.walls;
    case 'pull':
      return threaded;
    case 'none':
      return ticks(0);
  }
}

/** A tied bow: every loop is its length there and back, two tails, the knot. */
export const bowLength = (bow: Bow): Ticks =>
  ticks(2 * bow.loops * ticksOfMm(bow.loopMm) + 2 * ticksOfMm(bow.tailMm) + ticksOfMm(bow.knotMm));

/** One piece of ribbon or twine for a box, bow included; formulas: common practice, no source. */
export const tieLength = (outside: Ways, { wrap, bow }: Pick<Tie, 'wrap' | 'bow'>): Ticks =>
  ticks(wrapLength(outside, wrap) + (bow ? bowLength(bow) : 0));
