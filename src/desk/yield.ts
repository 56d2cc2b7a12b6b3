import { readInstances, type YieldInstance } from '../../shared/yield-instances';
import { ticks } from '../core/units';
import {
  checkPlan,
  fillBestSheet,
  type Layout,
  planSheets,
  type SheetPaper,
  type SheetPart,
} from '../core/yield';
import { nestOnStrip } from './nest';
import { readSeconds } from './read-seconds';
import { refuseInFile } from './refuse';
import type { Desk, Verb } from './verb';

export const verb: Verb = {
  usage: 'INSTANCES.json [--seconds S]',
  answers:
    'For each cutting problem one line: its value, a bound, whether that is proven, and the layouts. S bounds the seconds for each, 10 if not said.',
  words: { least: 1, most: 1 },
  options: { seconds: 'one' },
  run: (given, desk) => {
    const [path = ''] = given.words;
    const text = desk.read(path);
    if (typeof text !== 'string') return [text];
    const seconds = readSeconds(given.one['seconds'] ?? '10');
    if (typeof seconds !== 'number') return [seconds];
    const reading = readInstances(text);
    if (!reading.ok) return reading.refusals.map((refusal) => refuseInFile(path, refusal));
    for (const instance of reading.instances) {
      const answer = 'strip' in instance ? nestOnStrip : solve;
      desk.print(JSON.stringify(answer(instance as never, seconds, desk)));
    }
    return [];
  },
};

function solve(instance: YieldInstance, seconds: number, desk: Desk) {
  const start = desk.tick();
  const answer = instance.kind.endsWith('knapsack')
    ? bestSheet(instance, seconds, desk)
    : fewestSheets(instance, seconds, desk);
  return {
    name: instance.name,
    ...answer.figures,
    ms: Math.round(desk.tick() - start),
    layouts: answer.layouts.map(describeLayout),
  };
}

/** A sheet of the most value: `lowerBound` is what is reached, `upperBound` what no sheet exceeds. */
function bestSheet({ sheet, items, rotation = false, kind }: YieldInstance, seconds: number, desk: Desk) {
  const limited = kind === 'constrained-knapsack';
  const parts = items.map(({ w, h, value = w * h, demand = null }, i) => ({
    id: String(i),
    across: w,
    up: h,
    worth: value,
    most: limited ? demand : null,
  }));
  const limits = { seconds, now: desk.tick };
  const { worth, bound, layout } = fillBestSheet({ across: sheet.w, up: sheet.h }, parts, rotation, limits);
  return {
    figures: { value: worth, lowerBound: worth, upperBound: bound, proven: worth === bound },
    layouts: [layout],
  };
}

/**
 * The fewest sheets: `proven` only where `planSheets` has its bound counted again; the plan itself is replayed here, too.
 * Whole units stand for ticks.
 */
function fewestSheets(
  { sheet, items, rotation = false, stages = 'unlimited' }: YieldInstance,
  seconds: number,
  desk: Desk,
) {
  const none = ticks(0);
  const paper: SheetPaper = {
    id: 'sheet',
    across: ticks(sheet.w),
    up: ticks(sheet.h),
    grain: rotation ? 'none' : 'across',
    squaring: { left: none, right: none, near: none, far: none },
    onHand: 0,
  };
  const parts = items.map(({ w, h, demand }, i): SheetPart => {
    const grain = rotation ? 'free' : 'across';
    return { id: String(i), across: ticks(w), up: ticks(h), count: demand ?? 1, grain };
  });
  const tool = {
    longestCut: null,
    kerf: none,
    stack: 1,
    stages: stages === 'unlimited' ? ('free' as const) : stages,
  };
  const plan = planSheets(parts, paper, tool, { seconds, now: desk.tick });
  const faults = checkPlan(plan, parts, paper, tool);
  if (faults.length > 0) throw new Error(`the plan cannot be cut: ${faults.join('; ')}`);
  const { sheets: value, lowerBound, proven, unplaced, layouts } = plan;
  // A sheet count that leaves parts out answers another question, so it is never called proven.
  const figures = { value, lowerBound, proven: proven && unplaced.length === 0 };
  return { figures: unplaced.length > 0 ? { ...figures, unplaced: unplaced.map(Number) } : figures, layouts };
}

const describeLayout = ({ sheets, parts }: Layout) => ({
  sheets,
  parts: parts.map(({ part, x, y, across, up, turned }) => ({
    item: Number(part),
    x,
    y,
    w: across,
    h: up,
    turned,
  })),
});
