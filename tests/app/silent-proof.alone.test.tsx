import { act, renderHook } from '@testing-library/react';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { useStyleProof } from '../../src/state/results/style-proof';
import { useUnanswered } from '../../src/state/results/unanswered';
import { HeldWorker } from './held-worker';

beforeEach(() => {
  vi.stubGlobal('Worker', HeldWorker);
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

const proofAndTold = () => renderHook(() => ({ proof: useStyleProof('{}'), told: useUnanswered() }));
const halfAMinute = () => act(() => vi.advanceTimersByTimeAsync(30_000));

test('a proof that is stopped before its worker has come is not said to have gone wrong later', async () => {
  const { result } = proofAndTold();
  const before = result.current.told;
  act(() => result.current.proof.stop());
  await halfAMinute();
  expect(result.current.proof.is).toBe('stopped');
  expect(result.current.told).toBe(before);
});

test('one whose worker never comes is', async () => {
  const { result } = proofAndTold();
  const before = result.current.told;
  await halfAMinute();
  expect(result.current.proof.is).toBe('away');
  expect(result.current.told).toBe(before + 1);
});
