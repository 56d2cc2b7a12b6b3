import type { ClosingAct, PieceNet } from '../../net/types';
import type { Collision, LookAt } from '../collisions';

/** Steps in which a lid is followed as it comes down. source: our choice, 6 degrees of a quarter turn */
const FRAMES = 15;
/**
 * A tuck's angle is tried in steps of so many degrees, in small ones where no large one is free: between a header and square dust flaps only
 * a degree or two are. It turns at most so far from one frame to the next. source: our choice
 */
const STEPS = [5, 1] as const;
const TURN_A_FRAME = 30;

/**
 * A tuck slips in while its lid comes down: the lid turns evenly and the hand turns the tuck as it must. Followed backwards from the closed
 * box, the nearest angle of the tuck at which nothing touches is taken, frame by frame; the hits of the first frame without one, else none.
 * All tucks of one act turn by the same amount more or less.
 */
export function tuckPath(
  piece: PieceNet,
  act: Exclude<ClosingAct, { readonly do: 'glue' }>,
  from: readonly number[],
  to: readonly number[],
  look: LookAt,
): readonly Collision[] {
  const moved = movedBy(piece, act.hinges);
  const led = new Set(act.hinges.filter((hinge) => moved.has(piece.hinges[hinge]?.parent ?? -1)));
  let turn = 0;
  for (let frame = FRAMES - 1; frame > 0; frame--) {
    const part = frame / FRAMES;
    const anglesAt = (more: number) =>
      to.map((closed, hinge) => {
        const open = from[hinge] ?? 0;
        if (closed === open) return closed;
        if (!led.has(hinge)) return open + (closed - open) * part;
        return Math.max(-FLAT_OVER, Math.min(FLAT_OVER, closed + Math.sign(closed) * more));
      });
    const tried: (readonly Collision[])[] = [];
    const way = nearestFirst(turn).find((more) => {
      const hits = look(anglesAt(more), moved);
      tried.push(hits);
      return hits.length === 0;
    });
    if (way === undefined) return tried[0] ?? [];
    turn = way;
  }
  return [];
}

/** A flap folds flat onto its neighbor and no farther. */
const FLAT_OVER = 180; // degrees

/** Angles to try, nearest the last one first. */
const nearestFirst = (last: number): readonly number[] =>
  STEPS.flatMap((step) =>
    Array.from({ length: (2 * TURN_A_FRAME) / step + 1 }, (_, at) => {
      const off = Math.ceil(at / 2) * step;
      return last + (at % 2 === 1 ? off : -off);
    }),
  );

/** Every face that turns with these hinges. */
export function movedBy(piece: PieceNet, hinges: readonly number[]): ReadonlySet<number> {
  const moved = new Set<number>();
  piece.hinges.forEach(({ parent, child }, hinge) => {
    if (hinges.includes(hinge) || moved.has(parent)) moved.add(child);
  });
  return moved;
}
