import { ALLOWANCE_PERCENT, HAND_TIMES, type HandTime } from '../../../shared/catalogue/hand-times';
import { learnedTotal } from './learning';
import type { ActCounts, EventHours } from './types';

export interface Pace {
  /** Seconds of each act; the catalogue's, or the maker's own. */
  readonly times?: readonly HandTime[];
  /** 100: no learning. */
  readonly learningPercent?: number;
  readonly allowancePercent?: number;
}

/**
 * How long a batch takes: acts × standard times, learned by unit theory over the boxes, one set-up for each kind of act, then rest on top.
 * Times are seconds; all defaults but the rest are common practice.
 */
export function planHours(batch: ActCounts, boxes: number, pace: Pace = {}): EventHours {
  const { times = HAND_TIMES, learningPercent = 100, allowancePercent = ALLOWANCE_PERCENT } = pace;
  const stages = times
    .filter(({ act }) => act !== 'set-up' && (batch[act] ?? 0) > 0)
    .map(({ act, label, seconds }) => {
      const often = batch[act] ?? 0;
      return { act, label, times: often, secondsEach: seconds, seconds: often * seconds };
    });
  const setUp = times.find(({ act }) => act === 'set-up')?.seconds ?? 0;
  const steadySeconds = stages.reduce((sum, { seconds }) => sum + seconds, 0);
  const workSeconds = boxes > 0 ? (steadySeconds / boxes) * learnedTotal(boxes, learningPercent) : 0;
  const setUpSeconds = stages.length * setUp;
  const restSeconds = ((workSeconds + setUpSeconds) * allowancePercent) / 100;
  return {
    stages,
    steadySeconds,
    workSeconds,
    setUpSeconds,
    restSeconds,
    totalSeconds: workSeconds + setUpSeconds + restSeconds,
    learningPercent,
    allowancePercent,
  };
}
