import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { HANDLING } from '../../../src/core/bench/program/handling-cost';
import { orderScores, type ScoreStop } from '../../../src/core/bench/program/score-order';
import { inches, type Ticks, ticks } from '../../../src/core/units';
import { SEED } from '../../seed';
import { board, trimmer } from './bench-tools';

/** Scores at whole inches of a card, each measurable from two opposite edges; roughness made up. */
const someScores = fc
  .record({
    across: fc.integer({ min: 6, max: 9 }),
    up: fc.integer({ min: 6, max: 9 }),
    scores: fc.uniqueArray(
      fc.record({ upright: fc.boolean(), at: fc.integer({ min: 1, max: 5 }), rough: fc.nat(4) }),
      {
        minLength: 1,
        maxLength: 5,
        selector: ({ upright, at }) => `${upright} ${at}`,
      },
    ),
  })
  .map(({ across, up, scores }) =>
    scores.map(({ upright, at, rough }, run): readonly ScoreStop[] => {
      const [near, far] = upright ? ([0, 2] as const) : ([1, 3] as const);
      const other = (upright ? across : up) - at;
      return [
        { quarters: near, at: inches(at), run, cost: rough },
        { quarters: far, at: inches(other), run, cost: 4 - rough },
      ];
    }),
  );

function priceOf(stops: readonly ScoreStop[], kind: 'fence' | 'grooves'): number {
  const { setting, turn, opposite } = HANDLING[kind];
  const along = [0, 1].map((lie) => stops.filter(({ quarters }) => quarters % 2 === lie));
  // Measured from two edges that face each other, and not by one setting.
  const opposed = along.filter(
    (those) =>
      new Set(those.map(({ quarters }) => quarters)).size > 1 && new Set(those.map(({ at }) => at)).size > 1,
  );
  let price = opposite * opposed.length;
  let lie = 0;
  let fence: Ticks = ticks(0);
  for (const stop of stops) {
    price += stop.cost + (stop.quarters === lie ? 0 : turn) + (stop.at === fence ? 0 : setting);
    [lie, fence] = [stop.quarters, stop.at];
  }
  return price;
}

/** Every choice of edges in every order. */
function* everyOrder(options: readonly (readonly ScoreStop[])[]): Generator<readonly ScoreStop[]> {
  if (options.length === 0) yield [];
  for (const [i, choices] of options.entries())
    for (const rest of everyOrder(options.filter((_, at) => at !== i)))
      for (const stop of choices) yield [stop, ...rest];
}

describe('the order of scores', () => {
  test.each([trimmer, board])(
    'every score is made once, and the price is the sum of its parts: $name',
    (tool) => {
      fc.assert(
        fc.property(someScores, (options) => {
          const { stops, cost } = orderScores(options, tool, () => 0);
          expect(stops.map(({ run }) => run).sort()).toEqual(options.map((_, i) => i));
          for (const stop of stops) expect(options[stop.run]).toContainEqual(stop);
          expect(cost).toBe(priceOf(stops, tool.kind));
        }),
        { seed: SEED, numRuns: 200 },
      );
    },
  );

  test.each([trimmer, board])(
    'no order of all there are is cheaper by more than a turn: $name',
    (tool) => {
      let exact = 0;
      let tried = 0;
      fc.assert(
        fc.property(someScores, (options) => {
          const { cost } = orderScores(options, tool, () => 0);
          let least = Number.POSITIVE_INFINITY;
          for (const order of everyOrder(options)) least = Math.min(least, priceOf(order, tool.kind));
          tried++;
          if (cost === least) exact++;
          expect(cost).toBeGreaterThanOrEqual(least);
          expect(cost).toBeLessThanOrEqual(least + HANDLING[tool.kind].turn);
        }),
        { seed: SEED, numRuns: 60 },
      );
      expect(exact / tried).toBeGreaterThan(0.9);
    },
    60_000,
  );

  test('one score is made where its mark is easiest', () => {
    const easy: ScoreStop = { quarters: 2, at: inches(3), run: 0, cost: 0 };
    const hard: ScoreStop = { quarters: 0, at: inches(5), run: 0, cost: 6 };
    expect(orderScores([[hard, easy]], trimmer, () => 0).stops).toEqual([easy]);
    // Unless the card must lie otherwise afterwards: turning there and back costs more than a rough mark.
    const after = (quarters: number): number => (quarters === 0 ? 0 : 3);
    expect(orderScores([[hard, easy]], trimmer, after).stops).toEqual([hard]);
  });

  test('nothing to score costs nothing', () => {
    expect(orderScores([], trimmer, () => 0)).toEqual({ stops: [], cost: 0 });
  });

  test('thirty scores are ordered too', () => {
    const many = Array.from({ length: 30 }, (_, run): readonly ScoreStop[] => [
      { quarters: run % 2 === 0 ? 0 : 1, at: inches(run + 1), run, cost: 1 },
      { quarters: run % 2 === 0 ? 2 : 3, at: inches(30 - run), run, cost: 1 },
    ]);
    expect(orderScores(many, trimmer, () => 0).stops).toHaveLength(30);
  });
});
