import { type EventPlan, planEvent } from '../core/plan';
import { planSheets, type SheetPlan } from '../core/yield';
import type { PlanAnswer, PlanQuestion } from './plan-messages';

/** What a first plan of one paper may take; it is shown at once, with its bound. source: our own. */
const FIRST_SECONDS = 0.05;
/** Longest wait for a better plan of one paper; the plan found by then is shown with its bound. source: our own. */
const SECONDS = 4;

const isProven = (plan: EventPlan | null): boolean =>
  plan === null || plan.papers.every(({ plan: { proven } }) => proven);

addEventListener('message', ({ data: { number, rows, eventId } }: MessageEvent<PlanQuestion>) => {
  // A paper whose plan is proven is not planned again.
  const settled = new Map<string, SheetPlan>();
  const planIn = (seconds: number) =>
    planEvent(rows, eventId, {
      planSheets: (parts, paper, tool) => {
        const plan =
          settled.get(paper.id) ?? planSheets(parts, paper, tool, { seconds, now: () => performance.now() });
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
});
