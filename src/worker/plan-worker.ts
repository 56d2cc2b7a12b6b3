import { type EventPlan, planEvent } from '../core/plan';
import { bringStylesOf } from '../core/style-file/own-style';
import { countOnSheet, type PlanMemory, planSheets, type SheetPlan } from '../core/yield';
import { HERE } from './hear-worker';
import type { CutAsk, Failed, PlanAnswer, PlanQuestion, SheetAnswer, SheetQuestion } from './plan-messages';

/** What a first plan of one paper may take; it is shown at once, with its bound. source: our own. */
const FIRST_SECONDS = 0.05;
/** Longest wait for a better plan of one paper; the plan found by then is shown with its bound. source: our own. */
const SECONDS = 4;

const effortOf = (seconds: number) => ({ seconds, now: () => performance.now() });

const isProven = (plan: EventPlan | null): boolean =>
  plan === null || plan.papers.every(({ plan: { proven } }) => proven);

/** Better plans on the way are shown so often at most. source: our own. */
const SHOWN_EVERY_MS = 400;

function planOf({ number, rows, eventId }: PlanQuestion): void {
  bringStylesOf(rows.recipes);
  const memories = new Map<string, PlanMemory>();
  const known = new Map<string, SheetPlan>();
  const answer = (plan: EventPlan | null, done: boolean) =>
    postMessage({ number, plan, done } satisfies PlanAnswer);
  let shown = performance.now();
  const showBest = () => {
    if (performance.now() < shown + SHOWN_EVERY_MS) return;
    answer(planEvent(rows, eventId, { planSheets: (_parts, paper) => known.get(paper.id)! }), false);
    shown = performance.now();
  };
  // A paper whose plan is proven is not planned again; the others go on from where they were.
  const planIn = (seconds: number, onBetter: () => void) =>
    planEvent(rows, eventId, {
      planSheets: (parts, paper, tool) => {
        const before = known.get(paper.id);
        if (before?.proven) return before;
        const memory = memories.get(paper.id) ?? { best: null };
        memories.set(paper.id, memory);
        const onProgress = (better: SheetPlan) => {
          known.set(paper.id, better);
          onBetter();
        };
        const plan = planSheets(parts, paper, tool, { ...effortOf(seconds), memory, onProgress });
        known.set(paper.id, plan);
        return plan;
      },
    });
  const first = planIn(FIRST_SECONDS, () => undefined);
  const done = isProven(first);
  answer(first, done);
  if (!done) answer(planIn(SECONDS, showBest), true);
}

function cutOf({ parts, paper, tool }: CutAsk): void {
  const answer = (cut: SheetPlan, done: boolean) => postMessage({ cut, done } satisfies SheetAnswer);
  const memory: PlanMemory = { best: null };
  const first = planSheets(parts, paper, tool, { ...effortOf(FIRST_SECONDS), memory });
  answer(first, first.proven);
  const onProgress = (better: SheetPlan) => answer(better, false);
  if (!first.proven)
    answer(planSheets(parts, paper, tool, { ...effortOf(SECONDS), memory, onProgress }), true);
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

postMessage(HERE);
