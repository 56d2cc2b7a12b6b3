import { describe, expect, test } from 'vitest';
import { inches, ticks } from '../../../src/core/units/ticks';
import {
  type CuttingTool,
  countAtOnce,
  countOnSheet,
  type Layout,
  type SheetPaper,
  type SheetPart,
  type SheetPlan,
} from '../../../src/core/yield';
import { checkPlan } from '../../../src/core/yield/proof/check-plan';
import { swayFrom } from '../../../src/core/yield/stock/sway';
import { SEED } from '../../seed';
import { bestByEveryMark, type OracleShape } from './every-mark-oracle';
import { BLANK, LETTER, LINER, paperOf, partOf, SQUARE_12, TABLOID, toolOf } from './sheets-at-hand';

describe('how many blanks one sheet gives', () => {
  // Common practice, no source: 11 lies along the 11 of a letter sheet, 8.5 / 4.5 = 1; 12 / 4.5 = 2; 17 / 4.5 = 3.
  test.each([
    ['letter', LETTER, 1, 3],
    ['12 × 12', SQUARE_12, 2, 6],
    ['11 × 17', TABLOID, 3, 7],
    ['12 × 18', paperOf(inches(12), inches(18)), 4, 10],
    ['8 1/2 × 14', paperOf(inches(8, 1, 2), inches(14)), 1, 4],
    ['A4', paperOf(ticks(210 * 320), ticks(297 * 320)), 1, 3],
  ] as const)('%s gives the known number of box blanks and of liners', (_, paper, blanks, liners) => {
    expect(countOnSheet(BLANK, paper, toolOf()).count).toBe(blanks);
    expect(countOnSheet(LINER, paper, toolOf()).count).toBe(liners);
  });

  test('grain that must run up the box turns the count from 3 to 2 on a sheet with the grain across', () => {
    // 11 × 17: 17 / 4.5 = 3 with the 11 across; turned, 17 / 11 = 1 row of 11 / 4.5 = 2.
    const grained = { ...TABLOID, grain: 'across' as const };
    expect(countOnSheet({ ...BLANK, grain: 'across' }, grained, toolOf()).count).toBe(3);
    expect(countOnSheet({ ...BLANK, grain: 'up' }, grained, toolOf()).count).toBe(2);
  });

  test('a blank bigger than the sheet gives none and no layout', () => {
    expect(countOnSheet(partOf('big', inches(13), inches(1), 1), SQUARE_12, toolOf())).toEqual({
      count: 0,
      layout: null,
    });
  });

  test('a trimmer that reaches 9 in cannot cut a 12 in sheet at all, yet takes a blank of the whole sheet', () => {
    const short = toolOf({ longestCut: inches(9) });
    expect(countOnSheet(LINER, SQUARE_12, short).count).toBe(0);
    expect(countOnSheet(partOf('all', inches(12), inches(12), 1), SQUARE_12, short).count).toBe(1);
  });
});

/** A random case in whole marks: small sheets so that the oracle stays quick, everything that can bind switched on now and then. */
function caseFrom(sway: () => number): {
  part: SheetPart;
  paper: SheetPaper;
  tool: CuttingTool;
  unit: number;
} {
  const whole = (least: number, most: number): number => least + Math.floor(sway() * (most - least + 1));
  const unit = [127, 254, 508, 160][whole(0, 3)]!;
  const marks = (count: number) => ticks(count * unit);
  const margin = () => marks(sway() < 0.3 ? whole(0, 2) : 0);
  const paper = paperOf(marks(whole(12, 44)), marks(whole(12, 44)), {
    grain: sway() < 0.5 ? 'across' : 'none',
    squaring: { left: margin(), right: margin(), near: margin(), far: margin() },
  });
  const part = partOf('part', marks(whole(2, 20)), marks(whole(2, 20)), 1, {
    grain: (['free', 'across', 'up'] as const)[whole(0, 2)]!,
  });
  const kerf = marks(sway() < 0.2 ? whole(1, 2) : 0);
  const longestCut = sway() < 0.3 ? marks(whole(10, 46)) : null;
  return { part, paper, tool: toolOf({ kerf, longestCut }), unit };
}

function countByEveryMark({ part, paper, tool, unit }: ReturnType<typeof caseFrom>): number {
  const { left, right, near, far } = paper.squaring;
  const [across, up] = [(paper.across - left - right) / unit, (paper.up - near - far) / unit];
  const [a, b] = [part.across / unit, part.up / unit];
  const lies: OracleShape[] = [];
  const free = part.grain === 'free' || paper.grain === 'none';
  if (free || part.grain === paper.grain) lies.push({ across: a, up: b, worth: 1 });
  if (free || part.grain !== paper.grain) lies.push({ across: b, up: a, worth: 1 });
  const reach = tool.longestCut === null ? Number.POSITIVE_INFINITY : tool.longestCut / unit;
  const uprightFirst =
    (left + right === 0 || paper.up / unit <= reach) && (near + far === 0 || across <= reach);
  const levelFirst =
    (near + far === 0 || paper.across / unit <= reach) && (left + right === 0 || up <= reach);
  if (!uprightFirst && !levelFirst) return 0;
  return bestByEveryMark({ across, up, kerf: tool.kerf / unit, reach }, lies);
}

const oneSheet = (paper: SheetPaper, layout: Layout): SheetPlan => ({
  paper: paper.id,
  sheets: 1,
  lowerBound: 1,
  proven: true,
  layouts: [layout],
  proof: null,
  unplaced: [],
});

test('10,000 random cases count as a search over every mark does, and each layout can be cut', () => {
  const sway = swayFrom(SEED);
  for (let round = 0; round < 10_000; round++) {
    const random = caseFrom(sway);
    const { part, paper, tool } = random;
    const { count, layout } = countOnSheet(part, paper, tool);
    if (count !== countByEveryMark(random)) expect.fail(`${count} in ${JSON.stringify(random)}`);
    if (layout === null) continue;
    expect(checkPlan(oneSheet(paper, layout), [{ ...part, count }], paper, tool)).toEqual([]);
  }
}, 60_000);

test('what is said at once about a press sheet can be cut, is never too many, and is the most where it says so', () => {
  const sway = swayFrom(SEED);
  const seen = { exact: 0, fewer: 0 };
  for (let round = 0; round < 24; round++) {
    const side = () => ticks(Math.round((0.9 + 2 * sway()) * 8128));
    const part = partOf('tag', side(), side(), 1);
    const paper = paperOf(inches(19), inches(25));
    const tool = toolOf({ longestCut: round % 3 === 0 ? inches(20) : null, kerf: ticks(round % 4) });
    const { count, layout, exact } = countAtOnce(part, paper, tool);
    const most = countOnSheet(part, paper, tool).count;
    expect(count).toBeLessThanOrEqual(most);
    if (exact) expect(count).toBe(most);
    seen.exact += exact ? 1 : 0;
    seen.fewer += count < most ? 1 : 0;
    if (layout) expect(checkPlan(oneSheet(paper, layout), [{ ...part, count }], paper, tool)).toEqual([]);
  }
  expect(seen.exact).toBeGreaterThan(0);
  expect(seen.fewer).toBeGreaterThan(0);
});
