import { describe, expect, it } from 'vitest';
import { bowLength, type Outside, outsideSize, tieLength, wrapLength } from '../../../src/core/dress';
import { layNet } from '../../../src/core/net';
import { styleById } from '../../../src/core/styles';
import { inches, millimetres, ticks, toInches, toMm } from '../../../src/core/units';

const box = (
  width: number,
  depth: number,
  height: number,
  unit: typeof inches | typeof millimetres,
): Outside => {
  const [w, d, h] = [unit(width), unit(depth), unit(height)];
  const round = { walls: ticks(2 * (w + d)), front: ticks(2 * (d + h)), sides: ticks(2 * (w + h)) };
  return { width: w, depth: d, height: h, round, threaded: ticks(0) };
};

const crossWrap = (outside: Outside) => wrapLength(outside, 'cross');
const ringWrap = (outside: Outside) => wrapLength(outside, 'ring');

/** Loop 2 in, tail 2 1/2 in, knot 1 1/2 in. */
const bow = { loops: 2, loopMm: 50.8, tailMm: 63.5, knotMm: 38.1 };

describe('ribbon for a box (worked examples of common practice, no source)', () => {
  it.each([
    [11.5, 5.5, 4, 50],
    [5, 4, 5, 38],
  ])('takes %d × %d × %d in both ways with %d in', (width, depth, height, length) => {
    expect(toInches(crossWrap(box(width, depth, height, inches)))).toBe(length);
  });

  it('takes 96 cm both ways round 19 × 11 × 9 cm, and 164 cm with a 24 cm bow round 30 × 20 × 10', () => {
    expect(toMm(crossWrap(box(190, 110, 90, millimetres)))).toBe(960);
    const simple = { loops: 0, loopMm: 0, tailMm: 120, knotMm: 0 };
    const each = tieLength(box(300, 200, 100, millimetres), { wrap: 'cross', bow: simple });
    expect(toMm(each)).toBe(1640);
    expect(toMm(80 * each)).toBe(131_200); // 80 boxes: 131.2 m
  });

  it('takes 36 1/2 in for the 3 1/2 × 1 1/2 × 3 box: 22 both ways and 14 1/2 for the bow', () => {
    const favor = box(3.5, 1.5, 3, inches);
    expect([crossWrap(favor), bowLength(bow), ringWrap(favor)].map(toInches)).toEqual([22, 14.5, 10]);
    expect(toInches(tieLength(favor, { wrap: 'cross', bow }))).toBe(36.5);
    expect(toInches(tieLength(favor, { wrap: 'ring', bow }))).toBe(24.5);
    expect(toInches(tieLength(favor, { wrap: 'none', bow }))).toBe(14.5);
    expect(tieLength(favor, { wrap: 'none', bow: null })).toBe(0);
  });
});

describe('the closed box outside', () => {
  const T = 97; // 0.3 mm is 96 ticks; a caliper is taken up to a whole tick by `caliperTicks`
  const outside = (id: string, caliperUm = 300) =>
    outsideSize(layNet(styleById(id)!, { sizes: {}, caliperUm }));
  const mm = ({ width, depth, height }: Outside) => [width, depth, height].map((each) => toMm(each));

  it('is a plain tube and one caliper: 3 1/2 × 1 1/2 × 3 in', () => {
    const { width, depth, height, round } = outside('open-top');
    const t = ticks(width - inches(3, 1, 2));
    expect(t).toBeLessThanOrEqual(T);
    expect([depth - t, height - t]).toEqual([inches(1, 1, 2), inches(3)]);
    expect(round.walls).toBe(2 * (width + depth));
    expect(round.front).toBe(2 * (depth + height));
  });

  it('holds the roof of a gable box and the handle of a basket, which its room does not', () => {
    // Sizes of the styles as they start. The gable: walls 3 in, its roof and handle strip above.
    expect(mm(outside('gable-top'))[2]).toBeGreaterThan(76.2 + 38.1);
    // The basket: handle 2 in above a rim of 1 1/2 in: 88.9 mm, and one caliper.
    expect(mm(outside('handle-basket'))[2]).toBeCloseTo(88.9 + 0.3, 1);
  });

  it('is as wide as the lid that goes over it, and a caliper higher', () => {
    // Lid 4 in + 1/8 in ease for the tray of 4 × 3 × 1 in, as the net lays them.
    const net = layNet(styleById('tray-lid')!, { sizes: {}, caliperUm: 300 });
    const lid = net.pieces.find(({ id }) => id === 'lid')!;
    const base = lid.faces.find(({ role }) => role === 'base' || role === 'lid')!;
    const xs = base.ring.map(({ x }) => x);
    expect(outsideSize(net).width - (Math.max(...xs) - Math.min(...xs))).toBeLessThanOrEqual(T);
    expect(mm(outsideSize(net))[2]).toBeCloseTo(25.4 + 0.6, 1);
  });

  it('goes round six sides of a prism by their sum, not by two widths and two depths', () => {
    // A regular hexagon of side 2 1/16 in over its lid: perimeter 6 sides, against 2 × (2s + √3 s) = 7.46 s round its rectangle.
    const { width, round } = outside('prism-lid');
    const side = (width - T) / 2;
    expect(round.walls / side).toBeGreaterThan(6);
    expect(round.walls / side).toBeLessThan(6.1);
  });

  it('goes over a ridge by its slopes: a roof in a section is shorter than its rectangle', () => {
    const { depth, width, height, round } = outside('house');
    expect(round.front + round.sides).toBeLessThan(2 * (width + depth) + 4 * height);
    expect(tieLength(outside('house'), { wrap: 'over-front', bow: null })).toBe(round.front);
  });
});
