import type { Mixer } from '../state/results/mix-result';
import { hearFall } from '../worker/hear-fall';
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
      worker.terminate();
      resolve();
    };
    signal.addEventListener('abort', end, { once: true });
    hearFall(worker, (why) => {
      worker.terminate();
      reject(why);
    });
    worker.addEventListener('message', ({ data }: MessageEvent<MixAnswer>) => {
      if (data.mix) tell(data.mix);
      else end();
    });
    worker.postMessage(question);
  });
