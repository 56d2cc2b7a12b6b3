import {
  type BenchCard,
  type BenchOp,
  type BenchProgram,
  type BenchTool,
  type CardStep,
  fallsAway,
  newEdges,
  runProgram,
} from '../../bench';
import type { Point } from '../../net/types';

/** One step of a program as the virtual bench does it. */
export interface StepState {
  /** Turns and flips the step begins with, then what hands do. */
  readonly moves: readonly BenchOp[];
  readonly acts: readonly BenchOp[];
  /** The card before the acts; where a step cuts the blank itself, as after. */
  readonly before: BenchCard;
  readonly after: BenchCard;
  readonly newScores: BenchCard['scores'];
  readonly newSlits: BenchCard['slits'];
  /** Edges cut in this step, and what falls away, in the net's own frame. */
  readonly newCuts: ReturnType<typeof newEdges>;
  readonly cutOff: readonly (readonly Point[])[];
}

/** Runs a program up to and through a step; null if the bench cannot. */
export function stateOfStep(program: BenchProgram, { ops }: CardStep, tool: BenchTool): StepState | null {
  const isMove = ({ op }: BenchOp): boolean => op === 'turn' || op === 'flip';
  const moves = program.ops.slice(ops.from, ops.to).filter(isMove);
  const start = ops.from + moves.length;
  const cardAfter = (count: number): BenchCard | null => {
    const run = runProgram(program.ops.slice(0, count), tool);
    return run.ok ? run.card : null;
  };
  const after = cardAfter(ops.to);
  const before = start === 0 ? after : cardAfter(start);
  if (!before || !after) return null;
  const acts = program.ops.slice(start, ops.to);
  const cutOff = acts.flatMap((op, i) => {
    const card = cardAfter(start + i);
    const ring = card && fallsAway(card, op);
    return ring ? [ring] : [];
  });
  return {
    moves,
    acts,
    before,
    after,
    newScores: after.scores.slice(before.scores.length),
    newSlits: after.slits.slice(before.slits.length),
    newCuts: newEdges(before, after),
    cutOff,
  };
}
