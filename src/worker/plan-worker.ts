import { type EventPlan, planEvent } from '../core/plan';
import { countOnSheet, planSheets, type SheetPlan } from '../core/yield';
import type { CutAsk, Failed, PlanAnswer, PlanQuestion, SheetAnswer, SheetQuestion } from './plan-messages';

/** What a first plan of one paper may take; it is shown at once, with its bound. source: our own. */
const FIRST_SECONDS = 0.05;
/** Longest wait for a better plan of one paper; the plan found by then is shown with its bound. source: our own. */
const SECONDS = 4;

const effortOf = (seconds: number) => ({ seconds, now: () => performance.now() });

const isProven = (plan: EventPlan | null): boolean =>
  plan === null || plan.papers.every(({ plan: { proven } }) => proven);

function planOf({ number, rows, eventId }: PlanQuestion): void {
  // A paper whose plan is proven is not planned again.
  const settled = new Map<string, SheetPlan>();
  const planIn = (seconds: number) =>
    planEvent(rows, eventId, {
      planSheets: (parts, paper, tool) => {
        const plan = settled.get(paper.id) ?? planSheets(parts, paper, tool, effortOf(seconds));
        if (plan.proven) settled.set(paper.id, plan);
        return plan;
      },
    });
  const answer = (plan: EventPlan | null, done: boolean) =>
    postMessage({ number, plan, done } satisfies PlanAnswer);
  const first = planIn(FIRST_SECONDS);
  const done = isProven(first);
  answer(first, done);
  if (!done) answer(planIn(SECONDS), true);
}

function cutOf({ parts, paper, tool }: CutAsk): void {
  const answer = (cut: SheetPlan, done: boolean) => postMessage({ cut, done } satisfies SheetAnswer);
  const first = planSheets(parts, paper, tool, effortOf(FIRST_SECONDS));
  answer(first, first.proven);
  if (!first.proven) answer(planSheets(parts, paper, tool, effortOf(SECONDS)), true);
}

addEventListener('message', ({ data }: MessageEvent<PlanQuestion | SheetQuestion>) => {
  try {
    if ('rows' in data) planOf(data);
    else if ('cut' in data) cutOf(data.cut);
    else {
      const { part, paper, tool } = data.count;
      postMessage({ count: countOnSheet(part, paper, tool), done: true } satisfies SheetAnswer);
    }
  } catch (error) {
    // One question that cannot be answered is no reason to leave those that wait.
    const failed = error instanceof Error ? error.message : String(error);
    postMessage('rows' in data ? { number: data.number, failed } : ({ failed } satisfies Failed));
  }
});
