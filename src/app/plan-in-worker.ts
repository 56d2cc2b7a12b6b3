import type { Asker, Heed, Planner } from '../state/event-plan';
import type { PlanAnswer, PlanQuestion } from '../worker/plan-messages';

/** Plans events in a worker of its own; what only might be is worked out in a second one, begun when first asked for. */
export function planInWorker(): Planner {
  const plain = askWorker();
  let aside: Planner | null = null;
  return (rows, eventId, asker = 'plan', heed) => {
    if (asker === 'plan') return plain(rows, eventId, asker, heed);
    aside ??= askWorker();
    return aside(rows, eventId, asker, heed);
  };
}

/** A worker that plans events and counts sheets. */
export const beginPlanWorker = (): Worker =>
  new Worker(new URL('../worker/plan-worker.ts', import.meta.url), { type: 'module' });

interface Asked {
  readonly question: PlanQuestion;
  readonly asker: Asker;
  readonly heed: Heed;
  readonly answer: (plan: PlanAnswer['plan']) => void;
}

/**
 * One worker, one question at a time; of the questions that wait only each asker's newest is asked. A worker that only looks for something
 * better is ended as soon as its answer is not wanted any more, or another question waits for the same asker.
 */
function askWorker(): Planner {
  let worker: Worker | null = null;
  let running: (Asked & { toldOne?: true }) | null = null;
  let number = 0;
  const waiting = new Map<Asker, Asked>();

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
      if (!isWanted(running)) leave();
    });
    return begun;
  }

  const isWanted = ({ asker, heed }: Asked) => !heed.signal?.aborted && !waiting.has(asker);

  function end(plan: PlanAnswer['plan']): void {
    const ended = running;
    running = null;
    ended?.answer(plan);
    const [next] = waiting.values();
    if (!next) return;
    waiting.delete(next.asker);
    running = next;
    worker ??= begin();
    worker.postMessage(next.question);
  }

  /** A search in a worker hears nothing until it is over: it is ended with its worker. */
  function leave(): void {
    worker?.terminate();
    worker = null;
    end(null);
  }

  return (rows, eventId, asker = 'plan', heed = {}) =>
    new Promise((answer) => {
      const asked: Asked = { question: { number: ++number, rows, eventId }, asker, heed, answer };
      heed.signal?.addEventListener('abort', () => {
        if (running?.question === asked.question && running.toldOne) leave();
      });
      waiting.get(asker)?.answer(null);
      waiting.set(asker, asked);
      if (!running) end(null);
      else if (running.toldOne && running.asker === asker) leave();
    });
}
