import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { workbookFile } from '../../../shared/workbook';
import {
  addSpareKits,
  addSpares,
  planEvent,
  type Reason,
  type SparesRule,
  sayReason,
  whyBoxes,
  whyCost,
  whyCount,
  whyHours,
  whyPart,
  whySheets,
} from '../../../src/core/plan';

const say = (why: readonly Reason[]) =>
  why.map((each) => sayReason(each, { length: String, money: (minor) => (minor / 100).toFixed(2) }));

const RULE: SparesRule = { percent: 10, atLeast: 0 };

describe('how many are made', () => {
  // 10 % of 40 is 4: 44.
  test('ordered and spares by the percentage', () => {
    expect(say(whyCount({ ...addSpares(40, RULE), again: 0, closes: null }, RULE))).toEqual([
      '40 needed + 4 spares = 44 to make.',
      'Spares: 10% of 40, rounded up, are 4.',
    ]);
  });

  // 10 % of 12 is 1.2, so 2; cutting spoils 5 % and folding 10 %: 12 ÷ (0.95 × 0.9) = 14.04, so 15, 3 more; never fewer than 5.
  test('the largest of several rules, what was spoiled beyond them, and practice', () => {
    const rule: SparesRule = {
      percent: 10,
      atLeast: 5,
      byAct: [
        { act: 'cut', percent: 5 },
        { act: 'fold', percent: 10 },
      ],
      practice: 2,
    };
    const counted = addSpares(12, rule);
    const line = {
      ...counted,
      again: 1,
      closes: null,
      spares: counted.spares + 1,
      making: counted.making + 1,
    };
    expect(say(whyCount(line, rule))).toEqual([
      '12 needed + 6 spares + 2 for practice = 20 to make.',
      'Spares: 10% of 12, rounded up, are 2.',
      'Spares: mistakes expected at all steps together are 3.',
      'Spares: at least 5.',
      'We use the largest of these, which is 5.',
      '1 of the spares are for boxes that went wrong.',
    ]);
  });

  // 10 % of 12 kits is 2 kits, of 3 boxes each: 36 + 6.
  test('whole kits of a class', () => {
    expect(say(whyCount({ ...addSpareKits(12, 3, RULE), again: 0, closes: null }, RULE))).toEqual([
      '12 kits × 3 in each = 36 ordered.',
      '36 needed + 6 spares = 42 to make.',
      'Spares: 10% of 12 kits, rounded up, are 2.',
    ]);
  });

  // Of 43 at 96 of 100 at least 40 close in 90.8 of 100 batches, of 44 in 97.0. Of 43 at 90 at least 36 in 93.9, of 44 in 97.2: 8 boxes are 3 kits
  // (SciPy 1.17.1, binom.sf).
  test('what does not close at an accuracy, in boxes and in kits', () => {
    const rule: SparesRule = { percent: 10, atLeast: 0, offByMm: 0.79375 };
    expect(say(whyCount({ ...addSpares(40, rule, 96), again: 0, closes: 96 }, rule))).toEqual([
      '40 needed + 4 spares = 44 to make.',
      'Spares: with every mark off by up to 1/32 in, 96 of 100 close. Of 44, at least 40 close in 95 of 100 batches, so 4 more.',
    ]);
    expect(say(whyCount({ ...addSpareKits(12, 3, rule, 90), again: 0, closes: 90 }, rule)).slice(1)).toEqual([
      '36 needed + 9 spares = 45 to make.',
      'Spares: with every mark off by up to 1/32 in, 90 of 100 boxes close. Of 44 boxes, at least 36 close in 95 of 100 batches, so 3 kits more.',
    ]);
    const atLeast = { ...rule, atLeast: 5 };
    expect(say(whyCount({ ...addSpares(40, atLeast, 96), again: 0, closes: 96 }, atLeast)).slice(2)).toEqual([
      'Spares: at least 5.',
      'We use the largest of these, which is 5.',
    ]);
  });

  test('the percentage stands where no fit is known or too few close, and says so', () => {
    const rule: SparesRule = { percent: 10, atLeast: 0, offByMm: 0.4 };
    expect(say(whyCount({ ...addSpares(40, rule), again: 0, closes: null }, rule)).slice(1)).toEqual([
      'Spares: no fit of this style is known that your marks could spoil, so the percentage counts.',
      'Spares: 10% of 40, rounded up, are 4.',
    ]);
    expect(say(whyCount({ ...addSpares(40, rule, 30), again: 0, closes: 30 }, rule)).slice(1)).toEqual([
      'Spares: with every mark off by up to 0.4 mm, only 30 of 100 close. Spares can’t make up for that, so the percentage counts.',
      'Spares: 10% of 40, rounded up, are 4.',
    ]);
  });

  test('a part is cut so many times a box', () => {
    const line = { ...addSpares(40, RULE), again: 0, closes: null };
    expect(say(whyPart({ perBox: 2, count: 88 }, line, RULE))[0]).toBe('44 boxes × 2 = 88.');
    expect(say(whyPart({ perBox: 1, count: 44 }, line, RULE))[0]).toBe('One for each of 44 boxes.');
  });
});

describe('what an event comes to', () => {
  const file = workbookFile.parse(JSON.parse(readFileSync('demo-data/seed-swap-supper.json', 'utf8')));
  const plan = planEvent(file, 'seed-swap-supper')!;

  test('sheets and boxes', () => {
    expect(say(whyBoxes(plan, file.events[0]!.spares))[0]).toBe('40 needed + 4 spares = 44 to make.');
    expect(say(whySheets(plan))).toEqual([
      'Oat cardstock, letter: 88 pieces from 44 sheets, the fewest possible.',
    ]);
    const short = {
      ...plan,
      papers: plan.papers.map((one) => ({ ...one, plan: { ...one.plan, proven: false, lowerBound: 43 } })),
    };
    expect(say(whySheets(short))[0]).toContain('At least 43 are needed.');
  });

  test('money: the kinds add up to the total, which is shared among the favors', () => {
    const said = say(whyCost(plan));
    const money = (text: string) => Math.round(Number(/[\d.]+(?=\.$)/.exec(text)?.[0]) * 100);
    const total = said.findIndex((text) => text.startsWith('Whole packs'));
    const kinds = said.slice(0, total).reduce((sum, text) => sum + money(text), 0);
    expect(kinds).toBe(plan.cost.buying.totalMinor);
    expect(money(said[total]!)).toBe(kinds);
    expect(said.at(-1)).toContain('÷ 40 favors');
  });

  test('minutes: the parts add up to the total that is shown', () => {
    const last = whyHours(plan).at(-1)!;
    const { work, ready, rest, total } = Object.fromEntries(
      Object.entries(last.facts).map(([name, fact]) => [
        name,
        Number(sayReason({ says: '{fact}', facts: { fact } }, { length: String, money: String })),
      ]),
    );
    expect(work! + ready! + rest!).toBe(total);
    expect(total).toBe(Math.round(plan.hours.totalSeconds / 60));
  });
});
