import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  type Dressing,
  type DressingPiece,
  type EventLine,
  type WorkbookFile,
  workbookFile,
} from '../../../shared/workbook';
import { type EventPlan, leftOutOf, planEvent, type ShoppingRow, sayReason } from '../../../src/core/plan';
import { REMARK_CODES } from '../../../src/core/plan/event/remarks';
import { inches, spellLength, ticks, toInches, toMm } from '../../../src/core/units';
import { sequenceCuts } from '../../../src/core/yield';
import { swayFrom } from '../../../src/core/yield/stock/sway';
import { SEED } from '../../seed';
import { recordFault } from '../../setup/fault-record';

const saved = workbookFile.parse(JSON.parse(readFileSync('demo-data/seed-swap-supper.json', 'utf8')));

const KNIFE = { longestCut: null, kerf: ticks(0), stack: 1, stages: 'free' } as const;

type Change = (file: WorkbookFile) => void;

/** The demo's supper, changed. */
function plan(...changes: readonly Change[]): EventPlan {
  const file = structuredClone(saved);
  for (const change of changes) change(file);
  const made = planEvent(file, 'seed-swap-supper');
  if (!made) throw new Error('no event');
  return made;
}

const line = (file: WorkbookFile): EventLine => file.events[0]!.lines[0]!;
const dressing = (file: WorkbookFile): Dressing =>
  file.recipes.find(({ id }) => id === 'seed-box')!.dressings[0]!;
const piece = (file: WorkbookFile): DressingPiece => dressing(file).pieces[0]!;
const setAll = <Row extends object>(rows: readonly Row[], values: Partial<Row>): void => {
  for (const row of rows) Object.assign(row, values);
};
const rowOf = (made: EventPlan, id: string): ShoppingRow => {
  const row = made.shopping.find((each) => each.id === id);
  if (!row) throw new Error(`no row ${id}`);
  return row;
};
const inWords = (row: ShoppingRow): string[] =>
  row.why.map((step) =>
    sayReason(step, {
      length: (length) => spellLength(length, 'in'),
      money: (minor) => (minor / 100).toFixed(2),
    }),
  );

describe('planning an event', () => {
  it('cuts the same sheets with fewer fence settings where the event puts them first', () => {
    const small: Change = (file) =>
      Object.assign(file.recipes.find(({ id }) => id === 'seed-box')!.sizesMm, { width: 25.4, height: 25.4 });
    const fences: Change = (file) => Object.assign(file.events[0]!, { cutFor: 'fences' });
    const cuts = (made: EventPlan) =>
      made.papers.flatMap(({ plan: { layouts }, sheet }) =>
        layouts.map((layout) => sequenceCuts(layout, sheet, KNIFE)),
      );
    const settings = (made: EventPlan) => cuts(made).reduce((sum, cut) => sum + cut.fences.length, 0);
    const [usual, fewer] = [plan(small), plan(small, fences)];
    expect(fewer.papers[0]?.plan.sheets).toBe(usual.papers[0]?.plan.sheets);
    expect(settings(fewer)).toBeLessThan(settings(usual));
  });

  it('cuts parts of one size alike, whichever box they are for: a paper of one size in two colors has one layout', () => {
    // Twice the same box, of the same paper: before, what one line ran out of split the layouts of the other.
    const twice: Change = (file) => {
      const [first] = file.events[0]!.lines;
      file.events[0]!.lines = [
        { ...first!, id: 'one', count: 19 },
        { ...first!, id: 'two', count: 21 },
      ];
    };
    const { papers, making } = plan(twice);
    const [paper] = papers;
    expect(paper?.parts).toHaveLength(4);
    expect(paper?.demand.map(({ count }) => count)).toEqual([making, making]);
    expect(paper?.plan.layouts).toHaveLength(1);
    const cut = paper!.plan.layouts.flatMap(({ sheets, parts }) => parts.map(() => sheets));
    expect(cut.reduce((sum, sheets) => sum + sheets, 0)).toBe(2 * making);
  });

  it('makes 44 for 40 and cuts each favor with its liner from one letter sheet, and no plan uses fewer', () => {
    // common practice, no source: blank 4 1/2 × 11 and liner 3 1/2 × 6 together fill one 8 1/2 × 11 sheet
    const { papers, ordered, making } = plan();
    expect({ ordered, making }).toEqual({ ordered: 40, making: 44 });
    expect(papers).toHaveLength(1);
    expect(papers[0]).toMatchObject({
      paperId: 'oat-letter',
      plan: { sheets: 44, lowerBound: 44, proven: true, unplaced: [] },
    });
    expect(papers[0]?.parts.map(({ across, up, count }) => [across, up, count])).toEqual([
      [inches(11), inches(4, 1, 2), 44],
      [inches(3, 1, 2), inches(6), 44],
    ]);
  });

  it('uses the paper in the cupboard first and buys the cheapest packs for the rest', () => {
    // 44 − 12 = 32 sheets: 25 + 10 for 7.50 + 3.40 = 10.90, against 50 for 13.00 or four of 10 for 13.60
    expect(rowOf(plan(), 'oat-letter')).toMatchObject({
      need: 44,
      onHand: 12,
      short: 32,
      packs: [
        { units: 10, priceMinor: 340, count: 1 },
        { units: 25, priceMinor: 750, count: 1 },
      ],
      bought: 35,
      leftOver: 3,
      priceMinor: 1090,
      usedMinor: 1144, // 44 sheets at the best price a sheet, 13.00 / 50
    });
  });

  it('says every step of the shopping arithmetic', () => {
    expect(inWords(rowOf(plan(), 'oat-letter'))).toEqual([
      'Seed box: 40 needed + 4 spares = 44',
      'Seed box: Box: 44 of 11 in × 4 1/2 in',
      'Seed box: Tall liner: 44 of 3 1/2 in × 6 in',
      'Sheets to cut: 44; no plan uses fewer',
      '44 needed − 12 on hand = 32 to buy',
      '1 × pack of 10 at 3.40',
      '1 × pack of 25 at 7.50',
    ]);
  });

  it('tapes joints under load twice, and never joins a strip from two rolls', () => {
    // side 2 15/16; side flaps 2 × 1 1/2 and back flap 3 1/2, each doubled; liner top and bottom 2 × 3 1/2
    const [tape] = plan().rolls;
    expect(tape && toInches(tape.perBox)).toBe(2.9375 + 2 * (1.5 + 1.5 + 3.5) + 7);
    expect(tape?.rolls.rolls).toBe(2); // 44 × 23 in = 1012 in; a roll is 900 in
    expect(rowOf(plan(), 'tape-quarter')).toMatchObject({ need: 2, onHand: 1, short: 1, priceMinor: 420 });
  });

  it('buys nothing that is already there', () => {
    const made = plan((file) => {
      file.papers[1]!.onHandSheets = 100;
      file.papers[0]!.onHandSheets = 100;
    });
    expect(rowOf(made, 'oat-letter')).toMatchObject({ short: 0, packs: [], priceMinor: 0, leftOver: 56 });
  });

  it('adds the cost up to the cent, a favor and in all', () => {
    const { cost } = plan();
    for (const split of [cost.buying, cost.using]) {
      expect(split.shares.reduce((sum, share) => sum + share.minor, 0)).toBe(split.totalMinor);
      expect(split.shares.reduce((sum, share) => sum + share.perFavorMinor, 0)).toBe(split.perFavorMinor);
    }
    // paper 10.90 + tape 4.20 = 15.10 for 40 ordered = 37.75 cents each
    expect(cost).toMatchObject({ favors: 40, buying: { totalMinor: 1510, perFavorMinor: 38 }, unpriced: [] });
  });

  it('cuts each colour of a line from its own paper', () => {
    const made = plan((file) => {
      line(file).count = 20;
      file.events[0]!.lines.push({ ...line(file), id: 'helpers', paperId: 'fern-square', count: 20 });
    });
    expect(made.making).toBe(44);
    expect(made.papers.map(({ paperId, plan: { sheets } }) => [paperId, sheets])).toEqual([
      ['fern-square', 14], // 22 blanks and 22 liners from 12 × 12: two blanks a sheet, liners four to a sheet beside one blank
      ['oat-letter', 22],
    ]);
  });

  it('counts the hand acts of one box and the trimmer’s strokes for all', () => {
    const { lines, hours } = plan();
    expect(lines[0]?.acts).toEqual({
      score: 5,
      slit: 7, // three slits, a corner of two strokes and two snips
      fold: 5,
      glue: 9,
      'close-bottom': 1,
      tuck: 0,
      place: 1,
      fill: 0,
      'tie-bow': 0,
    });
    // three strokes a sheet, two sheets at once: 3 × 22
    expect(hours.stages.find(({ act }) => act === 'cut')).toMatchObject({ times: 66, seconds: 528 });
  });

  it('has no plan for an event that is not there', () => {
    expect(planEvent(saved, 'no-such-event')).toBeNull();
  });
});

describe('what stands in the way of an event', () => {
  const TRIPS: Readonly<Record<(typeof REMARK_CODES)[number], Change>> = {
    'recipe-missing': (file) => (file.recipes = []),
    'style-unknown': (file) => setAll(file.recipes, { styleId: 'no-such-style' }),
    'box-broken': (file) => setAll(file.recipes, { sizesMm: { width: Number.NaN } }),
    'dressing-missing': (file) => (line(file).dressingId = 'no-such-dressing'),
    'piece-does-not-fit': (file) => {
      piece(file).fit = { rule: 'on-panel', panel: 'no-such-panel', revealMm: 3 };
    },
    'paper-missing': (file) => (file.papers = []),
    'part-fits-no-sheet': (file) => setAll(file.papers, { acrossMm: 50 }),
    'part-fits-across-grain': (file) => setAll(file.recipes, { grain: 'upright' }),
    // The blank of the seed box is 11 × 4 1/2 in: on letter it lies only turned.
    'part-fits-print-sideways': (file) => setAll(file.papers, { oneWay: true }),
    'tape-missing': (file) => (file.events[0]!.tapeId = null),
    'glue-missing': (file) => setAll(file.events, { glueId: 'no-such-glue' }),
    'tie-missing': (file) => {
      dressing(file).ties = [{ id: 'bow', name: 'Bow', supplyId: null, wrap: 'cross', bow: null, perBox: 1 }];
    },
    'pull-missing': (file) => {
      setAll(file.recipes, { styleId: 'sleeve-drawer', sizesMm: {}, options: { pull: 'drawer' } });
    },
    'supply-missing': (file) => {
      dressing(file).counted = [{ id: 'seal', name: 'Seal', supplyId: 'no-such-seal', perBox: 1 }];
    },
    'tape-too-wide': (file) => setAll(file.supplies, { widthMm: 25.4 }),
    'longer-than-roll': (file) => setAll(file.supplies, { rollMm: 80 }),
    'rolls-almost-used-up': (file) => {
      // One roll as long as all strips together, and 1 % more.
      const { total } = planEvent(file, saved.events[0]!.id)!.rolls[0]!;
      setAll(file.supplies, { rollMm: (toMm(total) * 101) / 100 });
    },
    'crate-too-small': (file) => {
      file.events[0]!.carry = { widthMm: 60, depthMm: 60, heightMm: 60, wiggleMm: 0, layers: 1 };
    },
    'spoiled-beyond-spares': (file) => {
      const spoiled = { stage: 'guests/fold/box/1', done: 0, spoiled: 5, seconds: 0 };
      file.events[0]!.run = { stages: [spoiled], firstRight: [] };
    },
    'order-below-minimum': (file) => {
      // more than the search for a larger order goes through
      const terms = { discounts: [], shippingMinor: 0, freeShippingFromMinor: null, taxHundredths: 0 };
      file.events[0]!.terms = { ...terms, minimumMinor: 99_999_999 };
    },
    'price-missing': (file) => setAll(file.papers, { packs: [] }),
    'closing-unknown': (file) => {
      setAll(file.recipes, { styleId: 'tray', sizesMm: {} });
      file.events[0]!.spares.offByMm = 0.79375;
    },
    // A fin top laid out true touches under its ridge: half of all errors are the wrong way.
    'too-few-close': (file) => {
      setAll(file.recipes, { styleId: 'fin-top', sizesMm: {} });
      file.events[0]!.spares.offByMm = 0.79375;
    },
  };

  it.each(Object.entries(TRIPS))('tells of %s', (code, change) => {
    const { findings } = plan(change);
    expect(findings.map((finding) => finding.code)).toContain(code);
    for (const finding of findings)
      for (const [name] of `${finding.says} ${finding.remedy}`.matchAll(/(?<=\{)\w+(?=\})/g))
        expect(finding.facts).toHaveProperty(name);
  });

  it('has a case for every remark, and makes none about the demo', () => {
    expect(Object.keys(TRIPS).toSorted()).toEqual(REMARK_CODES.toSorted());
    expect(plan().findings).toEqual([]);
  });
});

describe('spares counted from how true the maker marks', () => {
  const star: Change = (file) =>
    setAll(file.recipes, { styleId: 'star-box', sizesMm: {}, options: {}, dressings: [] });
  const offBy =
    (offByMm: number): Change =>
    (file) => {
      line(file).dressingId = null;
      file.events[0]!.spares = { percent: 50, atLeast: 0, offByMm };
    };

  // The star’s floor has 1/16 in clear over four marks. At 1/32 in it binds where four even errors come to more than two of their largest:
  // the corner of a cube of four sides, 1 in 4! = 24. So 95.8 of 100 close, said as 95. Of 44 at least 40 close in 93.2 of 100
  // batches, of 45 in 97.6 (SciPy 1.17.1, binom.sf). A plain loop tries it besides.
  it('40 stars at 1/32 in take 45, whatever the percentage is', () => {
    const made = plan(star, offBy(0.79375));
    const sway = swayFrom(SEED);
    const sum = () => sway() + sway() + sway() + sway();
    const closed = Array.from({ length: 20_000 }, sum).filter((off) => off <= 3).length;
    expect(Math.abs(closed / 200 - 100 * (1 - 1 / 24))).toBeLessThan(0.5);
    expect(made.lines).toMatchObject([{ ordered: 40, spares: 5, making: 45, closes: 95 }]);
  });

  // Half as far off, all four the wrong way come to 1/16 in: what is clear.
  it('40 stars at 1/64 in take no spares but the minimum', () => {
    expect(plan(star, offBy(0.396875)).lines).toMatchObject([{ spares: 0, closes: 100 }]);
    const least: Change = (file) => Object.assign(file.events[0]!.spares, { atLeast: 2 });
    expect(plan(star, offBy(0.396875), least).lines).toMatchObject([{ spares: 2, making: 42 }]);
  });

  it('an event without an accuracy counts as ever', () => {
    expect(plan(star, (file) => Object.assign(line(file), { dressingId: null })).lines).toMatchObject([
      { spares: 4, closes: null },
    ]);
  });
});

describe('a box that cannot be worked out', () => {
  const sick: Change = (file) => {
    const [seeds] = file.recipes;
    if (!seeds) throw new Error('no recipe');
    // No saved file holds such a size; it stands for whatever a net of the maker’s own may bring that no gate knew of.
    file.recipes.push({
      ...structuredClone(seeds),
      id: 'sick',
      name: 'Sick box',
      sizesMm: { width: Number.NaN },
    });
    file.events[0]?.lines.unshift({ ...structuredClone(line(file)), id: 'sick-line', recipeId: 'sick' });
  };

  it('stops its own line, which is told of; every other line is planned as if it were not there', (context) => {
    const healthy = plan();
    let both: EventPlan | null = null;
    try {
      both = plan(sick);
    } catch {
      // As it once did, with the whole event and all that were asked after it.
    }
    const kept = both?.lines.filter(({ lineId }) => healthy.lines.some((each) => each.lineId === lineId));
    recordFault(context, {
      fault: 'one sick box stops its whole event',
      tries: healthy.lines.length,
      lost: healthy.lines.length - (kept?.length ?? 0),
      goal: 0,
    });
    if (!both) throw new Error('no plan');
    expect(both.lines).toEqual(healthy.lines);
    expect(both.shopping).toEqual(healthy.shopping);
    const [found] = both.findings.filter(({ code }) => code === 'box-broken');
    expect(found).toMatchObject({ severity: 'stop', where: 'sick-line', about: 'Sick box' });
    expect(leftOutOf(both).map(({ where }) => where)).toEqual(['sick-line']);
    expect(leftOutOf(healthy)).toEqual([]);
  });

  it('alone in its event leaves a plan of nothing that says so', () => {
    const made = plan(sick, (file) => file.events[0]?.lines.splice(1));
    expect([made.lines, made.making]).toEqual([[], 0]);
    expect(leftOutOf(made)).toHaveLength(1);
  });
});
