import type { Nester } from '../state/results/nest-result';
import { hearWorker } from '../worker/hear-worker';
import type { NestAnswer } from '../worker/nest-messages';

/** Nests in a worker of its own for every question; it is ended with the answer, or at once when the question is withdrawn. */
export const nestInWorker: Nester = (question, tell, signal) =>
  new Promise((resolve, reject) => {
    if (signal.aborted) {
      resolve(null);
      return;
    }
    const worker = new Worker(new URL('../worker/nest-worker.ts', import.meta.url), { type: 'module' });
    const end = (nest: NestAnswer['nest'] | null) => {
      endWorker();
      resolve(nest);
    };
    signal.addEventListener('abort', () => end(null), { once: true });
    const endWorker = hearWorker(
      worker,
      ({ nest, done }: NestAnswer) => {
        tell(nest);
        if (done) end(nest);
      },
      reject,
    );
    worker.postMessage(question);
  });
