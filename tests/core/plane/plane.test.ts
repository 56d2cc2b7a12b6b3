import fc from 'fast-check';
import * as polyclip from 'polyclip-ts';
import { describe, expect, test } from 'vitest';
import {
  type At,
  areaOf,
  boxOf,
  boxRing,
  clipTo,
  contains,
  convexParts,
  counterClockwise,
  distanceOutside,
  distanceToBorder,
  fewConvexParts,
  gcd,
  hullOf,
  isConvex,
  outsideParts,
  overlapDepth,
  type Ring,
  sideOf,
  trianglesOf,
} from '../../../src/core/plane';
import { SEED } from '../../seed';

/** The outside opinion: polyclip-ts 0.16.8, Martinez's sweep in exact numbers. Areas summed here, apart from what is tested. */
type Region = [number, number][][][];
const asRegion = (ring: Ring): Region => [[ring.map(([x, y]) => [x, y])]];
const areaOfRegion = (region: Region): number =>
  region.reduce(
    (total, [outer = [], ...holes]) =>
      total + shoelace(outer) - holes.reduce((sum, hole) => sum + shoelace(hole), 0),
    0,
  );
const shoelace = (ring: readonly (readonly [number, number])[]): number =>
  Math.abs(
    ring.reduce((sum, [x, y], at) => {
      const [u, v] = ring[(at + 1) % ring.length] ?? [x, y];
      return sum + (x * v - u * y) / 2;
    }, 0),
  );

const whole = fc.integer({ min: -60, max: 60 });
const point: fc.Arbitrary<At> = fc.tuple(whole, whole);

/** Simple rings about a middle, seldom convex, corners on whole numbers, either way round. */
const star: fc.Arbitrary<Ring> = fc
  .record({
    reach: fc.array(fc.integer({ min: 4, max: 40 }), { minLength: 3, maxLength: 10 }),
    middle: point,
    back: fc.boolean(),
  })
  .map(({ reach, middle: [cx, cy], back }) => {
    const ring = reach.map((r, at): At => {
      const turn = (2 * Math.PI * at) / reach.length;
      return [cx + Math.round(r * Math.cos(turn)), cy + Math.round(r * Math.sin(turn))];
    });
    return back ? ring.reverse() : ring;
  })
  .filter((ring) => Math.abs(areaOf(ring)) > 4);

const convex: fc.Arbitrary<Ring> = fc
  .array(point, { minLength: 3, maxLength: 12 })
  .map(hullOf)
  .filter((ring) => ring.length > 2);

const always = (property: fc.IProperty<unknown>, numRuns = 300): void =>
  fc.assert(property, { seed: SEED, numRuns });
const sumOf = (rings: readonly Ring[]) => rings.reduce((sum, ring) => sum + areaOf(ring), 0);

describe('figures of the plane, beside polyclip-ts', () => {
  test('an area is the area of the region, its sign the way round', () => {
    always(
      fc.property(star, (ring) => {
        expect(Math.abs(areaOf(ring))).toBeCloseTo(areaOfRegion(polyclip.union(asRegion(ring))), 9);
        expect(areaOf([...ring].reverse())).toBe(-areaOf(ring));
        expect(areaOf(counterClockwise(ring))).toBeGreaterThan(0);
      }),
    );
  });

  test('what a ring shares with a convex one has the area of their intersection', () => {
    always(
      fc.property(star, convex, (ring, window) => {
        const shared = areaOfRegion(polyclip.intersection(asRegion(ring), asRegion(window)));
        expect(Math.abs(areaOf(clipTo(ring, window)))).toBeCloseTo(shared, 6);
      }),
    );
  });

  test('what of a convex ring lies outside another is their difference, in convex parts that do not overlap', () => {
    always(
      fc.property(convex, convex, (ring, cover) => {
        const parts = outsideParts(ring, cover);
        const left = areaOfRegion(polyclip.difference(asRegion(ring), asRegion(cover)));
        expect(parts.every((part) => isConvex(part, 1e-6))).toBe(true);
        expect(sumOf(parts)).toBeCloseTo(left, 6);
      }),
    );
  });

  test('triangles and convex parts fill a ring and no more', () => {
    always(
      fc.property(star, (ring) => {
        const round = counterClockwise(ring);
        for (const parts of [trianglesOf(ring), convexParts(round), fewConvexParts(ring)]) {
          expect(parts.every((part) => isConvex(part))).toBe(true);
          expect(sumOf(parts)).toBeCloseTo(Math.abs(areaOf(ring)), 9);
          const together = polyclip.union(asRegion(round), ...parts.map(asRegion));
          expect(areaOfRegion(together)).toBeCloseTo(Math.abs(areaOf(ring)), 6);
        }
        expect(fewConvexParts(ring).length).toBeLessThanOrEqual(trianglesOf(ring).length);
      }),
      150,
    );
  });

  test('a point is inside where a small square about it lies wholly in the region, outside where it shares nothing', () => {
    always(
      fc.property(star, point, (ring, [x, y]) => {
        const about = boxRing({ left: x - 0.01, right: x + 0.01, bottom: y - 0.01, top: y + 0.01 });
        const share = areaOfRegion(polyclip.intersection(asRegion(ring), asRegion(about))) / 0.0004;
        if (share > 0.999) expect(contains(ring, [x, y])).toBe(true);
        if (share < 0.001) expect(contains(ring, [x, y])).toBe(false);
        if (share > 0.999) expect(distanceOutside([x, y], ring)).toBe(0);
        if (share < 0.001) expect(distanceOutside([x, y], ring)).toBe(distanceToBorder([x, y], ring));
      }),
    );
  });

  test('two convex rings lie in one another just where they share area', () => {
    always(
      fc.property(convex, convex, (one, other) => {
        const shared = areaOfRegion(polyclip.intersection(asRegion(one), asRegion(other)));
        expect(overlapDepth(one, other) > 1e-9).toBe(shared > 1e-9);
      }),
    );
  });

  test('a hull holds every point, turns left at every corner, and has only given points', () => {
    always(
      fc.property(fc.array(point, { minLength: 3, maxLength: 30 }), (points) => {
        const hull = hullOf(points);
        if (hull.length < 3) return;
        hull.forEach((here, at) => {
          const [before, after] = [hull.at(at - 1), hull[(at + 1) % hull.length]];
          expect(before && after && sideOf(before, here, after)).toBeGreaterThan(0);
          for (const other of points) expect(after && sideOf(here, after, other)).toBeGreaterThanOrEqual(0);
        });
        expect(hull.every(([x, y]) => points.some(([u, v]) => u === x && v === y))).toBe(true);
        expect(boxOf(hull)).toEqual(boxOf(points));
      }),
    );
  });
});

test('a ring that crosses itself is not taken apart in silence', () => {
  // A bow tie: its two triangles have areas +1 and −1.
  expect(() => fewConvexParts([[0, 0], [2, 2], [2, 0], [0, 2]])).toThrow('crosses'); // biome-ignore format: one row
});

test('how far a point is from a border, by hand', () => {
  const square = boxRing({ left: 0, right: 4, bottom: 0, top: 4 });
  expect(distanceToBorder([1, 2], square)).toBe(1);
  expect(distanceOutside([1, 2], square)).toBe(0);
  expect(distanceOutside([7, 8], square)).toBe(5); // 3 over, 4 up
});

test('the greatest common divisor divides both, and every divisor of both divides it', () => {
  const number = fc.integer({ min: -5000, max: 5000 });
  always(
    fc.property(number, number, (a, b) => {
      const most = gcd(a, b);
      const both = Array.from({ length: 100 }, (_, at) => at + 1).filter((d) => a % d === 0 && b % d === 0);
      if (a === 0 && b === 0) expect(most).toBe(0);
      else {
        expect(Math.abs(a % most) + Math.abs(b % most)).toBe(0);
        expect(both.every((d) => most % d === 0)).toBe(true);
      }
    }),
  );
});
