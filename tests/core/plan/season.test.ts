import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { workbookFile } from '../../../shared/workbook';
import { listRunSheet, planEvent, planSeason, repeatEvent, type ShoppingRow } from '../../../src/core/plan';
import { rollsSaved } from '../../../src/core/plan/season/plan-season';
import { promiseStock } from '../../../src/core/plan/season/promises';
import { cutTogether, partsTogether } from '../../../src/core/plan/season/together';
import { clashesOf, mondayOf, weeksOf } from '../../../src/core/plan/season/weeks';
import { rollOut } from '../../../src/core/plan/supplies/plan-rolls';
import { inches } from '../../../src/core/units';
import { planSheets } from '../../../src/core/yield';
import { checkBound } from '../../../src/core/yield/proof/check-bound';
import { checkPlan } from '../../../src/core/yield/proof/check-plan';
import { swayFrom } from '../../../src/core/yield/stock/sway';
import { FUZZ_SEED, FUZZ_TRIES } from '../../fuzz';
import { LETTER, partOf, toolOf } from '../yield/sheets-at-hand';

/** A dozen with all tests, five hundred by `npm run fuzz`. */
const SEASONS = FUZZ_TRIES > 10_000 ? 500 : 12;
const tool = toolOf();
const RIBBON = {
  id: 'ribbon',
  rev: 1,
  createdAt: '2027-01-01T00:00:00Z',
  changedAt: '2027-01-01T00:00:00Z',
  name: 'Ribbon',
  kind: 'ribbon',
  widthMm: 10,
  rollMm: 2540,
  priceMinor: 0,
  onHandRolls: 0,
} as const;

/** Two to four events of one to three sizes each, in eighths of an inch, cut from letter sheets. */
function seasonOf(seed: number) {
  const sway = swayFrom(seed);
  const whole = (least: number, most: number) => least + Math.floor(sway() * (most - least + 1));
  return Array.from({ length: whole(2, 4) }, (_, event) => {
    const parts = Array.from({ length: whole(1, 3) }, (__, at) =>
      partOf(`part-${at}`, inches(0, whole(8, 40), 8), inches(0, whole(8, 40), 8), whole(1, 30)),
    );
    return { eventId: `event-${event}`, parts, plan: planSheets(parts, LETTER, tool) };
  });
}

describe('events cut together', () => {
  it(`take no more sheets than one by one, and the plan and its bound pass the checkers: ${SEASONS} seasons from seed ${FUZZ_SEED}`, {
    timeout: 3_600_000,
  }, () => {
    let fewer = 0;
    for (let seed = FUZZ_SEED; seed < FUZZ_SEED + SEASONS; seed++) {
      const apart = seasonOf(seed);
      const parts = partsTogether(apart);
      const { plan, apartSheets } = cutTogether(apart, planSheets(parts, LETTER, tool));
      expect(plan.sheets, `seed ${seed}`).toBeLessThanOrEqual(apartSheets);
      expect(checkPlan(plan, parts, LETTER, tool), `seed ${seed}`).toEqual([]);
      if (plan.proof)
        expect(checkBound(plan.proof, parts, LETTER, tool, plan.unplaced), `seed ${seed}`).toBeNull();
      if (plan.sheets < apartSheets) fewer++;
    }
    expect(fewer).toBeGreaterThan(0);
  });

  it('fall back on their own layouts where the search for all at once found worse', () => {
    const apart = seasonOf(FUZZ_SEED);
    const parts = partsTogether(apart);
    const joint = planSheets(parts, LETTER, tool);
    const worse = { ...joint, sheets: 10_000, proven: false };
    const { plan, apartSheets } = cutTogether(apart, worse);
    expect(plan.sheets).toBe(apartSheets);
    expect(checkPlan(plan, parts, LETTER, tool)).toEqual([]);
  });

  it('share a sheet: two events of one 4 1/4 × 11 card each are one letter sheet, not two', () => {
    const apart = ['spring', 'fall'].map((eventId) => {
      const parts = [partOf('card', inches(4, 1, 4), inches(11), 1)];
      return { eventId, parts, plan: planSheets(parts, LETTER, tool) };
    });
    const { plan, apartSheets } = cutTogether(apart, planSheets(partsTogether(apart), LETTER, tool));
    expect([apartSheets, plan.sheets, plan.proven]).toEqual([2, 1, true]);
  });
});

describe('one stock', () => {
  const row = (id: string, need: number, onHand: number) =>
    ({ id, kind: 'paper', name: id, unit: 'sheet', need, onHand }) as ShoppingRow;

  it('goes to the earliest event first, and what is saved comes off the last', () => {
    // 10 on hand: 8 to the first, 2 to the second, which needs 7 less 3 saved.
    const [list] = promiseStock(
      [
        { eventId: 'first', rows: [row('oat', 8, 10)] },
        { eventId: 'second', rows: [row('oat', 7, 10)] },
      ],
      new Map([['oat', 3]]),
    );
    expect(list).toMatchObject({ need: 12, toBuy: 2, firstFor: 'second' });
    expect(list?.promised).toEqual([
      { eventId: 'first', need: 8, fromStock: 8, toBuy: 0 },
      { eventId: 'second', need: 4, fromStock: 2, toBuy: 2 },
    ]);
  });

  it('cuts ribbon for every event from the same rolls: three events of 40 % of a roll take two, not three', () => {
    // 4 pieces of 10 in from rolls of 100 in: 40 in an event; 12 pieces are 120 in, and 10 go on a roll.
    const rolls = rollOut(RIBBON, [{ length: inches(10), count: 4 }], inches(10)).rolls;
    expect(rolls.rolls.rolls).toBe(1);
    expect(rollsSaved([{ rolls: [rolls] }, { rolls: [rolls] }, { rolls: [rolls] }]).get('ribbon')).toBe(1);
    expect(rollsSaved([{ rolls: [rolls] }]).get('ribbon')).toBe(0);
  });

  it('lists what is needed first before what is needed later, and what is on hand last', () => {
    const rows = promiseStock([
      { eventId: 'first', rows: [row('held', 1, 5), row('now', 4, 0)] },
      { eventId: 'second', rows: [row('later', 4, 0)] },
    ]);
    expect(rows.map(({ id }) => id)).toEqual(['now', 'later', 'held']);
  });
});

describe('one calendar', () => {
  const plan = (eventId: string, date: string, sittings: readonly (readonly [string, number])[]) => ({
    eventId,
    date,
    timetable: {
      sittings: sittings.map(([day, minutes]) => ({
        date: day,
        startMinute: 540,
        minutes,
        act: 'fold' as const,
        label: '',
      })),
      startsOn: '',
      readyOn: '',
      waits: {},
    },
  });

  it('counts weeks from Monday, as ISO 8601 does', () => {
    // 1 January 2026 was a Thursday; 2 March 2026 a Monday. From a printed calendar.
    expect(mondayOf('2026-01-01')).toBe('2025-12-29');
    expect(mondayOf('2026-03-02')).toBe('2026-03-02');
    expect(mondayOf('2026-03-08')).toBe('2026-03-02');
    expect(mondayOf('1969-12-31')).toBe('1969-12-29');
  });

  it('adds the hours of all events by week, and names the days and dates that two want', () => {
    const plans = [
      plan('a', '2026-03-10', [
        ['2026-03-06', 100],
        ['2026-03-09', 60],
      ]),
      plan('b', '2026-03-10', [['2026-03-06', 90]]),
    ];
    expect(weeksOf(plans)).toEqual([
      {
        monday: '2026-03-02',
        minutes: 190,
        byEvent: [
          { eventId: 'a', minutes: 100 },
          { eventId: 'b', minutes: 90 },
        ],
      },
      { monday: '2026-03-09', minutes: 60, byEvent: [{ eventId: 'a', minutes: 60 }] },
    ]);
    const day = new Map([
      ['a', 180],
      ['b', 120],
    ]);
    expect(
      clashesOf(plans, day).map(({ kind, date, minutes, hasMinutes }) => [kind, date, minutes, hasMinutes]),
    ).toEqual([
      ['day-too-full', '2026-03-06', 190, 180],
      ['same-date', '2026-03-10', 0, 0],
    ]);
  });
});

describe('a saved season', () => {
  const saved = workbookFile.parse(JSON.parse(readFileSync('demo-data/lantern-evening.json', 'utf8')));

  it('is planned by date, every row of every event once', () => {
    const season = planSeason(
      saved,
      saved.events.map(({ id }) => id),
    );
    const dates = season.events.map(({ date }) => date ?? '9999');
    expect(dates).toEqual(dates.toSorted());
    const ids = season.rows.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { plan, apartSheets } of season.papers) expect(plan.sheets).toBeLessThanOrEqual(apartSheets);
    for (const { onHand, promised } of season.rows)
      expect(promised.reduce((sum, { fromStock }) => sum + fromStock, 0)).toBeLessThanOrEqual(onHand);
  });

  it('gives an event again with what it taught: a tenth spoiled and twice the time are the next one’s defaults', () => {
    const event = structuredClone(saved.events.find(({ kits }) => !kits)!);
    const plan = planEvent(saved, event.id)!;
    const sheet = listRunSheet(plan, saved, saved.tools[0]);
    const folds = sheet.steps.filter(({ act }) => act === 'fold');
    const times = plan.hours.stages.find(({ act }) => act === 'fold')!.times;
    const all = folds.reduce((sum, { of }) => sum + of, 0);
    const lost = folds.reduce((sum, { of }) => sum + Math.floor(of / 10), 0);
    event.run = {
      firstRight: [],
      // One of ten pieces lost at every fold, ten seconds a fold in place of five.
      stages: folds.map(({ id, of }) => ({
        stage: id,
        done: of - Math.floor(of / 10),
        spoiled: Math.floor(of / 10),
        seconds: (10 * times * of) / all,
      })),
    };
    event.guests = [{ id: 'g', name: 'Ana', table: '', needs: '', lineId: null }];
    event.cutFor = 'fences';
    const again = repeatEvent(event, 'Next year', plan, sheet);
    expect(again).toMatchObject({ name: 'Next year', date: null, lines: event.lines, notes: event.notes });
    expect(again.pace?.seconds.find(({ act }) => act === 'fold')?.seconds).toBe(10);
    expect(again.spares.byAct?.find(({ act }) => act === 'fold')?.percent).toBe(
      Math.ceil((100 * lost) / all),
    );
    expect(again.cutFor).toBe('fences');
    expect(again.guests ?? again.run ?? again.bought ?? again.example).toBeUndefined();
  });
});
