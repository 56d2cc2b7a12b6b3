import { describe, expect, test } from 'vitest';
import type { YieldInstance } from '../../shared/yield-instances';
import { solveBest, solveSheets } from './cut-problems';
import { OPEN_SETS, openSet } from './open-sets';
import { PUBLISHED_CUTS } from './published-cuts';

const SECONDS = 10; // source: the longest wait we allow ourselves for one problem

/** What is reached, what is proven, and what the plan's checker says; sheets or worth alike. */
function solve(instance: YieldInstance, now?: () => number) {
  if (instance.kind.endsWith('knapsack')) {
    const { worth, bound } = solveBest(instance, SECONDS, now);
    return { value: worth, bound, faults: [] };
  }
  const { plan, faults } = solveSheets(instance, SECONDS, now);
  return { value: plan.sheets, bound: plan.lowerBound, faults };
}

describe('cutting problems of the literature come out as published, and proven', () => {
  test.each(PUBLISHED_CUTS.map((cut) => [cut.instance.name, cut.source, cut] as const))(
    '%s (%s)',
    (_, __, { instance, optimum }) => {
      // biome-ignore format: one row
      expect(solve(instance)).toEqual({ value: optimum, bound: optimum, faults: [] });
    },
  );

  test('three times what is asked needs more sheets than published: the check tells one number from another', () => {
    const published = PUBLISHED_CUTS.find(({ instance }) => instance.name === 'sheets of HH')!;
    const twice = published.instance.items.map((item) => ({ ...item, demand: 3 * (item.demand ?? 1) }));
    expect(solve({ ...published.instance, items: twice }).value).toBeGreaterThan(published.optimum);
  });
});

/** Shares that must be reached of the value and of the proof; the rest may be off by one sheet at most. */
const SETS = [
  { file: 'paper-scale', equal: 1, proven: 0.99, upTo: 1 },
  { file: 'cutting-stock', equal: 0.95, proven: 0.9, upTo: 1 },
  { file: 'unconstrained-knapsack', equal: 1, proven: 1, upTo: 0 },
  { file: 'constrained-knapsack', equal: 0.9, proven: 0.9, upTo: Number.POSITIVE_INFINITY },
] as const;

describe.each(SETS)('open set $file', ({ file, equal, proven, upTo }) => {
  const instances = openSet(file);
  const title =
    instances.length > 0
      ? `${instances.length} instances`
      : `skipped: ${OPEN_SETS === undefined ? 'CREASE_OPEN_SETS names no folder' : `no ${file}.json there`}`;

  test.skipIf(instances.length === 0)(title, { timeout: 1_800_000 }, () => {
    const now = (): number => performance.now();
    const answers = instances.map(({ instance, optimum }) => ({
      instance,
      optimum,
      ...solve(instance, now),
    }));
    expect(answers.flatMap(({ faults }) => faults)).toEqual([]);
    const share = (holds: (answer: (typeof answers)[number]) => boolean): number => answers.filter(holds).length / answers.length; // biome-ignore format: one row
    expect(share(({ value, optimum }) => value === optimum)).toBeGreaterThanOrEqual(equal);
    expect(share(({ value, bound }) => value === bound)).toBeGreaterThanOrEqual(proven);
    expect(answers.filter(({ value, optimum }) => Math.abs(value - optimum) > upTo)).toEqual([]);
    const worth = file.endsWith('knapsack');
    expect(answers.filter(({ bound, value }) => (worth ? bound < value : bound > value))).toEqual([]);
  });
});
