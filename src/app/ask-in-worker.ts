import type { SheetAsker } from '../state/results/sheet-asker';
import { hearWorker } from '../worker/hear-worker';
import type { Failed, SheetAnswer, SheetQuestion } from '../worker/plan-messages';
import { beginPlanWorker } from './plan-in-worker';

interface Asked {
  readonly question: SheetQuestion;
  readonly tell: ((answer: SheetAnswer) => void) | undefined;
  readonly end: (answer: SheetAnswer | null) => void;
  readonly fail: (why: Error) => void;
}

/**
 * Answers questions about one paper in a plan worker of their own, one after the other. One that is withdrawn while it waits is dropped; one
 * that is being answered ends its worker, since a count hears nothing until it is over.
 */
export function askInWorker(): SheetAsker {
  let worker: Worker | null = null;
  let running: Asked | null = null;
  const waiting = new Set<Asked>();

  function next(answer: SheetAnswer | Error | null): void {
    const ended = running;
    running = null;
    if (answer instanceof Error) ended?.fail(answer);
    else ended?.end(answer);
    const [first] = waiting;
    if (!first) return;
    waiting.delete(first);
    running = first;
    worker ??= begin();
    worker.postMessage(first.question);
  }

  function begin(): Worker {
    const begun = beginPlanWorker();
    hearWorker(
      begun,
      (said: SheetAnswer | Failed) => {
        if (worker !== begun) return;
        if ('failed' in said) next(new Error(said.failed));
        else if (said.done) next(said);
        else running?.tell?.(said);
      },
      (why) => {
        if (worker !== begun) return;
        worker = null;
        next(why);
      },
    );
    return begun;
  }

  return (question, signal, tell) =>
    new Promise((end, fail) => {
      if (signal.aborted) {
        end(null);
        return;
      }
      const asked: Asked = { question, tell, end, fail };
      signal.addEventListener('abort', () => {
        if (waiting.delete(asked)) end(null);
        else if (running === asked) {
          worker?.terminate();
          worker = null;
          next(null);
        }
      });
      waiting.add(asked);
      if (!running) next(null);
    });
}
