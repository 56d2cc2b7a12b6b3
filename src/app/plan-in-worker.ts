import type { Asker, Heed, Planner } from '../state/results/event-plan';
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

interface Asked {
  readonly question: PlanQuestion;
  readonly heed: Heed;
  readonly answer: (plan: PlanAnswer['plan']) => void;
}

/**
 * One worker, one question at a time; of those that wait only the newest is asked. A worker that only looks for something better is ended as
 * soon as its answer is not wanted any more, or another question waits.
 */
function askWorker(): Planner {
  let worker: Worker | null = null;
  let running: (Asked & { toldOne?: true }) | null = null;
  let waiting: Asked | null = null;
  let number = 0;

  function begin(): Worker {
    const begun = beginPlanWorker();
    begun.addEventListener('message', ({ data }: MessageEvent<PlanAnswer>) => {
      if (data.number !== running?.question.number) return;
      if (data.done) {
        end(data.plan);
        return;
      }
      running.toldOne = true;
      if (data.plan) running.heed.tell?.(data.plan);
      if (waiting || running.heed.signal?.aborted) leave();
    });
    return begun;
  }

  function end(plan: PlanAnswer['plan']): void {
    running?.answer(plan);
    running = waiting;
    waiting = null;
    if (!running) return;
    worker ??= begin();
    worker.postMessage(running.question);
  }

  /** A search in a worker hears nothing until it is over: it is ended with its worker. */
  function leave(): void {
    worker?.terminate();
    worker = null;
    end(null);
  }

  return (rows, eventId, _asker, heed = {}) =>
    new Promise((answer) => {
      const asked: Asked = { question: { number: ++number, rows, eventId }, heed, answer };
      heed.signal?.addEventListener('abort', () => {
        if (running?.question === asked.question && running.toldOne) leave();
      });
      waiting?.answer(null);
      waiting = asked;
      if (!running) end(null);
      else if (running.toldOne) leave();
    });
}
