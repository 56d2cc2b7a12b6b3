import type { EventPlan } from '../core/plan';
import type { Asker, Heed, Planner } from '../state/results/event-plan';
import { hearWorker } from '../worker/hear-worker';
import type { PlanAnswer, PlanQuestion } from '../worker/plan-messages';

/** Plans events in workers, one for each who asks, begun when first asked: what might be waits for no search of what is, nor the other way. */
export function planInWorker(): Planner {
  const workers = new Map<Asker, Planner>();
  return (rows, eventId, asker = 'plan', heed) => {
    const planner = workers.get(asker) ?? askWorker();
    workers.set(asker, planner);
    return planner(rows, eventId, asker, heed);
  };
}

/** A worker that plans events and counts sheets. */
export const beginPlanWorker = (): Worker =>
  new Worker(new URL('../worker/plan-worker.ts', import.meta.url), { type: 'module' });

/** Longest wait for a first answer; it takes a fraction of a second where nothing is the matter. source: our own. */
const SILENT_MS = 15_000;

interface Asked {
  readonly question: PlanQuestion;
  readonly heed: Heed;
  readonly answer: (plan: EventPlan | null) => void;
  readonly fail: (why: Error) => void;
}

/**
 * One worker, one question at a time; of those that wait only the newest is asked. A worker that only looks for something better is ended as
 * soon as its answer is not wanted any more, or another question waits.
 */
function askWorker(): Planner {
  let worker: Worker | null = null;
  let running: (Asked & { told?: EventPlan | null }) | null = null;
  let waiting: Asked | null = null;
  let number = 0;
  let silent: ReturnType<typeof setTimeout> | undefined;

  function begin(): Worker {
    const begun = beginPlanWorker();
    hearWorker(begun, hear, (why) => worker === begun && fall(why));
    return begun;
  }

  function hear(said: PlanAnswer): void {
    if (said.number !== running?.question.number) return;
    clearTimeout(silent);
    if ('failed' in said) {
      fail(new Error(said.failed));
      return;
    }
    if (said.done) {
      end(said.plan);
      return;
    }
    running.told = said.plan;
    if (said.plan) running.heed.tell?.(said.plan);
    if (waiting || running.heed.signal?.aborted) leave();
  }

  function end(plan: EventPlan | null): void {
    running?.answer(plan);
    next();
  }

  /** What was told already stands; where nothing was, that is said. */
  function fail(why: Error): void {
    if (running?.told === undefined) running?.fail(why);
    else running.answer(running.told);
    next();
  }

  function fall(why: Error): void {
    worker?.terminate();
    worker = null;
    fail(why);
  }

  function next(): void {
    clearTimeout(silent);
    running = waiting;
    waiting = null;
    if (!running) return;
    worker ??= begin();
    silent = setTimeout(() => fall(new Error(`no answer after ${SILENT_MS / 1000} s`)), SILENT_MS);
    worker.postMessage(running.question);
  }

  /** A search in a worker hears nothing until it is over: it is ended with its worker. */
  function leave(): void {
    worker?.terminate();
    worker = null;
    end(null);
  }

  return (rows, eventId, _asker, heed = {}) =>
    new Promise((answer, fail) => {
      const asked: Asked = { question: { number: ++number, rows, eventId }, heed, answer, fail };
      heed.signal?.addEventListener('abort', () => {
        if (running?.question === asked.question && running.told !== undefined) leave();
      });
      waiting?.answer(null);
      waiting = asked;
      if (!running) end(null);
      else if (running.told !== undefined) leave();
    });
}
