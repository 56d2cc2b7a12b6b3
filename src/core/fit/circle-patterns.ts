import { paretoBy } from './pareto';

/** A pattern of equal circles in a rectangle: centres from the lower left corner, and the rectangle they fill. Units: the diameter's. */
export interface CirclePattern {
  readonly name: string;
  readonly width: number;
  readonly depth: number;
  readonly centres: readonly (readonly [x: number, y: number])[];
  /** True where the square that holds them is known to be the least possible. */
  readonly knownLeast: boolean;
}

/**
 * Patterns of `count` circles of diameter `diameter` that no other pattern here beats in width and depth: square grids, staggered rows
 * (n / n and n / n−1, tight, or spread until the rectangle is square or rows stand in line), zigzags, and the closed forms below.
 * Never claimed least unless named so. Least squares: encyclopedia table of circle packing in a square; OEIS A281065.
 */
export function packCircles(diameter: number, count: number): CirclePattern[] {
  const radius = diameter / 2;
  const unit = [...gridsOf(count), ...staggeredRows(count), ...closedForms(count)];
  const both = unit.flatMap((pattern) => [pattern, turned(pattern)]);
  return paretoBy(both, ({ width, depth }) => [round(width), round(depth)]).map((pattern) => ({
    ...pattern,
    width: pattern.width * radius,
    depth: pattern.depth * radius,
    centres: pattern.centres.map(([x, y]) => [x * radius, y * radius] as const),
  }));
}

/** Counts whose pattern here is the least square, by closed form. Source: the same table (from 2 to 9, 12, 16 and 18; 20 is not). */
const LEAST_SQUARES: Readonly<Record<number, number>> = {
  1: 2,
  2: 2 + Math.SQRT2,
  3: 2 + (Math.sqrt(6) + Math.SQRT2) / 2,
  4: 4,
  5: 2 + 2 * Math.SQRT2,
  6: 2 + 12 / Math.sqrt(13),
  7: 4 + Math.sqrt(3),
  8: 2 + Math.SQRT2 + Math.sqrt(6),
  9: 6,
  12: 2 + 15 * Math.sqrt(2 / 17),
  16: 8,
  18: 2 + 24 / Math.sqrt(13),
};

const round = (length: number) => Math.round(length * 1e9) / 1e9;

/** A pattern from centres given from the first circle's centre, unit radius. */
function patternOf(name: string, inner: readonly (readonly [number, number])[]): CirclePattern {
  const width = 2 + Math.max(...inner.map(([x]) => x));
  const depth = 2 + Math.max(...inner.map(([, y]) => y));
  const least = LEAST_SQUARES[inner.length];
  const knownLeast = least !== undefined && Math.abs(Math.max(width, depth) - least) < 1e-9;
  return { name, width, depth, centres: inner.map(([x, y]) => [x + 1, y + 1]), knownLeast };
}

const turned = (pattern: CirclePattern): CirclePattern => ({
  ...pattern,
  width: pattern.depth,
  depth: pattern.width,
  centres: pattern.centres.map(([x, y]) => [y, x]),
});

const gridsOf = (count: number): CirclePattern[] =>
  Array.from({ length: count }, (_, i) => i + 1).map((across) =>
    patternOf(
      `${across} in a row`,
      Array.from({ length: count }, (_, n) => [2 * (n % across), 2 * Math.floor(n / across)] as const),
    ),
  );

/** Rows of `long` circles at pitch p, every other row shifted by p/2 and holding `long` or one fewer. Two rows of one or two are the zigzag. */
function staggeredRows(count: number): CirclePattern[] {
  return Array.from({ length: count }, (_, i) => i + 1).flatMap((long) =>
    [long, long - 1]
      .filter((short) => short > 0)
      .flatMap((short) => {
        const rows = rowsFor(count, long, short);
        if (rows < 2) return [];
        const halves = long === short ? long - 0.5 : long - 1;
        return pitches(rows, halves).map((pitch) =>
          patternOf(`staggered rows of ${long} and ${short}`, staggeredCentres(count, long, short, pitch)),
        );
      }),
  );
}

function rowsFor(count: number, long: number, short: number): number {
  let held = 0;
  let rows = 0;
  while (held < count) held += rows++ % 2 === 0 ? long : short;
  return rows;
}

/** Touching rows stand this far apart when circles in a row are `pitch` apart (unit radius). */
const rowStep = (pitch: number) => Math.sqrt(4 - (pitch * pitch) / 4);

/**
 * Pitches worth trying: touching in the row (2); rows so close that every second row touches (2√3); and where the rectangle is square.
 * Width is 2 + halves·p and depth 2 + (rows − 1)·step(p): one grows and the other shrinks, so the square is one root, in closed form.
 */
function pitches(rows: number, halves: number): number[] {
  const tight = 2;
  const widest = rows > 2 ? 2 * Math.sqrt(3) : 4;
  const square = (2 * (rows - 1)) / Math.sqrt(halves * halves + ((rows - 1) * (rows - 1)) / 4);
  return [tight, widest, ...(square > tight && square < widest ? [square] : [])];
}

function staggeredCentres(count: number, long: number, short: number, pitch: number): [number, number][] {
  const centres: [number, number][] = [];
  for (let row = 0; centres.length < count; row++) {
    const inRow = row % 2 === 0 ? long : short;
    for (let n = 0; n < inRow && centres.length < count; n++)
      centres.push([n * pitch + (row % 2 === 0 ? 0 : pitch / 2), row * rowStep(pitch)]);
  }
  return centres;
}

/** Least squares that no rows give, by their coordinates (unit radius). Source: as above; coordinates re-derived and checked for overlap in the tests. */
function closedForms(count: number): CirclePattern[] {
  const near = (Math.sqrt(6) - Math.SQRT2) / 2;
  const far = (Math.sqrt(6) + Math.SQRT2) / 2;
  const rise = 2 + Math.sqrt(3);
  const forms: Readonly<Record<number, readonly (readonly [number, number])[]>> = {
    3: [
      [0, 0],
      [near, far],
      [far, near],
    ],
    7: [
      [0, 0],
      [0, 2],
      [2, 0],
      [2, 2],
      [1, rise],
      [rise, 1],
      [rise, rise],
    ],
    8: [
      [0, 0],
      [2 * far, 0],
      [0, 2 * far],
      [2 * far, 2 * far],
      [near, far],
      [far, near],
      [far, far + Math.SQRT2],
      [far + Math.SQRT2, far],
    ],
  };
  const form = forms[count];
  return form ? [patternOf('tightest square known', form)] : [];
}
