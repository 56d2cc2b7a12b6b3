import { nestOnSheet } from '../core/yield';
import { HERE } from './hear-worker';
import type { NestAnswer, NestQuestion } from './nest-messages';

/** Longest wait for one more copy on the sheet. source: our own. */
const SECONDS = 3;

/** One question a worker: to cancel, the worker is ended. */
addEventListener('message', ({ data }: MessageEvent<NestQuestion>) => {
  const answer = (nest: NestAnswer['nest'], done: boolean) =>
    postMessage({ nest, done } satisfies NestAnswer);
  const nest = nestOnSheet(data.part, data.paper, data.boxed, {
    gap: data.gap,
    seconds: SECONDS,
    now: () => performance.now(),
    onProgress: (better) => answer(better, false),
  });
  answer(nest, true);
});

postMessage(HERE);
