import { planEvent } from '../core/plan';
import { planSheets } from '../core/yield';
import type { PlanAnswer, PlanQuestion } from './plan-messages';

/** Longest wait for a better plan of one paper; the plan found by then is shown with its bound. source: our own. */
const SECONDS = 4;

addEventListener('message', ({ data }: MessageEvent<PlanQuestion>) => {
  const plan = planEvent(data.rows, data.eventId, {
    planSheets: (parts, paper, tool) =>
      planSheets(parts, paper, tool, { seconds: SECONDS, now: () => performance.now() }),
  });
  const answer: PlanAnswer = { number: data.number, plan };
  postMessage(answer);
});
