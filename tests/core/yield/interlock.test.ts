import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type At, areaOf, fewConvexParts, type Ring } from '../../../src/core/plane';
import { inches, ticks } from '../../../src/core/units';
import { countOnSheet } from '../../../src/core/yield';
import { checkNest, insidesMeet } from '../../../src/core/yield/interlock/check-nest';
import { laidRing, nestOnSheet } from '../../../src/core/yield/interlock/nest-sheet';
import { liesOf, turnRing } from '../../../src/core/yield/interlock/outline';
import { overlapRows, overlapsAt } from '../../../src/core/yield/interlock/overlap-rows';
import { SEED } from '../../seed';
import { cellsOf, crossTray, plainSheet, tuckBox } from './interlock-shapes';
import { mostCopies } from './nest-oracle';

const tool = { longestCut: null, kerf: ticks(0), stack: 1, stages: 'free' as const };

function nest(ring: Ring, paper = plainSheet(8.5, 11), gap = ticks(0)) {
  const { across, up } = turnRing(ring, 0);
  const box = { id: 'box', across: ticks(across), up: ticks(up), grain: 'free' as const };
  const boxed = countOnSheet(box, paper, tool);
  return nestOnSheet({ id: 'box', ring, grain: 'free' }, paper, boxed.layout, { gap, rounds: 10 });
}

const edges = (across: number, up: number) => ({ left: 0, near: 0, right: across, far: up });
const square = (x: number, y: number, size: number): Ring => [
  [x, y],
  [x + size, y],
  [x + size, y + size],
  [x, y + size],
];

/**
 * Right-angled outlines whose corners all lie on cells: pushed left and near until they touch, they lie on whole cells again, so the most on
 * cells is the most anywhere. Counts by `mostCopies`, which tries every way. Shapes as in the trials behind this room, tuck boxes in rough outline.
 */
describe('as many as can lie on a sheet at all, where that is at most eight', () => {
  const cases: [string, Ring, number, number, number][] = [
    ['cross tray 1 1/2 × 1 1/2 × 1', crossTray(1.5, 1.5, 1), 0.5, 8.5, 11],
    ['cross tray 2 × 2 × 1', crossTray(2, 2, 1), 1, 8.5, 11],
    ['cross tray 3 × 2 × 1', crossTray(3, 2, 1), 1, 8.5, 11],
    ['cross tray 3 × 2 × 1', crossTray(3, 2, 1), 1, 12, 12],
    ['tuck box 1 × 1 × 2', tuckBox(1, 1, 2), 0.5, 8.5, 11],
    ['tuck box 1 1/2 × 1 × 2 1/2', tuckBox(1.5, 1, 2.5), 0.5, 8.5, 11],
    ['tuck box 2 × 1 × 3', tuckBox(2, 1, 3), 0.5, 8.5, 11],
    ['tuck box 2 × 1 × 3', tuckBox(2, 1, 3), 0.5, 12, 12],
  ];
  test.each(cases)('%s', (_, ring, cell, across, up) => {
    const found = nest(ring, plainSheet(across, up));
    expect(found.parts.length).toBe(mostCopies(cellsOf(ring, cell), Math.floor(across / cell), Math.floor(up / cell))); // biome-ignore format: one sum
    expect(found.parts.length).toBeGreaterThanOrEqual(found.boxed);
  });
});

test('a box with cut corners lies into its neighbour: twelve crosses of five squares on a letter sheet, where a trimmer cuts six', () => {
  const found = nest(crossTray(1, 1, 1));
  expect(found.boxed).toBe(6);
  expect(found.parts.length).toBe(12);
});

test('the grain is kept: no quarter turn of a part whose grain is fixed', () => {
  const paper = plainSheet(8.5, 11, 'up');
  const found = nestOnSheet({ id: 'box', ring: tuckBox(2, 1, 3), grain: 'up' }, paper, null, {
    rounds: 2,
  });
  expect(found.parts.length).toBeGreaterThan(0);
  expect(found.parts.every(({ quarter }) => quarter % 2 === 0)).toBe(true);
});

test('a gap is kept between all outlines', () => {
  const gap = inches(0, 1, 8);
  const ring = crossTray(1.5, 1.5, 1);
  const found = nest(ring, plainSheet(12, 12), gap);
  const laid = found.parts.map((part, at) => ({ name: `${at}`, ring: laidRing(ring, part) }));
  expect(laid.length).toBeGreaterThan(1);
  expect(checkNest(laid, edges(12 * 8128, 12 * 8128), gap)).toEqual([]);
});

describe('the checker of nests', () => {
  test('lets outlines touch, and share a cut', () => {
    const laid = [square(0, 0, 2), square(2, 0, 2), square(2, 2, 2)].map((ring, at) => ({
      name: `${at}`,
      ring,
    }));
    expect(checkNest(laid, edges(4, 4))).toEqual([]);
  });
  test.each<[string, Ring, Ring, string]>([
    ['overlap', square(0, 0, 3), square(2, 2, 3), '0 overlaps 1'],
    ['lie on one another', square(0, 0, 3), square(0, 0, 3), '0 overlaps 1'],
    ['lie one inside the other', square(0, 0, 6), square(2, 2, 1), '0 overlaps 1'],
    ['overlap along common edges', square(0, 0, 4), square(0, 1, 2), '0 overlaps 1'],
    ['reach off the sheet', square(0, 0, 2), square(9, 0, 2), '1 reaches off the sheet'],
  ])('trips where outlines %s', (_, a, b, fault) => {
    expect(checkNest([{ name: '0', ring: a }, { name: '1', ring: b }], edges(10, 10))).toEqual([fault]); // biome-ignore format: one row
  });
  test('trips where the gap is not kept', () => {
    const laid = [{ name: '0', ring: square(0, 0, 2) }, { name: '1', ring: square(3, 0, 2) }]; // biome-ignore format: one row
    expect(checkNest(laid, edges(9, 9), 1)).toEqual([]);
    expect(checkNest(laid, edges(9, 9), 2)).toEqual(['0 lies nearer than the gap to 1']);
  });
});

/** A star about a middle point: simple, seldom convex, no right angles. */
const star = fc
  .array(fc.integer({ min: 3, max: 30 }), { minLength: 3, maxLength: 9 })
  .map((reach) =>
    reach.map((r, at) => {
      const turn = (2 * Math.PI * at) / reach.length;
      return [Math.round(r * Math.cos(turn)), Math.round(r * Math.sin(turn))] as At;
    }),
  )
  .filter((ring) => areaOf(ring) > 0);

test('convex pieces have together the area of the outline they come from', () => {
  fc.assert(
    fc.property(star, (ring) => {
      const pieces = fewConvexParts(ring);
      expect(pieces.reduce((sum, piece) => sum + areaOf(piece), 0)).toBe(areaOf(ring));
    }),
    { seed: SEED, numRuns: 200 },
  );
});

test('the tables of overlaps say what edges against edges say', () => {
  const offset = fc.integer({ min: -70, max: 70 });
  fc.assert(
    fc.property(
      star,
      star,
      fc.array(fc.tuple(offset, offset), { minLength: 12, maxLength: 12 }),
      (a, b, offsets) => {
        const table = overlapRows(fewConvexParts(a), fewConvexParts(b), 1, 0);
        for (const [x, y] of offsets)
        expect(overlapsAt(table, x, y)).toBe(insidesMeet(a, b.map(([cx, cy]): At => [cx + x, cy + y]))); // biome-ignore format: one sum
      },
    ),
    { seed: SEED, numRuns: 200 },
  );
});

test('turns that change nothing are one way to lie', () => {
  expect(liesOf(square(0, 0, 4), [0, 1, 2, 3]).length).toBe(1);
  expect(liesOf(crossTray(2, 1, 1), [0, 1, 2, 3]).length).toBe(2);
  expect(liesOf(tuckBox(2, 1, 3), [0, 1, 2, 3]).length).toBe(4);
});
