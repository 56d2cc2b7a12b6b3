import type { Run } from '../../rows';
import type { Stage } from './hours';
import { boxesSpoiled, countAt, isOnPiece, type RunCount } from './run-counts';
import type { RunSheet, RunStep } from './run-sheet';

/** A step with what was counted at it. */
export interface StepProgress extends RunCount {
  readonly step: RunStep;
  /** What comes to this step: all of them, less what was spoiled before. Sheets spoiled here are cut again. */
  readonly of: number;
  readonly left: number;
}

/** Every step with how far it has come. */
export function followRun({ steps }: RunSheet, run: Run | undefined): StepProgress[] {
  const before = new Map<string, { act: string; piece: string | null; spoiled: number }[]>();
  return steps.map((step) => {
    const count = countAt(run, step.id);
    if (step.lineId === null) return { step, ...count, of: step.of, left: Math.max(0, step.of - count.done) };
    const earlier = before.get(step.lineId) ?? [];
    // another piece of the box may be spoiled without this one
    const lost = earlier.filter(
      ({ act, piece }) => !isOnPiece(step.act) || !isOnPiece(act) || piece === step.piece,
    );
    before.set(step.lineId, [...earlier, { act: step.act, piece: step.piece, spoiled: count.spoiled }]);
    const of = Math.max(0, step.of - boxesSpoiled(lost));
    return { step, ...count, of, left: Math.max(0, of - count.done - count.spoiled) };
  });
}

/** How far a whole batch has come. */
export interface BatchProgress {
  /** 0 to 1 of the planned work, by time. */
  readonly share: number;
  readonly secondsLeft: number;
}

/** One figure for all steps: what each stage takes is shared evenly among the pieces that come to its steps. */
export function batchProgress(steps: readonly StepProgress[], stages: readonly Stage[]): BatchProgress {
  let [all, left] = [0, 0];
  for (const { act, fullSeconds } of stages) {
    const mine = steps.filter(({ step }) => step.act === act);
    const pieces = mine.reduce((sum, { of }) => sum + of, 0);
    if (pieces === 0) continue;
    all += fullSeconds;
    left += (fullSeconds * mine.reduce((sum, step) => sum + step.left, 0)) / pieces;
  }
  return { share: all === 0 ? 0 : 1 - left / all, secondsLeft: left };
}
