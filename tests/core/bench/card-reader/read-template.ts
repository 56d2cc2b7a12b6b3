import type { BenchOp, BenchPoint, HoleKind } from '../../../../src/core/bench/types';
import type { Op } from '../../../../src/core/bench/words/say-act';
import type { LengthUnit } from '../../../../src/core/units';
import type { HeardSoFar } from './heard';
import { every, readSaid, readSaidPoint } from './read-length-words';

/** Lines laid out by template: their points were read before. */
const TEMPLATE_LINES = [
  /^(Curve \d+), from .+, (.+) deep\.$/,
  /^(Cut \d+), from .+?(; keep the smaller part)?\.$/,
  /^(Hole \d+): ([a-z ]+, .+, middle at .+)\.$/,
] as const;

/** A template row as its name and points; null if it is none. */
export function readTemplate(row: string): readonly [string, readonly BenchPoint[]] | null {
  const [, name, list] = /^(\w+ \d+) runs through (.+) mm\.$/.exec(row) ?? [];
  const points = every((list ?? '').split('; '), (pair) => {
    const [x, y] = pair.split(' × ').map((length) => readSaid(`${length} mm`, 'mm'));
    return x == null || y == null ? null : { x, y };
  });
  return name === undefined || !points ? null : [name, points];
}

export const isTemplateLine = (sentence: string): boolean =>
  TEMPLATE_LINES.some((pattern) => pattern.test(sentence));

export function readTemplateLine(
  sentence: string,
  { key, templates }: HeardSoFar,
): readonly BenchOp[] | null {
  const found = TEMPLATE_LINES.map((pattern) => pattern.exec(sentence)).find((one) => one !== null);
  const [, name = '', what = ''] = found ?? [];
  const points = templates.get(name);
  if (!points) return null;
  if (name.startsWith('Cut'))
    return [{ op: 'cutPath', points, curved: true, ...(what ? { keeps: 'smaller' } : {}) }];
  if (name.startsWith('Hole')) {
    const hole = readHole(what, points, key.unit);
    return hole && [{ op: 'window', ring: points, hole }];
  }
  const rise = readSaid(what, key.unit);
  return rise === null ? null : [{ op: 'scoreCurve', points, rise }];
}

const HOLES: readonly HoleKind[] = ['window', 'rounded window', 'arch', 'round', 'oval', 'heart', 'slot'];

/** Which kind of hole, if its size and middle are those of its points; a middle between two ticks is said as either. */
function readHole(
  what: string,
  points: readonly BenchPoint[],
  unit: LengthUnit,
): Op<'window'>['hole'] | null {
  const [, kind, wide = '', high, mark = '', at = ''] =
    /^([a-z ]+), (.+?)(?: × (.+?))?( in| mm)?, middle at (.+)$/.exec(what) ?? [];
  const up = readSaid(`${high ?? wide}${mark}`, unit);
  const across = high === undefined ? up : readSaid(wide, unit);
  const middle = readSaidPoint(at, unit);
  if (across === null || up === null || middle === null) return null;
  const fits = (all: readonly number[], long: number, mid: number): boolean => {
    const [least, most] = [Math.min(...all), Math.max(...all)];
    return most - least === long && Math.abs(most + least - 2 * mid) <= 1;
  };
  const same =
    fits(
      points.map(({ x }) => x),
      across,
      middle.x,
    ) &&
    fits(
      points.map(({ y }) => y),
      up,
      middle.y,
    );
  return same ? (HOLES.find((each) => each === kind) ?? null) : null;
}
