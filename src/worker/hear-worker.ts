/** What every worker of ours says once its script has come and runs, before any answer. */
export const HERE = 'here';

/** Longest wait for a worker to be there; its script takes a second, on a slow line a few. source: our own. */
const COMES_WITHIN_MS = 30_000;

/**
 * Hears a worker that has just been begun. If its script does not come, or it falls over or says what cannot be read, it is ended and `fell` is
 * told in words. The function that comes back ends it without a word.
 */
export function hearWorker(
  worker: Worker,
  // Each asker names what its own worker posts; no one type holds for all.
  hear: (answer: never) => void,
  fell: (why: Error) => void,
): () => void {
  const fall = (why: string) => {
    end();
    fell(new Error(why));
  };
  const silent = setTimeout(() => fall(`not there after ${COMES_WITHIN_MS / 1000} s`), COMES_WITHIN_MS);
  const end = () => {
    clearTimeout(silent);
    worker.terminate();
  };
  worker.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
    clearTimeout(silent);
    if (data !== HERE) hear(data as never);
  });
  const hearFall = (event: Event) => {
    event.preventDefault();
    fall('message' in event && typeof event.message === 'string' ? event.message : event.type);
  };
  worker.addEventListener('error', hearFall);
  worker.addEventListener('messageerror', hearFall);
  return end;
}
