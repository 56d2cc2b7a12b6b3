import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayNumber, isoDate } from '../../../src/core/plan/run/calendar-day';
import { planHours } from '../../../src/core/plan/run/hours';
import {
  planTimetable,
  type Sitting,
  type Timetable,
  type Waits,
} from '../../../src/core/plan/run/timetable';
import { SEED } from '../../seed';

const forty = planHours({ cut: 120, score: 200, fold: 200, glue: 160, 'close-bottom': 40, fill: 160 }, 40);

function timetable(days: { dayMinutes: number; daysFree: number }, waits: Waits = {}): Timetable {
  const made = planTimetable('2027-03-20', forty, days, waits);
  if (!made) throw new Error('nothing to do');
  return made;
}

const startOf = ({ date, startMinute }: Sitting): number => dayNumber(date) * 1440 + startMinute;
const endOf = (sitting: Sitting): number => startOf(sitting) + sitting.minutes;

describe('calendar days', () => {
  it('counts leap days and year ends (ISO 8601 dates, Gregorian calendar)', () => {
    expect(dayNumber('1970-01-01')).toBe(0);
    expect(dayNumber('2028-03-01') - dayNumber('2028-02-28')).toBe(2);
    expect(isoDate(dayNumber('2027-01-01') - 1)).toBe('2026-12-31');
    expect(isoDate(dayNumber('2100-03-01') - 1)).toBe('2100-02-28');
  });
});

describe('a timetable counted back from the event', () => {
  it('is ready a whole day before, and does the stages in their order', () => {
    const { sittings, readyOn, startsOn } = timetable({ dayMinutes: 120, daysFree: 1 });
    expect(readyOn).toBe('2027-03-18');
    expect(sittings.at(-1)).toMatchObject({ date: '2027-03-18', act: 'fill' });
    expect(sittings[0]).toMatchObject({ date: startsOn, act: 'cut' });
    const order = forty.stages.map(({ act }) => act);
    const places = sittings.map(({ act }) => order.indexOf(act));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
  });

  it('leaves the glue its time to dry before the next stage', () => {
    const { sittings } = timetable({ dayMinutes: 120, daysFree: 0 }, { 'close-bottom': 24 * 60, glue: 30 });
    const glued = sittings.filter(({ act }) => act === 'close-bottom').at(-1)!;
    const filled = sittings.find(({ act }) => act === 'fill')!;
    expect(startOf(filled) - endOf(glued)).toBeGreaterThanOrEqual(24 * 60);
    const taped = sittings.filter(({ act }) => act === 'glue').at(-1)!;
    const bottom = sittings.find(({ act }) => act === 'close-bottom')!;
    expect(startOf(bottom) - endOf(taped)).toBeGreaterThanOrEqual(30);
  });

  it('has nothing to say where there is nothing to do', () => {
    expect(planTimetable('2027-03-20', planHours({}, 0), { dayMinutes: 60, daysFree: 0 })).toBeNull();
  });

  it('fits every sitting into its day, loses no minute, and never overlaps, whatever the days', () => {
    const days = fc.record({ dayMinutes: fc.integer({ min: 15, max: 1440 }), daysFree: fc.nat({ max: 10 }) });
    const waits = fc.record({ glue: fc.nat({ max: 3000 }), 'close-bottom': fc.nat({ max: 3000 }) });
    const check = fc.property(days, waits, (working, dry) => {
      const { sittings } = timetable(working, dry);
      for (const act of forty.stages) {
        const mine = sittings.filter((each) => each.act === act.act);
        expect(mine.reduce((sum, { minutes }) => sum + minutes, 0)).toBe(Math.ceil(act.fullSeconds / 60));
      }
      for (const [i, sitting] of sittings.entries()) {
        expect(sitting.startMinute).toBeGreaterThanOrEqual(540);
        expect(sitting.startMinute + sitting.minutes).toBeLessThanOrEqual(
          Math.min(1440, 540 + working.dayMinutes),
        );
        const next = sittings[i + 1];
        if (!next) continue;
        const wait = next.act === sitting.act ? 0 : ((dry as Waits)[sitting.act] ?? 0);
        expect(startOf(next) - endOf(sitting)).toBeGreaterThanOrEqual(wait);
      }
      expect(dayNumber('2027-03-20') - dayNumber(sittings.at(-1)!.date)).toBe(working.daysFree + 1);
    });
    fc.assert(check, { seed: SEED, numRuns: 300 });
  });
});
