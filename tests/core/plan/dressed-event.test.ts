import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { workbookFile } from '../../../shared/workbook';
import { type EventPlan, planEvent, type ShoppingRow } from '../../../src/core/plan';
import { inches } from '../../../src/core/units';

const saved = workbookFile.parse(JSON.parse(readFileSync('demo-data/lantern-evening.json', 'utf8')));

function plan(eventId: string): EventPlan {
  const made = planEvent(saved, eventId);
  if (!made) throw new Error(eventId);
  return made;
}

const evening = plan('lantern-evening');
const club = plan('folding-class');

const rowOf = (made: EventPlan, id: string): ShoppingRow | undefined =>
  made.shopping.find((row) => row.id === id);

/** What the plainly cheapest way buys of a row, before anything is added to reach a threshold. */
const plainly = (made: EventPlan, id: string) =>
  made.ways.find(({ reaches }) => reaches === null)?.purchases[
    made.shopping.findIndex((row) => row.id === id)
  ];

describe('forty favors in two colours with liner, layer, tag, ribbon and contents', () => {
  it('makes 45: 20 and 20, two spare each, one to practise on', () => {
    expect(evening.lines.map(({ making }) => making)).toEqual([23, 22]);
    expect(evening).toMatchObject({ ordered: 40, making: 45 });
  });

  it('cuts every colour from its own paper and all dressing from one', () => {
    expect(evening.papers.map(({ paperId, parts }) => [paperId, parts.length])).toEqual([
      ['cream-letter', 6],
      ['dusk-tabloid', 1],
      ['ember-tabloid', 1],
    ]);
    // 11 × 17 gives three blanks: 23 need 8 sheets, 22 need 8
    expect(evening.papers.slice(1).map(({ plan: sheets }) => sheets.sheets)).toEqual([8, 8]);
  });

  it('sizes liner and layer by the box, not by what the file last held', () => {
    const file = structuredClone(saved);
    file.recipes[0]!.sizesMm['width'] = 101.6; // 4 in
    const parts = planEvent(file, 'lantern-evening')?.papers[0]?.parts ?? [];
    expect(parts.find(({ kind }) => kind === 'liner')?.across).toBe(inches(3, 15, 16)); // room 4 in less .012
    expect(parts.find(({ kind }) => kind === 'layer')?.across).toBe(inches(3, 3, 4)); // 4 in less 2 × 1/8
  });

  it('needs 12 rolls of ribbon for 45 pieces of 36 5/8 in, four to a roll, two of the rolls free', () => {
    expect(evening.rolls.find(({ kind }) => kind === 'ribbon')?.perBox).toBe(inches(36, 5, 8)); // 22 in score to score, 8 calipers of .012, bow 14 1/2: 36.596
    expect(rowOf(evening, 'rust-ribbon')).toMatchObject({ need: 12, short: 12 });
    expect(plainly(evening, 'rust-ribbon')).toMatchObject({
      packs: [{ count: 12, free: 2 }],
      priceMinor: 2490,
    });
  });

  it('counts what is stuck on and put in, stock first', () => {
    // two foam squares for each of 45, 30 on hand; six toffees each
    expect(rowOf(evening, 'foam-squares')).toMatchObject({ need: 90, onHand: 30, short: 60 });
    expect(plainly(evening, 'foam-squares')).toMatchObject({ units: 80, left: 20 });
    expect(rowOf(evening, 'toffees')).toMatchObject({
      need: 270,
      bought: 300,
      leftOver: 30,
      leftOverMinor: 270,
    });
    expect(evening.lines[0]?.acts).toMatchObject({ place: 3 + 2, fill: 6 + 1, 'tie-bow': 1 });
  });

  it('spends a little more where free shipping makes the whole cheaper', () => {
    const [best, plain] = evening.ways;
    expect(best.reaches).toBe(9500);
    expect(plain?.reaches).toBeNull();
    expect(plain && best.totalMinor < plain.totalMinor).toBe(true);
    expect(evening.shopping.reduce((sum, row) => sum + (row.priceMinor ?? 0), 0)).toBe(best.subtotalMinor);
    for (const row of evening.shopping) expect(row.bought).toBeGreaterThanOrEqual(row.short);
    const more = evening.shopping.filter(({ why }) => why.at(-1)?.says.startsWith('More than needed'));
    expect(more.map(({ id }) => id)).toContain('foam-squares');
  });

  it('splits the cost among paper, adhesive, ribbon, extras and contents', () => {
    expect(evening.cost.using.shares.map(({ of }) => of).toSorted()).toEqual([
      'adhesive',
      'contents',
      'extras',
      'paper',
      'ribbon',
    ]);
    expect(evening.asking?.materialsMinor).toBe(evening.cost.using.totalMinor);
  });

  it('says the usual words of care about the work and the gifts', () => {
    expect(evening.cautions.map(({ hazard }) => hazard)).toEqual([
      'stack',
      'load',
      'small-parts',
      'food',
      'allergens',
    ]);
    expect(club.cautions.map(({ hazard }) => hazard)).toEqual(['stack', 'load']);
    const file = structuredClone(saved);
    file.recipes[0]!.dressings[0]!.pieces[2]!.widthMm = 9.525; // a tag 3/8 in wide
    expect(planEvent(file, 'lantern-evening')?.cautions.map(({ hazard }) => hazard)).toContain(
      'narrow-strip',
    );
  });

  it('is ready the day before the free day', () => {
    expect(evening.timetable).toMatchObject({ readyOn: '2027-11-03' });
  });
});

describe('a class of twelve kits', () => {
  it('packs two spare kits of two boxes each', () => {
    expect(club).toMatchObject({ ordered: 24, making: 28, kit: { kits: 12, packing: 14 } });
    expect(club.kit?.boxes).toEqual([{ name: 'Toffee box', count: 2 }]);
    expect(club.kit?.cards.map(({ count }) => count)).toEqual([2, 2]);
  });

  it('gives each pupil her lengths in one piece', () => {
    // tape for two layers, top and bottom: 4 × 3 1/4 in; twine twice round and tied
    expect(club.kit?.lengths.map(({ name, length }) => [name, length])).toEqual([
      ['Tape', inches(13)],
      ['Twine round the walls', inches(42, 1, 8)],
    ]);
  });

  it('glues the joints instead of taping them, to the gram', () => {
    // 2 15/16 × 1 + 2 × 1 1/2 × 1 1/2 + 3 1/2 × 1 1/2 = 12.6875 in² a box, 28 boxes: 0.2292 m² at 100 g/m²
    expect(club.glue).toMatchObject({ grams: 23, bottles: 1 });
    expect(club.lines[0]?.acts.glue).toBe(4 + 2);
  });

  it('waits for the glue to dry before the twine', () => {
    const steps = club.lesson?.steps ?? [];
    const glued = steps.findIndex(({ act }) => act === 'close-bottom');
    expect(steps.slice(glued).map(({ kind, act, minutes }) => [kind, act, act ? 0 : minutes])).toEqual([
      ['act', 'close-bottom', 0],
      ['wait', null, 60],
      ['act', 'tie-bow', 0],
      ['tidy', null, 10],
    ]);
  });

  it('makes no kits of an order for favors', () => {
    expect(evening.kit).toBeNull();
  });
});
