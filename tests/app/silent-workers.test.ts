import { afterEach, beforeEach, test, vi } from 'vitest';
import { askInWorker } from '../../src/app/ask-in-worker';
import { planInWorker } from '../../src/app/plan-in-worker';
import { mixInWorker, nestInWorker } from '../../src/app/search-in-worker';
import { recordFault } from '../setup/fault-record';
import { HeldWorker } from './held-worker';

const ROWS = { recipes: [], events: [], papers: [], supplies: [], tools: [] };
const all: Worker[] = [];

class Worker extends HeldWorker<unknown> {
  constructor() {
    super();
    all.push(this);
  }
}

beforeEach(() => {
  all.length = 0;
  vi.stubGlobal('Worker', Worker);
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

/** Each who asks a worker, by what is asked. What is asked does not matter: nobody answers. */
const ASKERS: Readonly<Record<string, () => Promise<unknown>>> = {
  plan: () => planInWorker()(ROWS, 'e'),
  sheets: () => askInWorker()({} as never, new AbortController().signal),
  nest: () => nestInWorker({} as never, () => undefined, new AbortController().signal),
  mix: () => mixInWorker({} as never, () => undefined, new AbortController().signal),
};
/** How a worker is lost: its script does not come, it falls over, it says what cannot be read. */
const LOSSES: Readonly<Record<string, (worker: Worker | undefined) => void>> = {
  silence: () => undefined,
  error: (worker) => worker?.dispatchEvent(new Event('error', { cancelable: true })),
  messageerror: (worker) => worker?.dispatchEvent(new Event('messageerror', { cancelable: true })),
};

test('whoever asks a worker that is lost is told within half a minute', async (context) => {
  const waiting: string[] = [];
  for (const [who, ask] of Object.entries(ASKERS))
    for (const [how, lose] of Object.entries(LOSSES)) {
      const told = vi.fn();
      ask().catch(told);
      lose(all.at(-1));
      await vi.advanceTimersByTimeAsync(30_000);
      if (told.mock.calls.length === 0 || !all.at(-1)?.ended) waiting.push(`${who} by ${how}`);
    }
  recordFault(context, {
    fault: 'a lost worker that is waited for without end',
    tries: Object.keys(ASKERS).length * Object.keys(LOSSES).length,
    lost: waiting.length,
    goal: 0,
  });
});
