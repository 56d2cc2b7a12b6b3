import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type FavorEvent, workbookFile } from '../../../shared/workbook';
import { planEvent, USUAL_LESSON } from '../../../src/core/plan';

const saved = workbookFile.parse(JSON.parse(readFileSync('demo-data/seed-swap-supper.json', 'utf8')));

/** Two seed boxes in each of twelve kits, no spares, as a class. */
function planClass(change: Partial<FavorEvent> = {}) {
  const event = structuredClone(saved.events[0]!);
  const [line] = event.lines;
  const asClass: FavorEvent = {
    ...event,
    lines: [{ ...line!, count: 2 }],
    spares: { percent: 0, atLeast: 0 },
    kits: 12,
    lesson: { ...USUAL_LESSON, samples: 1, demonstrations: 2 },
    asking: { hourlyMinor: 2000, marginPercent: 0 },
    ...change,
  };
  return planEvent({ ...saved, events: [asClass] }, event.id)!;
}

describe('the teacher’s own work', () => {
  it('is cutting, packing and the boxes that are shown; what the learners do is not in the hours', () => {
    const plan = planClass();
    // 12 kits of 2 and 3 boxes to show: 27, of which three whole ones are the teacher's.
    expect(plan.lines[0]).toMatchObject({ ordered: 24, spares: 0, practice: 3, making: 27 });
    const [line] = plan.lines;
    const times = (act: string) => plan.hours.stages.find((stage) => stage.act === act)?.times ?? 0;
    expect(times('score')).toBe(3 * line!.acts.score!);
    expect(times('fold')).toBe(3 * line!.acts.fold!);
    // Two cards (box and liner) and one length of tape into each of 12 kits, and what the three boxes are filled with.
    const put = plan.kit!.cards.length + plan.kit!.lengths.length + plan.kit!.counted.length;
    expect(times('fill')).toBe(12 * put + 3 * line!.acts.fill!);
  });

  it('is more once they score ahead, by the scores of all kits', () => {
    const [plain, ahead] = [
      planClass(),
      planClass({ lesson: { ...USUAL_LESSON, ahead: ['score'], samples: 1, demonstrations: 2 } }),
    ];
    const scores = (plan: typeof plain) => plan.hours.stages.find(({ act }) => act === 'score')?.times ?? 0;
    expect(scores(ahead) - scores(plain)).toBe(24 * plain.lines[0]!.acts.score!);
    expect(ahead.lesson!.steps.some(({ act }) => act === 'score')).toBe(false);
  });

  it('names the paper of each card in a kit', () => {
    expect(planClass().kit!.cards.map(({ paper }) => paper)).toEqual([
      'Oat cardstock, letter',
      'Oat cardstock, letter',
    ]);
  });
});

describe('the lesson', () => {
  it('gives each act the time to show it once and the learners three times the maker’s own', () => {
    const plan = planClass();
    const { acts } = plan.lines[0]!;
    const folding = plan.lesson!.steps.find(({ act }) => act === 'fold')!;
    // 5 s a fold: shown on one box, then two boxes at three times the time.
    const [show, work] = [acts.fold! * 5, 2 * acts.fold! * 5 * 3];
    expect(folding).toMatchObject({
      showSeconds: show,
      workSeconds: work,
      minutes: Math.ceil((show + work) / 60),
    });
  });

  it('runs from its start without a gap, with its break between two acts', () => {
    const { steps, minutes } = planClass({ lesson: { ...USUAL_LESSON, breakMinutes: 15 } }).lesson!;
    let at = USUAL_LESSON.startMinute;
    for (const step of steps) {
      expect(step.startMinute).toBe(at);
      at += step.minutes;
    }
    expect(at - USUAL_LESSON.startMinute).toBe(minutes);
    const place = steps.findIndex(({ kind }) => kind === 'break');
    expect([steps[place - 1]?.kind, steps[place + 1]?.kind]).toEqual(['act', 'act']);
  });

  it('is priced by the kit and by the seat: materials and hours shared by twelve', () => {
    const plan = planClass({ lesson: { ...USUAL_LESSON, roomMinor: 6000 } });
    const { perKit, perSeat, minutes } = plan.lesson!;
    const materials = plan.cost.using.totalMinor;
    const before = Math.ceil((2000 * Math.ceil(plan.hours.totalSeconds)) / 3600);
    expect(perKit).toMatchObject({ materialsMinor: materials, workMinor: before });
    expect(perKit!.perFavorMinor).toBe(Math.round((materials + before) / 12));
    const all = Math.ceil((2000 * Math.ceil(plan.hours.totalSeconds + minutes * 60)) / 3600);
    expect(perSeat!.perFavorMinor).toBe(Math.round((materials + 6000 + all) / 12));
    expect(planClass({ asking: undefined as never }).lesson!.perSeat).toBeNull();
  });

  it('says what to bring: kits, samples, copies, tools for who shares them, and care with blades', () => {
    const bring = planClass().lesson!.bring;
    const count = (what: string) => bring.find((item) => item.what === what)?.count;
    expect(count('packed kits')).toBe(12);
    expect(count('finished samples')).toBe(1);
    expect(count('copies to make while you teach')).toBe(2);
    // One for two learners, and the teacher's own; a bone folder each.
    expect(count('scoring tool')).toBe(7);
    expect(count('bone folder')).toBe(13);
    expect(bring.find(({ what }) => what.startsWith('craft knife'))?.care).toMatch(/Blades cut/);
  });
});
