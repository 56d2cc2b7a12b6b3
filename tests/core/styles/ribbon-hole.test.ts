import { describe, expect, it } from 'vitest';
import { checkLimits } from '../../../src/core/checks/check-limits';
import { layNet, nameValues } from '../../../src/core/net';
import { styleById } from '../../../src/core/styles';
import { bagTopper } from '../../../src/core/styles/boxes/bag-topper';
import { inches } from '../../../src/core/units';

const drawer = styleById('sleeve-drawer')!;
const sizes = { width: inches(3), depth: inches(4), height: inches(1), ribbonHole: inches(0, 1, 4) };
const options = { ribbon: 'drawer' };

describe('a ribbon hole', () => {
  it('is punched in the middle of the drawer’s front, and nowhere else', () => {
    const box = layNet(drawer, { sizes, caliperUm: 305, options });
    const holed = box.pieces.flatMap(({ id, faces }) =>
      faces.filter(({ holes }) => holes.length > 0).map((face) => ({ id, ...face })),
    );
    expect(holed.map(({ id, panel }) => [id, panel])).toEqual([['drawer', 'front']]);
    const ring = holed[0]!.holes[0]!;
    const middle = (axis: 'x' | 'y') =>
      (Math.min(...ring.map((p) => p[axis])) + Math.max(...ring.map((p) => p[axis]))) / 2;
    // the front lies below the base: 1 in of side wall, then 3 in across, so its middle is at 2 1/2 in; 1/2 in up
    expect(middle('x')).toBe(inches(2, 1, 2));
    expect(middle('y')).toBe(inches(0, 1, 2));
    expect(Math.max(...ring.map(({ x }) => x)) - middle('x')).toBe(inches(0, 1, 8));
  });

  it('keeps a quarter inch of card all round: at most 1/2 in on a front 1 in high', () => {
    const told = (ribbonHole: number) => {
      const asked = { sizes: { ...sizes, ribbonHole: inches(0, ribbonHole, 16) }, caliperUm: 305, options };
      return checkLimits(drawer, nameValues(drawer, asked).lengths, inches(0, 1, 16), options).map(
        ({ code }) => code,
      );
    };
    expect(told(8)).toEqual([]);
    expect(told(9)).toContain('ribbon-hole-too-wide');
  });

  it('is not cut where a slot is', () => {
    const both = { ribbon: 'both', slot: 'both' };
    const { lengths } = nameValues(bagTopper, { sizes: {}, caliperUm: 305, options: both });
    expect(checkLimits(bagTopper, lengths, inches(0, 1, 16), both).map(({ code }) => code)).toContain(
      'ribbon-meets-slot',
    );
  });
});
