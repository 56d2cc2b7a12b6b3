import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readWorkbook } from '../../../shared/read-workbook';
import type { WorkbookFile } from '../../../shared/workbook';
import { type EventMix, mixEvent, planEvent } from '../../../src/core/plan';
import { loadWholeSolver } from '../../general-solver';

const solveWhole = await loadWholeSolver();
const read = readWorkbook(readFileSync('demo-data/lantern-evening.json', 'utf8'));
if (!read.ok) throw new Error('the demo file is not read');
const rows = read.file;
const event = rows.events.find(({ id }) => id === 'folding-class')!;
const mixes = [...mixEvent(rows, event, { solveWhole })];
const mixOf = (way: EventMix['way']) => mixes.find((mix) => mix.way === way)!;

/** The event with a mix in use, as the page saves it. */
const using = (mix: EventMix): WorkbookFile => ({
  ...rows,
  events: [{ ...event, lines: event.lines.map((line) => ({ ...line, mix: [...mix.mixOf[line.id]!] })) }],
});

test('a wider choice is never dearer', () => {
  const prices = mixes.map(({ plan }) => plan!.priceMinor);
  expect(prices).toEqual([...prices].sort((a, b) => b - a));
  expect(mixes.every(({ plan }) => plan!.proven)).toBe(true);
});

test('the plan of an event with a mix in use takes the sheets and the money that the mix said', () => {
  for (const mix of mixes) {
    const plan = planEvent(using(mix), event.id)!;
    const sheets = plan.papers.map(({ paperId, plan }) => `${plan.sheets} ${paperId}`).sort();
    expect(sheets).toEqual(mix.plan!.cuts.map(({ format, plan }) => `${plan.sheets} ${format}`).sort());
    const paid = plan.shopping.filter(({ kind }) => kind === 'paper').reduce((sum, row) => sum + row.priceMinor!, 0); // biome-ignore format: one row
    expect(paid).toBe(mix.plan!.priceMinor);
  }
});

test('boxes that came to the event after the mix are cut from its last paper, and those that left it are left out', () => {
  const mixed = using(mixOf('any'));
  const withCount = (count: number) => ({ ...mixed, events: mixed.events.map((each) => ({ ...each, lines: each.lines.map((line) => ({ ...line, count })) })) }); // biome-ignore format: one row
  for (const count of [1, 4]) {
    const plan = planEvent(withCount(count), event.id)!;
    const boxes = plan.papers.flatMap(({ parts }) => parts).filter(({ kind }) => kind === 'box');
    expect(boxes.reduce((sum, part) => sum + part.count, 0)).toBe(plan.making);
  }
});

test('a paper that is gone leaves its boxes to the line’s own', () => {
  const mixed = using(mixOf('any'));
  const gone = { ...mixed, papers: mixed.papers.filter(({ id }) => id === 'ember-tabloid') };
  const plan = planEvent(gone, event.id)!;
  expect(plan.papers.map(({ paperId }) => paperId)).toEqual(['ember-tabloid']);
});
