import { renderHook, waitFor } from '@testing-library/react';
import { expect, test, vi } from 'vitest';
import { PlannerContext, planHere } from '../../src/state/results/event-plan';
import { useSeason } from '../../src/state/results/season';
import { useUnanswered } from '../../src/state/results/unanswered';
import { workbookWithDemo } from '../screens/open-app';

/** A season of the demo's event, with a planner that fails so many times before it answers. */
async function seasonAfter(failures: number) {
  const shelf = (await workbookWithDemo()).getState().rows;
  const planner = vi.fn(planHere);
  for (let n = 0; n < failures; n++) planner.mockRejectedValueOnce(new Error('late'));
  const ids = [...shelf.events.keys()];
  const { result } = renderHook(() => ({ ...useSeason(shelf, ids), told: useUnanswered() }), {
    wrapper: ({ children }) => <PlannerContext value={planner}>{children}</PlannerContext>,
  });
  return { result, planner };
}

test('a season that is answered at the third try comes without a word; one that never is, is told of once', async () => {
  const late = await seasonAfter(2);
  await waitFor(() => expect(late.result.current.season).not.toBeNull());
  expect(late.planner).toHaveBeenCalledTimes(3);
  expect(late.result.current.told).toBe(0);
  const never = await seasonAfter(100);
  await waitFor(() => expect(never.result.current.told).toBe(1));
  expect(never.planner).toHaveBeenCalledTimes(4);
  expect(never.result.current.season).toBeNull();
});
