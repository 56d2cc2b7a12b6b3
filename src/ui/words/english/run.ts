import type { RunStep } from '../../../core/plan';
import { STAGE_NAMES, timeOfDay } from '../../../core/plan';
import { plural } from './plural';

const two = (count: number) => `${count}`.padStart(2, '0');
const clock = (seconds: number) => `${Math.floor(seconds / 60)}:${two(Math.floor(seconds) % 60)}`;

/** `3 h 20 min`, `4 min 35 s`, `50 s`. */
function time(seconds: number): string {
  const whole = Math.round(seconds);
  if (whole < 60) return `${whole} s`;
  if (whole < 600) return `${Math.floor(whole / 60)} min${whole % 60 === 0 ? '' : ` ${whole % 60} s`}`;
  const minutes = Math.round(seconds / 60);
  if (minutes < 60) return `${minutes} min`;
  return `${Math.floor(minutes / 60)} h${minutes % 60 === 0 ? '' : ` ${minutes % 60} min`}`;
}

const units = {
  sheet: (count: number) => plural(count, 'sheet'),
  piece: (count: number) => plural(count, 'piece'),
  box: (count: number) => plural(count, 'box', 'boxes'),
};

export const runMessages = {
  view: 'Show',
  viewRun: 'Batch',
  viewCard: 'One box',
  viewHours: 'Time',
  noRun: 'Nothing to make yet',
  noRunWhy: 'Add a box on the Count page, and we take you through the batch.',
  toEvent: 'Open the Count page',
  working: 'Working out the batch',
  stages: 'Stages',
  batch: 'Whole batch',
  firstBox: 'First box',
  firstHead: 'Make one test box and measure it',
  firstWhy: 'It comes out of your spares. Cut the rest once it matches.',
  firstAsk: (inside: string) => `Is it ${inside} inside?`,
  firstRight: 'Yes, it matches',
  firstWrong: 'No, change the box',
  firstAgain: 'Measure it again',
  firstConfirmed: 'Measured. It matches.',
  toBox: 'Open the Size page',
  toCard: 'Show the steps',
  blank: 'Cut size',
  inside: 'Inside, closed (width, depth, height)',
  outside: 'Outside, closed (width, depth, height)',
  tolerance: 'Within 1/32 in (0.8 mm) is fine for handwork.',
  noneConfirmed: 'The first box isn’t measured yet.',
  back: 'Back',
  next: 'Next',
  undo: 'Undo',
  spoil: 'Spoiled +1',
  done: 'Done',
  finished: 'Every box is made',
  finishedWhy: 'Every stage is done. Open any stage to change its count.',
  startClock: 'Start the timer',
  stopClock: 'Stop the timer',
  keepAwake: 'Keep the screen on',
  awake: 'The screen stays on while this page is open.',
  noAwake: 'This browser can’t keep the screen on. Set a longer screen timeout on your device.',
  toSheets: 'See the cuts on Sheets',
  toShopping: 'See what else to buy',
  sameSetting: 'The fence stays where it is.',
  acts: STAGE_NAMES,
  stepOf: (step: number, of: number) => `Step ${step} of ${of}`,
  more: (count: number) => `+${count}`,
  counted: (done: number, of: number, unit: RunStep['unit']) => `${done} of ${units[unit](of)}`,
  spoiled: (count: number, unit: RunStep['unit']) => `${units[unit](count)} spoiled`,
  units,
  left: (count: number) => `${count} left`,
  tapLabel: (act: string, done: number, spoiled: number) =>
    `${act}: ${done} done${spoiled > 0 ? `, ${spoiled} spoiled` : ''}`,
  firstLabel: (name: string) => `First box of ${name}`,
  clock,
  stageTime: (soFar: string, planned: string) => `${soFar} so far; ${planned} planned.`,
  settings: (count: number) => `${plural(count, 'fence setting')}, each set once`,
  again: (count: number) => `${plural(count, 'box', 'boxes')} more to make: mistakes used up the spares.`,
  batchLeft: (percent: number, left: string) => `${percent}% done, about ${left} to go`,
};

export const hoursMessages = {
  head: 'Time',
  total: 'in all',
  otherTheory: 'Another estimate',
  trials: 'Time your own boxes',
  trialsWhy: 'Time three boxes from start to finish. We then use your times instead of the usual ones.',
  trialStart: 'Start a box',
  trialStop: 'The box is finished',
  trialDrop: 'Delete this time',
  trialsUsed: 'We use these times.',
  when: 'Schedule',
  noDate: 'Set a date on the Count page to see when to start each stage.',
  calendar: 'Save as a calendar file',
  print: 'Print the batch sheet',
  learning: 'Practice effect',
  learningHelp: 'You get faster with practice: 90 = experienced, 80 = first batch, 100 = no change.',
  allowance: 'Rest and delays',
  allowanceHelp: '15 is usual.',
  makers: 'Helpers',
  dayMinutes: 'Work time per day',
  daysFree: 'Free days before the event',
  minutes: 'min',
  days: 'days',
  toPace: 'Your times, helpers and schedule',
  between: (starts: string, ready: string) => `Start on ${starts}; ready on ${ready}.`,
  stage: (label: string, times: number, each: number, total: string) =>
    `${label}: ${times} × ${Math.round(each * 10) / 10} s = ${total}`,
  learned: (boxes: number, percent: number, firsts: string) =>
    `Practice at ${percent}% (unit theory, Wright 1936): ${plural(boxes, 'box', 'boxes')} take ${firsts} times the first.`,
  average: (boxes: number, firsts: string, total: string) =>
    `By cumulative average theory, ${plural(boxes, 'box', 'boxes')} would take ${firsts} times the first, ${total} in all. We use unit theory.`,
  setUps: (stages: number, each: string, total: string) =>
    `Getting ready: ${plural(stages, 'stage')} × ${each} = ${total}`,
  restOf: (percent: number, total: string) => `Rest and delays, ${percent}%: ${total}`,
  shared: (makers: number, each: string) => `Shared by ${plural(makers, 'helper')}: ${each} each`,
  time,
  boxTime: (box: number, spent: string) => `Box ${box}: ${spent}`,
  ofDay: (minute: number) => timeOfDay(minute),
  day: (isoDate: string) =>
    new Intl.DateTimeFormat('en-US', {
      weekday: 'short',
      month: 'short',
      day: 'numeric',
      timeZone: 'UTC',
    }).format(new Date(`${isoDate}T00:00:00Z`)),
  /** The day of the month alone, where many stand side by side. */
  shortDay: (isoDate: string) => String(Number(isoDate.slice(8))),
};
