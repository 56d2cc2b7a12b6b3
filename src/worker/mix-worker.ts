import { mixEvent, type WholeSolver, wholeSolverOf } from '../core/plan';
import { bringStylesOf } from '../core/style-file/own-style';
import { HERE } from './hear-worker';
import type { MixAnswer, MixQuestion } from './mix-messages';

/** Longest wait for each way of mixing. source: our own */
const SECONDS = 4;

const answer = (mix: MixAnswer['mix']) => postMessage({ mix } satisfies MixAnswer);

/** One question a worker: to cancel, the worker is ended. */
addEventListener('message', ({ data }: MessageEvent<MixQuestion>) => {
  mixAll(data).catch((error: unknown) => {
    // Heard by whoever asked, as any fall of a worker is.
    setTimeout(() => {
      throw error;
    });
  });
});

async function mixAll({ rows, eventId }: MixQuestion): Promise<void> {
  bringStylesOf(rows.recipes);
  const event = rows.events.find(({ id }) => id === eventId);
  const solveWhole = await fetchSolver();
  const options = { seconds: SECONDS, now: () => performance.now(), solveWhole };
  if (event) for (const mix of mixEvent(rows, event, options, answer)) answer(mix);
  answer(null);
}

/** The general solver; where it cannot be fetched, mixes are found without it, some a little dearer. */
async function fetchSolver(): Promise<WholeSolver | undefined> {
  try {
    const { default: load } = await import('highs');
    return wholeSolverOf(await load());
  } catch {
    return undefined;
  }
}

postMessage(HERE);
