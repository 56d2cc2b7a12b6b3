import { describe, expect, test } from 'vitest';
import { inches, ticks } from '../../../src/core/units/ticks';
import {
  type CutTree,
  type Layout,
  planSheets,
  type SheetPaper,
  type SheetPlan,
} from '../../../src/core/yield';
import { checkBound } from '../../../src/core/yield/proof/check-bound';
import { checkPlan } from '../../../src/core/yield/proof/check-plan';
import { mostPoints } from '../../../src/core/yield/proof/most-points';
import { countStages } from '../../../src/core/yield/proof/replay-cuts';
import { swayFrom } from '../../../src/core/yield/stock/sway';
import { SEED } from '../../seed';
import { bestByEveryMark } from './every-mark-oracle';
import { BLANK, LINER, paperOf, partOf, TABLOID, toolOf } from './sheets-at-hand';

const BOX = [BLANK, LINER];
const grained: SheetPaper = { ...TABLOID, grain: 'across' };
const parts = [{ ...BLANK, grain: 'across' as const }, LINER];
const sound = planSheets(parts, grained, toolOf());

/** The sound plan with its first layout changed. */
const breakFirst = (change: (layout: Layout) => Layout): SheetPlan => ({
  ...sound,
  layouts: sound.layouts.map((layout, i) => (i === 0 ? change(layout) : layout)),
});
const faultsOf = (plan: SheetPlan, tool = toolOf(), paper = grained): string =>
  checkPlan(plan, parts, paper, tool).join('; ');

const firstCut = (tree: CutTree, shift: number): CutTree =>
  tree.kind === 'cut' ? { ...tree, at: ticks(tree.at + shift) } : tree;

describe('a plan that cannot be cut is refused', () => {
  test('the sound plan passes', () => {
    expect(faultsOf(sound)).toBe('');
  });

  test.each<[string, SheetPlan, string]>([
    [
      'a part moved over its neighbour',
      breakFirst((l) => ({
        ...l,
        parts: l.parts.map((p, i) => (i === 0 ? { ...p, y: ticks(p.y + 999) } : p)),
      })),
      'overlap',
    ],
    [
      'a part moved off the sheet',
      breakFirst((l) => ({ ...l, parts: l.parts.map((p, i) => (i === 0 ? { ...p, x: ticks(-1) } : p)) })),
      'off the squared sheet',
    ],
    [
      'one part fewer than asked',
      breakFirst((l) => ({ ...l, parts: l.parts.slice(1) })),
      'the cuts do not give the parts',
    ],
    [
      'a cut one tick off',
      breakFirst((l) => ({ ...l, tree: firstCut(l.tree, 1) })),
      'the cuts do not give the parts',
    ],
    ['a cut beyond the edge', breakFirst((l) => ({ ...l, tree: firstCut(l.tree, inches(40)) })), 'outside'],
    ['a layout cut half a time', breakFirst((l) => ({ ...l, sheets: 0.5 })), 'times'],
    ['a layout dropped', { ...sound, layouts: sound.layouts.slice(1) }, 'layouts use'],
    ['a count of sheets below the layouts', { ...sound, sheets: sound.sheets - 1 }, 'layouts use'],
    ['a proof claimed and not had', { ...sound, lowerBound: sound.lowerBound - 1 }, 'proven'],
    ['a bound above the plan', { ...sound, lowerBound: sound.sheets + 1 }, 'bound is above'],
    ['a part called too big that fits', { ...sound, unplaced: ['blank'] }, 'called unplaced'],
    [
      'a part nobody asked for',
      breakFirst((l) => ({ ...l, parts: l.parts.map((p) => ({ ...p, part: 'stranger' })) })),
      'unknown part',
    ],
    ['an offcut drawn over a part', breakFirst((l) => ({ ...l, offcuts: [{ ...l.parts[0]! }] })), 'overlap'],
  ])('%s', (_, plan, fault) => {
    expect(faultsOf(plan)).toContain(fault);
  });

  test('a part lying across its grain is seen when the paper turns', () => {
    expect(faultsOf(sound, toolOf(), { ...TABLOID, grain: 'up' })).toContain('against its grain');
  });

  test('a cut longer than the tool is seen', () => {
    expect(faultsOf(sound, toolOf({ longestCut: inches(10) }))).toContain('tool reaches');
  });

  test('a squaring cut longer than the tool is seen', () => {
    const square = { ...grained, squaring: { ...grained.squaring, left: ticks(1), near: ticks(1) } };
    expect(faultsOf(sound, toolOf({ longestCut: inches(10) }), square)).toContain('squaring cut');
  });

  test('turning the sheet too often is seen; trimming one part does not count as a turn', () => {
    const part: CutTree = { kind: 'part', part: 'a', turned: false };
    const cut = (way: 'upright' | 'level', first: CutTree, second: CutTree): CutTree => ({
      kind: 'cut',
      way,
      at: ticks(1),
      first,
      second,
    });
    const trimmed = cut('level', cut('upright', part, { kind: 'offcut' }), { kind: 'offcut' });
    expect(countStages(trimmed)).toBe(0);
    expect(countStages(cut('upright', trimmed, part))).toBe(1);
    expect(countStages(cut('level', cut('upright', part, part), part))).toBe(2);
    expect(countStages(cut('upright', cut('level', cut('upright', part, part), part), part))).toBe(3);
  });
});

describe('a bound that does not follow is refused', () => {
  const proof = sound.proof!;

  test('the sound proof passes', () => {
    expect(checkBound(proof, parts, grained, toolOf())).toBeNull();
  });

  test.each([
    ['one sheet more than the points show', { ...proof, sheets: proof.sheets + 1 }],
    ['a sheet said to hold one point less', { ...proof, most: proof.most - 1 }],
    ['points taken from the parts', { ...proof, points: { ...proof.points, blank: 0 } }],
    [
      'points given to a part that a sheet then overflows with',
      { ...proof, points: { ...proof.points, liner: 1000 } },
    ],
  ])('%s', (_, broken) => {
    expect(checkBound(broken, parts, grained, toolOf())).not.toBeNull();
  });

  test('points that are no whole numbers are a slip of ours, not a proof', () => {
    expect(() => checkBound({ ...proof, points: { blank: 0.5 } }, parts, grained, toolOf())).toThrow(
      RangeError,
    );
  });
});

test('the checker counts points as arithmetic does: 12 for a blank, 3 for a liner, 24 on 12 × 12', () => {
  // (2,0) 24; (1,4) 12 + 12 = 24; (0,6) 18.
  const paper = paperOf(inches(12), inches(12));
  expect(mostPoints({ blank: 12, liner: 3 }, BOX, paper, toolOf())).toBe(24);
});

test('a pattern of three stages is worth more than any of two, and the checker knows both', () => {
  // Sheet 5 × 3; a 1 × 3 (5 points), b 4 × 1 (10), c 2 × 2 (12), none turned. Upright, level, upright: a, then b over two c = 39.
  // Two stages: upright first a + three b = 35 or a + two c = 29; level first b, then two c = 34.
  const shapes = (
    [
      ['a', 1, 3],
      ['b', 4, 1],
      ['c', 2, 2],
    ] as const
  ).map(([id, across, up]) => partOf(id, ticks(across * 128), ticks(up * 128), 1, { grain: 'across' }));
  const paper = paperOf(ticks(5 * 128), ticks(3 * 128), { grain: 'across' });
  const points = { a: 5, b: 10, c: 12 };
  expect(mostPoints(points, shapes, paper, toolOf({ stages: 2 }))).toBe(35);
  expect(mostPoints(points, shapes, paper, toolOf({ stages: 3 }))).toBe(39);
  expect(mostPoints(points, shapes, paper, toolOf())).toBe(39);
});

test('a thousand random sheets hold as many points by the checker as by a search over every mark', () => {
  const sway = swayFrom(SEED);
  const whole = (least: number, most: number): number => least + Math.floor(sway() * (most - least + 1));
  for (let round = 0; round < 1000; round++) {
    const kerf = sway() < 0.2 ? 1 : 0;
    const reach = sway() < 0.3 ? whole(8, 26) : null;
    const [across, up] = [whole(8, 26), whole(8, 26)];
    const shapes = Array.from({ length: whole(1, 5) }, (_, i) => ({
      part: partOf(String(i), ticks(whole(2, 14)), ticks(whole(2, 14)), 1, { grain: 'up' }),
      worth: whole(1, 50),
    }));
    const paper = paperOf(ticks(across), ticks(up), { grain: 'up' });
    const tool = toolOf({ kerf: ticks(kerf), longestCut: reach === null ? null : ticks(reach) });
    const points = Object.fromEntries(shapes.map(({ part, worth }) => [part.id, worth]));
    const parts = shapes.map(({ part }) => part);
    const lies = shapes.map(({ part, worth }) => ({ across: part.across, up: part.up, worth }));
    const sheet = { across, up, kerf, reach: reach ?? Number.POSITIVE_INFINITY };
    expect(mostPoints(points, parts, paper, tool)).toBe(bestByEveryMark(sheet, lies));
  }
});
