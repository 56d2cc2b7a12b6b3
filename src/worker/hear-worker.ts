/** What every worker of ours says once its script has come and runs, before any answer. */
export const HERE = 'here';

/** Longest wait for a worker to be there; its script takes a second, on a slow line a few. source: our own. */
const COMES_WITHIN_MS = 30_000;

/**
 * Hears a worker that has just been begun. `fell` is told in words if its script does not come, or if it falls over or says what cannot be read:
 * it will answer nothing more.
 */
export function hearWorker(
  worker: Worker,
  // Each asker names what its own worker posts; no one type holds for all.
  hear: (answer: never) => void,
  fell: (why: Error) => void,
): void {
  const silent = setTimeout(
    () => fell(new Error(`not there after ${COMES_WITHIN_MS / 1000} s`)),
    COMES_WITHIN_MS,
  );
  worker.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
    clearTimeout(silent);
    if (data !== HERE) hear(data as never);
  });
  const fall = (event: Event) => {
    clearTimeout(silent);
    event.preventDefault();
    fell(new Error('message' in event && typeof event.message === 'string' ? event.message : event.type));
  };
  worker.addEventListener('error', fall);
  worker.addEventListener('messageerror', fall);
}
