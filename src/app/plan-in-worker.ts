import type { Planner } from '../state/event-plan';
import type { PlanAnswer, PlanQuestion } from '../worker/plan-messages';

/** Plans events in a worker of its own, one at a time; of the questions that wait only the newest is asked. */
export function planInWorker(): Planner {
  const worker = new Worker(new URL('../worker/plan-worker.ts', import.meta.url), { type: 'module' });
  let number = 0;
  let busy = false;
  let waiting: PlanQuestion | null = null;
  const answers = new Map<number, (answer: PlanAnswer['plan']) => void>();

  const ask = (question: PlanQuestion) => {
    busy = true;
    worker.postMessage(question);
  };
  const settle = (asked: number, plan: PlanAnswer['plan']) => {
    answers.get(asked)?.(plan);
    answers.delete(asked);
  };
  worker.addEventListener('message', ({ data }: MessageEvent<PlanAnswer>) => {
    settle(data.number, data.plan);
    busy = false;
    if (waiting) ask(waiting);
    waiting = null;
  });

  return (rows, eventId) =>
    new Promise((resolve) => {
      const question = { number: ++number, rows, eventId };
      answers.set(question.number, resolve);
      if (busy) {
        if (waiting) settle(waiting.number, null);
        waiting = question;
      } else ask(question);
    });
}
