/** What `round` takes of the processor where nothing else runs, in milliseconds. Source: measured 2026-11-30 on two cores of a rented server, mean of 200 rounds. */
const QUIET_MS = 31;
const ROUNDS = 10;

/**
 * How many times longer the processor takes here and now for a fixed piece of sorting, grouping and counting than a quiet machine: 1 or more.
 * Limits on processor time are promised for a quiet machine, and grow by it.
 */
export function processorSlowness(): number {
  const before = process.cpuUsage();
  for (let turn = 0; turn < ROUNDS; turn++) round();
  const { user, system } = process.cpuUsage(before);
  return Math.max(1, (user + system) / 1000 / ROUNDS / QUIET_MS);
}

function round(): number {
  const groups = new Map<string, number[]>();
  for (let n = 0; n < 200_000; n++) {
    const key = `k${(n * 7919) % 613}`;
    const group = groups.get(key);
    if (group) group.push((n * 104_729) % 9973);
    else groups.set(key, [n]);
  }
  let sum = 0;
  for (const group of groups.values()) sum += group.toSorted((a, b) => a - b)[3] ?? 0;
  return sum;
}
