import type { Mixer } from '../state/results/mix-result';
import { hearWorker } from '../worker/hear-worker';
import type { MixAnswer } from '../worker/mix-messages';

/** Mixes in a worker of its own for every question; it is ended with the last answer, or at once when the question is withdrawn. */
export const mixInWorker: Mixer = (question, tell, signal) =>
  new Promise((resolve, reject) => {
    if (signal.aborted) {
      resolve();
      return;
    }
    const worker = new Worker(new URL('../worker/mix-worker.ts', import.meta.url), { type: 'module' });
    const end = () => {
      endWorker();
      resolve();
    };
    signal.addEventListener('abort', end, { once: true });
    const endWorker = hearWorker(
      worker,
      ({ mix }: MixAnswer) => {
        if (mix) tell(mix);
        else end();
      },
      reject,
    );
    worker.postMessage(question);
  });
