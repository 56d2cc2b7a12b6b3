import { describe, expect, test } from 'vitest';
import { inches, ticks } from '../../../src/core/units/ticks';
import { planSheets } from '../../../src/core/yield';
import { checkBound } from '../../../src/core/yield/proof/check-bound';
import { checkPlan } from '../../../src/core/yield/proof/check-plan';
import { swayFrom } from '../../../src/core/yield/stock/sway';
import { SEED } from '../../seed';
import { BLANK, LETTER, LINER, paperOf, partOf, SQUARE_12, TABLOID, toolOf } from './sheets-at-hand';

const BOX = [BLANK, LINER];

describe('forty boxes and four spare, each with a liner', () => {
  // Common practice, no source, for the sizes; the counts follow from trying every mixture of layouts: 12 × 12 takes (2,0) (1,4) (0,6)
  // blanks and liners, 11 × 17 takes (3,1) (2,3) (1,6) (0,7), and no mixture of them reaches 44 of each on fewer sheets.
  test.each([
    ['letter', LETTER, 44],
    ['12 × 12', SQUARE_12, 28],
    ['11 × 17', TABLOID, 19],
  ] as const)('%s takes as few sheets as can be, and proves it', (_, paper, sheets) => {
    const plan = planSheets(BOX, paper, toolOf());
    expect(plan).toMatchObject({ sheets, lowerBound: sheets, proven: true, unplaced: [] });
    expect(checkPlan(plan, BOX, paper, toolOf())).toEqual([]);
    expect(plan.proof && checkBound(plan.proof, BOX, paper, toolOf())).toBeNull();
  });

  test('asked twice, the plan is the same to the last cut', () => {
    expect(planSheets(BOX, TABLOID, toolOf())).toEqual(planSheets(BOX, TABLOID, toolOf()));
  });

  test('the first plan is told before the last, and no later one is worse', () => {
    const told: number[] = [];
    const last = planSheets(BOX, TABLOID, toolOf(), { onProgress: ({ sheets }) => told.push(sheets) });
    expect(told.length).toBeGreaterThan(0);
    expect(told).toEqual([...told].sort((a, b) => b - a));
    expect(told.at(-1)).toBe(last.sheets);
  });

  test('stopped at once it still answers with sheets that can be cut', () => {
    const plan = planSheets(BOX, TABLOID, toolOf(), { shouldStop: () => true });
    expect(checkPlan(plan, BOX, TABLOID, toolOf())).toEqual([]);
    expect(plan.lowerBound).toBeGreaterThan(0);
  });

  test('a proof that is not counted in time gives way to the area, which is', () => {
    // 44 × (11 × 4 1/2 + 3 1/2 × 6) sq in over 11 × 17: 44 × 70.5 / 187 = 16.6, so 17 sheets at least; 19 are proven with time.
    let calls = 0;
    const late = () => (++calls > 1 ? 1e9 : 0);
    const plan = planSheets(BOX, TABLOID, toolOf(), { now: late });
    expect(plan.lowerBound).toBe(17);
    expect(plan.proof && checkBound(plan.proof, BOX, TABLOID, toolOf(), [], () => true)).toBeNull();
    expect(checkPlan(plan, BOX, TABLOID, toolOf())).toEqual([]);
  });

  test('an area bound of one sheet too many, or of points beyond the area, does not pass', () => {
    const { proof } = planSheets(BOX, TABLOID, toolOf(), {
      now: (() => {
        let calls = 0;
        return () => (++calls > 1 ? 1e9 : 0);
      })(),
    });
    if (proof === null) throw new Error('no proof');
    const check = (broken: typeof proof) => checkBound(broken, BOX, TABLOID, toolOf(), [], () => true);
    expect(check({ ...proof, sheets: proof.sheets + 1 })).toMatch(/need no 18 sheets/);
    const more = Object.fromEntries(Object.entries(proof.points).map(([id, points]) => [id, points + 1]));
    expect(check({ ...proof, points: more })).toMatch(/not counted in time/);
  });
});

describe('odd orders', () => {
  test('nothing wanted takes no sheet', () => {
    expect(planSheets([{ ...BLANK, count: 0 }], LETTER, toolOf())).toMatchObject({
      sheets: 0,
      proven: true,
      layouts: [],
      unplaced: [],
    });
    expect(planSheets([], LETTER, toolOf())).toMatchObject({ sheets: 0, proven: true });
  });

  test('a part too big for the paper is named and the rest is planned', () => {
    const big = partOf('banner', inches(20), inches(2), 1);
    const plan = planSheets([big, LINER], LETTER, toolOf());
    expect(plan.unplaced).toEqual(['banner']);
    expect(plan.sheets).toBe(15); // 44 liners at 3 a sheet: 14.67
  });

  test('two parts of one size share sheets and keep their names', () => {
    const parts = [partOf('front', inches(3), inches(4), 5), partOf('back', inches(4), inches(3), 4)];
    const plan = planSheets(parts, SQUARE_12, toolOf());
    expect(plan.sheets).toBe(1); // 12 of them fit one sheet
    expect(checkPlan(plan, parts, SQUARE_12, toolOf())).toEqual([]);
  });

  test('squaring a letter sheet by 1/16 all round leaves no room for a blank of 11 in', () => {
    const margin = inches(0, 1, 16);
    const squared = { ...LETTER, squaring: { left: margin, right: margin, near: margin, far: margin } };
    expect(planSheets([BLANK], squared, toolOf())).toMatchObject({ sheets: 0, unplaced: ['blank'] });
  });
});

// Worked by hand: 11 in hold three strips of 3 1/2 in; with 1/4 in lost at each cut
// 3 1/2 + 1/4 + 3 1/2 + 1/4 + 3 1/2 = 11 in fit to the last mark, and with 5/16 in only two do.
test.each([
  [0, 3],
  [1, 3],
  [2, 2],
])('kerf of %i steps leaves %i strips of a letter sheet', (steps, strips) => {
  const kerf = [ticks(0), inches(0, 1, 4), inches(0, 5, 16)][steps] ?? ticks(0);
  const strip = partOf('strip', inches(3, 1, 2), inches(8, 1, 2), 6, { grain: 'free' });
  const tool = toolOf({ kerf });
  const plan = planSheets([strip], LETTER, tool);
  expect(plan.sheets).toBe(6 / strips);
  expect(checkPlan(plan, [strip], LETTER, tool)).toEqual([]);
});

test('200 random orders, with grain, kerf, squaring, stages and reach, can all be cut and are never below their bound', () => {
  const sway = swayFrom(SEED);
  const whole = (least: number, most: number): number => least + Math.floor(sway() * (most - least + 1));
  for (let round = 0; round < 200; round++) {
    const unit = [127, 508, 1][whole(0, 2)]!;
    const marks = (count: number) => ticks(count * unit);
    const paper = paperOf(marks(whole(30, 90)), marks(whole(30, 90)), {
      grain: sway() < 0.5 ? 'up' : 'none',
      squaring: { left: marks(whole(0, 1)), right: marks(0), near: marks(whole(0, 1)), far: marks(0) },
    });
    const parts = Array.from({ length: whole(1, 6) }, (_, i) =>
      partOf(`part-${i}`, marks(whole(5, 60)), marks(whole(5, 60)), whole(1, 40), {
        grain: (['free', 'across', 'up'] as const)[whole(0, 2)]!,
      }),
    );
    const tool = toolOf({
      kerf: marks(sway() < 0.2 ? 1 : 0),
      stages: (['free', 'free', 2, 3] as const)[whole(0, 3)]!,
      longestCut: sway() < 0.2 ? marks(whole(30, 90)) : null,
    });
    const plan = planSheets(parts, paper, tool, { seconds: 0.05 });
    expect(checkPlan(plan, parts, paper, tool), JSON.stringify({ parts, paper, tool })).toEqual([]);
    if (plan.proof !== null) expect(checkBound(plan.proof, parts, paper, tool, plan.unplaced)).toBeNull();
  }
}, 30_000);
