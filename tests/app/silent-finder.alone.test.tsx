import { act, renderHook } from '@testing-library/react';
import { expect, test, vi } from 'vitest';
import { fitFinder } from '../../src/state/results/fit-finder';
import { useUnanswered } from '../../src/state/results/unanswered';
import { recordFault } from '../setup/fault-record';
import { HeldWorker } from './held-worker';

test('workers for contents and easy marks that never come are told of, once each; the next question begins new ones', async (context) => {
  const all: HeldWorker<unknown>[] = [];
  class Worker extends HeldWorker<unknown> {
    constructor() {
      super();
      all.push(this);
    }
  }
  vi.stubGlobal('Worker', Worker);
  vi.useFakeTimers();
  try {
    const told = renderHook(() => useUnanswered());
    fitFinder().getReady();
    const begun = all.length;
    await act(() => vi.advanceTimersByTimeAsync(30_000));
    const ended = all.filter((worker) => worker.ended).length;
    recordFault(context, {
      fault: 'a lost worker that is waited for without end',
      tries: begun,
      lost: begun - Math.min(ended, told.result.current),
      goal: 0,
    });
    fitFinder().getReady();
    for (const worker of all.slice(begun)) worker.come();
    await act(() => vi.advanceTimersByTimeAsync(60_000));
    expect(all).toHaveLength(2 * begun);
    expect(told.result.current).toBe(begun);
  } finally {
    vi.useRealTimers();
    vi.unstubAllGlobals();
  }
});
