import type { Mixer } from '../state/results/mix-result';
import type { Nester } from '../state/results/nest-result';
import { hearWorker } from '../worker/hear-worker';
import type { MixAnswer } from '../worker/mix-messages';
import type { NestAnswer } from '../worker/nest-messages';

/** Mixes papers in a worker of its own for every question. */
export const mixInWorker: Mixer = (question, tell, signal) =>
  search(
    () => new Worker(new URL('../worker/mix-worker.ts', import.meta.url), { type: 'module' }),
    question,
    ({ mix }: MixAnswer) => {
      if (mix) tell(mix);
      return mix === null;
    },
    signal,
  );

/** Nests an outline in a worker of its own for every question; null where it was withdrawn. */
export const nestInWorker: Nester = async (question, tell, signal) => {
  let found: NestAnswer['nest'] | null = null;
  await search(
    () => new Worker(new URL('../worker/nest-worker.ts', import.meta.url), { type: 'module' }),
    question,
    ({ nest, done }: NestAnswer) => {
      tell(nest);
      if (done) found = nest;
      return done;
    },
    signal,
  );
  return found;
};

/** Asks a new worker. It is ended with the last answer, for which `hear` gives true, or at once when the question is withdrawn. */
const search = (
  begin: () => Worker,
  question: unknown,
  // As with `hearWorker`, each names what its own worker posts.
  hear: (answer: never) => boolean,
  signal: AbortSignal,
): Promise<void> =>
  new Promise((resolve, reject) => {
    if (signal.aborted) {
      resolve();
      return;
    }
    const worker = begin();
    const end = () => {
      endWorker();
      resolve();
    };
    signal.addEventListener('abort', end, { once: true });
    const endWorker = hearWorker(worker, (answer: never) => hear(answer) && end(), reject);
    worker.postMessage(question);
  });
