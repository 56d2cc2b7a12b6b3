import { describe, expect, it } from 'vitest';
import { boxCards, cardTrouble } from '../../../src/core/bench';
import { checkGeometry } from '../../../src/core/checks';
import {
  type BoxNet,
  dxfOf,
  foldTextOf,
  layNet,
  type PieceNet,
  readFold,
  svgOf,
} from '../../../src/core/net';
import { mendSizes } from '../../../src/core/proof/legal-boxes';
import { STYLES } from '../../../src/core/styles';
import { hingedLid } from '../../../src/core/styles/boxes/hinged-lid';
import { openTop } from '../../../src/core/styles/boxes/open-top';
import type { WindowShape } from '../../../src/core/styles/language/types';
import { everyAddOn } from '../../../src/core/styles/shapes/choices';
import { optionsFor } from '../../../src/core/styles/shapes/limits-for';
import { inches, toMm } from '../../../src/core/units/ticks';
import { trimmer } from '../bench/bench-tools';

/** A front 4 in wide and 3 in high less a margin of 1/2 in: an opening of 3 × 2 in, 76.2 × 50.8 mm. */
const withShape = (windowShape: WindowShape): BoxNet =>
  layNet(openTop, {
    sizes: { width: inches(4), depth: inches(2), height: inches(3), windowMargin: inches(0, 1, 2) },
    options: { window: 'front', windowShape },
    caliperUm: 305,
  });

type Spot = readonly [x: number, y: number];
const holeIn = ({ pieces }: BoxNet): readonly Spot[] =>
  pieces
    .flatMap(({ faces }) => faces.flatMap(({ holes }) => holes))[0]!
    .map(({ x, y }): Spot => [toMm(x), toMm(y)]);
const extent = (ring: readonly Spot[], axis: 0 | 1) => {
  const all = ring.map((spot) => spot[axis]);
  return { least: Math.min(...all), most: Math.max(...all), long: Math.max(...all) - Math.min(...all) };
};
const areaIn = (ring: readonly Spot[]): number =>
  Math.abs(
    ring.reduce((sum, [x, y], at) => {
      const [u, v] = ring[(at + 1) % ring.length]!;
      return sum + (x * v - u * y) / 2;
    }, 0),
  );
/** Corners of chords lie on the arc, so the area falls short of it by what lies between: at most 0.2 mm times the length of the arcs. */
const nearlyAll = (ring: readonly Spot[], area: number, arcs: number) => {
  expect(areaIn(ring)).toBeLessThanOrEqual(area + 0.5);
  expect(areaIn(ring)).toBeGreaterThan(area - 0.2 * arcs - 0.5);
};

describe('the shapes of a window 76.2 × 50.8 mm; areas by school geometry', () => {
  it('a circle of 50.8', () => {
    const ring = holeIn(withShape('round'));
    expect([extent(ring, 0).long, extent(ring, 1).long].map((mm) => Number(mm.toFixed(1)))).toEqual([
      50.8, 50.8,
    ]);
    nearlyAll(ring, Math.PI * 25.4 ** 2, Math.PI * 50.8);
  });

  it('an arch: two thirds of 50.8 rise, 33.87, is less than half of 76.2, so its arc has radius 76.2² / (8 · 33.87) + 33.87 / 2 = 38.37', () => {
    const box = withShape('arch');
    const ring = holeIn(box);
    expect([extent(ring, 0).long, extent(ring, 1).long].map((mm) => Number(mm.toFixed(1)))).toEqual([
      76.2, 50.8,
    ]);
    expect(box.pieces[0]!.curves[0]!.radius / 320).toBeCloseTo(38.367, 2);
    // a segment of a circle over a rectangle 16.93 high
    const half = Math.asin(38.1 / 38.367);
    nearlyAll(ring, 76.2 * 16.933 + 38.367 ** 2 * (half - Math.sin(2 * half) / 2), 2 * half * 38.367);
  });

  it('an arch in an opening 2 in wide and 3 in high is half a circle on upright sides', () => {
    const box = layNet(openTop, {
      sizes: { width: inches(3), depth: inches(2), height: inches(4), windowMargin: inches(0, 1, 2) },
      options: { window: 'front', windowShape: 'arch' },
      caliperUm: 305,
    });
    expect(box.pieces[0]!.curves[0]!.radius / 320).toBeCloseTo(25.4, 2);
    nearlyAll(holeIn(box), 50.8 * 50.8 + (Math.PI * 25.4 ** 2) / 2, Math.PI * 25.4);
  });

  it('an oval of four arcs that keep within 2 % of the ellipse and meet without a kink', () => {
    const box = withShape('oval');
    const ring = holeIn(box);
    expect([extent(ring, 0).long, extent(ring, 1).long].map((mm) => Number(mm.toFixed(1)))).toEqual([
      76.2, 50.8,
    ]);
    const [x0, y0] = [extent(ring, 0).least + 38.1, extent(ring, 1).least + 25.4];
    const off = ring.map(([x, y]) => Math.hypot((x - x0) / 38.1, (y - y0) / 25.4) - 1);
    expect(Math.max(...off.map(Math.abs))).toBeLessThan(0.025);
    const { curves } = box.pieces[0]!;
    expect(curves).toHaveLength(4);
    curves.forEach((curve, at) => {
      const next = curves[(at + 1) % 4]!;
      const [a, b] = [curve.centre, next.centre];
      // on the line through both centers, so both arcs have one tangent there
      const bend = (b[0] - a[0]) * (curve.b.y - a[1]) - (b[1] - a[1]) * (curve.b.x - a[0]);
      expect(Math.abs(bend) / Math.hypot(b[0] - a[0], b[1] - a[1])).toBeLessThan(4); // ticks
    });
  });

  it('a heart: a square of 32.55 on its corner and a circle of that width, as high as the opening, its tip down', () => {
    const ring = holeIn(withShape('heart'));
    // high = side (3 √2 / 4 + 1/2) = 1.56066 side; 50.8 / 1.56066 = 32.55
    expect(extent(ring, 1).long).toBeCloseTo(50.8, 1);
    expect(extent(ring, 0).long).toBeCloseTo(32.55 * (1 + Math.SQRT1_2), 0);
    nearlyAll(ring, 32.55 ** 2 + (Math.PI * 32.55 ** 2) / 4, Math.PI * 32.55);
    const middle = (extent(ring, 0).least + extent(ring, 0).most) / 2;
    const [tip] = ring.toSorted((p, q) => p[1] - q[1]);
    expect(tip![0]).toBeCloseTo(middle, 1);
  });

  it('rounded corners of a quarter of the shorter side, 12.7', () => {
    const ring = holeIn(withShape('rounded'));
    nearlyAll(ring, 76.2 * 50.8 - (4 - Math.PI) * 12.7 ** 2, 2 * Math.PI * 12.7);
  });

  it('in a lid that hangs on the back the tip of a heart points to the front', () => {
    const box = layNet(hingedLid, {
      sizes: {},
      options: { window: 'lid', windowShape: 'heart' },
      caliperUm: 305,
    });
    const ring = holeIn(box);
    const middle = (extent(ring, 0).least + extent(ring, 0).most) / 2;
    const [tip] = ring.toSorted((p, q) => q[1] - p[1]);
    expect(tip![0]).toBeCloseTo(middle, 1);
  });
});

const wordsOf = (piece: PieceNet, box: BoxNet): string =>
  JSON.stringify(boxCards(box, trimmer).filter((card) => card.piece.id === piece.id));

describe.each(['rounded', 'arch', 'round', 'oval', 'heart'] as const)('a window as %s', (shape) => {
  it('is a hole on the card with its own word, and the bench cuts exactly the net', () => {
    const box = withShape(shape);
    const [piece] = box.pieces;
    for (const faceUp of ['inside', 'outside'] as const)
      expect(cardTrouble(piece!, trimmer, { faceUp })).toBeNull();
    const kind = shape === 'rounded' ? 'rounded window' : shape;
    expect(wordsOf(piece!, box)).toContain(`Hole 1: ${kind}, `);
  });

  it('goes out as true arcs in SVG and DXF, and comes back from a FOLD file', () => {
    const box = withShape(shape);
    const arcs = { rounded: 4, arch: 1, round: 2, oval: 4, heart: 2 }[shape];
    expect([...dxfOf(box).matchAll(/^ARC$/gm)].length).toBeGreaterThanOrEqual(arcs);
    expect(svgOf(box, 'box')).toMatch(/A/);
    const reading = readFold(foldTextOf(box, 'box'));
    expect(reading.ok ? reading.pieces : reading.refusals).toEqual(box.pieces);
  });

  it('can be cut in every place of every style that has windows', () => {
    let tried = 0;
    for (const style of STYLES)
      for (const chosen of everyAddOn(style).filter(({ window }) => window && window !== 'none')) {
        const asked = mendSizes(style, {
          sizes: {},
          options: chosen,
          caliperUm: 305,
          mark: inches(0, 1, 16),
        });
        if (asked === null) continue; // its usual size is too small for one there
        const cut = (windowShape: string) => layNet(style, { ...asked, options: { ...chosen, windowShape } });
        const [box, straight] = [cut(shape), cut('straight')];
        const told = (of: BoxNet) => checkGeometry(style, of).map(({ code }) => code);
        // a shape lies within the rectangle, so it can meet no more than that does
        expect(told(straight), `${style.id}, ${chosen['window']}`).toEqual(expect.arrayContaining(told(box)));
        for (const piece of box.pieces) expect(cardTrouble(piece, trimmer, { faceUp: 'inside' })).toBeNull();
        tried++;
      }
    expect(tried).toBeGreaterThan(30);
  });
});

it('the shape is asked only where there is a window', () => {
  const asked = (window: string) => optionsFor(openTop, { window }).map(([name]) => name);
  expect(asked('none')).not.toContain('windowShape');
  expect(asked('front')).toContain('windowShape');
});
