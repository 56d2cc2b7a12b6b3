import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Run, type WorkbookFile, workbookFile } from '../../../shared/workbook';
import {
  addCount,
  batchProgress,
  followRun,
  listRunSheet,
  planEvent,
  type RunSheet,
} from '../../../src/core/plan';
import { boxesSpoiled, countAt, setFirstRight, spoiledOfLine } from '../../../src/core/plan/run/run-counts';
import { whySheets } from '../../../src/core/plan/why/totals-why';
import { inches } from '../../../src/core/units';
import { SEED } from '../../seed';

const saved = workbookFile.parse(JSON.parse(readFileSync('demo-data/lantern-evening.json', 'utf8')));

function planWith(run: Run | undefined) {
  const file: WorkbookFile = structuredClone(saved);
  const event = file.events.find(({ id }) => id === 'lantern-evening');
  if (!event) throw new Error('the demo has no such event');
  if (run) event.run = run;
  const plan = planEvent(file, event.id);
  if (!plan) throw new Error('no plan');
  return { plan, sheet: listRunSheet(plan, file, file.tools[0]) };
}
const { plan, sheet } = planWith(undefined);
const stepsOf = ({ steps }: RunSheet, act: string) => steps.filter((step) => step.act === act);
const left = (made: RunSheet, run: Run | undefined, id: string) =>
  followRun(made, run).find(({ step }) => step.id === id);

describe('the run sheet of a batch in two colours', () => {
  it('goes through the stages in the order of the batch', () => {
    expect([...new Set(sheet.steps.map(({ act }) => act))]).toEqual([
      'cut',
      'score',
      'slit',
      'fold',
      'place',
      'glue',
      'close-bottom',
      'fill',
      'tie-bow',
    ]);
  });

  it('sets the fence five times for both colours: 3, 3 1/2, 5, 8 1/2 and 10 in, one setting at a time', () => {
    // common practice, no source: the trade box is scored at 3 1/2, 5, 8 1/2 and 10 along the 11, from the edge opposite the tab, and across at 3
    const fences = stepsOf(sheet, 'score').flatMap(({ work }) => (work.do === 'fence' ? [work.at] : []));
    const five = [inches(3), inches(3, 1, 2), inches(5), inches(8, 1, 2), inches(10)];
    expect(fences).toEqual(five.flatMap((at) => [at, at]));
    // across at 3: the card is turned a quarter for it, as its bench card says
    expect(stepsOf(sheet, 'score')[0]?.work).toMatchObject({ at: inches(3), lies: { turned: 'clockwise' } });
    expect(stepsOf(sheet, 'score').map(({ lineId }) => lineId)).toEqual(
      five.flatMap(() => ['dusk', 'ember']),
    );
  });

  it('says how the card lies at every flat step, and never a turn from a step that may not have come before', () => {
    const flat = sheet.steps.filter(({ act }) => act === 'slit');
    for (const { work } of flat) {
      expect(work).toMatchObject({ do: 'card', lies: { turned: 'not', flipped: true } });
      expect(work.do === 'card' && work.steps[0]?.headline).not.toMatch(
        /^(Half turn|Quarter turn|Turn (over|back|inside|good)|Good side up|Inside up)/,
      );
    }
  });

  it('glues the walls before any flap of the bottom is touched', () => {
    const glued = (act: string) =>
      stepsOf(sheet, act)
        .flatMap(({ work }) => (work.do === 'card' ? work.steps : []))
        .map(({ headline }) => headline);
    expect(glued('glue').at(-1)).toMatch(/Fold the front wall over onto it\.$/);
    expect(glued('glue').join()).not.toMatch(/flap/);
    expect(glued('close-bottom').at(-1)).toMatch(/Fold it in onto the front flap\.$/);
  });

  it('counts sheets, pieces and boxes: 20 + 8 + 8 sheets, 23 and 22 of each', () => {
    expect(stepsOf(sheet, 'cut').map(({ of }) => of)).toEqual([20, 8, 8]);
    for (const { lineId, of } of sheet.steps.slice(3)) expect(of).toBe(lineId === 'dusk' ? 23 : 22);
  });

  it('cuts ribbon at 36 5/8 in, with the bow', () => {
    // common practice: twice round 3 1/2 × 1 1/2 × 3 both ways 22 in score to score and 8 calipers of .012, and a bow of 14 1/2: 36.596 on sixteenths
    expect(stepsOf(sheet, 'tie-bow')[0]?.work).toMatchObject({ do: 'tie', length: inches(36, 5, 8) });
  });

  it('measures the first box of every line: blank 11 × 4 1/2 in', () => {
    expect(sheet.firsts.map(({ lineId }) => lineId)).toEqual(['dusk', 'ember']);
    expect(sheet.firsts[0]?.blanks[0]?.size).toEqual({ across: inches(11), up: inches(4, 1, 2) });
  });

  it('names every step as the saved format can hold it, and no two alike', () => {
    const ids = sheet.steps.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-z0-9/-]{1,140}$/);
  });
});

describe('counting at the bench', () => {
  it('adds up, never falls below zero, and keeps other steps', () => {
    let run = addCount(undefined, 'dusk/fold/box/1', { done: 5, seconds: 40 });
    run = addCount(run, 'dusk/fold/box/1', { done: 10 });
    run = addCount(run, 'ember/fold/box/1', { done: 1 });
    expect(countAt(run, 'dusk/fold/box/1')).toMatchObject({ done: 15, spoiled: 0, seconds: 40 });
    expect(countAt(addCount(run, 'dusk/fold/box/1', { done: -99 }), 'dusk/fold/box/1').done).toBe(0);
    expect(countAt(run, 'ember/fold/box/1').done).toBe(1);
    expect(setFirstRight(setFirstRight(run, 'dusk', true), 'dusk', true).firstRight).toEqual(['dusk']);
    expect(setFirstRight(setFirstRight(run, 'dusk', true), 'dusk', false).firstRight).toEqual([]);
  });

  it('lets fewer come to the steps after a spoiled one, of that line alone', () => {
    const run = addCount(undefined, 'dusk/score/box/1', { done: 20, spoiled: 2 });
    expect(left(sheet, run, 'dusk/score/box/1')).toMatchObject({ of: 23, left: 1 });
    expect(left(sheet, run, 'dusk/fold/box/1')).toMatchObject({ of: 21, left: 21 });
    expect(left(sheet, run, 'ember/fold/box/1')).toMatchObject({ of: 22 });
  });

  it('counts a lid and a tray that are spoiled as one box lost, two lids as two, and a tied box by itself', () => {
    const at = (act: string, piece: string | null, spoiled = 1) => ({ act, piece, spoiled });
    expect(boxesSpoiled([at('fold', 'tray'), at('fold', 'lid')])).toBe(1);
    expect(boxesSpoiled([at('fold', 'lid'), at('score', 'lid'), at('fold', 'tray')])).toBe(2);
    expect(boxesSpoiled([at('fold', 'tray'), at('tie-bow', null)])).toBe(2);
    const run = addCount(addCount(undefined, 'dusk/fold/box/1', { spoiled: 2 }), 'dusk/place/tag', {
      spoiled: 1,
    });
    expect([spoiledOfLine(run, 'dusk'), spoiledOfLine(run, 'dus')]).toEqual([3, 0]);
  });

  it('takes what is spoiled from the spares, and orders again only beyond them', () => {
    // dusk has two spares; 11 × 17 gives three blanks, so 23 and 24 need 8 sheets and 25 need 9
    const within = planWith(addCount(undefined, 'dusk/fold/box/1', { spoiled: 2 })).plan;
    expect(within.lines.map(({ making, again }) => [making, again])).toEqual([[23, 0], [22, 0]]); // biome-ignore format: one row
    const beyond = planWith(addCount(undefined, 'dusk/fold/box/1', { spoiled: 4 })).plan;
    expect(beyond.lines.map(({ making, again }) => [making, again])).toEqual([[25, 2], [22, 0]]); // biome-ignore format: one row
    const sheets = (of: typeof plan) =>
      of.papers.find(({ paperId }) => paperId === 'dusk-tabloid')?.plan.sheets;
    expect([sheets(plan), sheets(within), sheets(beyond)]).toEqual([8, 8, 9]);
    expect(beyond.findings.map(({ code }) => code)).toContain('spoiled-beyond-spares');
    const short = beyond.shopping.find(({ id }) => id === 'toffees')?.need;
    expect(short).toBe(6 * 47);
  });

  it('asks for a sheet more where a sheet was spoiled while cutting', () => {
    const spoiled = planWith(addCount(undefined, 'cut/dusk-tabloid', { done: 7, spoiled: 1 }));
    const need = (of: typeof plan) => of.shopping.find(({ id }) => id === 'dusk-tabloid');
    expect(need(plan)?.need).toBe(8);
    expect(need(spoiled.plan)?.need).toBe(9);
    // Count and Sheets add up the same 9: 8 of the plan, and the one that was spoiled.
    const cut = spoiled.plan.papers.find(({ paperId }) => paperId === 'dusk-tabloid');
    expect([cut?.plan.sheets, cut?.spoiled]).toEqual([8, 1]);
    expect(whySheets(spoiled.plan).map(({ says }) => says)).toContain(
      '{name}: {spoiled} more for sheets lost to mistakes.',
    );
    expect(need(spoiled.plan)?.why.map(({ says }) => says)).toContain('Sheets lost to mistakes: {spoiled}');
    const run = addCount(undefined, 'cut/dusk-tabloid', { done: 7, spoiled: 1 });
    expect(left(spoiled.sheet, run, 'cut/dusk-tabloid')).toMatchObject({ of: 8, left: 1 });
  });

  it('always has enough boxes at the end, whatever was spoiled on the way', () => {
    const ids = sheet.steps.map(({ id }) => id);
    const tap = fc.record({ at: fc.nat({ max: ids.length - 1 }), spoiled: fc.nat({ max: 3 }) });
    const check = fc.property(fc.array(tap, { maxLength: 12 }), (taps) => {
      let run: Run | undefined;
      for (const { at, spoiled } of taps) run = addCount(run, ids[at]!, { spoiled });
      const made = planWith(run);
      const progress = followRun(made.sheet, run);
      for (const line of made.plan.lines) {
        const last = progress.findLast(({ step }) => step.lineId === line.lineId);
        expect((last?.of ?? 0) - (last?.spoiled ?? 0)).toBeGreaterThanOrEqual(line.ordered);
      }
    });
    fc.assert(check, { seed: SEED, numRuns: 25 });
  });
});

describe('how far the batch has come', () => {
  const stages = plan.hours.stages;
  const whole = stages
    .filter(({ act }) => sheet.steps.some((step) => step.act === act))
    .reduce((sum, { fullSeconds }) => sum + fullSeconds, 0);

  it('is nothing at the start and everything at the end, by time', () => {
    expect(batchProgress(followRun(sheet, undefined), stages)).toEqual({ share: 0, secondsLeft: whole });
    const all = sheet.steps.reduce<Run | undefined>(
      (run, { id, of }) => addCount(run, id, { done: of }),
      undefined,
    );
    expect(batchProgress(followRun(sheet, all), stages)).toEqual({ share: 1, secondsLeft: 0 });
  });

  it('a piece folded is its share of the folding stage, and no more', () => {
    const folds = stepsOf(sheet, 'fold');
    const pieces = folds.reduce((sum, { of }) => sum + of, 0);
    const folding = stages.find(({ act }) => act === 'fold')?.fullSeconds ?? 0;
    const one = addCount(undefined, folds[0]?.id ?? '', { done: 1 });
    const { secondsLeft } = batchProgress(followRun(sheet, one), stages);
    expect(secondsLeft).toBeCloseTo(whole - folding / pieces, 6);
  });

  it('turns are neither said nor drawn where the card may come from anywhere', () => {
    for (const { work } of sheet.steps.filter(({ act }) => act === 'slit' || act === 'score')) {
      if (work.do !== 'card' || work.lies === null) continue;
      expect(work.steps[0]?.ops.to).toBeGreaterThan(work.steps[0]?.ops.from ?? 0);
    }
  });
});
