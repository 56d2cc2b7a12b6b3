import { QUIET_MS, sortingRound } from './sorting-round';

const ROUNDS = 10;

/**
 * How many times longer the processor takes here and now for a fixed piece of sorting, grouping and counting than a quiet machine: 1 or more.
 * Limits on processor time are promised for a quiet machine, and grow by it.
 */
export function processorSlowness(): number {
  const before = process.cpuUsage();
  for (let turn = 0; turn < ROUNDS; turn++) sortingRound();
  const { user, system } = process.cpuUsage(before);
  return Math.max(1, (user + system) / 1000 / ROUNDS / QUIET_MS);
}
