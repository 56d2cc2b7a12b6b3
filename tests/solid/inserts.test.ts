import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import type { DressingPiece, PieceFit } from '../../shared/workbook';
import { fitPiece } from '../../src/core/dress';
import { slotsOf } from '../../src/core/dress/inserts';
import { type BoxNet, layNet } from '../../src/core/net';
import { styleById } from '../../src/core/styles';
import { inches, type Ticks, ticks, toMm } from '../../src/core/units';
import { SEED } from '../seed';
import { build } from './clashes';
import { kit, solids } from './kit';

/** A hair between what lies on one another, mm. */
const HAIR_MM = 0.03;

afterEach(() => solids.free());

type Divides = Extract<PieceFit, { rule: 'divides' }>;

const pieceOf = (fit: PieceFit): DressingPiece => ({
  id: 'insert',
  kind: 'divider',
  name: 'Insert',
  widthMm: 10,
  heightMm: 10,
  perBox: 1,
  grain: 'free',
  paperId: null,
  fit,
});

const strip = (x: number, y: number, z: number, at: readonly [number, number, number]) =>
  solids.keep(solids.keep(kit.Manifold.cube([x, y, z], false)).translate([...at]));

/** Every strip of a family as card of its thickness, slots cut out, all standing on z = 0 about the middle of the room. `slotWide` narrows the slots. */
function family(net: BoxNet, fit: Divides, other: Divides, mark: Ticks, slotWide?: number) {
  const t = net.caliperUm / 1000;
  const [size, across] = [fitPiece(net, pieceOf(fit), mark), fitPiece(net, pieceOf(other), mark)];
  if (!size || !across) throw new Error('no room');
  const slots = slotsOf(net, fit, size, mark);
  const places = slotsOf(net, other, across, mark);
  const [long, high, deep] = [toMm(size.across), toMm(size.up), toMm(slots.deep)];
  const wide = slotWide ?? toMm(slots.wide);
  const placeOf = (steps: typeof slots, length: number, k: number) =>
    toMm(steps.first) + k * toMm(steps.step) - length / 2;
  return Array.from({ length: places.count }, (_, k) => {
    const at = placeOf(places, toMm(across.across), k);
    let card = strip(long, t, high, [-long / 2, at - t / 2, 0]);
    for (let slot = 0; slot < slots.count; slot++) {
      const x = placeOf(slots, long, slot);
      const z = slots.from === 'top' ? high - deep : 0;
      card = solids.keep(card.subtract(strip(wide, 4 * t, deep, [x - wide / 2, at - 2 * t, z])));
    }
    return fit.runs === 'across' ? card : solids.keep(solids.keep(card.rotate([0, 0, 90])).mirror([1, 0, 0]));
  });
}

const both = (columns: number, rows: number, heightMm: number): readonly [Divides, Divides] => {
  const fit = { rule: 'divides', columns, rows, heightMm, easeMm: 1.5875 } as const;
  return [
    { ...fit, runs: 'across' },
    { ...fit, runs: 'deep' },
  ];
};

const shared = (p: ReturnType<typeof strip>, q: ReturnType<typeof strip>): number =>
  solids.keep(p.intersect(q)).volume();

/** Is there a place in the tray where nothing of the insert reaches into its card? */
function goesIn(net: BoxNet, insert: readonly ReturnType<typeof strip>[]): boolean {
  const t = net.caliperUm / 1000;
  const tray = net.pieces[0]!;
  const built = build(tray, t, solids);
  const base = tray.faces.flatMap(({ role, ring }) => (role === 'base' ? ring : []));
  const middle = (axis: 'x' | 'y') =>
    (Math.min(...base.map((p) => p[axis])) + Math.max(...base.map((p) => p[axis]))) / 640;
  // corner tabs lie inside two of the walls: the insert is put where it is clear of them
  const ways = [0, t / 2, -t / 2];
  return ways.some((dx) =>
    ways.some((dy) =>
      insert.every((one) => {
        const there = solids.keep(one.translate([middle('x') + dx, middle('y') + dy, t / 2 + HAIR_MM]));
        return built.bodies.every(({ solid }) => shared(there, solid) < 1e-3);
      }),
    ),
  );
}

const trays = fc
  .record({
    width: fc.integer({ min: 24, max: 96 }),
    depth: fc.integer({ min: 24, max: 96 }),
    height: fc.integer({ min: 12, max: 40 }),
    columns: fc.integer({ min: 2, max: 5 }),
    rows: fc.integer({ min: 2, max: 5 }),
    caliperUm: fc.integer({ min: 200, max: 500 }),
    mark: fc.constantFrom(inches(0, 1, 16), ticks(320)),
  })
  .map(({ width, depth, height, mark, caliperUm, ...cells }) => ({
    ...cells,
    mark,
    net: layNet(styleById('tray')!, {
      sizes: {
        width: inches(0, width, 16),
        depth: inches(0, depth, 16),
        height: inches(0, height, 16),
      },
      caliperUm,
      mark,
    }),
  }));

/** Solids: npm `manifold-3d`. Nothing of the core but the cut sizes is asked. */
describe('dividers in a tray of card .2 to .5 mm', () => {
  it('go into one another, stand on the floor, and go into the tray', { timeout: 60_000 }, () => {
    for (const { net, columns, rows, mark } of fc.sample(trays, { seed: SEED, numRuns: 25 })) {
      const heightMm = Math.floor((toMm(net.inside.height) - 1) * 10) / 10;
      const [across, deep] = both(columns, rows, heightMm);
      const strips = [...family(net, across, deep, mark), ...family(net, deep, across, mark)];
      expect(strips).toHaveLength(rows - 1 + columns - 1);
      // turned end for end, a strip still goes in
      strips.push(solids.keep(strips.shift()!.mirror([1, 0, 0])));
      strips.forEach((one, at) => {
        expect(one.boundingBox().min[2]).toBeCloseTo(0, 9);
        for (const other of strips.slice(at + 1)) expect(shared(one, other)).toBeLessThan(1e-6);
      });
      const clear = goesIn(net, strips);
      expect(clear, JSON.stringify({ inside: net.inside, columns, rows })).toBe(true);
      solids.free();
    }
  });

  it('would jam with slots narrower than the card, or a strip longer than the room', () => {
    const net = layNet(styleById('tray')!, { sizes: {}, caliperUm: 300 });
    const mark = inches(0, 1, 16);
    const [across, deep] = both(3, 2, 15);
    const [one] = family(net, across, deep, mark, 0.2);
    const [other] = family(net, deep, across, mark, 0.2);
    expect(shared(one!, other!)).toBeGreaterThan(0.01);
    const long = toMm(net.inside.width) + 1;
    expect(goesIn(net, [strip(long, 0.3, 10, [-long / 2, -0.15, 0])])).toBe(false);
  });
});

/** A floor that stands on its four sides folded down, as card of its thickness about its score planes: the cut size less two rises is between its scores. */
function raised(net: BoxNet, size: { readonly across: Ticks; readonly up: Ticks }, riseMm: number) {
  const t = net.caliperUm / 1000;
  const [wide, deep] = [toMm(size.across) - 2 * riseMm, toMm(size.up) - 2 * riseMm];
  const side = (x: number, y: number, at: readonly [number, number]) => strip(x, y, riseMm, [...at, 0]);
  return [
    strip(wide + t, deep + t, t, [-(wide + t) / 2, -(deep + t) / 2, riseMm - t / 2]),
    side(t, deep, [-wide / 2 - t / 2, -deep / 2]),
    side(t, deep, [wide / 2 - t / 2, -deep / 2]),
    side(wide, t, [-wide / 2, -deep / 2 - t / 2]),
    side(wide, t, [-wide / 2, deep / 2 - t / 2]),
  ];
}

describe('a raised floor in a tray of card .2 to .5 mm', () => {
  const RISE_MM = 9.525;
  const floorIn = (net: BoxNet, mark: Ticks, easeMm: number) =>
    fitPiece(net, pieceOf({ rule: 'on-floor', easeMm, riseMm: RISE_MM }), mark);

  it('goes in on its folded sides, also with no ease asked for', { timeout: 60_000 }, () => {
    for (const { net, mark } of fc.sample(trays, { seed: SEED, numRuns: 25 }))
      for (const easeMm of [0, 1.5875]) {
        const size = floorIn(net, mark, easeMm);
        if (!size) throw new Error('no room');
        expect(goesIn(net, raised(net, size, RISE_MM)), JSON.stringify(net.inside)).toBe(true);
        solids.free();
      }
  });

  it('would jam a card wider than the room between the corner tabs', () => {
    const net = layNet(styleById('tray')!, { sizes: {}, caliperUm: 300 });
    const size = { across: ticks(net.inside.width + 2 * 3048), up: ticks(net.inside.depth + 2 * 3048) };
    expect(goesIn(net, raised(net, size, RISE_MM))).toBe(false);
  });
});
