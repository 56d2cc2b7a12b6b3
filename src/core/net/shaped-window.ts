import type { At } from '../plane';
import type { WindowShape } from '../styles/language/types';
import { chordEnds } from './arc';
import type { Bench, LaidRing } from './laid-panel';
import { pointAt } from './point';
import type { Point } from './types';

/** A corner of an opening from its middle, and how far the line to the next one bulges out: 0 where it is straight. */
type Bulged = readonly [x: number, y: number, rise: number];

/** Corners of each shape in an opening `wide` × `high`, clockwise, its head up. */
const SHAPES: Readonly<Record<WindowShape, (wide: number, high: number) => readonly Bulged[]>> = {
  rounded: (wide, high) => {
    const radius = Math.min(wide, high) / 4;
    const [x, y, rise] = [wide / 2, high / 2, radius * (1 - Math.SQRT1_2)];
    return [
      [-x, y - radius, rise],
      [radius - x, y, 0],
      [x - radius, y, rise],
      [x, y - radius, 0],
      [x, radius - y, rise],
      [x - radius, -y, 0],
      [radius - x, -y, rise],
      [-x, radius - y, 0],
    ];
  },
  // a half circle on upright sides; in a low opening a flatter arc, so that a third of the height stays upright
  arch: (wide, high) => {
    const rise = Math.min(wide / 2, (2 * high) / 3);
    const [x, y] = [wide / 2, high / 2];
    return [
      [-x, y - rise, rise],
      [x, y - rise, 0],
      [x, -y, 0],
      [-x, -y, 0],
    ];
  },
  round: (wide, high) => ringOf(Math.min(wide, high) / 2),
  oval: (wide, high) => {
    if (wide === high) return ringOf(wide / 2);
    const turned = high > wide;
    const [a, b] = turned ? [high / 2, wide / 2] : [wide / 2, high / 2];
    const [x, y] = whereArcsMeet(a, b);
    const [side, top] = [a - x, b - y];
    return turned
      ? [
          [-y, x, side],
          [y, x, top],
          [y, -x, side],
          [-y, -x, top],
        ]
      : [
          [-x, y, top],
          [x, y, side],
          [x, -y, top],
          [-x, -y, side],
        ];
  },
  // a square on its corner, and half a circle on each of its two upper sides
  heart: (wide, high) => {
    const [acrossSide, upSide] = [1 / Math.SQRT2 + 1, (3 * Math.SQRT2) / 4 + 1 / 2];
    const side = Math.min(wide / acrossSide, high / upSide);
    const [half, down] = [side / Math.SQRT2, (side * (upSide - Math.SQRT2)) / 2];
    return [
      [0, half - down, side / 2],
      [half, -down, 0],
      [0, -half - down, 0],
      [-half, -down, side / 2],
    ];
  },
};

const ringOf = (radius: number): readonly Bulged[] => [
  [-radius, 0, radius],
  [radius, 0, radius],
];

/**
 * Where the small and the large arc of an oval of four arcs meet, from half its length `a` and half its width `b`: on the upright through the middle
 * of what is left of the line between two ends of its axes, once a − b is taken off. source: four-center ellipse, drafting textbooks, from memory
 */
function whereArcsMeet(a: number, b: number): At {
  const chord = Math.hypot(a, b);
  const left = (chord - (a - b)) / 2;
  const small = (left * chord) / a;
  const large = ((chord - left) * chord) / b;
  const between = large - small;
  return [a - small + (small * (a - small)) / between, (small * (large - b)) / between];
}

/** One opening of this shape between two corners of a rectangle, clockwise. Chords stand off their arcs by `CHORD_TOLERANCE_MM` at most. */
export function shapedWindow(
  bench: Bench,
  [left, low]: At,
  [right, high]: At,
  shape: WindowShape,
  headDown: boolean,
): LaidRing {
  const way = headDown ? -1 : 1;
  const corners = SHAPES[shape](right - left, high - low).map(([x, y, rise]) => ({
    point: pointAt((left + right) / 2 + way * x, (low + high) / 2 + way * y),
    rise,
  }));
  const [ring, curves]: [Point[], (number | null)[]] = [[], []];
  corners.forEach(({ point, rise }, at) => {
    const next = corners[(at + 1) % corners.length]?.point ?? point;
    ring.push(point);
    if (rise > 0) bench.curves.push({ a: point, b: next, rise, bulge: 'left', kind: 'cut' });
    const curve = rise > 0 ? bench.curves.length - 1 : null;
    curves.push(curve);
    for (const between of rise > 0 ? chordEnds(point, next, rise) : []) {
      ring.push(between);
      curves.push(curve);
    }
  });
  return { ring, curves };
}
