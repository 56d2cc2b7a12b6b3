import { type Ticks, ticks } from '../../units';
import { ceilDiv } from '../event/spares';

/** So many pieces of one length, each cut in one go: a piece is never joined from two ends. */
export interface CutLength {
  readonly length: Ticks;
  readonly count: number;
}

/** One way of using up a roll, and how many rolls are used so. */
export interface RollFill {
  readonly rolls: number;
  readonly pieces: readonly CutLength[];
  readonly left: Ticks;
}

/** Rolls for all pieces, beside the fewest that any plan could do with. */
export interface RollPlan {
  readonly rolls: number;
  readonly lowerBound: number;
  readonly fills: readonly RollFill[];
  /** Pieces longer than the roll; no number of rolls gives them. */
  readonly tooLong: readonly CutLength[];
}

/** Fills roll after roll with the longest pieces that still go in. For pieces of one length that is floor(roll / piece) a roll. */
export function fillRolls(pieces: readonly CutLength[], roll: Ticks): RollPlan {
  const wanted = mergeLengths(pieces);
  const tooLong = wanted.filter(({ length }) => length > roll);
  let waiting = wanted.filter(({ length }) => length <= roll);
  const lowerBound = fewestRolls(waiting, roll);

  const fills: RollFill[] = [];
  while (waiting.length > 0) {
    const fill = fillOneWay(waiting, roll);
    fills.push(fill);
    waiting = takeAway(waiting, fill);
  }
  return { rolls: fills.reduce((sum, fill) => sum + fill.rolls, 0), lowerBound, fills, tooLong };
}

/** Equal lengths together, longest first, none of them empty. */
function mergeLengths(pieces: readonly CutLength[]): CutLength[] {
  const counts = new Map<Ticks, number>();
  for (const { length, count } of pieces) counts.set(length, (counts.get(length) ?? 0) + count);
  return [...counts]
    .map(([length, count]) => ({ length, count }))
    .filter(({ count }) => count > 0)
    .sort((a, b) => b.length - a.length);
}

/** The next roll, and how often it can be repeated before some length runs out. */
function fillOneWay(waiting: readonly CutLength[], roll: Ticks): RollFill {
  let left = roll;
  const pieces: CutLength[] = [];
  let rolls = Number.POSITIVE_INFINITY;
  for (const { length, count } of waiting) {
    const taken = Math.min(count, Math.floor(left / length));
    if (taken === 0) continue;
    pieces.push({ length, count: taken });
    rolls = Math.min(rolls, Math.floor(count / taken));
    left = ticks(left - taken * length);
  }
  return { rolls, pieces, left };
}

function takeAway(waiting: readonly CutLength[], fill: RollFill): CutLength[] {
  const taken = new Map(fill.pieces.map(({ length, count }) => [length, count * fill.rolls]));
  return waiting
    .map(({ length, count }) => ({ length, count: count - (taken.get(length) ?? 0) }))
    .filter(({ count }) => count > 0);
}

/** No plan uses fewer: by total length, and for each length by how many pieces at least that long one roll can hold. */
function fewestRolls(pieces: readonly CutLength[], roll: Ticks): number {
  let total = 0;
  let pieceCount = 0;
  let most = 0;
  for (const { length, count } of pieces) {
    total += length * count;
    pieceCount += count;
    most = Math.max(most, ceilDiv(pieceCount, Math.floor(roll / length)));
  }
  return Math.max(most, ceilDiv(total, roll));
}
