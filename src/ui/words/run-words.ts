import type { RunStep } from '../../core/plan';
import type { HandAct } from '../../core/rows/hand-times';
import type { Count, Naming, Texts } from './texts';

/** Texts of the run sheet: the batch at the bench, counted. */
export interface RunPageWords
  extends Texts<
    | 'view'
    | 'viewRun'
    | 'viewCard'
    | 'viewHours'
    | 'noRun'
    | 'noRunWhy'
    | 'toEvent'
    | 'working'
    | 'stages'
    | 'firstBox'
    | 'firstWhy'
    | 'firstRight'
    | 'firstWrong'
    | 'firstAgain'
    | 'firstConfirmed'
    | 'toBox'
    | 'toCard'
    | 'blank'
    | 'inside'
    | 'outside'
    | 'tolerance'
    | 'noneConfirmed'
    | 'back'
    | 'next'
    | 'undo'
    | 'spoil'
    | 'done'
    | 'finished'
    | 'finishedWhy'
    | 'startClock'
    | 'stopClock'
    | 'keepAwake'
    | 'awake'
    | 'noAwake'
    | 'toSheets'
    | 'toShopping'
    | 'sameSetting'
  > {
  readonly acts: Readonly<Record<HandAct, string>>;
  readonly stepOf: (step: number, of: number) => string;
  readonly more: Count;
  readonly counted: (done: number, of: number, unit: RunStep['unit']) => string;
  readonly spoiled: (count: number, unit: RunStep['unit']) => string;
  readonly units: Readonly<Record<RunStep['unit'], Count>>;
  readonly left: Count;
  readonly tapLabel: (act: string, done: number, spoiled: number) => string;
  readonly firstLabel: Naming;
  readonly clock: (seconds: number) => string;
  readonly stageTime: (soFar: string, planned: string) => string;
  readonly settings: Count;
  readonly again: Count;
}

/** Texts of the hours: how long it takes, by which arithmetic, and when. */
export interface HoursWords
  extends Texts<
    | 'head'
    | 'total'
    | 'otherTheory'
    | 'trials'
    | 'trialsWhy'
    | 'trialStart'
    | 'trialStop'
    | 'trialDrop'
    | 'trialsUsed'
    | 'when'
    | 'noDate'
    | 'calendar'
    | 'print'
    | 'toPace'
    | 'learning'
    | 'learningHelp'
    | 'allowance'
    | 'allowanceHelp'
    | 'makers'
    | 'dayMinutes'
    | 'daysFree'
    | 'minutes'
    | 'days'
  > {
  readonly stage: (label: string, times: number, each: number, total: string) => string;
  readonly learned: (boxes: number, percent: number, firsts: string) => string;
  readonly average: (boxes: number, firsts: string, total: string) => string;
  readonly setUps: (stages: number, each: string, total: string) => string;
  readonly restOf: (percent: number, total: string) => string;
  readonly shared: (makers: number, each: string) => string;
  readonly time: (seconds: number) => string;
  readonly boxTime: (box: number, time: string) => string;
  readonly ofDay: (minute: number) => string;
  readonly day: (isoDate: string) => string;
  readonly between: (starts: string, ready: string) => string;
}
