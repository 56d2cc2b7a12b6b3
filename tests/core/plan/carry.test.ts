import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type FavorEvent, workbookFile } from '../../../shared/workbook';
import { planEvent } from '../../../src/core/plan';
import { mostInLayer } from '../../../src/core/plan/carry/pack-layer';
import { carryingMessages } from '../../../src/ui/words/english/carrying';

const file = workbookFile.parse(JSON.parse(readFileSync('demo-data/seed-swap-supper.json', 'utf8')));

/** The supper's 40 boxes and 4 spares in crates of so many inches: each box is 3.511 × 1.511 × 3.011 in outside, its card .011 in. */
function carried(
  [width, depth, height]: readonly [number, number, number],
  more: Partial<FavorEvent['carry']> = {},
) {
  const carry = {
    widthMm: width * 25.4,
    depthMm: depth * 25.4,
    heightMm: height * 25.4,
    wiggleMm: 0,
    layers: 1,
    ...more,
  };
  const [event] = structuredClone(file.events);
  const { carry: plan, findings } = planEvent({ ...file, events: [{ ...event!, carry }] }, event!.id)!;
  return { line: plan?.lines[0], crates: plan?.crates, codes: findings.map(({ code }) => code) };
}

describe('finished favors in crates', () => {
  it('stand in two layers of eight: 44 are three crates, twelve in the last', () => {
    // 14 / 3.511 = 3 would be too few: 14.2 / 3.511 = 4 by 3.2 / 1.511 = 2; 6.2 / 3.011 = 2 layers. 2 × 16 + 12 = 44. The floor holds 45.44 / 5.31 = 8 at most.
    const { line, crates, codes } = carried([14.2, 3.2, 6.2], { layers: 2 });
    expect(line).toMatchObject({
      favors: 44,
      lies: 'upright',
      layers: 2,
      perCrate: 16,
      crates: 3,
      inLast: 12,
      fewest: true,
    });
    expect(line?.layer).toHaveLength(8);
    expect([crates, codes]).toEqual([3, []]);
  });

  it('are stacked no higher than the maker says, however high the crate is', () => {
    expect(carried([14.2, 3.2, 30]).line).toMatchObject({ layers: 1, perCrate: 8, crates: 6, inLast: 4 });
  });

  it('lie down only where that is allowed: four on their backs in a crate 1.6 in high', () => {
    // 14.2 / 3.511 = 4 by 3.2 / 3.011 = 1, 1.511 in high: 44 / 4 = 11 crates.
    expect(carried([14.2, 3.2, 1.6])).toMatchObject({
      line: undefined,
      crates: 0,
      codes: ['crate-too-small'],
    });
    expect(carried([14.2, 3.2, 1.6], { mayLie: true }).line).toMatchObject({
      lies: 'on-back',
      perCrate: 4,
      crates: 11,
    });
  });

  it('are not called too large for a crate where none is made', () => {
    const empty = structuredClone(file);
    const [event] = empty.events;
    event!.carry = { widthMm: 400, depthMm: 400, heightMm: 400, wiggleMm: 0, layers: 1 };
    Object.assign(event!.spares, { percent: 0, atLeast: 0, byAct: [], practice: 0 });
    for (const line of event!.lines) line.count = 0;
    const { carry, findings } = planEvent(empty, event!.id)!;
    expect(carry).toMatchObject({ lines: [], crates: 0 });
    expect(findings.map(({ code }) => code)).not.toContain('crate-too-small');
  });

  it('are the fewest only as they are packed: five squares of 100 fit a square of 271, one of them tilted', () => {
    // Göbel (1979), from memory: side 2 + 1/√2 = 2.7071 holds five unit squares; square to the sides it holds four.
    expect(mostInLayer({ across: 271, up: 271 }, { across: 100, up: 100 })).toBe(4);
    const said = carryingMessages.line({ ...carried([14.2, 3.2, 6.2], { layers: 2 }).line!, fewest: true });
    expect(said).toMatch(/Fewest possible with all of them the same way up and square to the crate\.$/);
  });

  it('keep their gap between one another, and none at the walls', () => {
    // Two across: 2 × 3.511 = 7.022 in, and a gap of 1/8 in is 7.147: 7.14 in is too narrow, 7.16 is not.
    const across = (width: number) => carried([width, 1.6, 4], { wiggleMm: 3.175 }).line?.perCrate;
    expect([across(7.14), across(7.16)]).toEqual([1, 2]);
  });
});
