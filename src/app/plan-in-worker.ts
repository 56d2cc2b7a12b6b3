import type { Asker, Planner } from '../state/event-plan';
import type { PlanAnswer, PlanQuestion } from '../worker/plan-messages';

/** Plans events in a worker of its own; what only might be is worked out in a second one, begun when first asked for. */
export function planInWorker(): Planner {
  const plain = askWorker();
  let aside: ReturnType<typeof askWorker> | null = null;
  return (rows, eventId, asker = 'plan') => {
    if (asker === 'plan') return plain(rows, eventId, asker);
    aside ??= askWorker();
    return aside(rows, eventId, asker);
  };
}

type Ask = (rows: PlanQuestion['rows'], eventId: string, asker: Asker) => Promise<PlanAnswer['plan']>;

/** One worker, one question at a time; of the questions that wait only each asker's newest is asked. */
function askWorker(): Ask {
  const worker = new Worker(new URL('../worker/plan-worker.ts', import.meta.url), { type: 'module' });
  let number = 0;
  let busy = false;
  const waiting = new Map<Asker, PlanQuestion>();
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
    for (const [asker, next] of waiting) {
      waiting.delete(asker);
      ask(next);
      break;
    }
  });

  return (rows, eventId, asker) =>
    new Promise((resolve) => {
      const question = { number: ++number, rows, eventId };
      answers.set(question.number, resolve);
      if (!busy) {
        ask(question);
        return;
      }
      const overtaken = waiting.get(asker);
      if (overtaken) settle(overtaken.number, null);
      waiting.set(asker, question);
    });
}
