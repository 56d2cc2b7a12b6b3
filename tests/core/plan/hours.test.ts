import { describe, expect, it } from 'vitest';
import { HAND_TIMES } from '../../../shared/catalogue';
import type { Pace } from '../../../shared/workbook';
import { planHours } from '../../../src/core/plan/run/hours';

/**
 * Common practice, no source: 3 cuts, 5 scores, 5 slits and notches, 5 folds, 3 tapes, the bottom; an insert of 2 cuts, 2 tapes and placing; a bow.
 * 24 + 25 + 20 + 25 + 36 + 25 + (16 + 24 + 20) + 60 = 275 s a box.
 */
const BOX = { cut: 5, score: 5, slit: 5, fold: 5, glue: 5, 'close-bottom': 1, place: 1, 'tie-bow': 1 };
const forty = Object.fromEntries(Object.entries(BOX).map(([act, times]) => [act, times * 40]));
const noSetUp = HAND_TIMES.filter(({ act }) => act !== 'set-up');
const pace = (change: Partial<Pace> = {}): Pace => ({
  seconds: [],
  trialSeconds: [],
  learningPercent: 100,
  allowancePercent: 15,
  makers: 1,
  dayMinutes: 180,
  daysFree: 1,
  ...change,
});

describe('hours of a batch', () => {
  it('takes 275 s for one box', () => {
    expect(planHours(BOX, 1, pace({ allowancePercent: 0 }), noSetUp).totalSeconds).toBe(275);
  });

  it('takes 183.3 min for forty, 210.8 with 15 % of rest', () => {
    const hours = planHours(forty, 40, pace(), noSetUp);
    expect((hours.workSeconds / 60).toFixed(2)).toBe('183.33');
    expect((hours.totalSeconds / 60).toFixed(2)).toBe('210.83');
  });

  it('takes 121.65 min when 90 % is learned by unit theory, 139.9 with rest', () => {
    const hours = planHours(forty, 40, pace({ learningPercent: 90 }), noSetUp);
    expect((hours.workSeconds / 60).toFixed(2)).toBe('121.65');
    expect((hours.totalSeconds / 60).toFixed(2)).toBe('139.90');
  });

  it('gets each stage ready once, decorates while flat, and ties last', () => {
    const hours = planHours(forty, 40);
    expect(hours.setUpSeconds).toBe(8 * 300);
    expect(hours.stages.map(({ act }) => act)).toEqual([
      'cut',
      'score',
      'slit',
      'fold',
      'place',
      'glue',
      'close-bottom',
      'tie-bow',
    ]);
  });

  it('splits the total among the stages, learning and rest included', () => {
    const hours = planHours(forty, 40, pace({ learningPercent: 85 }));
    expect(hours.stages.reduce((sum, { fullSeconds }) => sum + fullSeconds, 0)).toBeCloseTo(
      hours.totalSeconds,
      6,
    );
  });

  it('believes the maker: her own seconds for an act, and whole boxes she timed', () => {
    const slowTape = planHours(
      BOX,
      1,
      pace({ seconds: [{ act: 'glue', seconds: 20 }], allowancePercent: 0 }),
      noSetUp,
    );
    expect(slowTape.totalSeconds).toBe(275 + 5 * 8);
    // three boxes at 300, 280, 275 s with nothing learned: 285 s each
    const timed = planHours(forty, 40, pace({ trialSeconds: [300, 280, 275], allowancePercent: 0 }), noSetUp);
    expect(timed.totalSeconds).toBeCloseTo(40 * 285, 6);
    // learned at 90 %: the first box is sum / (1 + .9 + .8462), the forty 26.5427 times that
    const learning = pace({ trialSeconds: [300, 280, 275], learningPercent: 90, allowancePercent: 0 });
    expect(planHours(forty, 40, learning, noSetUp).totalSeconds).toBeCloseTo((855 / 2.7462) * 26.5427, -1);
  });

  it('shares the time among makers', () => {
    const hours = planHours(forty, 40, pace({ makers: 3 }));
    expect(hours.elapsedSeconds).toBeCloseTo(hours.totalSeconds / 3, 9);
  });

  it('takes no time for nothing', () => {
    expect(planHours({}, 0)).toMatchObject({ totalSeconds: 0, stages: [] });
  });
});
