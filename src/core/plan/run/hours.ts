import type { Pace } from '../../rows';
import { ALLOWANCE_PERCENT, HAND_TIMES, type HandAct, type HandTime } from '../../rows/hand-times';
import type { ActCounts } from '../event/types';

/** One stage of the batch: every act of one kind, in the order the stages are done. */
export interface Stage {
  readonly act: HandAct;
  readonly label: string;
  /** How often the act is done for the whole batch, and how long once, at a steady pace. */
  readonly times: number;
  readonly secondsEach: number;
  readonly seconds: number;
  /** The whole stage with learning, getting ready, and rest. */
  readonly fullSeconds: number;
}

export interface EventHours {
  readonly stages: readonly Stage[];
  /** Hand work at a steady pace, the same as it is learned, getting ready, and rest, all in seconds. */
  readonly steadySeconds: number;
  readonly workSeconds: number;
  readonly setUpSeconds: number;
  readonly restSeconds: number;
  readonly totalSeconds: number;
  readonly learningPercent: number;
  /** Boxes of the batch, and what they come to in first boxes: by unit theory, which the hours go by, and by the cumulative average. */
  readonly boxes: number;
  readonly firstBoxes: Readonly<Record<LearningTheory, number>>;
  /** Seconds a box at a steady pace. */
  readonly steadyBoxSeconds: number;
  readonly setUpEach: number;
  readonly allowancePercent: number;
  readonly makers: number;
  /** The total shared among the makers, each stage split evenly. */
  readonly elapsedSeconds: number;
}

/** What hours go by where nothing is said. */
export const USUAL_PACE: Pace = {
  seconds: [],
  trialSeconds: [],
  learningPercent: 100,
  allowancePercent: ALLOWANCE_PERCENT,
  makers: 1,
  dayMinutes: 240,
  daysFree: 1,
};

/** The maker's own times in place of the catalogue's. */
const timesFor = ({ seconds: own }: Pace, times: readonly HandTime[]): HandTime[] =>
  times.map((time) => ({
    ...time,
    seconds: own.find(({ act }) => act === time.act)?.seconds ?? time.seconds,
  }));

/**
 * How long a batch takes: acts × standard times, learned by unit theory over the boxes, one set-up for each kind of act, then rest on top.
 * Whole boxes that were timed replace the sum of the acts. Seconds; all defaults but the rest are common practice.
 */
export function planHours(
  batch: ActCounts,
  boxes: number,
  pace: Pace = USUAL_PACE,
  standard: readonly HandTime[] = HAND_TIMES,
): EventHours {
  const { learningPercent, allowancePercent, makers, trialSeconds } = pace;
  const times = timesFor(pace, standard);
  const wanted = times.filter(({ act }) => act !== 'set-up' && (batch[act] ?? 0) > 0);
  const counted = wanted.reduce((sum, { act, seconds }) => sum + (batch[act] ?? 0) * seconds, 0);
  const firstBox = timedFirstBox(trialSeconds, learningPercent);
  const scale = firstBox === null || counted === 0 ? 1 : (firstBox * boxes) / counted;
  const learned = boxes > 0 ? learnedTotal(boxes, learningPercent) / boxes : 1;
  const setUp = times.find(({ act }) => act === 'set-up')?.seconds ?? 0;
  const rest = 1 + allowancePercent / 100;

  const stages = wanted.map(({ act, label, seconds: each }): Stage => {
    const often = batch[act] ?? 0;
    const secondsEach = each * scale;
    const seconds = often * secondsEach;
    return {
      act,
      label,
      times: often,
      secondsEach,
      seconds,
      fullSeconds: (seconds * learned + setUp) * rest,
    };
  });
  const steadySeconds = counted * scale;
  const workSeconds = steadySeconds * learned;
  const setUpSeconds = stages.length * setUp;
  const totalSeconds = (workSeconds + setUpSeconds) * rest;
  return {
    stages,
    steadySeconds,
    workSeconds,
    setUpSeconds,
    restSeconds: totalSeconds - workSeconds - setUpSeconds,
    totalSeconds,
    learningPercent,
    boxes,
    firstBoxes: {
      unit: learnedTotal(boxes, learningPercent),
      average: learnedTotal(boxes, learningPercent, 'average'),
    },
    steadyBoxSeconds: boxes > 0 ? steadySeconds / boxes : 0,
    setUpEach: setUp,
    allowancePercent,
    makers,
    elapsedSeconds: totalSeconds / makers,
  };
}

/** The first box's time that, learned at this rate, gives the trials' sum; null without trials. */
function timedFirstBox(trialSeconds: readonly number[], learningPercent: number): number | null {
  if (trialSeconds.length === 0) return null;
  const sum = trialSeconds.reduce((total, seconds) => total + seconds, 0);
  return sum / learnedTotal(trialSeconds.length, learningPercent);
}

/** `unit`: the n-th piece takes T₁ nᵇ (the usual one). `average`: the mean of the first n takes T₁ nᵇ. They differ much at forty. */
type LearningTheory = 'unit' | 'average';

/** b = log₂(rate): each doubling takes `ratePercent` of the time before. source: Wright 1936, as told on a space agency's learning-curve page. */
const exponent = (ratePercent: number): number => Math.log2(ratePercent / 100);

/** Time of the n-th piece as a multiple of the first, unit theory. */
export const unitTime = (n: number, ratePercent: number): number => n ** exponent(ratePercent);

/** Time of `count` pieces as a multiple of the first. At 100 % nothing is learned and it is `count`. */
export function learnedTotal(count: number, ratePercent: number, theory: LearningTheory = 'unit'): number {
  if (theory === 'average') return count <= 0 ? 0 : count * unitTime(count, ratePercent);
  let total = 0;
  for (let n = 1; n <= count; n++) total += unitTime(n, ratePercent);
  return total;
}
