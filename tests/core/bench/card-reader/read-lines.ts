import { sizeAsItLies } from '../../../../src/core/bench/equal/card-lie';
import type { BenchOp, BenchPoint } from '../../../../src/core/bench/types';
import { type LengthUnit, type Ticks, ticks } from '../../../../src/core/units';
import type { HeardSoFar } from './heard';
import { every, readSaid, readSaidList, readSaidPoint, splitList } from './read-length-words';

function eachLength(words: string, unit: LengthUnit, act: (at: Ticks) => BenchOp): readonly BenchOp[] | null {
  return readSaidList(words, unit)?.map(act) ?? null;
}

/** Marks and stops: `from 3 in` to the far edge, or `from 1 to 2 and 4 to 5 in`, every mark with every stop. */
export function readStopped(
  [verb, at = '', stops = '']: readonly string[],
  { key, blank, lie }: HeardSoFar,
): readonly BenchOp[] | null {
  const { unit } = key;
  if (!stops.includes(' to ')) {
    const [from, to] = [readSaid(stops, unit), blank && sizeAsItLies(blank, lie).up];
    if (from === null || to === null) return null;
    return eachLength(at, unit, (place) => ({ op: 'slit', at: place, from, to }));
  }
  const spans = every(splitList(stops), (span) => {
    const [from, to] = span.split(' to ').map((end) => readSaid(end, unit));
    return from == null || to == null ? null : { from, to };
  });
  return (
    spans &&
    (every(spans, ({ from, to }) =>
      eachLength(at, unit, (place) =>
        verb === 'Slit'
          ? { op: 'slit', at: place, from, to }
          : { op: 'score', at: place, span: { from, to } },
      ),
    )?.flat() ??
      null)
  );
}

/** Right across the card, from the near edge to the far. */
export const readScores = ([at = '']: readonly string[], { key }: HeardSoFar): readonly BenchOp[] | null =>
  eachLength(at, key.unit, (place) => ({ op: 'score', at: place, span: null }));

export function readLowerSlits(
  [end = '', at = '']: readonly string[],
  { key }: HeardSoFar,
): readonly BenchOp[] | null {
  const to = readSaid(end, key.unit);
  if (to === null) return null;
  return eachLength(at, key.unit, (place) => ({ op: 'slit', at: place, from: ticks(0), to }));
}

const ALL_CORNERS = 'near left, near right, far left and far right';

/** Left and right as hands see them; measured from a fence on the right they change places. */
export function readCorners(
  [names = ALL_CORNERS, across = '', up = '', unit = '']: readonly string[],
  { key }: HeardSoFar,
): readonly BenchOp[] | null {
  const size = [readSaid(across, key.unit), readSaid(`${up}${unit}`, key.unit)];
  return every(splitList(names), (name): BenchOp | null => {
    const [, end, seen] = /^(near|far) (left|right)$/.exec(name) ?? [];
    if (size[0] == null || size[1] == null || seen === undefined) return null;
    const measured = (seen === 'left') === (key.fence === 'left') ? 'left' : 'right';
    const corner = end === 'near' ? (`near-${measured}` as const) : (`far-${measured}` as const);
    return { op: 'corner', corner, across: size[0], up: size[1] };
  });
}

const readPoints = (words: readonly string[], { key }: HeardSoFar): readonly BenchPoint[] | null =>
  every(words, (one) => readSaidPoint(one, key.unit));

/** A run of points as it is, and wherever it comes again on the card as it lies. */
function readRuns(
  points: readonly BenchPoint[] | null,
  same: string | undefined,
  { key, blank, lie }: HeardSoFar,
): readonly (readonly BenchPoint[])[] | null {
  if (!points || !blank || points.length < 2) return null;
  if (same === undefined) return [points];
  const { across, up } = sizeAsItLies(blank, lie);
  const [, by, way] = /^(.+) farther (across|up)$/.exec(same) ?? [];
  if (by !== undefined) {
    const moved = (far: Ticks) =>
      points.map(({ x, y }) => (way === 'up' ? { x, y: ticks(y + far) } : { x: ticks(x + far), y }));
    const runs = readSaidList(by, key.unit)?.map(moved);
    return runs ? [points, ...runs] : null;
  }
  const mirrored = ([left, near]: Sides) =>
    points.map(({ x, y }) => ({ x: left > 0 ? x : ticks(across - x), y: near > 0 ? y : ticks(up - y) }));
  const runs = readMirrors(same)?.map(mirrored);
  return runs ? [points, ...runs] : null;
}

/** Straight lines: `A to B to C`, one after the other, and more of them after `and from`. */
export function readRuled(
  [verb, ways = '', smaller, same]: readonly (string | undefined)[],
  heard: HeardSoFar,
): readonly BenchOp[] | null {
  const keeps = smaller === undefined ? {} : ({ keeps: 'smaller' } as const);
  const runs = every(ways.split(', and from '), (way) =>
    readRuns(readPoints(way.split(' to '), heard), same, heard),
  );
  return (
    runs?.flat().flatMap((run) =>
      run.slice(1).map((b, i): BenchOp => {
        const a = run[i] ?? b;
        if (verb === 'Snip') return { op: 'snip', a, b, ...keeps };
        return { op: verb === 'Score' ? 'scoreLine' : 'slitLine', a, b };
      }),
    ) ?? null
  );
}

/** A cut from edge to edge, corner by corner. */
export function readPath(
  [way = '', smaller, same]: readonly (string | undefined)[],
  heard: HeardSoFar,
): readonly BenchOp[] | null {
  const keeps = smaller === undefined ? {} : ({ keeps: 'smaller' } as const);
  const runs = readRuns(readPoints(way.split(', '), heard), same, heard);
  return runs?.map((points) => ({ op: 'cutPath', points, curved: false, ...keeps })) ?? null;
}

type Sides = readonly [acrossKept: 1 | -1, upKept: 1 | -1];

const MIRRORED: Readonly<Record<string, Sides>> = {
  'mirrored left to right': [-1, 1],
  'mirrored near to far': [1, -1],
  'turned half round': [-1, -1],
};

const readMirrors = (same: string): readonly Sides[] | null =>
  same === 'at all four corners'
    ? Object.values(MIRRORED)
    : every(same.split(' and '), (one) => MIRRORED[one] ?? null);

export function readUprightWindow(
  [from = '', to = '']: readonly string[],
  heard: HeardSoFar,
): BenchOp[] | null {
  const [a, c] = readPoints([from, to], heard) ?? [];
  return a && c
    ? [{ op: 'window', ring: [a, { x: c.x, y: a.y }, c, { x: a.x, y: c.y }], hole: 'window' }]
    : null;
}

export function readWindow([corners = '']: readonly string[], heard: HeardSoFar): BenchOp[] | null {
  const ring = readPoints(corners.split(', '), heard);
  return ring && [{ op: 'window', ring, hole: 'window' }];
}
