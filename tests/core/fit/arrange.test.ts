import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrangeContents } from '../../../src/core/fit/arrange';
import { checkArrangement } from '../../../src/core/fit/check-arrangement';
import { OVER_FOUR, OVER_THREE } from '../../../src/core/fit/sphere-layers';
import type { Contents, Item, ItemShape } from '../../../src/core/rows/contents';
import { SEED } from '../../seed';

const thing = (size: ItemShape, count: number, more: Partial<Item> = {}): Item => ({
  id: `${size.shape}-${count}`,
  name: size.shape,
  size,
  count,
  wrapMm: 0,
  aboveRimMm: 0,
  thisWayUp: false,
  fragile: false,
  care: [],
  gramsEach: null,
  ...more,
});
const contentsOf = (...items: Item[]): Contents => ({ items, clearanceMm: null });

describe('what goes inside', () => {
  it('twelve truffles of 28 mm lie 4 × 3 in one layer, 112 × 84 × 28 mm', () => {
    const ways = arrangeContents(contentsOf(thing({ shape: 'sphere', diameterMm: 28 }, 12)));
    expect(ways.map(({ size }) => size)).toContainEqual([112, 84, 28]);
  });

  it('spheres in hollows rise by 0.70711 and 0.81650 of a diameter', () => {
    // Derived: centres of four touching spheres and one above are a square pyramid with edges D; three and one a tetrahedron.
    expect(OVER_FOUR).toBeCloseTo(Math.sin(Math.PI / 4), 5);
    expect(OVER_THREE).toBeCloseTo(0.8165, 4);
    const ways = arrangeContents(contentsOf(thing({ shape: 'sphere', diameterMm: 20 }, 5)));
    expect(ways.some(({ size }) => size[0] === 40 && Math.abs(size[2] - 20 * (1 + OVER_FOUR)) < 1e-9)).toBe(
      true,
    );
  });

  it('a candle that stands 20 mm above the rim is counted only up to it, and never laid down', () => {
    const candle = thing({ shape: 'cylinder', diameterMm: 40, heightMm: 60, lies: 'either' }, 1, {
      aboveRimMm: 20,
      thisWayUp: true,
    });
    expect(arrangeContents(contentsOf(candle)).map(({ size }) => size)).toEqual([[40, 40, 40]]);
  });

  it('nothing overlaps or sticks out, whatever is put together', () => {
    const mm = fc.integer({ min: 5, max: 80 });
    const shape: fc.Arbitrary<ItemShape> = fc.oneof(
      fc.record({ shape: fc.constant('cuboid' as const), widthMm: mm, depthMm: mm, heightMm: mm }),
      fc.record({ shape: fc.constant('sphere' as const), diameterMm: mm }),
      fc.record({
        shape: fc.constant('cylinder' as const),
        diameterMm: mm,
        heightMm: mm,
        lies: fc.constant('either' as const),
      }),
    );
    const item = fc.tuple(shape, fc.integer({ min: 1, max: 9 })).map(([size, count]) => thing(size, count));
    fc.assert(
      fc.property(fc.array(item, { minLength: 1, maxLength: 3 }), (items) => {
        const ways = arrangeContents(contentsOf(...items.map((one, i) => ({ ...one, id: `thing-${i}` }))));
        expect(ways.length).toBeGreaterThan(0);
        for (const way of ways) {
          expect(checkArrangement(way)).toEqual([]);
          expect(way.placed).toHaveLength(items.reduce((sum, { count }) => sum + count, 0));
        }
      }),
      { seed: SEED, numRuns: 150 },
    );
  });

  it('a long flat packet also lies across the corners of a square floor shorter than itself', () => {
    // Hand-worked: 180 × 8 mm turned 45° throws a shadow of (180 + 8) / √2 = 132.936 mm both ways; Wetzel's condition gives the same least floor.
    const ways = arrangeContents(
      contentsOf(thing({ shape: 'packet', widthMm: 180, depthMm: 8, heightMm: 2 }, 3)),
    );
    const turned = ways.find(({ placed }) => placed.some((one) => 'turnDeg' in one && one.turnDeg !== 0));
    expect(turned?.size[0]).toBeCloseTo(132.936, 3);
    expect(turned?.size[1]).toBeCloseTo(132.936, 3);
    expect(turned?.size[2]).toBe(6);
    expect(turned && checkArrangement(turned)).toEqual([]);
    // A gift card (85.7 × 54) gains nothing: (85.7 + 54) / √2 = 98.8 is longer than the card.
    const card = arrangeContents(
      contentsOf(thing({ shape: 'packet', widthMm: 85.7, depthMm: 54, heightMm: 0.9 }, 1)),
    );
    expect(card.every(({ placed }) => placed.every((one) => 'turnDeg' in one && one.turnDeg === 0))).toBe(
      true,
    );
  });

  it('nothing rests on tender things, and more kinds than eight still come out sound', () => {
    const tender = arrangeContents(
      contentsOf(thing({ shape: 'sphere', diameterMm: 28 }, 12, { fragile: true })),
    );
    expect(new Set(tender.flatMap(({ placed }) => placed.map(({ at }) => at[2])))).toEqual(new Set([14]));
    const kinds = Array.from({ length: 11 }, (_, i) =>
      thing({ shape: 'cuboid', widthMm: 10 + i, depthMm: 12, heightMm: 30 - i }, 1, { id: `kind-${i}` }),
    );
    const ways = arrangeContents(contentsOf(...kinds));
    expect(ways.length).toBeGreaterThan(0);
    for (const way of ways) {
      expect(way.exact).toBe(false);
      expect(way.placed).toHaveLength(11);
      expect(checkArrangement(way)).toEqual([]);
    }
  });

  it('the check sees a turned packet that sticks out, and two that cross', () => {
    const packet = { item: 'packet', shape: 'cuboid' as const, size: [40, 4, 2] as const };
    const [size, exact, pattern] = [[32, 32, 2] as const, false, ''];
    const fits = { ...packet, at: [-4, 14, 0] as const, turnDeg: 45 }; // middle at 16, 16; shadow 44 / √2 = 31.1
    expect(checkArrangement({ pattern, exact, size, placed: [fits] })).toEqual([]);
    expect(checkArrangement({ pattern, exact, size, placed: [{ ...fits, turnDeg: 0 }] })).toContain(
      'packet 0 leaves the box',
    );
    expect(
      checkArrangement({ pattern, exact, size, placed: [fits, { ...fits, turnDeg: -45 }] }),
    ).toHaveLength(1);
    const beside = { ...fits, at: [-8, 18, 0] as const }; // 4 over and 4 up along the turned short side: 5.7 apart, 4 thick
    expect(checkArrangement({ pattern, exact, size: [40, 40, 2], placed: [fits, beside] })).toEqual([
      'packet 1 leaves the box',
    ]);
  });

  it('the check sees an overlap, and a thing outside', () => {
    const ball = { item: 'ball', shape: 'sphere' as const, diameter: 10 };
    const size = [20, 10, 10] as const;
    const sound = {
      pattern: '',
      exact: false,
      size,
      placed: [
        { ...ball, at: [5, 5, 5] as const },
        { ...ball, at: [15, 5, 5] as const },
      ],
    };
    expect(checkArrangement(sound)).toEqual([]);
    expect(
      checkArrangement({
        ...sound,
        placed: [
          { ...ball, at: [5, 5, 5] },
          { ...ball, at: [14, 5, 5] },
        ],
      }),
    ).toHaveLength(1);
    expect(checkArrangement({ ...sound, placed: [{ ...ball, at: [5, 5, 6] }] })).toHaveLength(1);
  });
});

it('what stands out above the rim has nothing standing on it', () => {
  // Four packets 114.3 mm tall, 50.8 of it above the rim: one level of them, 63.5 mm of the room.
  const packet = { shape: 'packet', widthMm: 82.55, depthMm: 6.35, heightMm: 114.3 } as const;
  const ways = arrangeContents(contentsOf(thing(packet, 4, { aboveRimMm: 50.8, thisWayUp: true })));
  expect(ways.length).toBeGreaterThan(0);
  for (const { placed, size } of ways) {
    expect(placed.every(({ at }) => at[2] === 0)).toBe(true);
    expect(size[2]).toBeCloseTo(63.5, 9);
  }
});
