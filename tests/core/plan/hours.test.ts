import { describe, expect, it } from 'vitest';
import { HAND_TIMES } from '../../../shared/catalogue';
import { planHours } from '../../../src/core/plan/hours';

/**
 * Common practice, no source: 3 cuts, 5 scores, 5 slits and notches, 5 folds, 3 tapes, the bottom; an insert of 2 cuts, 2 tapes and placing; a bow.
 * 24 + 25 + 20 + 25 + 36 + 25 + (16 + 24 + 20) + 60 = 275 s a box.
 */
const BOX = { cut: 5, score: 5, slit: 5, fold: 5, glue: 5, 'close-bottom': 1, place: 1, 'tie-bow': 1 };
const forty = Object.fromEntries(Object.entries(BOX).map(([act, times]) => [act, times * 40]));
const noSetUp = HAND_TIMES.filter(({ act }) => act !== 'set-up');

describe('hours of a batch', () => {
  it('takes 275 s for one box', () => {
    expect(planHours(BOX, 1, { times: noSetUp, allowancePercent: 0 }).totalSeconds).toBe(275);
  });

  it('takes 183.3 min for forty, 210.8 with 15 % of rest', () => {
    const hours = planHours(forty, 40, { times: noSetUp });
    expect((hours.workSeconds / 60).toFixed(2)).toBe('183.33');
    expect((hours.totalSeconds / 60).toFixed(2)).toBe('210.83');
  });

  it('takes 121.65 min when 90 % is learned by unit theory, 139.9 with rest', () => {
    const hours = planHours(forty, 40, { times: noSetUp, learningPercent: 90 });
    expect((hours.workSeconds / 60).toFixed(2)).toBe('121.65');
    expect((hours.totalSeconds / 60).toFixed(2)).toBe('139.90');
  });

  it('gets each stage ready once', () => {
    expect(planHours(forty, 40).setUpSeconds).toBe(8 * 300);
    expect(planHours({ cut: 3, score: 0 }, 1).stages.map(({ act }) => act)).toEqual(['cut']);
  });

  it('takes no time for nothing', () => {
    expect(planHours({}, 0)).toMatchObject({ totalSeconds: 0, stages: [] });
  });
});
