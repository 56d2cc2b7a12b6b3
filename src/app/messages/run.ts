import { STAGE_NAMES } from '../../core/plan';
import type { HoursWords, RunPageWords } from '../../ui/words/run-words';
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

const units: RunPageWords['units'] = {
  sheet: (count) => plural(count, 'sheet'),
  piece: (count) => plural(count, 'piece'),
  box: (count) => plural(count, 'box', 'boxes'),
};

export const runMessages: RunPageWords = {
  view: 'What to show',
  viewRun: 'Run sheet',
  viewCard: 'Bench card',
  viewHours: 'Hours',
  noRun: 'There is nothing to make yet',
  noRunWhy: 'Once the Count page has a box on its list, this page takes you through the batch.',
  toEvent: 'Open the Count page',
  working: 'Working out the batch',
  stages: 'Stages',
  firstBox: 'First box',
  firstWhy:
    'Make one box of this line with the bench card, out of the spares, and measure it before you cut the rest.',
  firstRight: 'It measures right',
  firstWrong: 'It does not: change the box',
  firstAgain: 'Measure it again',
  firstConfirmed: 'Measured and found right.',
  toBox: 'Open the Size page',
  toCard: 'Show the bench card',
  blank: 'Blank, cut',
  inside: 'Inside, closed (width, depth, height)',
  outside: 'Outside, closed (width, depth, height)',
  tolerance: 'Within 1/32 in (0.8 mm) is usual by hand; common practice, no source.',
  noneConfirmed: 'The first box of this line is not measured yet.',
  back: 'Back',
  next: 'Next',
  undo: 'Undo',
  spoil: 'Spoiled +1',
  done: 'Done',
  finished: 'Every box is made',
  finishedWhy: 'All stages are counted to the end. Go back to any of them to count again.',
  startClock: 'Start the clock',
  stopClock: 'Stop the clock',
  keepAwake: 'Keep the screen on',
  awake: 'The screen stays on while this page is open.',
  noAwake:
    'This browser cannot keep the screen on. Set a longer time before the screen turns off in the settings of your device.',
  toSheets: 'See the cuts on the Sheets page',
  toShopping: 'See what more to buy',
  sameSetting: 'The fence stays where it is.',
  acts: STAGE_NAMES,
  stepOf: (step, of) => `Step ${step} of ${of}`,
  more: (count) => `+${count}`,
  counted: (done, of, unit) => `${done} of ${units[unit](of)}`,
  spoiled: (count, unit) => `${units[unit](count)} spoiled`,
  units,
  left: (count) => `${count} left`,
  tapLabel: (act, done, spoiled) => `${act}: ${done} done${spoiled > 0 ? `, ${spoiled} spoiled` : ''}`,
  firstLabel: (name) => `First box of ${name}`,
  clock,
  stageTime: (soFar, planned) => `${soFar} so far; ${planned} planned for the stage.`,
  settings: (count) => `${plural(count, 'fence setting')}, each made once`,
  again: (count) =>
    `${plural(count, 'box', 'boxes')} more to make than planned: that many were spoiled beyond the spares.`,
  size3: (width, depth, height) => `${width} × ${depth} × ${height}`,
};

export const hoursMessages: HoursWords = {
  head: 'How long it takes',
  total: 'in all',
  otherTheory: 'The other theory',
  trials: 'Time your own boxes',
  trialsWhy:
    'Make three boxes from start to finish, each timed by itself. The hours then go by your times in place of the usual ones.',
  trialStart: 'Start a box',
  trialStop: 'The box is finished',
  trialDrop: 'Forget this time',
  trialsUsed: 'The hours go by these times.',
  when: 'When',
  noDate: 'Give the event a date on the Count page, and the stages are counted back from it.',
  calendar: 'Save as a calendar file',
  print: 'Print the batch sheet',
  learning: 'Learning rate',
  learningHelp:
    'A box takes this share of the time once you have made twice as many. 90 for a practised maker, 80 for a first batch, 100 for no learning. Common practice.',
  allowance: 'Rest and delays on top',
  allowanceHelp: 'Rest and tidying between boxes. 15 is a rule of thumb.',
  makers: 'Makers',
  dayMinutes: 'Working time a day',
  daysFree: 'Days left free before the event',
  minutes: 'min',
  days: 'days',
  toPace: 'Your pace, the makers and the stages day by day',
  between: (starts, ready) => `It starts on ${starts} and is ready on ${ready}.`,
  stage: (label, times, each, total) => `${label}: ${times} × ${Math.round(each * 10) / 10} s = ${total}`,
  learned: (boxes, percent, firsts) =>
    `Learning at ${percent} % by unit theory (Wright 1936): ${plural(boxes, 'box', 'boxes')} take ${firsts} times the first.`,
  average: (boxes, firsts, total) =>
    `By the cumulative average theory the same ${plural(boxes, 'box', 'boxes')} would take ${firsts} times the first, ${total} in all. The two differ much, so it is named which one is used: the hours here go by unit theory.`,
  setUps: (stages, each, total) => `Getting ready: ${plural(stages, 'stage')} × ${each} = ${total}`,
  restOf: (percent, total) => `Rest and delays, ${percent} % on top: ${total}`,
  shared: (makers, each) => `Shared by ${plural(makers, 'maker')}: ${each} each`,
  time,
  boxTime: (box, spent) => `Box ${box}: ${spent}`,
  ofDay: (minute) => `${Math.floor(minute / 60)}:${two(minute % 60)}`,
  day: (isoDate) =>
    new Intl.DateTimeFormat('en-US', {
      weekday: 'short',
      month: 'short',
      day: 'numeric',
      timeZone: 'UTC',
    }).format(new Date(`${isoDate}T00:00:00Z`)),
};
