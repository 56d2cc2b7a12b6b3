import { type BenchCard, type BenchOp, type BenchProgram, type BenchTool, type CardStep, fallsAway, runProgram } from '../bench';
import type { Point } from '../net/types';

/** One step of a program as the virtual bench does it. */
export interface StepState {
  /** Turns and flips the step begins with, then what hands do. */
  readonly moves: readonly BenchOp[];
  readonly acts: readonly BenchOp[];
  /** The card as it lies before the acts; null where a step cuts the blank itself. */
  readonly before: BenchCard | null;
  readonly after: BenchCard;
  /** What falls away in this step, in the net's own frame. */
  readonly cutOff: readonly (readonly Point[])[];
}

/** Runs a program up to and through a step; null if the bench cannot. */
export function stateOfStep(program: BenchProgram, { ops }: CardStep, tool: BenchTool): StepState | null {
  const own = program.ops.slice(ops.from, ops.to);
  const first = own.findIndex(({ op }) => op !== 'turn' && op !== 'flip');
  const start = ops.from + Math.max(first, 0);
  const cardAfter = (count: number): BenchCard | null => {
    const run = runProgram(program.ops.slice(0, count), tool);
    return run.ok ? run.card : null;
  };
  const [before, after] = [start === 0 ? null : cardAfter(start), cardAfter(ops.to)];
  if (!after) return null;
  const acts = program.ops.slice(start, ops.to);
  const cutOff = acts.flatMap((op, i) => {
    const card = cardAfter(start + i);
    const ring = card && fallsAway(card, op);
    return ring ? [ring] : [];
  });
  return { moves: program.ops.slice(ops.from, start), acts, before, after, cutOff };
}
